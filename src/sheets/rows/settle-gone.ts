import { type Day, isoFromDay } from "../../calendar/day.ts";
import type { SheetSpec } from "../../fleet/columns.ts";
import type { Source } from "../../fleet/rows.ts";
import { shortened } from "../../fleet/shortened.ts";
import type { FindingLog } from "../finding-log.ts";
import { readChoice } from "../values/choice-words.ts";
import { Gone, goneAfterFault } from "../values/status-words.ts";
import type { Filled } from "./filled.ts";

const MAY_TELL = ["held", "retired", "site", "place", "device"];

/**
 * Settles a row whose status, or a word in the place of its site, place or device, says that the thing is gone: retired on the day
 * that its own column or the cell gives. A pack with no day stays so until all sheets are read, as another may tell it. How
 * long a device served tells nothing of others, and what sheets have in it must not be planned for either: it counts as
 * retired on as-of.
 *
 * @returns why the row cannot be used; null where it can
 */
export function settleGone(
  values: Record<string, unknown> & { source: Source },
  sheet: SheetSpec,
  asOf: Day,
  log: FindingLog,
): Filled | null {
  let said: Gone | null = null;
  for (const field of MAY_TELL) {
    const told = values[field];
    if (!(told instanceof Gone)) continue;
    said ??= told;
    values[field] = null;
  }
  return said && settle(values, said, sheet, asOf, log);
}

function settle(
  values: Record<string, unknown> & { source: Source },
  said: Gone,
  { kind, columns }: SheetSpec,
  asOf: Day,
  log: FindingLog,
): Filled | null {
  const note = (code: "gone" | "gone-undated", how: string) => {
    const message = `"${shortened(said.text)}" says that it is gone${how}.`;
    log.add(code, { ...values.source, column: null, value: said.text }, () => ({ message }), kind);
    return { code, message };
  };
  if (!columns.some(({ field }) => field === "retired")) return note("gone", "");
  const own = typeof values.retired === "number";
  const told = own ? (values.retired as Day) : said.since;
  const day = told ?? (kind === "devices" ? asOf : null);
  // another sheet may tell the day
  values.retired = told ?? new Gone(said.text, day);
  const spec = columns.find(({ field }) => field === "retiredBecause");
  const because = spec === undefined || values.retiredBecause !== null ? null : readChoice(said.text, spec);
  if (typeof because === "string") values.retiredBecause = because;
  // of words that tell two things it is said how they were understood
  if (day === null || own || (told !== null && !goneAfterFault(said.text))) return null;
  note(
    told === null ? "gone-undated" : "gone",
    `${told === null ? ", and nothing tells since when" : ""}: it counts as retired on ${isoFromDay(day)}`,
  );
  return null;
}
