import { csvText } from "./csv.ts";
import type { Plan } from "./plan-schema.ts";
import { CHANCE_DIGITS, roundTo } from "./rounding.ts";

const HEADER = [
  "serial",
  "item",
  "device",
  "site",
  "due",
  "replace_by",
  "replace_by_early",
  "replace_by_late",
  "because",
  "fades_by",
  "fades_by_early",
  "fades_by_late",
  "capacity_percent",
  "capacity_percent_low",
  "capacity_percent_high",
  "basis",
  "readings",
  "note",
  "says",
];

/** packs.csv: one line a pack; early and late are the tenth and ninetieth percentile of the date. */
export function packsCsv(plan: Plan): string {
  return csvText(
    HEADER,
    plan.packs.map((pack) => [
      pack.serial,
      pack.item,
      pack.device,
      pack.site,
      pack.replaceBy.kind,
      pack.replaceBy.p50,
      pack.replaceBy.p10,
      pack.replaceBy.p90,
      pack.replaceBy.because,
      pack.belowBy.p50,
      pack.belowBy.p10,
      pack.belowBy.p90,
      percent(pack.capacityNow?.p50),
      percent(pack.capacityNow?.p10),
      percent(pack.capacityNow?.p90),
      pack.basis,
      pack.readings,
      pack.replaceBy.note,
      pack.says,
    ]),
  );
}

/** A fraction of four digits is a percentage of two. */
const percent = (fraction: number | undefined) =>
  fraction === undefined ? null : roundTo(fraction * 100, CHANCE_DIGITS - 2);
