import { isoFromDay } from "../calendar/day.ts";
import { COMPARABLE_FROM_C, COMPARABLE_TO_C, type LeftOutTest } from "../fade/capacity-readings.ts";
import type { Finding } from "../fleet/finding.ts";
import { groupBy } from "../fleet/group-by.ts";
import { LIFE_FINDING_CODES } from "./finding-codes.ts";

type Because = LeftOutTest["because"] | "not-in-percent";

/** A test that the forecast does not use, and why. */
export interface TestNotUsed {
  test: LeftOutTest["test"];
  because: Because;
}

/** What is said of the test named, after its serial and day. */
const WORDS: Record<Because, (test: LeftOutTest["test"]) => string> = {
  "not-full": () => "was not from a full charge",
  "too-cold-or-hot": ({ temperatureC }) =>
    `was at ${temperatureC} °C; capacities are compared from ${COMPARABLE_FROM_C} to ${COMPARABLE_TO_C} °C`,
  unrated: () => "is in a measure for which neither the catalogue nor an early test says what a new pack gives",
  "over-early-tests": () => "is more than a third above what its kind gave when new",
  "not-in-percent": () => "gives no percent left, the one measure of a battery that does not recharge",
};

const CODES: Record<Because, keyof typeof LIFE_FINDING_CODES> = {
  "not-full": "test-not-comparable",
  "too-cold-or-hot": "test-not-comparable",
  unrated: "test-unrated",
  "over-early-tests": "test-unrated",
  "not-in-percent": "test-unrated",
};

/** Findings for tests that the forecast does not use: one a sheet and reason, with every line. */
export function leftOutFindings(tests: readonly TestNotUsed[]): Finding[] {
  const inOrder = [...tests].sort((a, b) => a.test.source.line - b.test.source.line);
  const groups = groupBy(
    inOrder,
    ({ because, test: { source } }) => `${because}\0${source.file}\0${source.sheet ?? ""}`,
  );
  return [...groups.values()].map(finding);
}

function finding([first, ...others]: readonly TestNotUsed[]): Finding {
  const { test, because } = first!;
  const code = CODES[because];
  const { severity, fix } = LIFE_FINDING_CODES[code];
  const { file, sheet, line } = test.source;
  const more = others.length;
  const rows = more === 0 ? "" : `; and ${more} more ${more === 1 ? "row" : "rows"}`;
  return {
    code,
    severity,
    file,
    sheet,
    line,
    lines: others.map((one) => one.test.source.line),
    column: null,
    value: test.serial,
    message: `The test of "${test.serial}" on ${isoFromDay(test.date)} ${WORDS[because](test)}: the forecast does not use its capacity${rows}.`,
    fix,
  };
}
