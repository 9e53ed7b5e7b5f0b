import { csvOf } from "./csv.ts";
import type { Plan } from "./plan-schema.ts";
import { CHANCE_DIGITS, roundTo } from "./rounding.ts";

/** packs.csv: one line a pack; early and late are the tenth and ninetieth percentile of the date. */
export function packsCsv(plan: Plan): string {
  return csvOf(plan.packs, {
    serial: (pack) => pack.serial,
    item: (pack) => pack.item,
    device: (pack) => pack.device,
    site: (pack) => pack.site,
    due: (pack) => pack.replaceBy.kind,
    replace_by: (pack) => pack.replaceBy.p50,
    replace_by_early: (pack) => pack.replaceBy.p10,
    replace_by_late: (pack) => pack.replaceBy.p90,
    because: (pack) => pack.replaceBy.because,
    fades_by: (pack) => pack.belowBy.p50,
    fades_by_early: (pack) => pack.belowBy.p10,
    fades_by_late: (pack) => pack.belowBy.p90,
    capacity_percent: (pack) => percent(pack.capacityNow?.p50),
    capacity_percent_low: (pack) => percent(pack.capacityNow?.p10),
    capacity_percent_high: (pack) => percent(pack.capacityNow?.p90),
    basis: (pack) => pack.basis,
    readings: (pack) => pack.readings,
    note: (pack) => pack.replaceBy.note,
    says: (pack) => pack.says,
  });
}

/** A fraction of four digits is a percentage of two. */
const percent = (fraction: number | undefined) =>
  fraction === undefined ? null : roundTo(fraction * 100, CHANCE_DIGITS - 2);
