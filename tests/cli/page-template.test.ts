import { expect, it } from "vitest";
import { pageWith } from "../../cli/page-template.ts";
import { emptyFleet } from "../../src/fleet/rows.ts";
import { PAGE_DATA_PLACEHOLDER } from "../../src/out/embed-in-page.ts";
import { aPlan } from "../out/a-plan.ts";

const reading = { fleet: emptyFleet(), inputs: [], findings: [], setAside: [], refused: [] };

it("pageWith: null where plan and rows are longer than a text can be", () => {
  // The engine itself refuses so long a text, at once, while the rows are being written out.
  const endless = { ...reading, toJSON: () => "x".repeat(2 ** 30) };
  expect(pageWith(aPlan(), endless, PAGE_DATA_PLACEHOLDER)).toBeNull();
  expect(pageWith(aPlan(), reading, PAGE_DATA_PLACEHOLDER)).toContain("wanecast-data");
});
it("pageWith: any other fault is told as what it is", () => {
  expect(() => pageWith(aPlan(), reading, "<p></p>")).toThrow("the page has no");
});
