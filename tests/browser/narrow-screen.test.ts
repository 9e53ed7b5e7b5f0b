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
    const told = `${names.join(", ")}.`;
    const [order] = smallPlan.orders;
    const plan = { ...smallPlan, cautions: [told], orders: [{ ...order!, reason: told }] };
    const { page } = await openPage(
      browser,
      { plan, reading: smallReading },
      { viewport: { width: 320, height: 800 } },
    );
    const sentences = page.locator(".cautions li, #orders .under").filter({ hasText: "pack-x-29" });
    expect(await sentences.count()).toBe(2);
    const broken = await sentences.evaluateAll((all) => {
      const found: string[] = [];
      for (const sentence of all) {
        const texts = document.createTreeWalker(sentence, NodeFilter.SHOW_TEXT);
        for (let text = texts.nextNode(); text; text = texts.nextNode())
          for (const { 0: word, index } of text.textContent!.matchAll(/pack-x-\d+|\d+\.5 %/g)) {
            const range = document.createRange();
            range.setStart(text, index);
            range.setEnd(text, index + word.length);
            if (range.getClientRects().length > 1) found.push(word);
          }
      }
      return found;
    });
    expect(broken).toEqual([]);
  });
});
