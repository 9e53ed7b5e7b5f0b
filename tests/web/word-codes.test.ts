import { expect, it } from "vitest";
import { withCodedWords, withWords } from "../../web/word-codes.ts";

it("gives every text back as it was", () => {
  const many = Array.from({ length: 3000 }, (_, at) => `word${at % 2000} = other$${at % 90};\n`).join("");
  for (const text of ["", "a", "const début = 'été'; ".repeat(9), many, many + "\t\x1d\n".repeat(3)]) {
    const coded = withCodedWords(text);
    expect(withWords(coded)).toBe(text);
    // as the page carries it
    expect(new Function("coded", `return (${withWords})(coded)`)(coded)).toBe(text);
  }
  expect(withCodedWords(many).length).toBeLessThan(many.length);
});

it("refuses a text in which a code would be taken for a word", () => {
  expect(() => withCodedWords("a\x03b")).toThrow("control character");
});
