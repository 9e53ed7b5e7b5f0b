import type { Day } from "../../src/calendar/day.ts";
import { curveFromCoordinates } from "../../src/fade/curve.ts";
import { PRIORS } from "../../src/fade/priors.ts";
import { seededRandom } from "../../src/maths/random.ts";
import { seedFromText } from "../../src/maths/text-seed.ts";
import { pathFromModel, type TruePath, yearsUntilBelow } from "./fade-world.ts";

export const DAYS_PER_YEAR = 365.25;
/** Packs that fail suddenly in a year, as the model believes before it has seen any. */
const FAILURES_PER_YEAR = 0.005;
/** Mean uses of pads in a month by duty, and the shape of the gamma distribution of each device's own rate. */
export const USES_PER_MONTH = { ward: 0.04, ambulance: 0.12 };
const SHAPE = 2;

/** A pack as nobody knows it: its capacity by age in years, and when and why it ends. */
export interface TruePack {
  path: TruePath;
  daysOfLife: number;
  because: "faded" | "failed";
}

/** What befalls a fleet, the same whoever buys. */
export interface TrueFleet {
  devices: readonly { name: string; duty: "ward" | "ambulance" }[];
  /** Noise of a runtime test, fraction of rated. */
  noise: number;
  /** The device's n-th pack. */
  packOf(device: number, n: number): TruePack;
  /** Days on which the device's pads are used, ascending. */
  usesOf(device: number, from: Day, to: Day): Day[];
}

/** Draws a fleet from the model: the curve that its packs share, each pack's own life and shape, each device's uses. */
export function trueFleet(seed: number, size: number): TrueFleet {
  const shared = seededRandom(seedFromText(`fleet ${seed}`));
  const curve = curveFromCoordinates(PRIORS.map(() => shared.normal()));
  const devices = Array.from({ length: size }, (_, i) => ({
    name: `D${String(i).padStart(2, "0")}`,
    duty: i % 2 === 0 ? ("ward" as const) : ("ambulance" as const),
  }));
  const packs = new Map<string, TruePack>();
  const drawPack = (device: number, n: number): TruePack => {
    const random = seededRandom(seedFromText(`fleet ${seed} device ${device} pack ${n}`));
    const path = pathFromModel(curve, random);
    const fades = DAYS_PER_YEAR * yearsUntilBelow(path, 0);
    const fails = (-Math.log(random.uniform()) / FAILURES_PER_YEAR) * DAYS_PER_YEAR;
    const daysOfLife = Math.max(1, Math.round(Math.min(fades, fails)));
    return { path, daysOfLife, because: fades <= fails ? "faded" : "failed" };
  };
  return {
    devices,
    noise: curve.noise,
    packOf: (device, n) => {
      const key = `${device} ${n}`;
      if (!packs.has(key)) packs.set(key, drawPack(device, n));
      return packs.get(key)!;
    },
    usesOf: (device, from, to) => {
      const random = seededRandom(seedFromText(`fleet ${seed} device ${device} uses`));
      const exponential = () => -Math.log(random.uniform());
      let gamma = 0;
      for (let i = 0; i < SHAPE; i++) gamma += exponential() / SHAPE;
      const daysBetween = DAYS_PER_YEAR / 12 / (USES_PER_MONTH[devices[device]!.duty] * gamma);
      const days: Day[] = [];
      for (let at = from; ; ) {
        at += exponential() * daysBetween;
        if (at >= to) return days;
        days.push(Math.floor(at));
      }
    },
  };
}
