import { expect, it } from "vitest";
import { packSentence, type Told } from "../../src/life/pack-sentence.ts";
import { day } from "../fleet/make-rows.ts";

const asOf = day("2026-11-01");
const due = { kind: "already-due" as const, p10: asOf, p50: asOf, p90: asOf };
const told = (p50: number, p90 = 0.85): Told => ({
  readings: [{ day: day("2026-06-10"), capacity: 0.83 }],
  lastDoubted: false,
  lastBound: null,
  siblings: null,
  now: { p10: 0.7, p50, p90 },
  failedOn: null,
  held: null,
  leaves: null,
  threshold: 0.8,
  primary: false,
});
const says = (p50: number, p90?: number) =>
  packSentence(told(p50, p90), { belowBy: due, replaceBy: { ...due, because: "fade", note: null } });

// 79.6 % is 80 % when rounded, which would read as if it were not below
it.each([
  [0.793, "now about 79 %: more likely than not below 80 % already."],
  [0.796, "now just under 80 %: more likely than not below 80 % already."],
  [0.801, "now just under 80 %: more likely than not below 80 % already."],
  [0.45, "now under 50 %: more likely than not below 80 % already."],
])("a pack at %d that is due is told as below its threshold", (p50, end) => {
  expect(says(p50)).toBe(`83 % at its only test in June 2026, ${end}`);
});

it("a pack that is below its threshold nine times in ten is told so without ado", () => {
  expect(says(0.74, 0.78)).toBe("83 % at its only test in June 2026, now about 74 %: below 80 % already.");
});

// 77.5 % is 78 % when rounded, which is not the end of life that was asked for
it("an end of life is told as it was set", () => {
  const half = { ...told(0.74, 0.77), threshold: 0.775 };
  expect(packSentence(half, { belowBy: due, replaceBy: { ...due, because: "fade", note: null } })).toBe(
    "83 % at its only test in June 2026, now about 74 %: below 77.5 % already.",
  );
});

// On its last day a limit has not passed; it is as true of one that has
it("a limit that falls on as-of is told as reached", () => {
  const ahead = { ...due, kind: "within-horizon" as const, p50: day("2027-03-10") };
  expect(packSentence(told(0.82), { belowBy: ahead, replaceBy: { ...due, because: "age", note: null } })).toBe(
    "83 % at its only test in June 2026; the age limit is reached, before fade (March 2027).",
  );
});

it("a pack whose device leaves service is told with the day", () => {
  const leaving = { ...told(0.74, 0.78), leaves: day("2027-02-01") };
  expect(packSentence(leaving, { belowBy: due, replaceBy: { ...due, because: "fade", note: null } })).toBe(
    "83 % at its only test in June 2026, now about 74 %: below 80 % already; its device leaves service on 2027-02-01.",
  );
});

it("a pack that read below its threshold and is not due is told with what the forecast makes of it", () => {
  const ahead = { kind: "within-horizon" as const, p10: asOf, p50: day("2027-03-10"), p90: day("2027-11-28") };
  const low = { ...told(0.826), readings: [{ day: day("2026-06-10"), capacity: 0.79 }] };
  const life = { belowBy: ahead, replaceBy: { ...ahead, because: "fade" as const, note: null } };
  expect(packSentence(low, life)).toBe(
    "79 % at its only test in June 2026, by the forecast 83 % now: test again; likely below 80 % by March 2027 (80 % range November 2026 to November 2027).",
  );
  expect(packSentence({ ...low, lastDoubted: true }, life)).toMatch(
    /^79 % at its only test in June 2026, too far off to count for much: test again; likely/,
  );
  const dueLife = { belowBy: due, replaceBy: { ...due, because: "fade" as const, note: null } };
  expect(packSentence(low, dueLife)).toMatch(/^79 % at its only test in June 2026, now just under 80 %: /);
});
