import { isoOrNull } from "../calendar/day.ts";
import { type Month, monthText } from "../calendar/month.ts";
import type { CapacityBand, DateBand } from "../fade/types.ts";
import type { LifeForecast, PackLife } from "../life/types.ts";
import { sortBy } from "../maths/sort-by.ts";
import type { Plan } from "./plan-schema.ts";
import { CHANCE_DIGITS, roundChance, roundParameter, roundTo } from "./rounding.ts";

/** The forecast packs as plan rows, by serial; `from` is the plan's first month. */
export function packRows(life: LifeForecast, from: Month): Plan["packs"] {
  return sortBy(
    life.packs.map((pack) => packRow(pack, monthText(from))),
    (row) => [row.serial, row.item],
  );
}

/** The fitted groups as plan rows, by item. */
export function fadeGroupRows(life: LifeForecast): Plan["fadeGroups"] {
  const rows = life.fadeGroups.map(({ item, packs, readings, completedLives, parameters, basis }) => ({
    item,
    packs,
    readings,
    completedLives,
    parameters: Object.fromEntries(Object.entries(parameters).map(([name, value]) => [name, roundParameter(value)])),
    basis,
  }));
  return sortBy(rows, (row) => [row.item]);
}

function packRow(life: PackLife, from: string): Plan["packs"][number] {
  const { pack, item, site, basis, readings, capacityNow, path, belowBy, replaceBy, dueChance, says } = life;
  return {
    serial: pack.serial,
    item,
    device: pack.device,
    site,
    basis,
    readings,
    capacityNow: capacityNow === null ? null : capacityBand(capacityNow),
    path: { from, p10: capacities(path.p10), p50: capacities(path.p50), p90: capacities(path.p90) },
    belowBy: { kind: belowBy.kind, ...dateBand(belowBy) },
    replaceBy: {
      kind: replaceBy.kind,
      ...dateBand(replaceBy),
      because: replaceBy.because,
      note: replaceBy.note,
    },
    dueBy: { from, chance: Array.from(dueChance, roundChance) },
    says,
  };
}

const capacities = (values: readonly number[]) => values.map((value) => roundTo(value, CHANCE_DIGITS));

function capacityBand({ p10, p50, p90 }: CapacityBand): CapacityBand {
  return {
    p10: roundTo(p10, CHANCE_DIGITS),
    p50: roundTo(p50, CHANCE_DIGITS),
    p90: roundTo(p90, CHANCE_DIGITS),
  };
}

function dateBand({ p10, p50, p90 }: DateBand) {
  return { p10: isoOrNull(p10), p50: isoOrNull(p50), p90: isoOrNull(p90) };
}
