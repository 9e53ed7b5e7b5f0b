import { parseHeader } from "../words/parse-header.ts";
import type { ColumnView } from "./score-column.ts";
import type { Unclear } from "./table.ts";

/** What a test's columns say: what was measured, on which day, and what else of it. */
const MEASURES = /^(capacity|minutes|wh|ah|result|test| )+$/;
const OF_A_TEST = /^(load|temperature|cycles|fullcharge|atleast)( test)?$/;
const MOSTLY = 0.5;

type Role = "date" | "measure" | "besides" | null;

/**
 * Numbers the tests of a register that holds several in a line, where its headers only repeat ("Cap. %, Date, Cap. %,
 * Date"), or number one of them ("Test 1, Date, Test 2, Date"); the same columns where it holds no such ones.
 */
export function withTestNumbers(views: ColumnView[]): ColumnView[] {
  const told = views.map((view) => asMinutes(withOrdinal(view), views));
  const tests = told.filter((view) => roleOf(view) !== null);
  const dates = tests.filter((view) => roleOf(view) === "date");
  if (dates.length < 2)
    return dates.some(({ meaning }) => meaning.things === "test") ? views.map((view) => asMinutes(view, views)) : views;
  if (tests.every(({ index }) => index !== null)) return told;
  const sets: ColumnView[][] = [];
  for (const view of tests) {
    const current = sets.at(-1);
    if (!current || current.some((other) => wordsOf(other) === wordsOf(view))) sets.push([view]);
    else current.push(view);
  }
  const isTest = (set: readonly ColumnView[]) =>
    set.filter((view) => roleOf(view) === "date").length === 1 && set.some((view) => roleOf(view) === "measure");
  if (sets.length < 2 || !sets.every(isTest)) return views;
  const numbers = new Map(sets.flatMap((set, at) => set.map((view) => [view.column, at + 1] as const)));
  return told.map((view) => {
    const index = numbers.get(view.column);
    // the group only numbers the test: what stands in it is told by its own header
    return index === undefined ? view : { ...view, index, variant: "", groupSubject: "", joined: null };
  });
}

/** What is missing where a register's tests are numbers of which nothing says what they measure; null elsewhere. */
export function unclearTests(views: readonly ColumnView[]): Unclear | null {
  const bare = views.filter((view) => isBareTest(view) && view.profile.numbers > MOSTLY);
  const [first] = bare;
  if (!first || bare.length < 2) return null;
  return {
    message: `Nothing says what the numbers of tests measure, such as those under "${first.name}".`,
    fix: `Write the unit into each header, such as "${first.name} (%)" or "${first.name} (min)".`,
  };
}

/**
 * A column headed "Min" alone, beside the days of tests: its numbers are minutes, unless they are the least that passes of
 * what another column measures, which hardly differs from test to test.
 */
function asMinutes(view: ColumnView, views: readonly ColumnView[]): ColumnView {
  const { numbers, unit, distinct } = view.profile;
  const isMeasured = ({ meaning, profile }: ColumnView) =>
    /capacity|wh|ah/.test(meaning.says) && profile.numbers > MOSTLY;
  const isMinutes =
    view.meaning.words === "min" &&
    numbers > MOSTLY &&
    /^(min)?$/.test(unit) &&
    (distinct > MOSTLY || !views.some(isMeasured));
  return isMinutes ? { ...view, meaning: { ...view.meaning, says: "minutes", unit: "min" } } : view;
}

const ORDINAL = /^(\d{1,2})(st|nd|rd|th)\b/i;

/** A column headed "1st test" as "Test 1". */
function withOrdinal(view: ColumnView): ColumnView {
  if (!ORDINAL.test(view.name)) return view;
  const meaning = parseHeader(view.name.replace(ORDINAL, "$1"));
  const isTest = meaning.things === "test" || (meaning.things === "" && roleOf({ ...view, meaning }) !== null);
  return isTest
    ? {
        ...view,
        meaning: { ...meaning, says: view.meaning.says },
        things: meaning.things,
        variant: "",
        index: meaning.index,
      }
    : view;
}

function isBareTest({ meaning, index }: ColumnView): boolean {
  return meaning.things === "test" && meaning.says === "" && index !== null;
}

function roleOf({ meaning, things, profile }: ColumnView): Role {
  if (things !== "" && things !== "test" && things !== "battery") return null;
  const { says } = meaning;
  if (says === "date" || (says === "" && meaning.things === "test")) return profile.dates > MOSTLY ? "date" : null;
  if (says !== "" && MEASURES.test(says)) return "measure";
  return OF_A_TEST.test(says) ? "besides" : null;
}

/** A header's words without the number that tells it from its like. */
function wordsOf({ meaning }: ColumnView): string {
  return meaning.words.replace(/\b\d+\b/g, "").trim();
}
