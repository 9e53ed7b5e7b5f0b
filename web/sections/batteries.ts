import type { Plan } from "../../src/index.ts";
import { forgetFigures } from "../charts/figure.ts";
import { itemFade } from "../charts/item-fade.ts";
import { packFade } from "../charts/pack-fade.ts";
import { packsDue } from "../charts/packs-due.ts";
import { make } from "../dom.ts";
import { compareNames, monthWords } from "../format.ts";
import { keepChoice, keptChoice } from "../kept-choices.ts";
import { leastCertain } from "../least-certain.ts";
import { nextTask } from "../next-task.ts";
import { likelyDueBy, packsDueByMonth } from "../packs-due-by-month.ts";
import { picker } from "../picker.ts";
import type { PlannedSession } from "../session.ts";
import { say } from "../strings.ts";
import { earlySignsTable } from "./early-signs-table.ts";
import { outlivedTable } from "./outlived-table.ts";
import { packFacts } from "./pack-facts.ts";
import { packTable } from "./pack-table.ts";
import { answer, lead, section } from "./section.ts";

const YEAR = 12;
const PACK_CHOICE = "pack-choice";
const ITEM_CHOICE = "fleet-item";

type Pack = Plan["packs"][number];

/**
 * Batteries: when the packs run out, every pack in a table, one item and one pack in detail, and what stands out; of
 * thousands of packs, made over several tasks.
 */
export async function batteries(session: PlannedSession): Promise<HTMLElement> {
  const { plan } = session;
  const packs = byLikelyDate(plan.packs);
  if (packs.length === 0) return section("batteries", say.batteries.heading, lead(say.batteries.none));
  await nextTask();
  const due = packsDueByMonth(plan);
  const { noForecast } = leastCertain(plan);
  const ahead = packs.length - noForecast;
  const whole = section("batteries", say.batteries.heading, lead(leadText()), ahead > 0 && packsDue(due));
  await nextTask();
  whole.append(
    answer(
      say.batteries.table.heading,
      make("p", {}, say.batteries.table.note, " ", make("span", { class: "act-on" }, say.batteries.table.choose)),
      make("div", { id: "packs" }, packTable(packs, choose)),
    ),
  );
  await nextTask();
  whole.append(itemDetail(session));
  await nextTask();
  const detail = make("div", { id: "pack" });
  let chosen = packs.find(({ serial }) => serial === keptChoice(PACK_CHOICE)) ?? firstWorthSeeing(packs);
  drawDetail();
  const standsOut = [earlySignsTable(session, choose), outlivedTable(plan)];
  whole.append(detail, ...standsOut.filter((part) => part !== null));
  return whole;

  function choose(pack: Pack): void {
    chosen = pack;
    keepChoice(PACK_CHOICE, pack.serial);
    drawDetail();
    detail.querySelector("select")?.focus({ preventScroll: true });
    detail.scrollIntoView({ block: "start" });
  }

  function drawDetail(): void {
    forgetFigures(detail);
    const choices = picker(PACK_CHOICE, say.batteries.fade.pick, [option(chosen)], (serial) => {
      chosen = packs.find((pack) => pack.serial === serial) ?? chosen;
      drawDetail();
    });
    const select = choices.querySelector("select")!;
    // Thousands of options take their time to lay out: they come when somebody reaches for them.
    const fill = () => {
      if (select.options.length > 1) return;
      const at = packs.indexOf(chosen);
      select.prepend(...packs.slice(0, at).map(option));
      select.append(...packs.slice(at + 1).map(option));
    };
    select.addEventListener("focus", fill);
    select.addEventListener("pointerdown", fill);
    const about = make("div", {}, choices, packFacts(chosen, session.reading));
    detail.replaceChildren(packFade(chosen, session, about));
  }

  function option(pack: Pack): HTMLOptionElement {
    const where = pack.device ?? pack.site ?? say.none;
    return make("option", { value: pack.serial }, `${pack.serial} · ${pack.item} · ${where}`);
  }

  function leadText(): string {
    const untold = noForecast > 0 ? say.ahead.uncertain.noForecast(noForecast) : "";
    if (ahead === 0) return untold;
    const ends = due.filter((_, at) => at === YEAR - 1 || at === due.length - 1);
    const told = say.batteries.lead(packs.length, [
      say.batteries.now(likelyDueBy(plan, plan.asOf)),
      ...ends.map(({ month }) => say.batteries.by(likelyDueBy(plan, month), monthWords(month))),
    ]);
    return `${told} ${untold}`;
  }
}

/** One item's packs by age, with a choice of item. */
function itemDetail(session: PlannedSession): HTMLElement {
  const { plan } = session;
  const holder = make("div");
  const items = [...new Set(plan.packs.map((pack) => pack.item))].sort(compareNames);
  const readings = (item: string) =>
    plan.packs.reduce((sum, pack) => sum + (pack.item === item ? pack.readings : 0), 0);
  const before = items.find((item) => item === keptChoice(ITEM_CHOICE));
  draw(before ?? items.reduce((most, item) => (readings(item) > readings(most) ? item : most)));
  return holder;

  function draw(item: string): void {
    forgetFigures(holder);
    const options = items.map((name) => make("option", { value: name, selected: name === item }, name));
    const choices = picker(ITEM_CHOICE, say.batteries.fleet.pick, options, draw);
    holder.replaceChildren(itemFade(item, session, choices));
  }
}

function byLikelyDate(packs: readonly Pack[]): Pack[] {
  const never = "9999";
  return [...packs].sort((a, b) => {
    const [x, y] = [a.replaceBy.p50 ?? never, b.replaceBy.p50 ?? never];
    return x < y ? -1 : x > y ? 1 : compareNames(a.serial, b.serial);
  });
}

/** A pack with readings whose end lies ahead tells most; else the first with a path. */
function firstWorthSeeing(packs: Pack[]): Pack {
  return (
    packs.find((pack) => pack.readings >= 3 && pack.belowBy.kind === "within-horizon") ??
    packs.find((pack) => pack.path.p50.length > 0) ??
    packs[0]!
  );
}
