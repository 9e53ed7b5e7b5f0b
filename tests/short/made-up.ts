import type { DeviceRow, Fleet } from "../../src/fleet/rows.ts";
import type { LifeForecast } from "../../src/life/types.ts";
import { catalogueRow, fleetWith } from "../orders/made-up.ts";

export const PADS = "Pads, adult";
export const SOURCE = { file: "made-up.csv", sheet: null, line: 2 };
export const NO_LIFE: LifeForecast = {
  months: 0,
  draws: 0,
  packs: [],
  stock: [],
  addDueByDraw: () => {},
  newPackDueByDraw: () => {},
  fadeGroups: [],
  findings: [],
  suddenFailures: [],
  earlySigns: [],
  cautions: [],
};

export function device(name: string, facts: Partial<DeviceRow> = {}): DeviceRow {
  return {
    device: name,
    type: "Monitor",
    site: null,
    duty: null,
    inService: null,
    temperatureC: null,
    usesPerYear: null,
    retired: null,
    source: SOURCE,
    ...facts,
  };
}

export function fleetOf(devices: number, more: Partial<Fleet> = {}): Fleet {
  return fleetWith({
    devices: Array.from({ length: devices }, (_, n) => device(`D${n + 1}`)),
    catalogue: [
      catalogueRow({ item: PADS, fits: ["Monitor"] }),
      catalogueRow({ item: "Gel 60", kind: "gel", fits: ["Monitor"] }),
    ],
    ...more,
  });
}
