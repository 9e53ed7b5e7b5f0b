import type { Browser } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { smallPlan, smallReading } from "./fixtures/small-plan.ts";
import { openPage, startBrowser } from "./open-page.ts";

const data = { plan: smallPlan, reading: smallReading };

let browser: Browser;
beforeAll(async () => {
  browser = await startBrowser();
});
afterAll(() => browser.close());

describe("a table of the report", () => {
  it("narrows the schedule to an item and a fiscal year, and says what that comes to", async () => {
    const plan = { ...smallPlan, policy: { ...smallPlan.policy, fiscal_year_starts: 4 } };
    const { page } = await openPage(browser, { plan, reading: smallReading });
    await page.locator("#filter-ordered-item").selectOption("Pack A");
    await page.locator("#filter-year").selectOption("2027/28");
    // Of Pack A four each leave in May and November 2027: 2 x (4 x 310.00 + 12.50) = 2505.00.
    expect(await page.locator("#orders .count").textContent()).toBe("2 of 10 rows: 8 units for €2,505 with fees");
    expect(await page.locator("#orders .explained td:nth-child(6)").first().textContent()).toBe("€310.00");
    // What a buyer must know before the first line stands above it, wherever lines stand.
    for (const [part, lines] of [
      ["#orders", "table >> nth=0"],
      ["#ahead", "table:has-text('Arrives')"],
    ]) {
      const [note, schedule] = await Promise.all(
        ["p:has-text('do not order it yet')", lines].map((of) => page.locator(`${part} ${of}`).boundingBox()),
      );
      expect(note!.y).toBeLessThan(schedule!.y);
    }
  });

  it("stays in the order that it was sorted into when it is narrowed", async () => {
    const { page } = await openPage(browser, data);
    const serials = () => page.locator("#packs tbody td:first-child").allTextContents();
    const head = page.locator("#packs th", { hasText: "Serial" });
    await head.getByRole("button").click();
    await head.getByRole("button").click();
    await page.locator("#filter-item").selectOption("Pack M");
    // Pack M are the packs 0, 3, 6 ... 15 of the fixture, named by 1000 + 37 times their number
    const of = [15, 12, 9, 6, 3, 0].map((number) => `CP-00${1000 + 37 * number}`);
    expect(await serials()).toEqual(of);
    expect(await head.getAttribute("aria-sort")).toBe("descending");
    await head.getByRole("button").click();
    expect(await serials()).toEqual(of.reverse());
    expect(await page.locator("#packs [aria-sort]").count()).toBe(1);
  });

  it("says on paper what it is narrowed to, and nothing where it is whole", async () => {
    const { page } = await openPage(browser, data);
    await page.locator("#filter-site").selectOption("North depot");
    await page.emulateMedia({ media: "print" });
    const isSeen = (selector: string) => page.locator(selector).isVisible();
    expect(await isSeen("#filter-site")).toBe(true);
    expect(await isSeen("#packs .count")).toBe(true);
    // of 16 packs every third, from the second on
    expect(await page.locator("#packs .count").textContent()).toBe("5 of 16 rows");
    for (const other of ["#filter-item", "#filter-because", "#filter-ordered-item", "#stock-item"])
      expect(await isSeen(other)).toBe(false);
  });

  it("says so where a cell has nothing to say", async () => {
    const inputs = smallReading.inputs.map((input) => ({ ...input, kinds: [] }));
    const { page } = await openPage(browser, { plan: smallPlan, reading: { ...smallReading, inputs } });
    const readAs = page.locator("#sheets table", { hasText: "Read as" }).first().locator("tbody td:nth-child(2)");
    expect(await readAs.textContent()).toBe("–");
  });

  it("writes every number as the reader does", async () => {
    const datedStock = smallPlan.datedStock.map((row) => ({ ...row, quantity: 1234 }));
    const { page } = await openPage(browser, { ...data, plan: { ...smallPlan, datedStock } }, { locale: "de" });
    const units = page.locator("#dates table", { hasText: "Chance of use" }).locator("tbody td:nth-child(6)");
    expect(await units.first().textContent()).toBe("1.234");
  });

  it("keeps rows as low as their words where the rest of a table lies out of sight", async () => {
    const { page } = await openPage(browser, data, { viewport: { width: 320, height: 800 } });
    const heights = await page
      .locator("#packs tbody tr")
      .evaluateAll((rows) => rows.map((row) => row.getBoundingClientRect().height));
    // but for the line below them, which the last has not
    expect(Math.max(...heights) - Math.min(...heights)).toBeLessThan(3);
  });

  it("stops the keyboard at a table only where it scrolls sideways, and says so there", async () => {
    const { page } = await openPage(browser, data, { viewport: { width: 1440, height: 900 } });
    await page.locator("#assumptions").waitFor();
    const packs = page.locator("#packs .scroll");
    await expect.poll(() => packs.getAttribute("tabindex")).toBe("-1");
    expect(await packs.getAttribute("aria-label")).toBe("Packs by their likely date of replacement");
    await page.setViewportSize({ width: 320, height: 900 });
    await expect.poll(() => packs.getAttribute("tabindex")).toBe("0");
    expect(await packs.getAttribute("aria-label")).toContain("scrolls sideways");
  });

  it("keeps a long table's head below the contents on screens of 320, 768 and 1440 px, over no focus", async () => {
    const packs = Array.from({ length: 60 }, (_, at) => ({ ...smallPlan.packs[0]!, serial: `P-${100 + at}` }));
    const { page } = await openPage(browser, { ...data, plan: { ...smallPlan, packs } });
    const heads = () =>
      page.evaluate(async () => {
        // what follows the scrolling is placed with the next frame
        await new Promise((drawn) => requestAnimationFrame(() => requestAnimationFrame(drawn)));
        const box = (selector: string) => document.querySelector(selector)!.getBoundingClientRect();
        const head = box("#packs thead");
        const under = document.elementFromPoint(head.left + 20, head.bottom - 4)?.closest("thead") !== null;
        return { below: Math.round(head.top - box(".contents").bottom), under, bottom: head.bottom };
      });
    const row = (at: number) => page.locator(`#packs tbody tr >> nth=${at}`);
    const staysAbove = async (rows: number) => {
      await row(rows - 5).evaluate((one) => one.scrollIntoView({ block: "center" }));
      // rows that were not laid out yet move it for a moment
      await expect.poll(async () => Math.abs((await heads()).below)).toBeLessThanOrEqual(1);
      expect((await heads()).under).toBe(true);
      // backwards with the keyboard, row after row, to where they would come to lie behind the head
      await row(rows - 2)
        .getByRole("button")
        .focus();
      for (let presses = 0; presses < 18; presses += 1) {
        await page.keyboard.press("Shift+Tab");
        const top = await page.evaluate(() => document.activeElement!.getBoundingClientRect().top);
        expect(top).toBeGreaterThanOrEqual((await heads()).bottom - 1);
      }
    };
    for (const width of [320, 768, 1440]) {
      await page.setViewportSize({ width, height: 700 });
      await staysAbove(25);
    }
    await page.locator("#packs .more").click();
    for (const width of [768, 320]) {
      await page.setViewportSize({ width, height: 700 });
      await staysAbove(60);
    }
    await page.emulateMedia({ media: "print" });
    const printed = await page
      .locator("#packs table")
      .evaluate(
        (table: HTMLTableElement) => table.tHead!.getBoundingClientRect().top - table.getBoundingClientRect().top,
      );
    expect(printed).toBeLessThan(4);
  });

  it("marks a swap that is overdue, and leaves one to come as it is", async () => {
    const visit = { month: "2026-11", place: "D-001", item: "Adult pads", lot: "L2400", quantity: 1, daysGivenUp: 0 };
    const swapCalendar = ["2026-11-10", "2026-11-30"].map((swapBy) => ({ ...visit, swapBy }));
    const { page } = await openPage(browser, { ...data, plan: { ...smallPlan, swapCalendar } });
    const days = page.locator("#dates table", { hasText: "Days given up" }).locator("tbody td:nth-child(3)");
    await days.first().waitFor();
    expect(await days.allTextContents()).toEqual(["10 Nov 2026 overdue", "30 Nov 2026"]);
  });

  it("prints tables no wider than what they hold, with their heads on one line", async () => {
    // the width of A4 between the margins
    const { page } = await openPage(browser, data, { viewport: { width: 680, height: 900 } });
    await page.locator("#assumptions").waitFor();
    await page.emulateMedia({ media: "print" });
    const table = page.locator("#orders table", { hasText: "Cautious (P80)" });
    const lines = await table
      .locator("th span")
      .evaluateAll((heads) => heads.map((head) => head.getClientRects().length));
    expect(lines).toEqual([1, 1, 1, 1, 1]);
    expect((await table.boundingBox())!.width).toBeLessThan(600);
  });
});
