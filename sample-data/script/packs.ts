import { isoFromDay } from "../../src/calendar/day.ts";
import { DEVICES } from "./devices.ts";
import { type AgeingPack, ageingPack, capacityOn, cyclesBy, type Wear } from "./pack-model.ts";
import { chance, uniform, whole } from "./random.ts";
import type { Sheet, SheetRow } from "./sheet.ts";
import { AS_OF, day, HOT_SITE, STATIONS, STORE, siteTemperatureC, three } from "./story.ts";

const MONITOR_WEAR: Wear = { perSqrtYear: 0.046, perCycle: 0.00017, kneeYears: 4.2, spread: 0.1 };
const TRANSFER_WEAR: Wear = { perSqrtYear: 0.042, perCycle: 0.00014, kneeYears: 5, spread: 0.12 };
const TRAINER_WEAR: Wear = { perSqrtYear: 0.05, perCycle: 0.0003, kneeYears: 4.5, spread: 0.1 };

/** A pack of the story: its row, how it ages (null where nobody measures it) and the days it is in use. */
export interface StoryPack {
  row: SheetRow;
  ageing: AgeingPack | null;
  from: number;
  to: number;
}

interface Batch {
  prefix: string;
  item: string;
  made: string;
  inService: string;
  wear: Wear;
  cyclesPerYear: number;
}

const deviceSite = new Map(DEVICES.map((row) => [row.device, String(row.site)]));

function inUse(batch: Batch, number: number, device: string | null, site: string | null): StoryPack {
  const inService = day(batch.inService) + whole(0, 12);
  const place = site ?? deviceSite.get(device ?? "") ?? STORE;
  const ageing = ageingPack({
    made: day(batch.made),
    inService,
    cyclesPerYear: batch.cyclesPerYear * (0.75 + 0.5 * uniform()),
    temperatureC: siteTemperatureC(place),
    wear: batch.wear,
  });
  const row: SheetRow = {
    serial: `${batch.prefix}-${three(number)}`,
    item: batch.item,
    device,
    site,
    made: batch.made,
    in_service: isoFromDay(inService),
  };
  return { row, ageing, from: inService, to: AS_OF };
}

/** Counters are read on the fleet's monthly round; a fifth of them are not legible. */
function withCounter(pack: StoryPack): StoryPack {
  const readOn = AS_OF - whole(2, 30);
  if (pack.ageing === null || chance(0.2)) return pack;
  return { ...pack, row: { ...pack.row, cycles: cyclesBy(pack.ageing, readOn), cycles_on: isoFromDay(readOn) } };
}

const batch = (prefix: string, item: string, made: string, inService: string, wear: Wear, cyclesPerYear: number) => ({
  prefix,
  item,
  made,
  inService,
  wear,
  cyclesPerYear,
});
const MONITOR_2018 = batch("M18", "pack-md", "2018-03-12", "2018-05-14", MONITOR_WEAR, 75);
const MONITOR_2022 = batch("M22", "pack-md", "2022-02-07", "2022-04-04", MONITOR_WEAR, 75);
const MONITOR_2024 = batch("M24", "pack-md", "2024-01-15", "2024-03-11", MONITOR_WEAR, 75);
const MONITOR_2025 = batch("M25", "pack-md", "2025-03-10", "2025-05-05", MONITOR_WEAR, 75);
const TRANSFER_2017 = batch("T17", "pack-pm", "2017-07-10", "2017-09-18", TRANSFER_WEAR, 40);
const TRANSFER_2021 = batch("T21", "pack-pm", "2021-07-05", "2021-09-06", TRANSFER_WEAR, 40);
const TRANSFER_2023 = batch("T23", "pack-pm", "2023-08-14", "2023-10-02", TRANSFER_WEAR, 40);
const TRAINER_2022 = batch("R22", "pack-aed-trainer", "2022-08-01", "2022-10-10", TRAINER_WEAR, 60);
const TRAINER_2019 = batch("R19", "pack-aed-trainer", "2019-08-05", "2019-10-07", TRAINER_WEAR, 60);

const monitorName = (index: number) => `MD-${String(index + 1).padStart(2, "0")}`;

/** The 58 packs in the monitor-defibrillators and beside them: two a device, eight in the stations' pools. */
function monitorPacks(): StoryPack[] {
  const bought = new Map<Batch, number>();
  return Array.from({ length: 58 }, (_, index) => {
    const device = index < 50 ? monitorName(index >> 1) : null;
    const pool = device === null ? (STATIONS[index % STATIONS.length] ?? null) : null;
    const from = device === null ? MONITOR_2025 : boughtFor(device, index);
    const number = (bought.get(from) ?? 0) + 1;
    bought.set(from, number);
    return withCounter(inUse(from, number, device, pool));
  });
}

/** Where it is hot the packs of 2022 had faded by 2025; elsewhere they are still in. */
function boughtFor(device: string, index: number): Batch {
  if (index >= 42) return MONITOR_2025;
  if (index >= 28) return MONITOR_2024;
  return deviceSite.get(device) === HOT_SITE ? MONITOR_2025 : MONITOR_2022;
}

/** Packs that lived their lives: taken out at the first test under 80 %, or before for a reason of another kind. */
function retiredPacks(
  bought: Batch,
  count: number,
  others: Record<number, [string, string]>,
  { firstNumber = 1, site = null as string | null } = {},
): StoryPack[] {
  return Array.from({ length: count }, (_, index) => {
    const at = site ?? STATIONS[index % STATIONS.length] ?? null;
    const pack = inUse(bought, firstNumber + index, null, at);
    const [because, iso] = others[index] ?? ["faded", ""];
    const to = iso === "" ? fadedOn(pack) : day(iso);
    return { ...pack, to, row: { ...pack.row, retired: isoFromDay(to), retired_because: because } };
  });
}

function fadedOn({ ageing, from }: StoryPack): number {
  let on = from + 60;
  while (ageing !== null && capacityOn(ageing, on) > 0.8 && on < AS_OF - 40) on += 1;
  // it was found out at the next test, some weeks later
  return Math.min(AS_OF - 20, on + whole(10, 120));
}

function transferPacks(): StoryPack[] {
  const held = Array.from({ length: 9 }, (_, index) => {
    const device = `PM-${String(index + 1).padStart(2, "0")}`;
    const [bought, number] = index < 4 ? [TRANSFER_2021, index] : [TRANSFER_2023, index - 4];
    return withCounter(inUse(bought, number + 1, device, null));
  });
  return [...held, ...retiredPacks(TRANSFER_2017, 4, { 3: ["policy", "2023-10-02"] }, { site: "Harbour" })];
}

function trainerPacks(): StoryPack[] {
  const used = Array.from({ length: 4 }, (_, index) => inUse(TRAINER_2022, index + 1, `TR-0${index + 1}`, null));
  return [...used, ...retiredPacks(TRAINER_2019, 2, {})];
}

/** Batteries that cannot be charged: nobody measures them, the maker's service life ends them. */
function primaryPacks(): StoryPack[] {
  return DEVICES.filter((row) => row.type === "aed").map((row, index) => {
    const inService = day(String(row.in_service)) + whole(0, 6);
    const made = inService - whole(90, 150);
    const serial = `L${String(row.in_service).slice(2, 4)}-${three(index + 1)}`;
    const own = {
      serial,
      item: "primary-aed",
      device: String(row.device),
      made: isoFromDay(made),
      in_service: isoFromDay(inService),
    };
    return { row: own, ageing: null, from: inService, to: AS_OF };
  });
}

/** On the shelf, never used. */
function shelfPacks(): StoryPack[] {
  const shelf = (serial: string, item: string, made: string, held?: string): StoryPack => ({
    row: { serial, item, site: STORE, made, held: held ?? null },
    ageing: null,
    from: AS_OF,
    to: AS_OF,
  });
  return [
    ...Array.from({ length: 5 }, (_, index) => shelf(`M26-${three(index + 1)}`, "pack-md", "2026-06-08")),
    shelf("M26-006", "pack-md", "2026-06-08", "case cracked in delivery, to be sent back"),
    ...Array.from({ length: 2 }, (_, index) => shelf(`T25-${three(index + 1)}`, "pack-pm", "2025-08-11")),
  ];
}

/** Every pack of the story. */
export function storyPacks(): StoryPack[] {
  return [
    ...monitorPacks(),
    ...retiredPacks(MONITOR_2018, 18, {
      5: ["failed", "2021-01-19"],
      9: ["damaged", "2020-08-03"],
      13: ["lost", "2021-05-22"],
      17: ["failed", "2022-06-27"],
    }),
    ...retiredPacks(MONITOR_2022, 6, {}, { firstNumber: 23, site: HOT_SITE }),
    ...transferPacks(),
    ...trainerPacks(),
    ...primaryPacks(),
    ...shelfPacks(),
  ];
}

/** packs.csv; one in-service date was typed wrongly. */
export function packsSheet(packs: readonly StoryPack[]): Sheet {
  return {
    name: "packs.csv",
    columns: [
      "serial",
      "item",
      "device",
      "site",
      "made",
      "in_service",
      "cycles",
      "cycles_on",
      "retired",
      "retired_because",
      "held",
    ],
    rows: packs.map(({ row }) => (row.serial === "M24-006" ? { ...row, in_service: "2024-02-30" } : row)),
  };
}
