import { type Plan, remarkedFaults } from "../../src/index.ts";
import { dayWords, numberWords } from "../format.ts";
import { say } from "../strings.ts";
import { points } from "./section.ts";

// Names told before the rest is counted.
const TOLD = 8;

/** What should not be in service today, whatever is forecast: packs whose failed test stands or that are held, units past expiry, remarks of a fault. */
export function outNow(plan: Plan): HTMLElement | null {
  const { asOf, packs, datedStock } = plan;
  const words = say.ahead.outNow;
  const packsDue = (because: "failed-test" | "held") =>
    packs
      .filter(({ replaceBy }) => replaceBy.because === because)
      .map(({ serial, device, site }) => words.at(serial, device ?? site ?? words.nowhere));
  const failed = packsDue("failed-test");
  const held = packsDue("held");
  const expired = datedStock.filter(({ expiry, quantity }) => expiry < asOf && quantity > 0);
  const units = expired.reduce((sum, { quantity }) => sum + quantity, 0);
  return points(words.heading, [
    failed.length > 0 && words.failed(failed.length, told(failed)),
    held.length > 0 && words.held(held.length, told(held)),
    units > 0 &&
      words.expired(
        units,
        told(expired.map(({ item, place, expiry }) => words.expiredAt(item, place ?? words.nowhere, dayWords(expiry)))),
      ),
    ...remarkedFaults(plan),
  ]);
}

function told(names: readonly string[]): string {
  const more = names.length - TOLD;
  return names.slice(0, TOLD).join(", ") + (more > 0 ? say.ahead.outNow.more(numberWords(more)) : "");
}
