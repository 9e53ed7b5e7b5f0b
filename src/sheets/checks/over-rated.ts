import { nameKey } from "../../fleet/name-key.ts";
import { sortBy } from "../../maths/sort-by.ts";
import type { FindingLog } from "../finding-log.ts";
import type { Entry } from "../rows/entry.ts";

/** Above this share of the rating a measurement is absurd, as above 130 % in the tests' column of percent. */
const MOST_OF_RATED = 1.3;

/** Drops tests from full charge that measure more than a pack of that rating can hold; returns those that stay. */
export function dropOverRated(byKind: ReadonlyMap<string, Entry[]>, log: FindingLog): Entry[] {
  const tests = byKind.get("runtime_tests") ?? [];
  const ratings = new Map<string, Record<string, unknown>>();
  // one supplier's line may give a rating that the next one's lacks
  const catalogue = sortBy(byKind.get("catalogue") ?? [], ({ values }) => [nameKey(String(values.supplier ?? ""))]);
  for (const { values } of catalogue) {
    const told = Object.entries(values).filter(([field, value]) => value !== null && field.startsWith("rated"));
    const item = nameKey(String(values.item));
    ratings.set(item, { ...Object.fromEntries(told), ...ratings.get(item) });
  }
  if (ratings.size === 0) return tests;
  const ratingOf = new Map<string, Record<string, unknown>>();
  for (const { values } of byKind.get("packs") ?? []) {
    const rating = typeof values.item === "string" ? ratings.get(nameKey(values.item)) : undefined;
    if (rating) ratingOf.set(nameKey(String(values.serial)), rating);
  }
  return tests.filter((entry) => {
    const rating = ratingOf.get(nameKey(String(entry.values.serial)));
    const share = rating ? shareOfRated(entry.values, rating) : null;
    if (share === null || share <= MOST_OF_RATED) return true;
    const { file, sheet, line } = entry.values.source;
    const message = `The test of "${entry.values.serial}" comes to ${Math.round(share * 100)} % of the rated capacity; 5 to 130 % was expected.`;
    log.add("capacity-over-rated", { file, sheet, line, column: null, value: `${Math.round(share * 100)} %` }, () => ({
      message,
    }));
    entry.state.drop(entry.row, "capacity-over-rated", message);
    return false;
  });
}

function shareOfRated(test: Record<string, unknown>, rating: Record<string, unknown>): number | null {
  const of = (measured: unknown, rated: unknown) =>
    typeof measured === "number" && typeof rated === "number" && rated > 0 ? measured / rated : null;
  const underLoad =
    typeof test.loadW === "number" && test.loadW > 0 && typeof test.minutes === "number"
      ? (test.loadW * test.minutes) / 60
      : null;
  return (
    of(test.wh ?? underLoad, rating.ratedWh) ?? of(test.ah, rating.ratedAh) ?? of(test.minutes, rating.ratedMinutes)
  );
}
