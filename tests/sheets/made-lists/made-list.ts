import { seededRandom } from "../../../src/maths/random.ts";
import type { ListColumn, ListKind } from "./lists.ts";

/** A made-up list whose columns and their headings are drawn by a seed. */
export interface MadeList {
  columns: ListColumn[];
  headings: string[];
  text: string;
}

const ITEMS: Record<string, string> = {
  "Adult pads": "Pads",
  "Child pads": "Pads",
  "Paper roll": "Paper",
  "Gel tube": "Gel",
  "SpO2 sensor": "Sensor",
};

/** Draws one. What is past lies before 1 November 2026, what is to come after it; no two lines tell of one thing. */
export function madeList({ columns: all }: ListKind, seed: number): MadeList {
  const random = seededRandom(seed);
  const pick = <T>(among: readonly T[]): T => among[Math.floor(random.uniform() * among.length)]!;
  const whole = (from: number, to: number) => from + Math.floor(random.uniform() * (to - from + 1));
  const columns = all.filter(({ chance = 1 }) => random.uniform() < chance);
  const headings = columns.map((column) => pick(column.headings));
  const iso = random.uniform() < 0.4;
  const byMonth = random.uniform() < 0.4;
  const two = (number: number) => String(number).padStart(2, "0");
  const date = (year: number, month: number) =>
    iso ? `${year}-${two(month)}-${two(whole(1, 28))}` : `${two(whole(1, 28))}/${two(month)}/${year}`;
  const month = (year: number, number: number) => (iso ? `${year}-${two(number)}` : `${two(number)}/${year}`);
  const line = (at: number): Record<string, string> => {
    const percent = whole(60, 100);
    const item = pick(Object.keys(ITEMS));
    const year = whole(2020, 2024);
    return {
      serial: `B${7000 + at}`,
      batteryType: pick(["PK-42", "PK-50"]),
      device: `MD-${two(at)}`,
      site: pick(["North", "Quay", "Mill"]),
      made: date(year, whole(1, 12)),
      since: date(year + 1, whole(1, 12)),
      retired: at % 4 === 0 ? date(2026, whole(1, 9)) : "",
      cycles: String(60 * (2026 - year) + whole(0, 30)),
      past: date(2025, whole(1, 12)),
      soon: date(2027, whole(1, 3)),
      minutes: String(2 * percent),
      percent: String(percent),
      result: percent > 65 ? "pass" : "fail",
      celsius: "21",
      watts: "15",
      volts: "14.8",
      initials: pick(["AB", "CD"]),
      item,
      ownItem: `${item} ${at}`,
      kind: ITEMS[item]!,
      lot: `L${100 + at}`,
      expiry: byMonth ? month(whole(2027, 2029), whole(1, 12)) : date(whole(2027, 2029), whole(1, 12)),
      several: String(whole(2, 12)),
      few: String(whole(1, 3)),
      order: `PO-${400 + at}`,
      supplier: "Quillmark",
      price: "12.50",
      days: "14",
    };
  };
  const lines = Array.from({ length: pick([8, 20, 40]) }, (_, at) => line(at));
  const rows = [headings, ...lines.map((one) => columns.map(({ cell }) => one[cell] ?? ""))];
  return { columns, headings, text: rows.map((cells) => cells.map((cell) => `"${cell}"`).join(",")).join("\n") };
}
