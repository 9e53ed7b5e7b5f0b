import { pathToFileURL } from "node:url";
import { gzipSync } from "node:zlib";
import type { Browser } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { builtPage, openPage, startBrowser } from "./open-page.ts";

let browser: Browser;
beforeAll(async () => {
  browser = await startBrowser();
});
afterAll(() => browser.close());

describe("the page without a plan", () => {
  it("opens from disk without a complaint and without asking the network for anything", async () => {
    const { page, complaints, requests } = await openPage(browser, null);
    await page.locator("#try-sample").waitFor();
    expect(complaints).toEqual([]);
    expect(requests).toEqual([]);
  });

  it("says what it is for, which sheets it reads, and its cautions", async () => {
    const { page } = await openPage(browser, null);
    const text = await page.locator("#page").textContent();
    expect(text).toContain("by which day must it be ordered?");
    expect(text).toContain("runtime tests");
    expect(text).toContain("This is a planning aid only. It does not test, clear or condemn any device.");
  });

  // Bars of the owner's: 700 KB as it is and 230 KB compressed.
  it("is small enough to be mailed around", () => {
    const html = builtPage();
    expect(html.length).toBeLessThanOrEqual(700_000);
    expect(gzipSync(html, { level: 9 }).length).toBeLessThanOrEqual(230_000);
  });

  it("says so where a browser is too old to unpack it", async () => {
    const page = await (await browser.newContext()).newPage();
    await page.addInitScript(() => Reflect.deleteProperty(window, "DecompressionStream"));
    await page.goto(pathToFileURL("dist/page.html").href);
    await page.getByText("This page needs a newer browser: one of 2023 or later.").waitFor();
  });

  it("forbids every connection by its own security policy", async () => {
    const { page } = await openPage(browser, null);
    const refused = await page.evaluate(() =>
      fetch("https://example.org/").then(
        () => "connected",
        () => "refused",
      ),
    );
    expect(refused).toBe("refused");
  });
});
