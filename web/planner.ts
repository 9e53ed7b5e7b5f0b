import { type ColumnsFile, type Plan, type PolicyChoice, type Reading, withDistinctNames } from "../src/index.ts";
import { choicesOfPlan } from "./embedded-choices.ts";
import { askPlan } from "./engine/ask-plan.ts";
import type { CellChange, RowPlace } from "./engine/correct-row.ts";
import { ask, Stopped, stopEngine } from "./engine/engine.ts";
import type { Read } from "./engine/messages.ts";
import { dayWords } from "./format.ts";
import { type NamedBytes, wantedBeside } from "./intake/intake.ts";
import { forgetChoices } from "./kept-choices.ts";
import { forgetWork, keepPlan, keepWork, keptPlan, keptWork } from "./kept-work.ts";
import { todayHere } from "./months.ts";
import { policyCsv } from "./policy-file.ts";
import { choicesInLink } from "./policy-link.ts";
import { saveFile } from "./save-file.ts";
import type { Session } from "./session.ts";
import { say } from "./strings.ts";

/** How the planner shows what it has. */
export interface Stage {
  show: (session: Session) => Promise<void>;
  /** Shows what was read, while the forecast is being made. */
  preview: (read: Read) => void;
  /** Says something until the next thing is said. */
  tell: (text: string) => void;
  /** Says something for a while: good news, which may go by unread, and where more of it stands. */
  mention: (text: string, seeAlso?: { href: string; text: string }) => void;
  /** Work is going on; `stop` ends it. */
  busy: (text: string, stop: () => void) => void;
}

const SMALL_FILE = 20_000;

/** Holds the session and carries out what the reader asks for. `embedded` is the JSON that came inside the page. */
export function planner(stage: Stage, embedded: string | null) {
  let session: Session = {
    plan: null,
    reading: null,
    readings: new Map(),
    behind: null,
    problems: [],
    before: null,
    kept: false,
    hasSheets: true,
    choices: new Map(),
    words: { policy: [], sheets: [], cautions: [] },
  };
  let files: NamedBytes[] = [];
  /** How columns are read, where the reader chose; null lets the engine recognise them. */
  let columns: ColumnsFile | null = null;
  /** Values that an embedded plan was made with, beneath the reader's own. */
  let underlying: PolicyChoice[] = [];
  /** What came inside the page, whole. */
  let inside: { plan: Plan; reading: Reading } | null = null;
  let line = Promise.resolve(false);
  let newest = 0;
  /** Whether the engine still has what it read. */
  let engineKnows = false;

  const choices = () => [
    ...underlying.filter(({ key }) => !session.choices.has(key)),
    ...[...session.choices].map(([key, value]) => ({ key, value })),
  ];
  const keep = () => keepWork({ files, columns, choices: [...session.choices] }, embedded);

  /** Takes back what is about to be read, should no plan come of it: the plan shown is then still that of the sheets at hand. */
  function goingBack(): () => void {
    const last = [files, columns, underlying] as const;
    return () => {
      [files, columns, underlying] = last;
      engineKnows = false;
    };
  }

  async function takeFiles(dropped: NamedBytes[]): Promise<void> {
    const taken = withDistinctNames(dropped);
    if (taken.length === 0) return stage.tell(say.intake.nothing);
    if ((await tookColumns(taken)) || (await tookPolicy(taken))) return;
    if (session.plan !== null && session.hasSheets && wantedBeside()) return addFiles(taken);
    const undo = goingBack();
    files = taken;
    columns = null;
    underlying = [];
    engineKnows = false;
    await work(say.intake.working(files.length), null, undo);
  }

  /** Puts sheets among the others, in the place of those of the same name. */
  async function addFiles(added: NamedBytes[]): Promise<void> {
    if (!session.hasSheets) return stage.tell(say.sheets.scan.needsSheets);
    const names = new Set(added.map(({ name }) => name));
    const undo = goingBack();
    files = [...files.filter(({ name }) => !names.has(name)), ...added];
    engineKnows = false;
    await work(say.intake.replanning, session.plan, undo);
  }

  async function setColumns(chosen: ColumnsFile): Promise<void> {
    const undo = goingBack();
    columns = chosen;
    engineKnows = false;
    await work(say.intake.replanning, session.plan, undo);
  }

  /** A columns file that was dropped says how the columns of the sheets at hand are read. */
  async function tookColumns(taken: NamedBytes[]): Promise<boolean> {
    const [file] = taken;
    if (!session.hasSheets || !file || taken.length > 1 || !file.name.endsWith(".json")) return false;
    const found = await ask("columnsIn", { text: new TextDecoder().decode(file.bytes) });
    if ("problem" in found) stage.tell(found.problem);
    else await setColumns(found.columns);
    return true;
  }

  async function correct(row: RowPlace, changes: CellChange[]): Promise<void> {
    const corrected = await ask("correct", { row, changes });
    const before = files.find(({ name }) => name === row.file);
    await addFiles([{ ...corrected, fromFolder: before?.fromFolder ?? false }]);
  }

  /** A policy sheet dropped on a plan changes the assumptions and leaves the fleet as it is. */
  async function tookPolicy(taken: NamedBytes[]): Promise<boolean> {
    if (session.plan === null || taken.length > 1 || taken[0]!.bytes.length > SMALL_FILE) return false;
    const found = await ask("choicesIn", { files: taken, today: todayHere() });
    if (found === null) return false;
    for (const { key, value } of found) session.choices.set(key, value);
    const planned = await work(say.intake.replanning, session.plan);
    if (planned) stage.mention(say.intake.taken(found.length, "file"));
    return true;
  }

  /** Assumptions that came with the page's address, which is then cleared so that a reload does not bring them back. */
  function choicesFromLink(): number {
    const keys = session.words.policy.map(({ key }) => key);
    const found = choicesInLink(location.hash, keys);
    if (found === null) return 0;
    history.replaceState(null, "", location.pathname + location.search);
    for (const [key, value] of found) session.choices.set(key, value);
    return found.length;
  }

  /** One piece of work at a time; of those that wait only the newest is done, since it carries every change so far. */
  function work(text: string, before: Plan | null, undo?: () => void): Promise<boolean> {
    const mine = ++newest;
    line = line.then(() => mine === newest && workNow(text, before, undo));
    return line;
  }

  /** Whether a plan came of it. */
  async function workNow(text: string, before: Plan | null, undo?: () => void): Promise<boolean> {
    stage.busy(text, stopEngine);
    const hasSheets = files.length > 0;
    try {
      const planned = await plannedAnew(hasSheets);
      const { plan, reading } = planned;
      const found = reading.inputs.length > 0;
      if (plan === null && session.plan !== null) {
        const back = backToShown(undo);
        stage.tell(
          say.intake.noPlanAnew(
            found,
            reading.refused.map(({ file, message }) => `${file}: ${message}`),
          ),
        );
        await back;
        return false;
      }
      session = {
        ...session,
        ...planned,
        hasSheets,
        before: session.kept ? session.before : before,
      };
      // before the page is drawn, so that a reload right after it finds the work
      const kept = keep();
      await stage.show(session);
      if (plan === null) {
        stage.tell(say.intake.noPlan(found));
        document.getElementById("sheets-heading")?.focus();
      } else {
        const changed = { href: "#changed", text: say.assumptions.changedHeading };
        stage.mention(say.intake.done(dayWords(plan.asOf)), session.before === null ? undefined : changed);
      }
      await kept;
      return plan !== null;
    } catch (error) {
      if (error instanceof Stopped) engineKnows = false;
      const back = backToShown(undo);
      // what was read stands there for a plan that does not come: back to where sheets are handed over
      if (session.plan === null) await stage.show(session);
      const stopped = session.plan === null ? say.intake.stoppedFirst : say.intake.stopped;
      stage.tell(error instanceof Stopped ? stopped : say.intake.failed((error as Error).message));
      await back.catch(() => {
        engineKnows = false;
      });
      return false;
    }
  }

  /** Has the engine know again what the page still shows, since files are written and rows corrected of that. */
  async function backToShown(undo?: () => void): Promise<void> {
    undo?.();
    const { plan } = session;
    if (plan === null) return;
    const fromSheets = files.length > 0;
    const how = { choices: choicesOfPlan(plan), today: todayHere() };
    // asked for at once, so that whatever the reader asks for next comes after both
    await Promise.all([
      fromSheets && ask("read", { files, columns, ...how }),
      ask("adopt", { plan, reading: fromSheets ? null : inside!.reading }),
    ]);
    engineKnows = true;
  }

  async function plannedAnew(hasSheets: boolean) {
    const how = { choices: choices(), today: todayHere() };
    if (!engineKnows && hasSheets) {
      const read = await ask("read", { files, columns, ...how });
      engineKnows = true;
      const planFollows = read.reading.inputs.length > 0 && read.reading.refused.length === 0;
      if (session.plan === null && planFollows) stage.preview(read);
      return askPlan(how);
    }
    if (!engineKnows && inside) await ask("adopt", inside);
    engineKnows = true;
    return askPlan(how);
  }

  return {
    takeFiles,
    addFile: (file: NamedBytes) => addFiles([file]),
    correct,
    setColumns,
    async set(key: string, value: string): Promise<void> {
      if (value === "") session.choices.delete(key);
      else session.choices.set(key, value);
      await work(say.intake.replanning, session.plan);
    },
    async reset(): Promise<void> {
      session.choices.clear();
      await work(say.intake.replanning, session.plan);
    },
    async keep(): Promise<void> {
      session = { ...session, before: session.plan, kept: true };
      const stored = keepPlan(session.plan, embedded);
      await stage.show(session);
      if (!(await stored)) stage.tell(say.assumptions.notStored);
    },
    async letGo(): Promise<void> {
      session = { ...session, before: null, kept: false };
      // before the page says so, so that a reload right after it does not find the plan again
      await keepPlan(null, embedded);
      await stage.show(session);
    },
    async takeLink(): Promise<void> {
      const taken = choicesFromLink();
      if (taken === 0) return;
      const planned = session.plan === null || (await work(say.intake.replanning, session.plan));
      if (planned) stage.mention(say.intake.taken(taken, "link"));
    },
    save(): void {
      if (session.plan) saveFile(policyCsv(session.plan), "policy.csv");
    },
    async forget(): Promise<void> {
      forgetChoices();
      await forgetWork(embedded);
      stage.mention(say.intake.cleared);
    },
    showAgain: () => stage.show(session),
    /** Opens with the work kept from last time, else with the plan inside the page, else empty. */
    async open(): Promise<void> {
      // Without its engine the page still shows a plan that came inside it.
      session.words = await ask("describe", {}).catch((error: Error) => {
        stage.tell(say.intake.failed(error.message));
        return session.words;
      });
      const last = await keptWork(embedded);
      if (embedded !== null) {
        inside = JSON.parse(embedded) as { plan: Plan; reading: Reading };
        underlying = choicesOfPlan(inside.plan);
        session = { ...session, ...inside, ...(await ask("adopt", inside)), hasSheets: false };
        engineKnows = true;
      }
      const compared = last === null && embedded === null ? null : await keptPlan(embedded);
      if (compared !== null) session = { ...session, before: compared, kept: true };
      await stage.show(session);
      if (last === null || (last.files.length === 0 && last.choices.length === 0)) return this.takeLink();
      files = last.files;
      columns = last.columns ?? null;
      if (files.length > 0) {
        underlying = [];
        engineKnows = false;
      }
      session.choices = new Map(last.choices);
      const linked = choicesFromLink();
      const planned = await work(say.intake.working(files.length), session.plan);
      if (planned) stage.mention(linked > 0 ? say.intake.taken(linked, "link") : say.intake.restored);
    },
  };
}
