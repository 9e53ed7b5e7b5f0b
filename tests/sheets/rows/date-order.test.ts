import { expect, it } from "vitest";
import { orderOfColumn } from "../../../src/sheets/rows/date-order.ts";
import { readDateText } from "../../../src/sheets/values/date-text.ts";

function orderOf(texts: string[], choice: "dmy" | "mdy" | "ymd" | null = null): string {
  const dates = texts.flatMap((text) => {
    const written = readDateText(text);
    return written?.kind === "ordered" ? [written] : [];
  });
  const { state, order } = orderOfColumn(dates, choice);
  return order === null ? state : `${state} ${order}`;
}

it("is the one that every date of a column allows, else the caller's, and never guessed", () => {
  expect(orderOf(["2027-06-05", "06/2027"])).toBe("not-needed");
  expect(orderOf(["05/06/2027"])).toBe("unsettled");
  expect(orderOf(["05/06/2027", "13/06/2027"])).toBe("settled dmy");
  expect(orderOf(["05/06/2027", "06/13/2027"])).toBe("settled mdy");
  expect(orderOf(["13/06/2027", "06/13/2027"], "dmy")).toBe("contradicts");
  // in every order the same day
  expect(orderOf(["06/06/2027", "07/07/2027"])).toMatch(/^settled/);
  expect(orderOf(["05/06/2027"], "mdy")).toBe("settled mdy");
  // the dates say otherwise
  expect(orderOf(["13/06/2027"], "mdy")).toBe("settled dmy");
});

it("thinks of a two-digit year first where dashes join it, where nothing else fits, and where the caller says so", () => {
  // 27 June 2005 or 5 June 2027
  expect(orderOf(["27-06-05"])).toBe("unsettled");
  expect(orderOf(["27-06-05"], "ymd")).toBe("settled ymd");
  expect(orderOf(["27/06/05"])).toBe("settled dmy");
  expect(orderOf(["27/06/31"])).toBe("settled dmy");
  expect(orderOf(["32/06/30"])).toBe("settled ymd");
  expect(orderOf(["05/06/07"], "ymd")).toBe("settled ymd");
});
