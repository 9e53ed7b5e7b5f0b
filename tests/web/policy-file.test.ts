import { expect, it } from "vitest";
import { policyCsv } from "../../web/policy-file.ts";
import { aPlan } from "../out/a-plan.ts";

it("writes what the plan assumes as a policy sheet, and nothing that a spreadsheet would run", () => {
  const policy = {
    as_of: "2026-11-01",
    price_rise_per_year: -0.02,
    budget_per_fiscal_year: null,
    currency: '=HYPERLINK("X","Y")',
  };
  expect(policyCsv(aPlan({ policy }))).toBe(
    ["key,value", "as_of,2026-11-01", "price_rise_per_year,-0.02", `currency,"'=HYPERLINK(""X"",""Y"")"`, ""].join(
      "\r\n",
    ),
  );
});
