import { counted, countText } from "../fleet/count-text.ts";
import { sortBy } from "../maths/sort-by.ts";
import { basisText, becauseText, capacityText, dueRangeText, dueText } from "./due-text.ts";
import { failuresText } from "./failures-text.ts";
import { firstYearEnd, horizonText, planMonth } from "./horizon-text.ts";
import { findingInPlace } from "./out-now.ts";
import type { Plan } from "./plan-schema.ts";
import { signsTold } from "./plan-signs.ts";
import { bullets, joinLines, section, type TextSetting, titleLine } from "./text-section.ts";
import { textTable } from "./text-table.ts";
import { wrapText } from "./text-width.ts";

/** Early signs told before the rest is counted. */
const SHOWN_SIGNS = 20;

/** Which batteries are due, when, why and how sure: a line a pack in order of its date, then the near ones told. */
export function packsText(plan: Plan, setting: TextSetting): string {
  const packs = sortBy(plan.packs, (pack) => [rank(pack), pack.replaceBy.p50 ?? "9999", pack.item, pack.serial]);
  const yearEnd = planMonth(plan, firstYearEnd(plan));
  const near = packs.filter(({ replaceBy }) => replaceBy.kind !== "no-forecast" && isNear(replaceBy.p50, yearEnd));
  return joinLines([
    titleLine(`Battery packs ${horizonText(plan)}`, setting),
    "",
    wrapText(dueCounts(plan, yearEnd, near.length), setting.width),
    ...(packs.length > 0 ? ["", packsTable(packs, plan.horizon.to, setting.width)] : []),
    ...section(
      `Due by the end of ${yearEnd}`,
      bullets(
        near.map((pack) => `${pack.serial}: ${pack.says}`),
        setting,
      ),
      setting,
    ),
    ...section("Early signs", bullets(signsTold(plan, SHOWN_SIGNS, "`wanecast packs --json`"), setting), setting),
    ...section("Sudden failures by age", failuresText(plan, setting), setting),
    ...section("Found in the tests", bullets(foundInTests(plan), setting), setting),
    ...section("Cautions", bullets(plan.cautions, setting), setting),
  ]);
}

/** Codes of findings that the forecast made in tests. */
const OF_TESTS = ["pack-swapped", "reading-doubted", "test-unrated"];

/** What the forecast found in the tests, each with its place. */
function foundInTests({ findings }: Plan): string[] {
  return findings.filter(({ code }) => OF_TESTS.includes(code)).map(findingInPlace);
}

function dueCounts(plan: Plan, yearEnd: string, near: number): string {
  if (plan.packs.length === 0) return "No battery pack in service was read.";
  const count = (kind: string) => plan.packs.filter(({ replaceBy }) => replaceBy.kind === kind).length;
  const now = count("already-due");
  const inPlan = now + count("within-horizon");
  const by = (units: number, month: string) => `${countText(units)} by the end of ${month}`;
  // a plan of a year or less has one end
  const ends = [...new Set([by(near, yearEnd), by(inPlan, plan.horizon.to)])].join(", ");
  const unknown = count("no-forecast");
  const others = unknown > 0 ? `, and ${countText(unknown)} without a forecast` : "";
  return `${counted(plan.packs.length, "pack")} in service: ${countText(now)} due now, ${ends} (each counted at its likely date)${others}.`;
}

function packsTable(packs: Plan["packs"], lastMonth: string, width: number): string {
  return textTable<Plan["packs"][number]>(
    [
      { head: "serial", cell: (pack) => pack.serial },
      { head: "item", cell: (pack) => pack.item, clipTo: 8 },
      { head: "device", cell: (pack) => pack.device ?? "-", clipTo: 8, dropRank: 3 },
      { head: "site", cell: (pack) => pack.site ?? "-", clipTo: 8, dropRank: 4 },
      { head: "due", cell: (pack) => dueText(pack, lastMonth) },
      { head: "80 % between", cell: dueRangeText },
      { head: "why", cell: becauseText, dropRank: 1 },
      { head: "now", align: "right", cell: capacityText, dropRank: 2 },
      { head: "rests on", cell: basisText, dropRank: 5 },
    ],
    packs,
    width,
  );
}

/** Due packs first, packs without a forecast last. */
function rank(pack: Plan["packs"][number]): number {
  return ["already-due", "within-horizon", "beyond-horizon", "no-forecast"].indexOf(pack.replaceBy.kind);
}

const isNear = (date: string | null, lastMonth: string) => date !== null && date.slice(0, 7) <= lastMonth;
