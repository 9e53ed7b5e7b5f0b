import * as z from "zod/mini";
import { sampleSheets } from "../../sample-data/script/sample-sheets.ts";
import {
  budgetText,
  type ColumnsFile,
  cleanSheets,
  cleanWorkbook,
  columnChoices,
  columnsFileOf,
  fitFor,
  fitsToPlan,
  makeDatesBehind,
  makePlan,
  openWorkbooks,
  ordersCsv,
  ordersIcs,
  ordersWorkbook,
  type Plan,
  POLICY_KEYS,
  type Policy,
  type PolicyChoice,
  packsCsv,
  parseColumnsFile,
  policyChoice,
  policyChoicesIn,
  type Reading,
  readingsByPack,
  readSheets,
  rememberStages,
  resolvePolicy,
  SHEETS,
  type SheetFile,
  STANDING_CAUTIONS,
  setAsideCsv,
  spendNotes,
  writePlanJson,
} from "../../src/index.ts";
import { withUnfinished } from "../choose-column.ts";
import type { PackReadings } from "../pack-readings.ts";
import { correctRow } from "./correct-row.ts";
import { carryEngine, fitInWorkers } from "./fit-in-workers.ts";
import type { Answer, AskName, Asks, Began, Behind, Download, Planned, Question } from "./messages.ts";
import { trace } from "./trace.ts";

// The page's security policy forbids compiled text, and zod would try it once and be logged for it.
z.config({ jitless: true });

let files: SheetFile[] = [];
let reading: Reading | null = null;
let plan: Plan | null = null;
let columns: ColumnsFile | null = null;
let readWith = "";
let sample: Asks["sample"]["answer"] | null = null;
// What a changed assumption does not touch is not computed anew.
const stages = rememberStages();
const toldStages: typeof stages = (name, restsOn, policy, compute) => {
  self.postMessage({ began: name } satisfies Began);
  return stages(name, restsOn, policy, compute);
};

const answers: { [Name in AskName]: (ask: Asks[Name]["ask"]) => Promise<Asks[Name]["answer"]> } = {
  describe: async () => ({
    policy: POLICY_KEYS.map(({ key, unit, default: byDefault, explains }) => ({
      key,
      unit,
      default: byDefault,
      explains,
    })),
    sheets: SHEETS.map(({ kind, columns }) => ({
      kind,
      columns: columns.map(({ name, required }) => ({ name, required })),
    })),
    cautions: STANDING_CAUTIONS,
  }),
  sample: async () => {
    // Its random numbers go on from where they stand, so it is made once.
    sample ??= sampleSheets().map(({ name, text }) => ({
      name,
      bytes: new TextEncoder().encode(text),
      fromFolder: true,
    }));
    return sample;
  },
  read: async (ask) => {
    files = ask.files;
    columns = ask.columns;
    reading = null;
    const now = (await readNow(ask.choices, ask.today)).reading;
    return { reading: withoutTests(now), readings: dotsOf(now) };
  },
  adopt: async (ask) => {
    if (ask.reading !== null) {
      files = [];
      reading = ask.reading;
    }
    if (reading === null) throw new Error("No sheet was read yet.");
    plan = ask.plan;
    return { readings: dotsOf(reading), behind: behindOf(plan, reading, policyOf(plan.policy)) };
  },
  choicesIn: async (ask) => {
    await openWorkbooks(ask.files);
    const { inputs } = readSheets(ask.files, { asOf: ask.today, dateOrder: null });
    const onlyPolicy = inputs.length > 0 && inputs.every(({ kinds }) => kinds.every((kind) => kind === "policy"));
    return onlyPolicy ? policyChoicesIn(ask.files) : null;
  },
  columns: async () => {
    await openWorkbooks(files);
    return { file: withUnfinished(columnsFileOf(files, columns), columns), tables: columnChoices(files, columns) };
  },
  columnsIn: async ({ text }) => parseColumnsFile(text),
  cleanWorkbook: async () => {
    if (reading === null) throw new Error("No sheet was read yet.");
    return cleanWorkbook(reading.fleet);
  },
  clean: async () => (reading === null ? [] : cleanSheets(reading.fleet)),
  scan: async ({ scans, today }) => {
    await openWorkbooks(files);
    const { fleet, setAside } = readSheets([...files, scans], { asOf: today, dateOrder: null, columns });
    const nothing = { item: null, lot: null, serial: null, expiry: null, quantity: null };
    return [
      ...fleet.datedStock
        .filter(({ source }) => source.file === scans.name)
        .map(({ source: { line }, item, lot, serial, expiry, quantity }) => ({
          ...{ line, item, lot, serial, expiry, quantity },
          problem: null,
        })),
      ...setAside
        .filter(({ file }) => file === scans.name)
        .map(({ line, message }) => ({ line, ...nothing, problem: message })),
    ];
  },
  correct: async ({ row, changes }) => {
    const sheet = files.find(({ name }) => name === row.file);
    if (!sheet) throw new Error(`There is no sheet ${row.file}.`);
    return correctRow(sheet, row, changes);
  },
  trace: async (ask) => trace(ask.wanted, ask.reading, policyOf(ask.policy)),
  replan: async (ask) => planNow(ask.choices, ask.today, ask.readingMark),
  packs: async ({ from, to }) => plan?.packs.slice(from, to) ?? [],
  write: async (ask) => contentOf(ask.file),
  carry: async ({ engine }) => {
    carryEngine(engine);
    return null;
  },
  fit: async (task) => fitFor(task),
};

/** The policy that a plan was made with. */
function policyOf(values: Plan["policy"]): Policy {
  const told = Object.entries(values).filter(([, value]) => value !== null);
  return resolvePolicy(
    told.map(([key, value]) => ({ key, value: String(value) })),
    0,
  ).policy;
}

/** Reads the sheets where they are new, or where as-of or the date order changed: both decide how cells are read. */
async function readNow(choices: PolicyChoice[], today: number) {
  await openWorkbooks(files);
  const inSheets = files.length > 0 ? policyChoicesIn(files) : (reading?.fleet.policy ?? []);
  // as the program reads its options
  const own = choices.map(({ key, value }) => policyChoice(key, value));
  const { policy, problems } = resolvePolicy([...inSheets, ...own], today);
  const how = { asOf: policy.asOf, dateOrder: policy.dateOrder, columns };
  if (reading === null || (files.length > 0 && readWith !== JSON.stringify(how))) {
    reading = readSheets(files, how);
    readWith = JSON.stringify(how);
  }
  return { reading, policy, problems };
}

async function planNow(choices: PolicyChoice[], today: number, readingMark: string): Promise<Planned> {
  const { reading, policy, problems } = await readNow(choices, today);
  // A plan that misses a sheet buys wrongly: as on the command line, a refused file stops it.
  const whole = reading.inputs.length > 0 && reading.refused.length === 0;
  if (whole) {
    self.postMessage({ began: "life" } satisfies Began);
    // to find that every fit is at hand takes its time, too
    await stages("fits ahead", [reading.fleet], policy, (choices) =>
      fitInWorkers(() => fitsToPlan(reading.fleet, choices)),
    );
  }
  plan = whole ? makePlan(reading, policy, toldStages) : null;
  const mark = markOf(reading);
  return {
    plan: plan && { ...plan, packs: [] },
    packs: plan?.packs.length ?? 0,
    packsMark: plan ? markOf(plan.packs) : "",
    behind: plan && behindOf(plan, reading, policy),
    read:
      mark === readingMark ? null : { reading: withoutTests(reading), readings: dotsOf(reading), readingMark: mark },
    problems,
  };
}

function behindOf(plan: Plan, reading: Reading, policy: Policy): Behind {
  return { ...makeDatesBehind(reading, policy, stages), spendNotes: spendNotes(plan) };
}

const marks = new WeakMap<object, string>();
let marked = 0;

/** A mark by which the page can say what it has. Of two workers none gives the same. */
function markOf(thing: object): string {
  const mark = marks.get(thing) ?? `${performance.timeOrigin} ${++marked}`;
  marks.set(thing, mark);
  return mark;
}

// Only decides how a failed test bounds the capacity, which is not drawn.
const ANY_THRESHOLD = 0.8;

function dotsOf({ fleet }: Reading): PackReadings {
  return new Map(
    [...readingsByPack(fleet, ANY_THRESHOLD)].map(([key, { readings }]) => [
      key,
      readings.map(({ day, capacity }) => ({ day, percent: capacity * 100 })),
    ]),
  );
}

/** The long lists stay here: the page draws readings and has no use for the rest, and handing them over takes time. */
function withoutTests(reading: Reading): Reading {
  return { ...reading, fleet: { ...reading.fleet, runtimeTests: [], useLog: [] } };
}

// Columns of a printed page, as the program writes it.
const PAGE_WIDTH = 80;

async function contentOf(file: Download): Promise<string | Uint8Array> {
  if (reading === null || plan === null) throw new Error("There is no plan to write yet.");
  if (file === "plan.json") return [...writePlanJson(plan)].join("");
  if (file === "orders.csv") return ordersCsv(plan);
  if (file === "orders.xlsx") return ordersWorkbook(plan);
  if (file === "orders.ics") return ordersIcs(plan);
  if (file === "budget.txt") return budgetText(plan, { width: PAGE_WIDTH });
  if (file === "packs.csv") return packsCsv(plan);
  return setAsideCsv(reading.setAside, reading.inputs);
}

// One question after another, as what is asked next rests on what came of the one before.
let before = Promise.resolve();
self.addEventListener("message", (event: MessageEvent<Question>) => {
  before = before.then(() => answer(event.data));
});

async function answer({ id, name, ask }: Question): Promise<void> {
  let reply: Answer;
  try {
    reply = { id, answer: await (answers[name] as (ask: unknown) => Promise<unknown>)(ask) };
  } catch (error) {
    reply = { id, failed: error instanceof Error ? error.message : String(error) };
  }
  try {
    self.postMessage(reply);
  } catch (error) {
    // An answer that cannot be handed over must not leave the page waiting.
    self.postMessage({ id, failed: String(error) } satisfies Answer);
  }
}
