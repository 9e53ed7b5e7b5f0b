import type { Browser } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { openPage, startBrowser } from "./open-page.ts";
import { planned } from "./page-actions.ts";

let browser: Browser;
beforeAll(async () => {
  browser = await startBrowser();
});
afterAll(() => browser.close());

const csv = (name: string, ...lines: string[]) => ({
  name,
  mimeType: "text/csv",
  buffer: Buffer.from(lines.join("\n")),
});
const POLICY = csv("policy.csv", "key,value", "as_of,2026-11-01");

describe("a fleet that lacks a part", () => {
  it("of one pack and no prices is told in the singular, without money", async () => {
    const { page, complaints } = await openPage(browser, null);
    await page
      .locator("input[data-chooses=files]")
      .setInputFiles([
        csv("packs.csv", "serial,item,device,made,in_service", "P1,pack-a,D1,2024-01-10,2024-02-01"),
        csv("tests.csv", "serial,date,percent", "P1,2024-08-01,97", "P1,2025-08-01,93", "P1,2026-08-01,89"),
        POLICY,
      ]);
    await planned(page);
    expect(await page.locator("#batteries .lead").textContent()).toMatch(/^1 pack: \d due now, \d by/);
    expect(await page.locator("#ahead").textContent()).toContain("Of 1 device, ");
    expect(await page.locator("#pack .about").textContent()).toContain("Made10 Jan 2024");
    // the middle of one pack's path is told with the pack: how its like fade has no figures of its own
    const tables = page.locator("#batteries figure", { hasText: "fade with age" }).getByText("The figures as a table");
    expect(await tables.count()).toBe(0);
    expect(await page.locator("#orders").textContent()).not.toContain("XXX");
    expect(await page.locator("#dates").textContent()).toContain("No dated stock was read.");
    expect(complaints).toEqual([]);
  });

  it("of packs without a date says that none is forecast, and draws no empty chart", async () => {
    const { page, complaints } = await openPage(browser, null);
    const packs = csv("packs.csv", "serial,item,device", "P1,pack-a,D1", "P2,pack-a,D1", "P3,pack-b,D2");
    await page.locator("input[data-chooses=files]").setInputFiles([packs, POLICY]);
    await planned(page);
    const ahead = await page.locator("#ahead").textContent();
    expect(ahead).toContain("That is no all-clear.");
    expect(ahead).not.toContain("the forecast takes them for typical");
    expect(await page.locator("#batteries .lead").textContent()).toBe("3 packs have no forecast at all.");
    await page.locator("#fleet-item").selectOption("pack-b");
    expect(await page.locator("#batteries figure").first().textContent()).toContain(
      "No pack of pack-b has both a known age and",
    );
    expect(await page.locator("canvas").count()).toBe(0);
    expect(complaints).toEqual([]);
  });

  it("of packs with a date or with tests, and none with both, is not called unmeasured", async () => {
    const { page } = await openPage(browser, null);
    await page
      .locator("input[data-chooses=files]")
      .setInputFiles([
        csv("packs.csv", "serial,item,device,made", "P1,pack-a,D1,2021-01-10", "P2,pack-a,D2,"),
        csv("tests.csv", "serial,date,percent", "P2,2024-05-01,93", "P2,2025-05-01,88"),
        POLICY,
      ]);
    await planned(page);
    const figure = page.locator("#batteries figure", { hasText: "fade with age" });
    expect(await figure.locator("figcaption").textContent()).toMatch(
      /^No pack of pack-a has both a known age and a reading/,
    );
    expect(await page.locator("#ahead").textContent()).toContain("1 of 2 packs has no reading of its own");
  });

  it("of one device and one dated unit is counted in the singular", async () => {
    const { page } = await openPage(browser, null);
    await page
      .locator("input[data-chooses=files]")
      .setInputFiles([
        csv("devices.csv", "device,type,site", "D1,monitor,Hall"),
        csv("dated_stock.csv", "item,expiry,lot,quantity,place", "pads-a,2027-03-31,L1,1,D1"),
        csv("use_log.csv", "date,item,quantity,place", "2026-08-03,pads-a,1,D1"),
        POLICY,
      ]);
    await planned(page);
    const counts = await page.locator(".masthead .facts").nth(1).textContent();
    expect(counts).toBe("1 device and 0 packs in service · 1 dated unit");
    expect(await page.locator("#dates .lead").textContent()).toMatch(/^1 dated unit falls due by/);
    const uses = page.locator("#dates table", { hasText: "Uses logged" }).locator("tbody td:nth-child(4)");
    expect(await uses.textContent()).toBe("1");
    expect(await page.locator("#ahead").textContent()).not.toContain("No use is logged");
  });

  it("of dated stock alone says what is past expiry, and that no device would miss anything", async () => {
    const { page, complaints } = await openPage(browser, null);
    await page
      .locator("input[data-chooses=files]")
      .setInputFiles([
        csv(
          "dated_stock.csv",
          "item,expiry,lot,quantity,place",
          "pads-a,2027-03-31,L1,2,Store",
          "gel,2026-10-15,G1,1,Cart",
        ),
        csv("policy.csv", "key,value", "as_of,2026-11-01", "swaps_per_month,4"),
      ]);
    await planned(page);
    const ahead = await page.locator("#ahead").textContent();
    expect(ahead).toContain("1 dated unit is past expiry: gel at Cart (15 Oct 2026).");
    expect(ahead).toContain("No device is known: every place counts as a store");
    expect(ahead).toContain("the plan counts on no use of supplies.");
    expect(await page.locator("#batteries").textContent()).toContain("No battery pack in service was read.");
    // Visits are allowed for, and no device has anything to swap.
    expect(await page.locator("#dates").textContent()).not.toContain("No swap calendar was asked for");
    expect(complaints).toEqual([]);
  });

  it("beside a list of batteries does not count their devices as stores", async () => {
    const { page, complaints } = await openPage(browser, null);
    await page
      .locator("input[data-chooses=files]")
      .setInputFiles([
        csv("dated_stock.csv", "item,expiry,quantity,place", "pads-a,2027-03-31,2,Cart"),
        csv("packs.csv", "serial,device,in_service", "B1,Cart,2024-03-01"),
        POLICY,
      ]);
    await planned(page);
    expect(await page.locator("#ahead").textContent()).not.toContain("every place counts as a store");
    expect(complaints).toEqual([]);
  });
});

describe("tests that were all made on one day of which no one can tell the month", () => {
  it("are not passed over in silence: the plan's first section says that it lacks them", async () => {
    const { page, complaints } = await openPage(browser, null);
    const sheet = csv(
      "register.csv",
      "Device,Battery S/N,Batt in service,Last test,Result %",
      "D1,B1,14/03/2022,02/09/2026,81",
      "D2,B2,20/06/2023,02/09/2026,90",
    );
    await page.locator("input[data-chooses=files]").setInputFiles([sheet, POLICY]);
    await planned(page);
    expect(await page.locator("#ahead").textContent()).toContain("A column's day/month order is not settled");
    await page.locator("#policy-date_order").fill("dmy");
    await page.locator("#policy-date_order").press("Enter");
    await page.locator("#batteries", { hasText: "at its only test in September 2026" }).waitFor();
    expect(await page.locator("#ahead").textContent()).not.toContain("day/month order");
    expect(complaints).toEqual([]);
  });
});

describe("stock of which all is past expiry", () => {
  it("is told in one sentence, with no chart of what falls due", async () => {
    const { page, complaints } = await openPage(browser, null);
    await page
      .locator("input[data-chooses=files]")
      .setInputFiles([
        csv("devices.csv", "device,type,site", "D1,monitor,Hall"),
        csv("dated_stock.csv", "item,expiry,quantity,place", "pads-a,2025-03-31,1,D1", "pads-a,2025-04-30,2,Store"),
        POLICY,
      ]);
    await planned(page);
    expect(await page.locator("#dates .lead").textContent()).toBe(
      "3 dated units have expired and should be swapped now.",
    );
    expect(await page.locator("#dates canvas").count()).toBe(0);
    expect(complaints).toEqual([]);
  });
});

describe("held stock", () => {
  it("is told beside the dates, in devices and on shelves, with its reason; a failed pack by its serial as it stands", async () => {
    const { page } = await openPage(browser, null);
    await page
      .locator("input[data-chooses=files]")
      .setInputFiles([
        csv("devices.csv", "device,type,site", "D1,monitor,Hall"),
        csv("packs.csv", "serial,item,device,made", "2022-03,pack-a,D1,2022-03-01"),
        csv("tests.csv", "serial,date,result", "2022-03,2026-09-01,fail"),
        csv(
          "dated_stock.csv",
          "item,expiry,lot,quantity,place,held",
          "pads-a,2027-03-31,L1,1,d1,seal broken",
          "pads-a,2027-03-31,L2,3,Store,supplier asked",
          "pads-a,2027-03-31,L3,5,Store,",
        ),
        POLICY,
      ]);
    await planned(page);
    const dates = await page.locator("#dates").textContent();
    expect(dates).toContain("1 held unit in devices, each counted as a gap: pads-a at D1 (seal broken).");
    expect(dates).toContain("3 held units in no device in service, serving nothing: pads-a at Store (supplier asked).");
    const ahead = await page.locator("#ahead").textContent();
    expect(ahead).toContain("1 pack has failed the last test: 2022-03 in D1.");
    // what lies in a store is in nobody's hands
    expect(ahead).toContain("1 held unit in devices, each counted as a gap: pads-a at D1 (seal broken).");
    expect(ahead).not.toContain("held units in no device");
    expect(await page.locator("#pack").textContent()).toContain("Failed its test on 1 Sept 2026 and no later test");
    // A pass or fail is no reading, so the chart has no dot to explain.
    expect(await page.locator("#pack .key").textContent()).not.toContain("a reading");
  });
});

describe("a fleet of long names", () => {
  it("keeps to the width of a narrow screen", async () => {
    const { page } = await openPage(browser, null, { viewport: { width: 320, height: 800 } });
    const item =
      "electrode-pads-for-adults-with-connector-and-gel-pre-connected-for-monitors-of-the-northern-region-and-of-its-islands";
    const posts = [
      "Station at the Old Harbour behind the Fish Market",
      "Station at the New Harbour beside the Town Hall",
    ];
    await page
      .locator("input[data-chooses=files]")
      .setInputFiles([
        csv("devices.csv", "device,type,site", ...posts.map((post, at) => `D${at},monitor,${post}`)),
        csv(
          "stock_of_all_posts_as_exported_by_the_stores.csv",
          "item,expiry,place",
          ...[0, 1].map((at) => `${item},2027-03-31,D${at}`),
        ),
        POLICY,
      ]);
    await planned(page);
    expect(await page.locator("#ahead .headline").textContent()).toContain(item);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(320);
    // Where there is room, a long name pushes nothing out of sight.
    await page.setViewportSize({ width: 1440, height: 800 });
    await expect.poll(() => page.locator("#dates .scroll").first().getAttribute("tabindex")).toBe("-1");
  });
});

describe("a plan's spend", () => {
  it("is told with what stands in no sum, and with the years that the plan cuts short", async () => {
    const { page } = await openPage(browser, null);
    await page
      .locator("input[data-chooses=files]")
      .setInputFiles([
        csv("devices.csv", "device,type,site", "D1,monitor,Hall"),
        csv("packs.csv", "serial,item,device,made,in_service", "P1,pack-a,D1,2015-01-10,2015-02-01"),
        csv("tests.csv", "serial,date,percent", "P1,2026-09-01,50"),
        csv("dated_stock.csv", "item,expiry,lot,quantity,place", "pads-a,2027-03-31,L1,1,D1"),
        csv("catalogue.csv", "item,kind,price,currency,arrives_with_months", "pads-a,pads,40,EUR,24", "pack-a,pack,,,"),
        POLICY,
      ]);
    await planned(page);
    const orders = await page.locator("#orders").textContent();
    expect(orders).toContain("No price is known of pack-a: what that costs stands in no sum here.");
    // By hand: the plan has November 2026 to October 2029.
    expect(orders).toContain("Not the whole year lies in the plan: 2026 (2 months), 2029 (10 months).");
  });

  it("stands below the budget's rule in its own currency alone, and beside the price as it rose", async () => {
    const { page } = await openPage(browser, null);
    const chooser = page.locator("input[data-chooses=files]");
    await chooser.setInputFiles([
      csv("devices.csv", "device,type,site", "D1,monitor,Hall", "D2,monitor,Hall"),
      csv(
        "dated_stock.csv",
        "item,expiry,lot,quantity,place",
        "pads-a,2027-03-31,L1,1,D1",
        "pads-b,2029-06-30,L2,1,D2",
      ),
      csv("catalogue.csv", "item,kind,price,currency", "pads-a,pads,40,EUR", "pads-b,pads,30,USD"),
      csv("policy.csv", "key,value", "as_of,2026-11-01", "budget_per_fiscal_year,25", "price_rise_per_year,0.035"),
    ]);
    await planned(page);
    const capped = page.locator("#orders figure", { has: page.locator(".key", { hasText: "budget" }) });
    expect(await page.locator("#orders figure .unit").allTextContents()).toHaveLength(2);
    expect(await capped.locator(".unit").allTextContents()).toEqual(["spend so far in the fiscal year, EUR"]);
    // 30 USD after two rises of 3.5 %: 30 * 1.035 * 1.035 = 32.13675
    expect(await page.locator("#orders tr.explained", { hasText: "pads-b" }).first().textContent()).toContain(
      "US$32.13675",
    );
    await page.locator("#policy-currency").fill("USD");
    await page.locator("#policy-currency").press("Enter");
    await expect
      .poll(() => capped.locator(".unit").allTextContents())
      .toEqual(["spend so far in the fiscal year, USD"]);
  });
});

describe("a sheet of which every row was set aside", () => {
  it("is no all-clear", async () => {
    const { page } = await openPage(browser, null);
    // February has no such days.
    const tests = ["S1,2025-02-29,91", "S2,2025-02-30,88", "S3,2026-02-31,84"];
    await page.locator("input[data-chooses=files]").setInputFiles([csv("tests.csv", "serial,date,percent", ...tests)]);
    await planned(page);
    const ahead = await page.locator("#ahead").textContent();
    expect(ahead).toContain("Nothing can be forecast");
    expect(ahead).toContain("3 of 3 rows of the sheets were set aside");
    expect(ahead).not.toContain("no order is needed");
    const orders = await page.locator("#orders").textContent();
    expect(orders).toContain("That is no all-clear.");
    expect(orders).not.toContain("Nothing has to be ordered");
  });
});
