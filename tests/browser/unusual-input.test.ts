import { readXlsx, writeXlsx } from "hucre/xlsx";
import type { Browser } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { SMALL_SHEETS, sheet } from "./fixtures/small-sheets.ts";
import { openPage, startBrowser } from "./open-page.ts";
import { planned, reloaded, saved, savedBy } from "./page-actions.ts";

let browser: Browser;
beforeAll(async () => {
  browser = await startBrowser();
});
afterAll(() => browser.close());

/** The small sheets as the tabs of one workbook, numbers as numbers. */
async function workbook(of = SMALL_SHEETS): Promise<Buffer> {
  const sheets = of.map(({ name, buffer }) => ({
    name: name.replace(".csv", ""),
    rows: buffer
      .toString()
      .trim()
      .split("\n")
      .map((line) => line.split(",").map((cell) => (/^\d+(\.\d+)?$/.test(cell) ? Number(cell) : cell))),
  }));
  return Buffer.from(await writeXlsx({ sheets }));
}

describe("a workbook", () => {
  it("is read tab by tab like sheets of text", async () => {
    const { page, complaints } = await openPage(browser, null);
    await page.locator("input[data-chooses=files]").setInputFiles({
      name: "fleet.xlsx",
      mimeType: "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet",
      buffer: await workbook(),
    });
    await planned(page);
    expect(await page.locator("#sheets .lead").textContent()).toContain("22 rows in 1 file: 22 used, 0 set aside");
    expect(await page.locator("#sheets").textContent()).toContain("fleet.xlsx · runtime_tests");
    expect(complaints).toEqual([]);
  });
});

describe("a workbook's row that was set aside", () => {
  it("is corrected in place, read again and used, and the correction is found after a reload", async () => {
    const wrong = SMALL_SHEETS.map((one) =>
      one.name === "runtime_tests.csv"
        ? { ...one, buffer: Buffer.from(one.buffer.toString().replace("2025-02-01,88", "2025-02-30,88")) }
        : one,
    );
    const { page } = await openPage(browser, null);
    await page.locator("input[data-chooses=files]").setInputFiles({
      name: "fleet.xlsx",
      mimeType: "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet",
      buffer: await workbook(wrong),
    });
    await planned(page);
    const row = page.locator("#sheets tr.explained", { hasText: "fleet.xlsx · runtime_tests" });
    await row.filter({ hasText: "2025-02-30" }).locator("+ tr").getByRole("button", { name: "Correct it" }).click();
    await page.locator(".correction").getByLabel("date").fill("2025-02-28");
    await page.keyboard.press("Enter");
    await page.locator("#sheets", { hasText: "None: every row was used." }).waitFor();
    const clean = await readXlsx(await savedBy(page, "#save-clean-workbook"));
    const tests = clean.sheets.find(({ name }) => name === "runtime_tests")!.rows;
    expect(tests.some(([serial, date]) => serial === "P1" && String(date).includes("Feb 28 2025"))).toBe(true);
    await reloaded(page);
    await planned(page);
    expect(await page.locator("#sheets .lead").textContent()).toContain("22 used, 0 set aside");
  });
});

describe("long work", () => {
  it("says what it is at, can be stopped, and the page goes on", async () => {
    const { page } = await openPage(browser, null);
    await page.locator("#try-sample").click();
    await page.locator(".status", { hasText: "Step 1 of 3: how every pack fades." }).waitFor();
    await page.getByRole("button", { name: "Stop" }).click();
    await page.locator(".status", { hasText: "Stopped" }).waitFor();
    await page.locator("input[data-chooses=files]").setInputFiles(SMALL_SHEETS);
    await planned(page);
    expect(await page.locator(".masthead .facts").nth(1).textContent()).toContain("3 devices");
  });

  it("shows the readings meanwhile, by the years of age in which there are any", async () => {
    const { page } = await openPage(browser, null);
    // tested when 1 or 9 years old; many items, so that there is time to look
    const packs = Array.from({ length: 200 }, (_, at) => ({ serial: `S${at}`, item: `pack-${at % 40}`, old: at % 2 }));
    await page.locator("input[data-chooses=files]").setInputFiles([
      sheet(
        "packs.csv",
        "serial,item,device,made",
        packs.map(({ serial, item, old }, at) => `${serial},${item},D${at},${old ? 2016 : 2024}-01-10`),
      ),
      sheet(
        "runtime_tests.csv",
        "serial,date,percent",
        packs.map(({ serial, old }) => `${serial},2025-06-12,${old ? 75 : 96}`),
      ),
    ]);
    const look = page.locator("figure", { hasText: "How do the readings lie by age?" });
    const said = await look.evaluate((figure) => {
      const step = figure.querySelector("input")!;
      return Array.from({ length: Number(step.max) + 1 }, (_, at) => {
        step.value = String(at);
        step.dispatchEvent(new Event("input"));
        return figure.querySelector("output")!.textContent!.replace("\u202f", " ");
      });
    });
    expect(said).toEqual([
      "1–2 years: 100 readings, 96 % in the middle",
      "9–10 years: 100 readings, 75 % in the middle",
    ]);
  });

  it("does not say that last time's work is back where it was stopped from coming back", async () => {
    const { page } = await openPage(browser, null);
    await page.locator("#try-sample").click();
    await planned(page);
    await reloaded(page);
    await page.getByRole("button", { name: "Stop" }).click();
    await page.locator(".status", { hasText: "Stopped. Nothing was planned." }).waitFor();
    await page.locator(".empty").waitFor();
    expect(await page.locator(".status").textContent()).toBe("Stopped. Nothing was planned.");
    // nothing of it is lost
    await reloaded(page);
    await page.locator(".status", { hasText: "is back" }).waitFor();
  });

  it("leaves the plan that is still shown to be written and its rows to be corrected, once it was stopped", async () => {
    const { page, complaints } = await openPage(browser, null);
    await page.locator("#try-sample").click();
    await planned(page);
    const before = await saved(page, "plan.json");
    await page.locator("#policy-activation_energy_ev").fill("0.3");
    await page.keyboard.press("Enter");
    await page.getByRole("button", { name: "Stop" }).click();
    await page.locator(".status", { hasText: "Stopped. The plan shown is the one before." }).waitFor();
    expect(await saved(page, "plan.json")).toEqual(before);
    // the field, too, says what the plan shown was made with
    expect(await page.locator("#policy-activation_energy_ev").inputValue()).toBe("0.45");
    await page.locator("#policy-activation_energy_ev").fill("0.4");
    await page.keyboard.press("Enter");
    await page.locator(".status", { hasText: "The plan is ready" }).waitFor();
    const after = await saved(page, "plan.json");
    expect(after).not.toEqual(before);
    // a file that is no sheet brings no plan either
    await page.locator("input[data-chooses=files]").setInputFiles({
      name: "photo.csv",
      mimeType: "text/csv",
      buffer: Buffer.from([0x89, 0x50, 0x4e, 0x47, 0, 1, 2, 3, 0xff, 0xd8, 0, 0]),
    });
    await page.locator(".status", { hasText: "photo.csv" }).waitFor();
    expect(await saved(page, "plan.json")).toEqual(after);
    expect(complaints).toEqual([]);
  });
});

describe("what is no fleet", () => {
  it("is refused with a clear message and no plan", async () => {
    const { page, complaints } = await openPage(browser, null);
    await page.locator("input[data-chooses=files]").setInputFiles({
      name: "photo.csv",
      mimeType: "text/csv",
      buffer: Buffer.from([0x89, 0x50, 0x4e, 0x47, 0, 1, 2, 3, 0xff, 0xd8, 0, 0]),
    });
    await page.locator("#sheets").waitFor();
    expect(await page.locator("#sheets").textContent()).toContain("photo.csv");
    await page.waitForFunction(() => document.activeElement?.id === "sheets-heading");
    expect(await page.locator("#assumptions").count()).toBe(0);
    // What was wrong stands right below where the file was handed over, above what sheets there are.
    const heads = await page.locator("main h2, main .drop").allTextContents();
    expect(heads).toEqual([
      "Drop sheets or a folder of sheets here",
      "What was read, and what was not?",
      "Which sheets can it read?",
      "Before you rely on this",
    ]);
    expect(await page.locator("#sheets").textContent()).not.toContain("every row was used");
    expect(complaints).toEqual([]);
  });

  it("beside a good sheet is named as what keeps the plan from being made", async () => {
    const { page } = await openPage(browser, null);
    const good = {
      name: "packs.csv",
      mimeType: "text/csv",
      buffer: Buffer.from("serial,item,made\nP1,pack-a,2024-01-10"),
    };
    const cutOff = { name: "tests.xlsx", mimeType: "", buffer: Buffer.from([0x50, 0x4b, 3, 4, 0, 0]) };
    await page.locator("input[data-chooses=files]").setInputFiles([good, cutOff]);
    await page.locator("#sheets table", { hasText: "tests.xlsx" }).waitFor();
    const status = await page.locator(".status").textContent();
    expect(status).toContain("A file could not be read and must be mended or left out");
    expect(status).not.toContain("No table was found");
    expect(await page.locator("#sheets .lead").textContent()).toBe("1 row in 1 file: 1 used, 0 set aside.");
  });

  it("leaves the plan at hand as it is, says why, and is not found after a reload", async () => {
    const { page } = await openPage(browser, null);
    await page.locator("input[data-chooses=files]").setInputFiles(SMALL_SHEETS);
    await planned(page);
    await page.locator("input[data-chooses=files]").setInputFiles({
      name: "photo.png",
      mimeType: "image/png",
      buffer: Buffer.from([0x89, 0x50, 0x4e, 0x47, 0, 1, 2, 3, 0xff, 0xd8, 0, 0]),
    });
    const status = page.locator(".status", { hasText: "No table was found, and the plan shown is the one before." });
    await status.waitFor();
    expect(await status.textContent()).toContain("photo.png: The file is a picture");
    // The plan goes on with its own sheets.
    await page.locator("#policy-horizon_months").fill("24");
    await page.locator("#policy-horizon_months").press("Enter");
    await page.locator(".changed").waitFor();
    expect(await page.locator(".masthead .facts").nth(1).textContent()).toContain("3 devices");
    await reloaded(page);
    await planned(page);
    expect(await page.locator("#sheets").textContent()).not.toContain("photo.png");
  });

  it("pasted rows are read like a file", async () => {
    const { page } = await openPage(browser, null);
    await page.locator(".intake summary").click();
    await page.locator("#pasted-rows").fill("device\ttype\tsite\nD1\tmonitor\tHarbour\nD2\tmonitor\tHarbour\n");
    await page.getByRole("button", { name: "Read these rows" }).click();
    await planned(page);
    expect(await page.locator("#sheets").textContent()).toContain("2 rows in 1 file: 2 used, 0 set aside");
  });

  it("rows pasted anywhere on the empty page are read, and leave a plan alone", async () => {
    const { page } = await openPage(browser, null);
    const paste = (text: string) =>
      page.evaluate((rows) => {
        const clipboardData = new DataTransfer();
        clipboardData.setData("text/plain", rows);
        document.body.dispatchEvent(new ClipboardEvent("paste", { clipboardData, bubbles: true }));
      }, text);
    await paste("device\ttype\nD1\tmonitor\nD2\tmonitor\n");
    await planned(page);
    await paste("device\ttype\nD3\tmonitor\n");
    expect(await page.locator("#sheets .lead").textContent()).toContain("2 rows in 1 file");
  });

  it("rows pasted while others are still being read are planned from, too", async () => {
    const { page } = await openPage(browser, null);
    await page.evaluate(async () => {
      const paste = (devices: number) => {
        const clipboardData = new DataTransfer();
        const rows = Array.from({ length: devices }, (_, at) => `D${at}\tmonitor`);
        clipboardData.setData("text/plain", ["device\ttype", ...rows].join("\n"));
        document.body.dispatchEvent(new ClipboardEvent("paste", { clipboardData, bubbles: true }));
      };
      paste(5000);
      await new Promise((next) => setTimeout(next));
      paste(3);
    });
    await page.locator("#sheets .lead", { hasText: "3 rows in 1 file" }).waitFor();
    expect(await page.locator("#sheets").textContent()).toContain("pasted-2.tsv");
  });

  it("files and a dropped file join the sheets at hand where the reader wants it", async () => {
    const { page } = await openPage(browser, null);
    await page.locator("input[data-chooses=files]").setInputFiles(SMALL_SHEETS);
    await planned(page);
    await page.locator("#beside").check();
    await page.evaluate(() => {
      const dataTransfer = new DataTransfer();
      const text = "device,type,site,duty\nD4,monitor,Harbour,ambulance\n";
      dataTransfer.items.add(new File([text], "more_devices.csv", { type: "text/csv" }));
      document.body.dispatchEvent(new DragEvent("drop", { dataTransfer, bubbles: true, cancelable: true }));
    });
    await page.locator(".masthead .facts", { hasText: "4 devices" }).waitFor();
    expect(await page.locator("#sheets .lead").textContent()).toContain("in 7 files");
    expect(await page.locator("#beside").isChecked()).toBe(true);
  });

  it("a sheet dropped while another comes to nothing is not lost with it", async () => {
    const { page, complaints } = await openPage(browser, null);
    await page.locator("input[data-chooses=files]").setInputFiles(SMALL_SHEETS);
    await planned(page);
    await page.locator("#beside").check();
    await page.evaluate(() => {
      const drop = (...parts: BlobPart[]) => {
        const dataTransfer = new DataTransfer();
        dataTransfer.items.add(new File(parts, "more_devices.csv", { type: "text/csv" }));
        document.body.dispatchEvent(new DragEvent("drop", { dataTransfer, bubbles: true, cancelable: true }));
      };
      // no sheet, and too large for one of policy, so that it is read at once; then the one that was meant
      drop(new Uint8Array([0x89, 0x50, 0x4e, 0x47, 0, 1, 2, 3, 0xff, 0xd8, 0, 0]), new Uint8Array(30_000));
      drop("device,type,site,duty\nD4,monitor,Harbour,ambulance\n");
    });
    await page.locator(".masthead .facts", { hasText: "4 devices" }).waitFor();
    expect(await page.locator("#sheets .lead").textContent()).toContain("in 7 files");
    expect(complaints).toEqual([]);
  });
});
