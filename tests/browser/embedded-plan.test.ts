import { readFileSync } from "node:fs";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { smallPlan, smallReading } from "./fixtures/small-plan.ts";
import { chartsDrawn, openPage, startBrowser } from "./open-page.ts";

const data = { plan: smallPlan, reading: smallReading };

let browser: Browser;
beforeAll(async () => {
  browser = await startBrowser();
});
afterAll(() => browser.close());

describe("devices short of a fleet that grows small", () => {
  const shortOf = async (devicesAt: (month: number) => number) => {
    const short = smallPlan.short.map((row, month) => {
      const devices = devicesAt(month);
      return { ...row, devices, withoutBuying: { expected: devices / 2, anyChance: 1 } };
    });
    const { page } = await openPage(browser, { ...data, plan: { ...smallPlan, short } });
    return page.locator("#ahead figure", { hasText: "How many devices would be short?" });
  };

  it("are told of as many as there are then", async () => {
    const figure = await shortOf((month) => (month < 20 ? 16 : 4));
    expect(await figure.locator("figcaption").textContent()).toContain(
      "Of 16 devices, 8 are expected to be short at the end of October 2027 if nothing is bought, and 2 of then 4 at the end of October 2029.",
    );
  });

  it("are shown also where none is left in the end", async () => {
    expect(await (await shortOf((month) => (month < 20 ? 16 : 0))).count()).toBe(1);
    expect(await (await shortOf(() => 0)).count()).toBe(0);
  });
});

describe("the page with a plan inside, which is looked at part by part", () => {
  let page: Page;
  beforeAll(async () => {
    page = (await openPage(browser, data)).page;
  });

  it("keeps the cautions in sight, the plan's own among them", async () => {
    const cautions = page.locator(".cautions");
    expect(await cautions.isVisible()).toBe(true);
    expect(await cautions.textContent()).toContain("does not test, clear or condemn any device");
    expect(await cautions.textContent()).toContain(smallPlan.cautions[0]);
  });

  it("shows how many packs outlive each age, as seen beside as planned", async () => {
    const rows = page.locator("#batteries table", { hasText: "Plan counts on" }).locator("tbody tr");
    expect(await rows.last().locator("th, td").allTextContents()).toEqual([
      "Pack A",
      "2",
      "12",
      "93.3\u202f%",
      "6.4\u202f%",
      "98.5\u202f%",
    ]);
  });

  it("tells a whole number of devices short without a tenth", async () => {
    // of the plan's first month 2 are expected, of its second 1.5
    expect(await page.locator("#ahead").textContent()).toContain("that of November 2026: 2 are expected.");
  });

  it("says in words which order is late", async () => {
    expect(await page.locator("#ahead .headline").textContent()).toMatch(/1\sorder line is already late/);
    expect(await page.locator("#orders tbody tr").first().textContent()).toMatch(/25 Nov 2026 late/);
  });

  it("tells what wears faster than its like, how much and how surely, and opens a pack from there", async () => {
    const signs = page.locator("#batteries table", { hasText: "Times as fast" });
    const rows = (await signs.locator("tbody tr").allTextContents()).map((row) => row.replace(/\s+/g, " "));
    expect(rows).toHaveLength(3);
    expect(rows[0]).toMatch(/Harbour station.*1\.4.*1\.2 to 1\.7.*3\.4 of 6/);
    expect(rows[1]).toMatch(/batch of.*March 2023/);
    await signs.getByRole("button", { name: "CP-001111" }).click();
    expect(await page.locator("#pack-choice").inputValue()).toBe("CP-001111");
  });

  it("reads every chart out by keyboard and shows its figures as a table", async () => {
    await chartsDrawn(page);
    for (const figure of await page.locator("figure").all()) {
      const says = figure.locator("output");
      const before = await says.textContent();
      await figure.locator("input[type=range]").focus();
      await page.keyboard.press("ArrowRight");
      expect(await says.textContent()).not.toBe(before);
      await figure.locator("summary").focus();
      await page.keyboard.press("Enter");
      await figure.locator("tbody tr").nth(3).waitFor();
    }
  });

  it("brackets a crowded month above its bar, also where the axis would end with the bar", async () => {
    const datedStock = smallPlan.datedStock.slice(0, 4).map((row, at) => ({
      ...row,
      quantity: 5,
      place: `D-00${at + 1}`,
      swapBy: `${smallPlan.crowdedMonths[0]!.month}-14`,
    }));
    const crowded = await openPage(browser, { ...data, plan: { ...smallPlan, datedStock } });
    await chartsDrawn(crowded.page);
    const widths = await crowded.page.locator("#dates canvas").evaluate((canvas: HTMLCanvasElement) => {
      const { width, height } = canvas;
      const { data } = canvas.getContext("2d")!.getImageData(0, 0, width, height);
      // pixels of the accent, which is far redder than blue
      const inRow = (y: number) =>
        Array.from({ length: width }, (_, x) => 4 * (y * width + x)).filter((at) => data[at]! - data[at + 2]! > 120)
          .length;
      return Array.from({ length: height }, (_, y) => inRow(y)).filter((count) => count > 0);
    });
    // the bracket is as wide as the month, its bar is narrower
    expect(Math.max(...widths.slice(0, 8))).toBeGreaterThan(1.1 * widths[Math.floor(widths.length / 2)]!);
  });

  it("reads every chart out under the pointer", async () => {
    await chartsDrawn(page);
    for (const figure of await page.locator("figure").all()) {
      const says = figure.locator("output");
      const before = await says.textContent();
      const canvas = figure.locator("canvas");
      const { width, height } = (await canvas.boundingBox())!;
      for (const share of [0.3, 0.95]) await canvas.hover({ position: { x: share * width, y: height / 2 } });
      expect(await says.textContent()).not.toBe(before);
    }
  });

  it("says of a pack that outlives every date, and of one without a forecast, what is known", async () => {
    const dates = { p10: null, p50: null, p90: null, because: null, note: null };
    const kinds = ["beyond-horizon", "no-forecast"] as const;
    const packs = smallPlan.packs.map((pack, at) => {
      const kind = kinds[at];
      return kind ? { ...pack, replaceBy: { ...dates, kind } } : pack;
    });
    const { page: told } = await openPage(browser, { ...data, plan: { ...smallPlan, packs } });
    for (const [at, words] of ["after the plan", "no forecast"].entries()) {
      const row = told.locator("#packs tbody tr", { hasText: packs[at]!.serial });
      expect(await row.locator("td").nth(1).textContent()).toBe(words);
      expect(await row.locator("td").nth(2).textContent()).toBe("–");
    }
    await told.locator("#filter-quarter").selectOption("no forecast");
    expect(await told.locator("#packs tbody tr").count()).toBe(1);
    await told.locator("#filter-quarter").selectOption("after the plan");
    expect(await told.locator("#packs tbody").textContent()).toContain(packs[0]!.serial);
  });

  it("lists items to choose from as a reader orders names", async () => {
    const names = ["Pack 10", "pack 2", "Pack 1"];
    const named = <Row extends { item: string }>(rows: Row[]) =>
      rows.map((row, at) => ({ ...row, item: names[at % names.length]! }));
    const plan = { ...smallPlan, packs: named(smallPlan.packs), datedStock: named(smallPlan.datedStock) };
    const listed = (await openPage(browser, { ...data, plan })).page;
    const options = (list: string) => listed.locator(`${list} option`).allTextContents();
    expect(await options("#fleet-item")).toEqual(["Pack 1", "pack 2", "Pack 10"]);
    expect(await options("#item-choice")).toEqual(["all items", "Pack 1", "pack 2", "Pack 10"]);
    expect(await options("#filter-item")).toEqual(["all", "Pack 1", "pack 2", "Pack 10"]);
  });

  it("sorts the packs by a header and opens one pack's chart from its serial", async () => {
    const table = page.locator("#packs table");
    await table.getByRole("button", { name: "Serial" }).click();
    expect(await table.locator("th[aria-sort]").getAttribute("aria-sort")).toBe("ascending");
    expect(await table.locator("tbody tr td").first().textContent()).toBe("CP-001000");
    await table.getByRole("button", { name: "CP-001037", exact: true }).click();
    expect(await page.locator("#pack-choice").inputValue()).toBe("CP-001037");
  });

  it("narrows the packs to a site", async () => {
    await page.locator("#filter-site").selectOption("North depot");
    const places = await page.locator("#packs tbody tr td:nth-child(6)").allTextContents();
    expect(places.length).toBe(5);
    for (const place of places) expect(place).toContain("North depot");
    expect(await page.locator("#packs .count").textContent()).toBe("5 of 16 rows");
  });

  it("traces a lot to every row that bears it", async () => {
    await page.locator("#trace").fill(" cp-001037 ");
    await page.locator("#trace").press("Enter");
    const rows = page.locator("#traced table", { hasText: "Stands in" }).locator("tbody");
    await rows.waitFor();
    expect(await rows.locator("tr").count()).toBe(1);
    expect(await rows.textContent()).toContain("D-002");
    // it is in use, no spare lies on a shelf, and no catalogue tells when another can be there
    const without = await page
      .locator("#traced table", { hasText: "Lacking" })
      .locator("tbody tr > *")
      .allTextContents();
    expect(without).toEqual(["Pack A", "1", "0", "0", "0", "1", "not known"]);
    expect(await page.locator("#traced").getByRole("heading", { name: "What it takes to do without" }).count()).toBe(1);
    await page.locator("#trace").fill("no such lot");
    await page.locator("#trace").press("Enter");
    await page.locator("#traced", { hasText: /^Nothing in the sheets bears no such lot\.$/ }).waitFor();
    await page.locator("#trace").fill("CP-0010*");
    await page.locator("#trace").press("Enter");
    await rows.waitFor();
    for (const name of await rows.locator("td:nth-child(2), th").allTextContents()) expect(name).toMatch(/CP-0010/);
  });

  it("saves a chart as a picture of three times the screen's fineness", async () => {
    await chartsDrawn(page);
    const [download] = await Promise.all([
      page.waitForEvent("download"),
      page.getByRole("button", { name: "Save as a picture" }).first().click(),
    ]);
    expect(download.suggestedFilename()).toBe("how-many-devices-would-be-short.png");
    const png = readFileSync((await download.path())!);
    expect(png.subarray(1, 4).toString()).toBe("PNG");
    // Width and height stand in the header chunk, bytes 16 to 23 (PNG specification, 11.2.2).
    expect(png.readUInt32BE(16)).toBe(3 * 960);
    expect(png.readUInt32BE(20)).toBeGreaterThan(3 * 400);

    await page.locator("#pack-choice").focus();
    await page.locator("#pack-choice").selectOption("CP-001111");
    const [ofPack] = await Promise.all([
      page.waitForEvent("download"),
      page.locator("#pack").getByRole("button", { name: "Save as a picture" }).click(),
    ]);
    expect(ofPack.suggestedFilename()).toBe("how-is-one-pack-fading-cp-001111.png");
  });
});

describe("the page with a plan inside", () => {
  it("shows six sections, each under its question, with their charts drawn", async () => {
    const { page, complaints, requests } = await openPage(browser, data);
    await chartsDrawn(page);
    expect(await page.locator("section > header > .kicker").allTextContents()).toEqual([
      "Ahead",
      "Batteries",
      "Dates",
      "Orders",
      "Sheets",
      "Assumptions",
    ]);
    for (const question of await page.locator("section > header > h2").allTextContents()) {
      expect(question).toMatch(/\?$/);
    }
    expect(await page.locator("canvas").count()).toBe(6);
    expect(complaints).toEqual([]);
    expect(requests).toEqual([]);
  });

  it("shows dates in ISO form at the flick of a switch", async () => {
    const { page } = await openPage(browser, data);
    expect(await page.locator(".as-of").textContent()).toBe("As of 25 Nov 2026");
    await page.locator("#iso-dates").check();
    expect(await page.locator(".as-of").textContent()).toBe("As of 2026-11-25");
    await page
      .locator("#orders tbody", { hasText: /\d\.\d\d EUR/ })
      .first()
      .waitFor();
  });

  // By rote: days stand before German and after American months
  it.each([
    ["de-DE", "As of 25. Nov. 2026"],
    ["en-US", "As of Nov 25, 2026"],
    ["en@posix", "As of Nov 25, 2026"],
    // where another calendar is in use, whose months are others, by the plan's own
    ["th-TH", "As of 25 พ.ย. 2026"],
    ["ar-SA", "As of ٢٥ نوفمبر ٢٠٢٦"],
  ])("tells dates as a reader of %s is used to them", async (locale, asOf) => {
    const { page } = await openPage(browser, data, { locale });
    expect(await page.locator(".as-of").textContent()).toBe(asOf);
  });

  it("adds up what goes to each supplier, and opens its lines", async () => {
    const plan = structuredClone(smallPlan);
    plan.orders[0]!.supplier = "Harbour Traders";
    const { page } = await openPage(browser, { ...data, plan });
    const lines = (supplier: string) => plan.orders.filter((order) => order.supplier === supplier);
    const part = page.locator("#orders .answer", { hasText: "What goes to each supplier?" });
    for (const supplier of new Set(plan.orders.map((order) => order.supplier))) {
      const row = part.locator("tbody tr", { hasText: supplier }).first();
      expect(await row.locator("td").nth(3).textContent()).toBe(String(lines(supplier).length));
      const cost = lines(supplier).reduce((sum, { lineCost, feeShare }) => sum + lineCost + feeShare, 0) / 100;
      expect(await row.locator("td").nth(4).textContent()).toContain(
        cost.toLocaleString("en-GB", { minimumFractionDigits: 2 }),
      );
      await part.locator("summary", { hasText: supplier }).click();
      const details = part.locator("details", { hasText: supplier });
      await details
        .locator("tbody tr")
        .nth(lines(supplier).length - 1)
        .waitFor();
    }
  });

  it("moves nothing by itself, whatever motion the reader allows", async () => {
    const { page } = await openPage(browser, data, { reducedMotion: "reduce" });
    await chartsDrawn(page);
    const moving = await page.evaluate(
      () =>
        [...document.querySelectorAll("*")].filter((element) => {
          const { transitionDuration, animationName, scrollBehavior } = getComputedStyle(element);
          return transitionDuration !== "0s" || animationName !== "none" || scrollBehavior !== "auto";
        }).length + document.getAnimations().length,
    );
    expect(moving).toBe(0);
  });

  it("keeps markup that stands in a sheet as text", async () => {
    const hostile = '<img src=x onerror="document.title=1"><script>document.title=1</script>';
    const plan = structuredClone(smallPlan);
    const reading = structuredClone(smallReading);
    for (const pack of plan.packs) Object.assign(pack, { item: hostile, site: hostile, says: hostile });
    for (const unit of plan.datedStock) Object.assign(unit, { item: hostile, lot: hostile });
    for (const order of plan.orders) Object.assign(order, { item: hostile, supplier: hostile, reason: hostile });
    plan.cautions = [hostile];
    reading.setAside[0]!.cells = [hostile];
    reading.findings[0]!.message = hostile;
    const { page, complaints } = await openPage(browser, { plan, reading });
    await chartsDrawn(page);
    expect(await page.title()).toBe("Wanecast, as of 2026-11-25");
    expect(await page.locator("img, #page script").count()).toBe(0);
    expect(await page.locator(".cautions li").textContent()).toBe(hostile);
    expect(complaints).toEqual([]);
  });

  it("says of columns that whoever made the plan chose that a columns file names them, not its reader", async () => {
    const reading = structuredClone(smallReading);
    reading.inputs[0]!.columns[0]!.by = "mapping";
    const { page } = await openPage(browser, { ...data, reading });
    await page.locator("details.columns summary").click();
    const row = page.locator("details.columns tr", { hasText: "packs: serial" });
    expect(await row.locator("td").nth(3).textContent()).toBe("by a columns file");
  });
});
