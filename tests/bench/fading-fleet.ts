import { isoFromDay } from "../../src/calendar/day.ts";
import { seededRandom } from "../../src/maths/random.ts";

const ITEMS = 5;
const READINGS = 6;
const DAYS_BETWEEN_TESTS = 180;
const DAYS_PER_YEAR = 365.25;

/**
 * Sheets of packs in service and their runtime tests: each pack loses capacity at a pace of its own, by years and by
 * cycles, and is read with noise of one percent. As CSV text.
 */
export function fadingFleet(packs: number, asOf: number, seed: number): { name: string; text: string }[] {
  const random = seededRandom(seed);
  const packRows = ["serial,item,device,made,in_service,rated,unit,cycles,cycles_on"];
  const testRows = ["serial,date,percent,cycles,result"];
  for (let i = 0; i < packs; i++) {
    const serial = `K${String(i).padStart(6, "0")}`;
    const since = asOf - Math.round(READINGS * DAYS_BETWEEN_TESTS + 20 + 500 * random.uniform());
    const perYear = 40 + 80 * random.uniform();
    const pace = 0.035 * Math.exp(0.2 * random.normal());
    const start = 1 + 0.012 * random.normal();
    const cyclesOn = (day: number) => Math.round((perYear * (day - since)) / DAYS_PER_YEAR);
    for (let test = 0; test < READINGS; test++) {
      const day = asOf - 10 - (READINGS - 1 - test) * DAYS_BETWEEN_TESTS - Math.floor(20 * random.uniform());
      const years = (day - since) / DAYS_PER_YEAR;
      const left = start - pace * (0.5 * years + (0.5 * cyclesOn(day)) / 80) ** 1.1 + 0.01 * random.normal();
      testRows.push(`${serial},${isoFromDay(day)},${(100 * left).toFixed(1)},${cyclesOn(day)},`);
    }
    const made = isoFromDay(since - 60);
    packRows.push(
      `${serial},pack-${"abcde"[i % ITEMS]},,${made},${isoFromDay(since)},4.2,Ah,${cyclesOn(asOf)},${isoFromDay(asOf)}`,
    );
  }
  return [
    { name: "packs.csv", text: `${packRows.join("\n")}\n` },
    { name: "runtime_tests.csv", text: `${testRows.join("\n")}\n` },
  ];
}
