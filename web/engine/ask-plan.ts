import type { Plan, PolicyChoice, PolicyProblem, Reading } from "../../src/index.ts";
import type { PackReadings } from "../pack-readings.ts";
import { ask } from "./engine.ts";
import type { Behind } from "./messages.ts";

/** A plan with what the page shows beside it. */
interface PlanWithReading {
  plan: Plan | null;
  reading: Reading;
  readings: PackReadings;
  behind: Behind | null;
  problems: PolicyProblem[];
}

// So many packs are handed over in well under a frame's time or two.
const PORTION = 200;

/** What the engine handed over before, with the marks by which it knows it again. */
const kept = {
  packsMark: "",
  packs: [] as Plan["packs"],
  readingMark: "",
  reading: null as Reading | null,
  readings: new Map() as PackReadings,
};

/**
 * Has the engine plan. What it handed over before stays here, and packs come in portions, since taking over thousands
 * at once would hold up the page.
 */
export async function askPlan(how: { choices: PolicyChoice[]; today: number }): Promise<PlanWithReading> {
  const answer = await ask("replan", { ...how, readingMark: kept.readingMark });
  if (answer.read !== null) Object.assign(kept, answer.read);
  const { reading, readings } = kept as typeof kept & { reading: Reading };
  const { behind, problems } = answer;
  if (answer.plan === null) return { plan: null, reading, readings, behind, problems };
  if (answer.packsMark !== kept.packsMark) {
    // asked for all at once, so that one is taken over while the next is handed over
    const froms = Array.from({ length: Math.ceil(answer.packs / PORTION) }, (_, at) => at * PORTION);
    const portions = await Promise.all(froms.map((from) => ask("packs", { from, to: from + PORTION })));
    Object.assign(kept, { packs: portions.flat(), packsMark: answer.packsMark });
  }
  return { plan: { ...answer.plan, packs: kept.packs }, reading, readings, behind, problems };
}
