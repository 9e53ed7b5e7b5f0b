import { isoFromDay } from "../calendar/day.ts";
import type { LeftOutTest } from "../fade/capacity-readings.ts";
import { counted } from "../fleet/count-text.ts";
import type { Finding } from "../fleet/finding.ts";
import { groupBy } from "../fleet/group-by.ts";
import { lifeFinding } from "./life-finding.ts";

/** A test that the forecast does not use, and why. */
export interface TestNotUsed {
  test: LeftOutTest["test"];
  because: LeftOutTest["because"] | "not in percent left";
}

/** Findings for tests that the forecast does not use: one a sheet and reason, with every line. */
export function leftOutFindings(tests: readonly TestNotUsed[]): Finding[] {
  const inOrder = [...tests].sort((a, b) => a.test.source.line - b.test.source.line);
  const groups = groupBy(inOrder, ({ because, test: { source } }) => `${because}\0${source.file}\0${source.sheet}`);
  return [...groups.values()].map(([first, ...others]) => {
    const { test, because } = first!;
    const measured = because === "not from a full charge" || because === "too cold or too hot";
    const more = others.length;
    const rows = more === 0 ? "" : `; and ${counted(more, "more row")}`;
    return lifeFinding(
      measured ? "test-not-comparable" : "test-unrated",
      test.source,
      test.serial,
      `The test of "${test.serial}" on ${isoFromDay(test.date)} is ${because}: its capacity is not used${rows}.`,
      others.map((one) => one.test.source.line),
    );
  });
}
