import { expect, it } from "vitest";
import { needsInWords } from "../../web/needs-words.ts";
import { aPlan } from "../out/a-plan.ts";

const [packs] = aPlan().demand;
const none = Array<number>(12).fill(0);
const units = (item: string, cause: "fade" | "expiry", ofYear: number) => ({
  ...packs!,
  item,
  cumulative: { ...packs!.cumulative, p50: [...none.slice(1), ofYear] },
  causes: { ...packs!.causes, fade: none, [cause]: [1, ...none.slice(1)] },
});

// By hand: twelve packs-md in the year, one a month, and four of what is bought in place of another pack, since they fade
it("counts packs together, also those bought under another name, and names the other items, the largest first", () => {
  const demand = [packs!, units("new-cell", "fade", 4), units("gel", "expiry", 5), units("pads", "expiry", 70)];
  const told = needsInWords(aPlan({ demand }), 12).map((words) => words.replaceAll("\u00a0", " "));
  expect(told).toEqual(["16 battery packs", "70 units of pads", "5 of gel"]);
  expect(needsInWords(aPlan({ demand }), 1)).toEqual(["1 battery pack"]);
  const one = [units("gel", "expiry", 1), units("pads", "expiry", 1.4)];
  expect(needsInWords(aPlan({ demand: one }), 12)).toEqual(["1\u00a0unit of pads", "1\u00a0of gel"]);
});
