import { type Random, seededRandom } from "../../../src/maths/random.ts";
import type { Language } from "./abroad.ts";
import { ABOUT, type Line, type Topic } from "./headings.ts";

/** A made-up register of devices, its battery, the battery's last test and the pads on one line, and what each column is about. */
export interface MadeRegister {
  topics: Topic[];
  headings: string[];
  text: string;
}

/** A register whose columns, their order and their headings are drawn by a seed. All is before, or after, 1 November 2026. */
export function madeRegister(seed: number, language: Language | null = null): MadeRegister {
  const random = seededRandom(seed);
  const topics = topicsOf(random).map((topic) => (language !== null && topic === "unit" ? "device" : topic));
  const headings = topics.map((topic) => pick(random, headingsOf(topic, language)));
  const lines = linesOf(random).map((line) => (language === null ? line : inLanguage(line, language)));
  const rows = [headings, ...lines.map((line) => topics.map((topic) => line[ABOUT[topic].cell] ?? ""))];
  return { topics, headings, text: rows.map((cells) => cells.map((cell) => `"${cell}"`).join(",")).join("\n") };
}

const headingsOf = (topic: Topic, language: Language | null) =>
  language === null || topic === "unit" ? ABOUT[topic].headings : language.headings[topic].split(" | ");

const inLanguage = (line: Line, { pass, fail, inUse }: Language): Line => ({
  ...line,
  result: line.result === "Pass" ? pass : fail,
  status: inUse,
});

const pick = <T>(random: Random, among: readonly T[]): T => among[Math.floor(random.uniform() * among.length)]!;

function topicsOf(random: Random): Topic[] {
  const happens = (chance: number) => random.uniform() < chance;
  const some = (...wished: [Topic, number][]) => wished.flatMap(([topic, chance]) => (happens(chance) ? [topic] : []));
  // where a device has a number and a serial, what is called a unit is its vehicle
  const device: Topic[] = happens(0.1) ? ["unit"] : ["device", ...some(["deviceSerial", 0.25])];
  const own: Topic[] = [...device, ...some(["type", 0.5], ["site", 0.8], ["deviceSince", 0.2], ["status", 0.1])];
  const battery: Topic[] = [
    "batterySerial",
    ...some(["batteryType", 0.2], ["fitted", 0.7], ["batteryExpiry", 0.15], ["cycles", 0.3]),
  ];
  if (happens(0.65)) {
    const measured: Topic[][] = [["percent"], ["percent", "result"], ["minutes"], ["milliampHours"], ["result"]];
    battery.push("tested", ...pick(random, measured));
  }
  const supplies = pick<Topic[]>(random, [["pads"], ["pads", "lot"], ["adultPads", "childPads"], []]);
  supplies.push(...some(["gel", 0.12]));
  const rest = some(["serviced", 0.2], ["due", 0.25], ["keeper", 0.1], ["comment", 0.4]);
  return [...own, ...(happens(0.7) ? [...battery, ...supplies] : [...supplies, ...battery]), ...rest];
}

function linesOf(random: Random): Line[] {
  const byDay = random.uniform() < 0.6;
  const dayFirst = random.uniform() < 0.6;
  const whole = (from: number, to: number) => from + Math.floor(random.uniform() * (to - from + 1));
  const two = (number: number) => String(number).padStart(2, "0");
  const date = (year: number, month = whole(1, 12)) => {
    const day = two(whole(1, 28));
    return dayFirst ? `${day}/${two(month)}/${year}` : `${year}-${two(month)}-${day}`;
  };
  const month = (year: number) => (dayFirst ? `${two(whole(1, 12))}/${year}` : `${year}-${two(whole(1, 12))}`);
  const expiry = () => (byDay ? date(whole(2026, 2029)) : month(whole(2026, 2029)));
  return Array.from({ length: pick(random, [6, 15, 40]) }, (_, at): Line => {
    const year = whole(2020, 2025);
    const percent = Math.round(Math.max(55, 100 - 6 * (2026 - year) - 6 * random.uniform()));
    return {
      device: `BM${1000 + at}`,
      type: pick(random, ["Defibrillator", "AED", "Monitor/defibrillator", "Transport monitor"]),
      site: pick(random, ["ED", "ICU", "Ward 3", "Ward 5", "Theatre", "Outpatients", "North", "Quay"]),
      deviceSerial: `SN${88_000 + 7 * at}`,
      since: date(year),
      batterySerial: `B${7000 + at}`,
      batteryType: pick(random, ["PK-42", "PK-50"]),
      fitted: date(year),
      batteryExpiry: month(year + 7),
      cycles: String(60 * (2026 - year) + whole(0, 40)),
      tested: date(2026, whole(3, 9)),
      percent: String(percent),
      minutes: String(Math.round(2.4 * percent)),
      milliampHours: String(42 * percent),
      result: percent > 65 ? "Pass" : "Fail",
      pads: expiry(),
      otherPads: expiry(),
      lot: `L${whole(10, 14)}`,
      due: date(2027),
      serviced: date(2026, whole(3, 9)),
      keeper: pick(random, ["Cardiology", "Facilities"]),
      status: "In use",
    };
  });
}
