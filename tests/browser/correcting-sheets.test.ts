import { readFileSync } from "node:fs";
import type { Browser } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { BROKEN_TESTS, SMALL_SHEETS } from "./fixtures/small-sheets.ts";
import { openPage, startBrowser } from "./open-page.ts";
import { planned, reloaded, savedBy } from "./page-actions.ts";

let browser: Browser;
beforeAll(async () => {
  browser = await startBrowser();
});
afterAll(() => browser.close());

describe("a row that was set aside", () => {
  it("is corrected in place, read again and used", async () => {
    const { page } = await openPage(browser, null);
    await page.locator("input[data-chooses=files]").setInputFiles([...SMALL_SHEETS, BROKEN_TESTS]);
    await planned(page);
    const sheets = page.locator("#sheets");
    const row = sheets.locator("tr.explained", { hasText: "more_tests.csv" }).filter({ hasText: "2025-02-30" });
    expect(await row.locator("td").nth(1).textContent()).toBe("4");
    // The row as it stands is right below.
    const below = row.locator("+ tr", { hasText: "P3 | 2025-02-30" });
    const correct = below.getByRole("button", { name: "Correct it" });
    await correct.click();
    // Its four cells stand side by side, not each below the other.
    const cells = await page
      .locator(".correction input")
      .evaluateAll((all: HTMLElement[]) => all.map((cell) => cell.offsetTop));
    expect(cells).toEqual(Array.from({ length: 4 }, () => cells[0]));
    await page.locator(".correction").getByLabel("date").fill("2025-08-31");
    await page.keyboard.press("Escape");
    expect(await page.locator(".correction").count()).toBe(0);
    expect(await correct.evaluate((button) => button === document.activeElement)).toBe(true);
    await page.keyboard.press("Enter");
    await page.locator(".correction").getByLabel("date").fill("2025-08-30");
    await page.keyboard.press("Enter");
    await page.locator("#sheets", { hasText: "None: every row was used." }).waitFor();
    await page.waitForFunction(() => document.activeElement?.id === "sheets-heading");

    // Taken back, the row stands there as it was in its sheet, and is corrected otherwise.
    const takeBack = page.getByRole("button", { name: "Take the last correction of more_tests.csv back" });
    await takeBack.press("Enter");
    await row.waitFor();
    await page.waitForFunction(() => document.activeElement?.id === "sheets-heading");
    expect(await takeBack.count()).toBe(0);
    await correct.press("Enter");
    await page.locator(".correction").getByLabel("date").fill("2025-08-29");
    await page.keyboard.press("Enter");
    await page.locator("#sheets", { hasText: "None: every row was used." }).waitFor();
    await takeBack.waitFor();
  });
});

describe("a row of one of two files of one name", () => {
  it("is corrected in its own, and the other's rows stay", async () => {
    const { page } = await openPage(browser, null);
    const packs = (...rows: string[]) => ({
      name: "packs.csv",
      mimeType: "text/csv",
      buffer: Buffer.from(["serial,device,in_service,retired", ...rows].join("\n")),
    });
    await page
      .locator("input[data-chooses=files]")
      .setInputFiles([packs("N1,D1,2024-01-01,"), packs("S1,D2,2024-01-01,", "S2,D3,2024-01-01,", ",D4,2024-01-01,")]);
    await planned(page);
    const sheets = page.locator("#sheets");
    const row = sheets.locator("tr.explained", { hasText: "packs (2).csv" });
    await row.locator("+ tr").getByRole("button", { name: "Correct it" }).click();
    await page.locator(".correction").getByLabel("serial").fill("S3");
    await page.keyboard.press("Enter");
    await page.locator("#sheets", { hasText: "None: every row was used." }).waitFor();
    // sections of a new plan come one after the other
    await page.locator("#batteries", { hasText: "S3" }).waitFor();
    const batteries = await page.locator("#batteries").textContent();
    for (const serial of ["N1", "S1", "S2"]) expect(batteries).toContain(serial);
  });
});

describe("a column of a table on its side", () => {
  it("is corrected as the row that it was read as, and kept over a reload", async () => {
    const { page } = await openPage(browser, null);
    const turned = "Item,Adult pads,Gel\nExpiry,2027-03-31,soon\nQuantity,2,3\nLot,L1,L2\n";
    await page
      .locator("input[data-chooses=files]")
      .setInputFiles([{ name: "stock.csv", mimeType: "text/csv", buffer: Buffer.from(turned) }]);
    await planned(page);
    const sheets = page.locator("#sheets");
    const row = sheets.locator("tr.explained", { hasText: "stock.csv · turned" });
    expect(await row.locator("td").nth(1).textContent()).toBe("3");
    await row.locator("+ tr").getByRole("button", { name: "Correct it" }).click();
    await page.locator(".correction").getByLabel("Expiry").fill("2027-04-30");
    await page.keyboard.press("Enter");
    await page.locator("#sheets", { hasText: "None: every row was used." }).waitFor();
    await page.locator("#dates", { hasText: "L2" }).waitFor();
    await reloaded(page);
    await page.locator("#sheets", { hasText: "None: every row was used." }).waitFor();
    await page.locator("#dates", { hasText: "L2" }).waitFor();
  });
});

describe("a column that was not recognised", () => {
  const ODD = {
    name: "odd_tests.csv",
    mimeType: "text/csv",
    buffer: Buffer.from("serial,date,percent,zzz\nP3,2025-02-01,98,12.5\nP3,2025-08-01,97,12.5\n"),
  };

  it("is chosen by hand, saved with the others, and taken from the file again", async () => {
    const { page } = await openPage(browser, null);
    await page.locator("input[data-chooses=files]").setInputFiles([...SMALL_SHEETS, ODD]);
    await planned(page);
    await page.locator("details.columns summary", { hasText: "odd_tests.csv" }).click();
    const row = page.locator("details.columns[open] tbody tr", { hasText: "zzz" });
    expect(await row.locator("td").last().textContent()).toBe("12.5");
    await row.getByRole("combobox").selectOption("runtime_tests.load_w");
    // The table stays open over the new plan, and says who chose.
    await row.getByText("by your choice").waitFor();
    const others = page.locator("details.columns[open] tbody tr", { hasNotText: "zzz" });
    expect((await others.allTextContents()).filter((text) => text.includes("by its header")).length).toBe(3);

    const file = (await savedBy(page, "#save-columns")).toString();
    expect(JSON.parse(file).format).toBe("wanecast.columns/1");
    const odd = JSON.parse(file).tables.find((table: { file: string }) => table.file === ODD.name);
    expect(odd.rows[0].columns.load_w).toBe("zzz");

    // A colleague reads the same sheets and drops the file.
    const other = (await openPage(browser, null)).page;
    await other.locator("input[data-chooses=files]").setInputFiles([...SMALL_SHEETS, ODD]);
    await planned(other);
    await other.locator("details.columns summary", { hasText: "odd_tests.csv" }).click();
    await other
      .locator("input[data-chooses=files]")
      .setInputFiles({ name: "columns.json", mimeType: "application/json", buffer: Buffer.from(file) });
    const theirs = other.locator("details.columns[open] tbody tr", { hasText: "zzz" });
    await theirs.getByText("by your choice").waitFor();
    expect(await theirs.getByRole("combobox").inputValue()).toBe("runtime_tests.load_w");
  });
});

describe("readings beside the packs, under headers that say nothing", () => {
  // A register with a test in two columns of its own, as somebody might keep it.
  const REGISTER = {
    name: "register.csv",
    mimeType: "text/csv",
    buffer: Buffer.from(
      "Battery serial,Device,Made,Kx,Ky\nB1,D1,2022-01-10,2026-03-01,91\nB2,D2,2021-05-10,2026-03-02,84\n",
    ),
  };

  it("are chosen one column after the other, each told what it waits for", async () => {
    const { page } = await openPage(browser, null);
    await page.locator("input[data-chooses=files]").setInputFiles(REGISTER);
    await planned(page);
    const summary = page.locator("details.columns summary");
    expect(await summary.textContent()).toBe("register.csv: 5 columns, 2 not used");
    await summary.click();
    const row = (header: string) => page.locator("details.columns[open] tbody tr", { hasText: header });
    await row("Ky").getByRole("combobox").selectOption("runtime_tests.percent");
    await row("Ky").getByText("which column holds runtime tests: date").waitFor();
    expect(await row("Ky").getByRole("combobox").inputValue()).toBe("runtime_tests.percent");
    await row("Kx").getByRole("combobox").selectOption("runtime_tests.date");
    await row("Kx").getByText("by your choice", { exact: true }).waitFor();
    await row("Ky").getByText("by your choice", { exact: true }).waitFor();
    expect(await summary.textContent()).toBe("register.csv: 5 columns");
    // The packs keep their serial, and have a reading each.
    expect(await page.locator("#packs").textContent()).toContain("few readings");
  });
});

describe("the label box", () => {
  // GS1 General Specifications: AI 01 GTIN, 17 use-by YYMMDD (day 00 = last day of the month), 10 lot, 21 serial.
  // The GTIN has the prefix 952 that GS1 keeps for examples (from memory).
  const LABELS = ["(01)09521234543213(17)280200(10)LOT7", "(01)09521234543213(17)271231(10)LOT8", "no label at all"];

  it("reads three scans, takes one back with Escape, and saves the rest as a sheet", async () => {
    const { page } = await openPage(browser, null);
    await page.locator("input[data-chooses=files]").setInputFiles(SMALL_SHEETS);
    await planned(page);
    await page.locator("#scan-place").fill("D1");
    for (const [index, label] of LABELS.entries()) {
      await page.locator("#scan").focus();
      await page.keyboard.type(label);
      await page.keyboard.press("Enter");
      await page.locator("#scanned tbody tr").nth(index).waitFor();
    }
    const rows = page.locator("#scanned tbody tr");
    expect(await rows.nth(0).textContent()).toContain("not read");
    expect(await rows.nth(1).textContent()).toContain("LOT8");
    // 2028 is a leap year: its February ends on the 29th.
    expect(await rows.nth(2).textContent()).toContain("29 Feb 2028");

    await page.locator("#scan").press("Escape");
    await expect.poll(() => rows.count()).toBe(2);

    const [download] = await Promise.all([
      page.waitForEvent("download"),
      page.getByRole("button", { name: "Save as scanned.csv" }).click(),
    ]);
    expect(readFileSync((await download.path())!, "utf8")).toBe(
      "label,place\n(01)09521234543213(17)280200(10)LOT7,D1\n(01)09521234543213(17)271231(10)LOT8,D1\n",
    );

    await page.locator("#add-scans").click();
    await page.locator("#sheets table tr", { hasText: "scanned.csv" }).first().waitFor();
  });

  it("saves a label that begins with a plus so that no spreadsheet takes it for a formula, and reads it", async () => {
    const { page } = await openPage(browser, null);
    await page.locator("input[data-chooses=files]").setInputFiles(SMALL_SHEETS);
    await planned(page);
    // HIBC with its check character, from the standard's examples (from memory)
    await page.locator("#scan").fill("+A99912345/$$52001510X33");
    await page.locator("#scan").press("Enter");
    const row = page.locator("#scanned tbody tr");
    // 52001510X3: day 001 of 2020 -- see tests/sheets/labels
    await expect.poll(() => row.textContent()).not.toContain("not read");
    expect(await row.locator("td").nth(1).textContent()).toBe("10X3");
    const [download] = await Promise.all([
      page.waitForEvent("download"),
      page.getByRole("button", { name: "Save as scanned.csv" }).click(),
    ]);
    const text = readFileSync((await download.path())!, "utf8");
    expect(text).toBe("label,place\n'+A99912345/$$52001510X33,\n");
  });

  it("takes scans back by its button, with the keyboard in the box, and out of the plan as well", async () => {
    const { page } = await openPage(browser, null);
    await page.locator("input[data-chooses=files]").setInputFiles(SMALL_SHEETS);
    await planned(page);
    const rows = page.locator("#scanned tbody tr");
    for (const [index, label] of LABELS.slice(0, 2).entries()) {
      await page.locator("#scan").fill(label);
      await page.locator("#scan").press("Enter");
      await expect.poll(() => rows.count()).toBe(index + 1);
    }
    // what is half typed is no scan, and stays
    await page.locator("#scan").fill("(01)0952");
    await page.locator("#undo-scan").press("Enter");
    await expect.poll(() => rows.count()).toBe(1);
    expect(await page.locator("#scan").inputValue()).toBe("(01)0952");
    expect(await page.evaluate(() => document.activeElement?.id)).toBe("scan");
    await page.locator("#scan").press("Escape");
    expect(await page.locator("#scan").inputValue()).toBe("");
    expect(await rows.count()).toBe(1);
    const inPlan = page.locator("#sheets table tr", { hasText: "scanned.csv" }).first().locator("td").nth(2);
    await page.locator("#add-scans").click();
    await inPlan.filter({ hasText: "1" }).waitFor();
    await page.locator("#scan").press("Escape");
    await expect.poll(() => rows.count()).toBe(0);
    await page.locator("#add-scans").click();
    await inPlan.filter({ hasText: "0" }).waitFor();
  });

  it("shows no scan that was taken back before the engine had read it", async () => {
    const { page } = await openPage(browser, null);
    await page.locator("input[data-chooses=files]").setInputFiles(SMALL_SHEETS);
    await planned(page);
    // the engine is at a plan meanwhile
    await page.locator("#policy-end_of_life_percent").fill("75");
    await page.locator("#policy-end_of_life_percent").press("Enter");
    await page.locator("#scan").fill(LABELS[0]!);
    await page.locator("#scan").press("Enter");
    await page.locator("#scan").press("Escape");
    await page.locator(".status", { hasText: "The plan is ready" }).waitFor();
    await planned(page);
    expect(await page.locator("#scanned").textContent()).toBe("");
  });

  it("keeps what was scanned and chosen over a reload, so that a later scan joins the others, until it is forgotten", async () => {
    const { page } = await openPage(browser, null);
    await page.locator("input[data-chooses=files]").setInputFiles(SMALL_SHEETS);
    await planned(page);
    await page.locator("#iso-dates").check();
    await page.locator("#filter-site").selectOption("Harbour");
    const rows = page.locator("#scanned tbody tr");
    const scan = async (label: string, count: number) => {
      await page.locator("#scan").fill(label);
      await page.locator("#scan").press("Enter");
      await expect.poll(() => rows.count()).toBe(count);
    };
    await scan(LABELS[0]!, 1);
    await reloaded(page);
    await planned(page);
    await scan(LABELS[1]!, 2);
    // a GS1 date of day 00 is the month's last
    expect(await rows.nth(1).textContent()).toContain("2028-02-29");
    expect(await page.locator("#packs .count").textContent()).toBe("2 of 3 rows");
    await page.locator("#add-scans").click();
    const scanned = page.locator("#sheets table tr", { hasText: "scanned.csv" }).first();
    expect(await scanned.locator("td").nth(2).textContent()).toBe("2");

    await page.locator("#forget").click();
    await page.locator(".status", { hasText: "Forgotten" }).waitFor();
    await reloaded(page);
    await page.locator("#try-sample").waitFor();
    expect(await page.evaluate(() => localStorage.length)).toBe(0);
  });
});
