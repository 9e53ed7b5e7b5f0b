import { readFileSync } from "node:fs";
import { join } from "node:path";
import { readXlsx } from "hucre/xlsx";
import { describe, expect, it } from "vitest";
import { fleetRegister } from "../../sample-data/script/register/fleet-register.ts";
import { sampleTables } from "../../sample-data/script/sample-sheets.ts";
import { SAMPLE, samplePlannedElsewhere, wanecast } from "./run-wanecast.ts";

const REGISTER = join(SAMPLE, "messy", "fleet-register.xlsx");

/** What one verb says of an input as JSON. */
function said(verb: "plan" | "check", input: string) {
  const { code, stdout } = wanecast([verb, "--json", input]);
  expect(code).toBe(0);
  return JSON.parse(stdout);
}

/** Every cell of a workbook with its format, and how the tabs are laid out. */
async function cellsOf(bytes: Uint8Array) {
  const { sheets } = await readXlsx(bytes, { readStyles: true });
  return sheets.map(({ name, rows, cells, merges, columns }) => ({
    name,
    rows,
    formats: [...(cells ?? [])].map(([place, { value, style }]) => [place, value, style?.numFmt]),
    merges,
    hidden: (columns ?? []).map((column) => column?.hidden === true),
  }));
}

describe("the invented fleet as someone else's workbook", () => {
  it("is what its script makes, cell by cell", async () => {
    const made = await cellsOf(await fleetRegister(sampleTables()));
    expect(await cellsOf(readFileSync(REGISTER))).toEqual(made);
    expect(made.map(({ name }) => name)).toHaveLength(11);
  });

  it("brings the same plan as the folder of CSV sheets", () => {
    const { inputs, findings, ...plan } = said("plan", REGISTER);
    const { inputs: csvInputs, findings: csvFindings, ...csvPlan } = JSON.parse(samplePlannedElsewhere().stdout);
    expect(plan).toEqual(csvPlan);
    // the folder's plan reads its CSV sheets alone, the workbook's the workbook
    expect(csvInputs.every(({ file }: { file: string }) => file.endsWith(".csv"))).toBe(true);
    expect(new Set(inputs.map(({ file }: { file: string }) => file))).toEqual(new Set(["fleet-register.xlsx"]));
    expect([findings.length, csvFindings.length].every((count) => count > 0)).toBe(true);
  });

  it("is read to the last row: what was typed wrongly is told, what is no row is set aside", () => {
    const { inputs, setAside, findings } = said("check", REGISTER);
    const sum = (key: string) =>
      inputs.reduce((total: number, input: Record<string, number>) => total + input[key]!, 0);
    expect(sum("rows")).toBe(sum("used") + sum("setAside"));
    const reasons = setAside.map(({ sheet, reason }: Record<string, string>) => `${sheet}: ${reason}`).sort();
    // two printed pages ended in each of three tabs; the rest is the story's own
    expect(reasons).toEqual([
      "Bench tests: date-impossible",
      "Bench tests: repeat",
      "Bench tests: repeated-header",
      "Bench tests: repeated-header",
      "Fleet: repeat",
      "Fleet: repeated-header",
      "Fleet: repeated-header",
      "Pads and more: repeated-header",
      "Pads and more: repeated-header",
      "Pads and more: total-row",
    ]);
    expect(findings).toContainEqual(
      expect.objectContaining({ code: "date-impossible", sheet: "Batteries", value: "30/02/2024" }),
    );
    expect(findings).toContainEqual(expect.objectContaining({ code: "hidden-read", sheet: "Fleet" }));
  });
});
