import type { Browser } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { smallPlan, smallReading } from "./fixtures/small-plan.ts";
import { sheet } from "./fixtures/small-sheets.ts";
import { chartsDrawn, openPage, startBrowser } from "./open-page.ts";
import { planned } from "./page-actions.ts";
import { pdfPages } from "./pdf-text.ts";

const data = { plan: smallPlan, reading: smallReading };

let browser: Browser;
beforeAll(async () => {
  browser = await startBrowser();
});
afterAll(() => browser.close());

const csv = (name: string, header: string, ...lines: string[]) => sheet(name, header, lines);
const POLICY = csv("policy.csv", "key,value", "as_of,2026-11-01");

describe("the page with a plan inside, on paper", () => {
  it("prints as a report: cautions and as-of on every page, charts and tables in words, no controls", async () => {
    const plan = structuredClone(smallPlan);
    plan.packs = Array.from({ length: 2500 }, (_, index) => ({ ...plan.packs[0]!, serial: `made up ${index}` }));
    const { page } = await openPage(browser, { ...data, plan }, { colorScheme: "dark" });
    await chartsDrawn(page);
    for (const format of ["A4", "Letter"]) {
      const pages = pdfPages(await page.pdf({ format }));
      expect(pages.length).toBeGreaterThanOrEqual(4);
      expect(pages.length).toBeLessThanOrEqual(14);
      pages.forEach((text, index) => {
        expect(text).toContain("itdoesnottest,clearorcondemnanydevice.Asof25Nov2026.");
        expect(text).toContain(`${index + 1}/${pages.length}`);
      });
      const whole = pages.join("");
      expect(whole).toContain("Thefirst40of2,500rows;therestisinpacks.csv.");
      // A key's name, for programs, breaks in the narrow column.
      expect(whole).toContain("Swapbeforeexpiry");
      expect(whole).not.toContain("swap_before");
      for (const words of ["Planning sheet", "What has to be ordered, and by which day?", "Before you rely on this"]) {
        expect(whole).toContain(words.replaceAll(" ", ""));
      }
      for (const { item, lineCost, reason } of plan.orders) {
        expect(whole).toContain(item.replaceAll(" ", ""));
        expect(whole).toContain(reason.replaceAll(" ", ""));
        expect(whole).toContain((lineCost / 100).toLocaleString("en-GB", { minimumFractionDigits: 2 }));
      }
      expect(whole).not.toContain("Printthisreport");
      expect(whole).not.toContain("Saveasapicture");
    }
  });

  it("says on paper that the report is incomplete as long as a part of it is still being made", async () => {
    const { page } = await openPage(browser, data);
    const paper = async () => pdfPages(await page.pdf({ format: "A4" })).join("");
    const words = "Incomplete:printthisagain.";
    expect(await paper()).not.toContain(words);
    const meanwhile = await page.evaluate(() => {
      document.querySelector<HTMLInputElement>("#iso-dates")!.click();
      return document.querySelector<HTMLElement>("#plan")!.dataset.unfinished!;
    });
    expect(meanwhile.replaceAll(" ", "")).toBe(words);
    await page.locator("#plan[data-unfinished='']").waitFor();
    await page.evaluate((said) => {
      document.querySelector<HTMLElement>("#plan")!.dataset.unfinished = said;
    }, meanwhile);
    expect(await paper()).toContain(words);
  });

  it("prints by its own button once every part is there", async () => {
    const { page } = await openPage(browser, data);
    const atPrint = await page.evaluate(
      () =>
        new Promise((done) => {
          const unfinished = () => document.querySelector<HTMLElement>("#plan")!.dataset.unfinished;
          window.print = () => done(unfinished());
          document.querySelector<HTMLInputElement>("#iso-dates")!.click();
          if (unfinished() === "") done("the plan was there at once");
          [...document.querySelectorAll("button")]
            .find((button) => button.textContent === "Print this report")!
            .click();
        }),
    );
    expect(atPrint).toBe("");
  });

  it("has every chart ready for paper in dark ink on a dark screen too, and draws at once what is not ready", async () => {
    const { page } = await openPage(browser, data, { colorScheme: "dark" });
    await chartsDrawn(page);
    const papers = page.locator(".paper");
    const charts = await page.locator(".plot canvas").count();
    expect(await papers.count()).toBe(charts);
    await page.evaluate(() => window.dispatchEvent(new Event("beforeprint")));
    expect(await page.locator(".paper > :is(img, canvas)").count()).toBe(charts);
    const { page: quiet } = await openPage(browser, data, { colorScheme: "dark" });
    await quiet.waitForFunction(
      (count) => count > 0 && document.querySelectorAll(".paper > img").length === count,
      charts,
    );
    // an axis is ruled in --soft of web/style/page.css, which is another for dark screens
    const rules = await quiet.evaluate(() =>
      [...document.querySelectorAll<HTMLImageElement>(".paper > img")].map((image) => {
        const canvas = document.createElement("canvas");
        [canvas.width, canvas.height] = [image.naturalWidth, image.naturalHeight];
        const pen = canvas.getContext("2d")!;
        pen.drawImage(image, 0, 0);
        const bytes = pen.getImageData(0, 0, canvas.width, canvas.height).data;
        return bytes.some(
          (red, at) => at % 4 === 0 && red === 0x5b && bytes[at + 1] === 0x57 && bytes[at + 2] === 0x4e,
        );
      }),
    );
    expect(rules).toEqual(rules.map(() => true));
  });
});

describe("a report of which a section begins low on a page", () => {
  it("keeps each chart's question with its caption", async () => {
    const fifteen = Array.from({ length: 15 }, (_, at) => at + 1);
    const { page } = await openPage(browser, null);
    await page
      .locator("input[data-chooses=files]")
      .setInputFiles([
        csv(
          "packs.csv",
          "serial,item,device,made,in_service",
          ...fifteen.map((n) => `Q${n},pump pack,P${n},${2019 + (n % 5)}-02-01,${2019 + (n % 5)}-04-01`),
        ),
        csv(
          "tests.csv",
          "serial,date,percent",
          ...[2024, 2025, 2026].flatMap((year) =>
            fifteen.map((n) => `Q${n},${year}-06-03,${97 - 3 * (year - 2019 - (n % 5))}`),
          ),
        ),
        csv(
          "stock.csv",
          "item,lot,expiry,quantity,place",
          ...fifteen.map((n) => `line set,S${n},2027-${String((n % 12) + 1).padStart(2, "0")}-15,10,P${n}`),
        ),
        POLICY,
      ]);
    await planned(page);
    // charts are moved on whole, whatever stands above: from full pages to nearly empty ones
    for (const above of [0, 50, 100, 150, 200, 250]) {
      await page.locator("#pack").evaluate((part, px) => {
        (part as HTMLElement).style.paddingTop = `${px}px`;
      }, above);
      const pages = pdfPages(await page.pdf({ format: "A4" }));
      const at = pages.findIndex((text) => text.includes("Howmanyunitsfalldueineachmonth?"));
      expect(pages[at], `${above} px lower`).toContain("Aunitfallsdue14daysbeforeitexpires");
    }
  });
});

describe("a list to take along", () => {
  it("prints by itself, with the caution at its foot", async () => {
    const stock = Array.from({ length: 40 }, (_, at) => `pads-a,2027-0${1 + (at % 6)}-28,L${at},1,Post ${at}`);
    const { page } = await openPage(browser, null);
    await page
      .locator("input[data-chooses=files]")
      .setInputFiles([
        csv("devices.csv", "device,type,site", ...stock.map((_, at) => `Post ${at},monitor,Harbour`)),
        csv("dated_stock.csv", "item,expiry,lot,quantity,place", ...stock),
        csv("policy.csv", "key,value", "as_of,2026-11-01", "swaps_per_month,8"),
      ]);
    await planned(page);
    await page.evaluate(() => {
      window.print = () => {};
    });
    const list = page.locator("#dates .answer", { hasText: "What is swapped, and where?" });
    await list.getByRole("button", { name: "Print this list alone" }).click();
    const pages = pdfPages(await page.pdf({ format: "A4" }));
    const text = pages.join("");
    expect(text).toContain("Whatisswapped,andwhere?");
    // Every row, whatever the screen shows of them.
    for (const at of [0, 25, 39]) expect(text).toContain(`Post${at}`);
    expect(text).not.toContain("Whatdoesthefleetneednext?");
    for (const one of pages) expect(one).toContain("Planningaidonly");
    // A recall takes along where its lot stands, device and site.
    await page.locator("#trace").fill("L7");
    await page.locator("#trace").press("Enter");
    const traced = page.locator("#traced", { hasText: "1 unit at 1 place." });
    await traced.getByRole("button", { name: "Print this list alone" }).click();
    const recall = pdfPages(await page.pdf({ format: "A4" })).join("");
    expect(recall).toContain("1rowbearsL7");
    expect(recall).toContain("Post7,Harbour");
    expect(recall).not.toContain("Whatisswapped,andwhere?");
    // What is printed next is the whole report again.
    const report = pdfPages(await page.pdf({ format: "A4" })).join("");
    expect(report).toContain("Whatdoesthefleetneednext?");
    // The schedule of the units is not cut for the sake of its last ten.
    expect(report).not.toContain("of40rows");
  });
});
