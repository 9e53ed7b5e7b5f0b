import { readFileSync } from "node:fs";
import { expect, it } from "vitest";
import { folded, unfolded, withFoldedLists } from "../../web/front-coding.ts";

it("folds words into what they do not share with the one before, by hand", () => {
  expect(folded("pack|pads|pad|zel")).toBe("ApackCdDsAzel");
  expect(unfolded("ApackCdDsAzel")).toBe("pack|pad|pads|zel");
});

it("keeps at most 25 letters of the word before", () => {
  const long = "abcdefghijklmnopqrstuvwxyz";
  expect(unfolded(folded(`${long}1|${long}2`))).toBe(`${long}1|${long}2`);
});

it("gives every list of the vocabulary back, in the order of the alphabet", () => {
  const code = readFileSync("src/sheets/words/vocabulary.ts", "utf8");
  const listsIn = (text: string) => [...text.matchAll(/"([^"]+\|[^"]+)"/g)].map(([, list]) => list!);
  const packed = withFoldedLists(code);
  const lists = listsIn(code);
  const back = [...packed.matchAll(/unfolded\("([^"]+)"\)/g)].map(([, list]) => unfolded(list!));
  expect(back.length).toBeGreaterThan(40);
  expect([...back, ...listsIn(packed)].sort()).toEqual(
    lists.map((list) => (listsIn(packed).includes(list) ? list : list.split("|").sort().join("|"))).sort(),
  );
});

it("leaves a module without such lists as it is", () => {
  expect(withFoldedLists('const a = "one|two";')).toBe('const a = "one|two";');
});
