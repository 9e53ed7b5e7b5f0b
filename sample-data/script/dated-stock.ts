import { addMonths, isoFromDay } from "../../src/calendar/day.ts";
import { lastDayOfMonth, monthFromParts, monthOfDay } from "../../src/calendar/month.ts";
import { DEVICES } from "./devices.ts";
import { whole } from "./random.ts";
import type { Sheet, SheetRow } from "./sheet.ts";
import { AS_OF, STATIONS, STORE } from "./story.ts";

const endOf = (year: number, month: number) => isoFromDay(lastDayOfMonth(monthFromParts(year, month)));
const lotOf = (prefix: string, expiry: string) => `${prefix}${expiry.slice(2, 4)}${expiry.slice(5, 7)}`;

/** What a device carries: the item, how many, the prefix of its lots, and the months that may be left. */
const CARRIED: Record<string, [item: string, quantity: number, lot: string, monthsLeft: [number, number]][]> = {
  "monitor-defibrillator": [
    ["pads-adult", 2, "A", [2, 24]],
    ["pads-child", 1, "C", [3, 22]],
    ["gel-tube", 1, "G", [1, 20]],
    ["paper-roll", 1, "R", [14, 50]],
    ["spo2-sensor", 1, "S", [4, 30]],
  ],
  "patient monitor": [["spo2-sensor", 1, "S", [4, 30]]],
  aed: [
    ["pads-adult", 2, "A", [1, 26]],
    ["pads-child", 1, "C", [2, 24]],
  ],
};

/** Units in the devices: each fitted at some swap in the last two years. */
function fitted(): SheetRow[] {
  return DEVICES.filter((row) => row.retired === undefined && String(row.in_service) < isoFromDay(AS_OF)).flatMap(
    (device) =>
      (CARRIED[String(device.type)] ?? []).map(([item, quantity, lot, [least, most]]) => {
        const expiry = isoFromDay(lastDayOfMonth(monthOfDay(addMonths(AS_OF, whole(least, most)))));
        return { item, lot: lotOf(lot, expiry), expiry, quantity, place: String(device.device), ...openedGel(item) };
      }),
  );
}

/** A third of the gel tubes in use is open. */
function openedGel(item: string): SheetRow {
  return item === "gel-tube" && whole(1, 3) === 1 ? { opened: isoFromDay(AS_OF - whole(5, 50)) } : {};
}

const shelf = (item: string, lot: string, expiry: string, quantity: number, place: string = STORE): SheetRow => ({
  item,
  lot: lotOf(lot, expiry),
  expiry,
  quantity,
  place,
});

/** The wall of pads: one delivery of three lots, all of one quarter; its August lot went to stations and AEDs too. */
const WALL_EXPIRY = endOf(2027, 8);
const WALL_LOT = lotOf("W", WALL_EXPIRY);
const FROM_THE_WALL = /^AED-0[1-35-8]$/;
const WALL = [
  shelf("pads-adult", "W", endOf(2027, 7), 20),
  shelf("pads-adult", "W", endOf(2027, 8), 30),
  shelf("pads-adult", "W", endOf(2027, 9), 20),
];

function onShelves(): SheetRow[] {
  return [
    ...WALL,
    shelf("pads-child", "C", endOf(2027, 5), 6),
    shelf("pads-child", "C", endOf(2028, 2), 8),
    shelf("gel-tube", "G", endOf(2027, 10), 12),
    shelf("paper-roll", "R", endOf(2029, 6), 40),
    shelf("spo2-sensor", "S", endOf(2028, 4), 24),
    shelf("primary-aed", "L", endOf(2028, 9), 2),
    ...STATIONS.flatMap((station, index) => [
      shelf("pads-adult", "W", WALL_EXPIRY, 3, station),
      shelf("paper-roll", "R", endOf(2028, 3 + index), 4, station),
      shelf("spo2-sensor", "S", endOf(2027, 6 + index), 3, station),
    ]),
    { ...shelf("pads-child", "C", endOf(2027, 8), 3), held: "seal in doubt, supplier asked" },
  ];
}

/** dated_stock.csv, with two sets past their date at the ferry, and the total that someone added below. */
export function datedStockSheet(): Sheet {
  const rows = [...fitted(), ...onShelves()].map(withItsStory);
  const total = rows.reduce((sum, row) => sum + Number(row.quantity), 0);
  return {
    name: "dated_stock.csv",
    columns: ["item", "lot", "expiry", "quantity", "place", "opened", "held"],
    rows: [...rows, { item: "Total", quantity: total }],
  };
}

function withItsStory(row: SheetRow): SheetRow {
  if (row.item !== "pads-adult") return row;
  if (row.place === "AED-04") return { ...row, lot: "A2609", expiry: endOf(2026, 9) };
  return FROM_THE_WALL.test(String(row.place)) ? { ...row, lot: WALL_LOT, expiry: WALL_EXPIRY } : row;
}
