import fc from "fast-check";
import { expect, it } from "vitest";
import { type PlaceState, stateOf } from "../../src/supplies/exchange-state.ts";
import { TakersByDay } from "../../src/supplies/takers-by-day.ts";

/** A place with units of some days, which uses a unit every so many days. */
const place = (days: number[], usesPerDay: number): PlaceState =>
  stateOf({ days: [...days].sort((a, b) => a - b), value: () => 0, expectedUses: (day) => usesPerDay * day });

const days = fc.array(fc.integer({ min: 1, max: 20 }), { minLength: 1, maxLength: 4 });
const rates = fc.constantFrom(0, 0.25, 0.5);

it("takers of a unit are the same, whether places changed before they were asked for or after", () => {
  fc.assert(
    fc.property(
      fc.array(fc.tuple(days, rates), { minLength: 1, maxLength: 9 }),
      fc.array(fc.tuple(fc.nat(8), days), { maxLength: 6 }),
      fc.integer({ min: 1, max: 4 }),
      fc.integer({ min: 1, max: 20 }),
      (places, changes, most, day) => {
        const state = places.map(([of, rate]) => place(of, rate));
        const kept = new TakersByDay(state, most);
        kept.of(day);
        for (const [at, of] of changes) {
          const index = at % state.length;
          state[index] = place(of, places[index]![1]);
          kept.changed(index);
          expect(kept.of(day)).toEqual(new TakersByDay(state, most).of(day));
        }
      },
    ),
    { seed: 11 },
  );
});
