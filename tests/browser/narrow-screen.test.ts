import type { Browser } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { smallPlan, smallReading } from "./fixtures/small-plan.ts";
import { openPage, startBrowser } from "./open-page.ts";

let browser: Browser;
beforeAll(async () => {
  browser = await startBrowser();
});
afterAll(() => browser.close());

describe("a sentence on a narrow screen", () => {
  it("is not broken within a name, nor between a number and its percent sign", async () => {
    const names = Array.from({ length: 30 }, (_, at) => `of pack-x-${at} ${at}.5 % fell`);
    const plan = { ...smallPlan, cautions: [`${names.join(", ")}.`] };
    const { page } = await openPage(
      browser,
      { plan, reading: smallReading },
      { viewport: { width: 320, height: 800 } },
    );
    const broken = await page.locator(".cautions li").evaluate((sentence) => {
      const found: string[] = [];
      const texts = document.createTreeWalker(sentence, NodeFilter.SHOW_TEXT);
      for (let text = texts.nextNode(); text; text = texts.nextNode())
        for (const { 0: word, index } of text.textContent!.matchAll(/pack-x-\d+|\d+\.5 %/g)) {
          const range = document.createRange();
          range.setStart(text, index);
          range.setEnd(text, index + word.length);
          if (range.getClientRects().length > 1) found.push(word);
        }
      return found;
    });
    expect(broken).toEqual([]);
  });
});
