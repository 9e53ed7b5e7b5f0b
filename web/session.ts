import type { Plan, PolicyProblem, Reading } from "../src/index.ts";
import type { AtHand } from "./at-hand.ts";
import type { Behind, EngineWords } from "./engine/messages.ts";
import type { PackReadings } from "./pack-readings.ts";

/** What the page shows at the moment. */
export interface Session {
  /** Null where no input gave a table. */
  plan: Plan | null;
  /** Null before any sheet was read. */
  reading: Reading | null;
  readings: PackReadings;
  /** Null where there is no plan, or no engine to work it out. */
  behind: Behind | null;
  problems: PolicyProblem[];
  /** The plan to compare with: the one that the reader kept, else the one before the last change. */
  before: Plan | null;
  kept: boolean;
  /** False where the plan came inside the page and its sheets are not at hand. */
  hasSheets: boolean;
  /** What the plan was made from, which is at hand again should no plan come of what was taken since. */
  madeFrom: AtHand;
  /** The reader's own policy values, over those of the sheets. */
  choices: Map<string, string>;
  words: EngineWords;
}

/** A session in which sheets were read. */
export type ReadSession = Session & { reading: Reading };

/** A session that has a plan. */
export type PlannedSession = ReadSession & { plan: Plan };
