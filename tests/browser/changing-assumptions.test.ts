import type { Browser } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { smallPlan, smallReading } from "./fixtures/small-plan.ts";
import { SMALL_SHEETS } from "./fixtures/small-sheets.ts";
import { openPage, startBrowser } from "./open-page.ts";
import { planned, reloaded, saved } from "./page-actions.ts";

let browser: Browser;
beforeAll(async () => {
  browser = await startBrowser();
});
afterAll(() => browser.close());

describe("a plan in the page", () => {
  it("plans anew when an assumption changes, shows what changed, and goes back", async () => {
    const { page } = await openPage(browser, null);
    await page.locator("input[data-chooses=files]").setInputFiles(SMALL_SHEETS);
    await planned(page);
    const before = await saved(page, "orders.csv");
    await page.locator("#trace").fill("L1");
    await page.locator("#trace").press("Enter");
    await page.locator("#traced table", { hasText: "Stands in" }).waitFor();
    const serial = await page.locator("#packs tbody button.link").last().textContent();
    await page.locator("#packs tbody button.link").last().click();

    const input = page.locator("#policy-end_of_life_percent");
    await input.fill("90");
    const place = await input.boundingBox();
    await input.press("Enter");
    await page.locator(".status", { hasText: "What did the change bring?" }).waitFor();
    // What was changed stays where it stands on the screen, and what was looked for stands there again.
    expect((await input.boundingBox())?.y).toBeCloseTo(place!.y, 0);
    expect(await page.locator("#traced table", { hasText: "Stands in" }).locator("tbody tr").count()).toBe(2);
    expect(await page.locator("#pack-choice").inputValue()).toBe(serial);
    expect(await page.locator(".changed").textContent()).toContain("Planned spend, fiscal year 2026");
    const assumed = page.locator(".changed tr", { hasText: "Assumed: End of life" });
    expect(await assumed.locator("td").allTextContents()).toEqual([
      "Assumed: End of life, % of rated capacity",
      "80",
      "90",
      "–",
    ]);
    expect((await saved(page, "orders.csv")).equals(before)).toBe(false);

    await page.locator("#reset-assumptions").click();
    await page.locator("#reset-assumptions").waitFor({ state: "detached" });
    expect((await saved(page, "orders.csv")).equals(before)).toBe(true);
  });

  it("says why a value cannot be used and keeps the plan", async () => {
    const { page } = await openPage(browser, null);
    await page.locator("input[data-chooses=files]").setInputFiles(SMALL_SHEETS);
    await planned(page);
    await page.locator("#policy-service_level").fill("very high");
    await page.locator("#policy-service_level").press("Enter");
    await page.locator(".problems").waitFor();
    expect(await page.locator(".problems").textContent()).toContain("service_level");
    // It stands there still, to be mended; cleared, it is asked for no longer.
    expect(await page.locator("#policy-service_level").inputValue()).toBe("very high");
    await page.locator("#policy-service_level").fill("");
    await page.locator("#policy-service_level").press("Enter");
    await page.locator(".problems").waitFor({ state: "detached" });
    expect(await page.locator("#policy-service_level").inputValue()).toBe("0.95");
  });

  it("takes a value as the program does: with a decimal comma, in percent, a day as it is written", async () => {
    const { page } = await openPage(browser, null);
    await page.locator("input[data-chooses=files]").setInputFiles(SMALL_SHEETS);
    await planned(page);
    for (const [typed, now] of [
      ["0,9", "0.9"],
      ["85 %", "0.85"],
    ] as const) {
      await page.locator("#policy-service_level").fill(typed);
      await page.locator("#policy-service_level").press("Enter");
      await page
        .locator(".changed tr", { hasText: "Assumed: Service level" })
        .getByText(now, { exact: true })
        .waitFor();
    }
    await page.locator("#policy-as_of").fill("13 December 2026");
    await page.locator("#policy-as_of").press("Enter");
    await page.locator(".masthead", { hasText: "13 Dec 2026" }).waitFor();
    expect(await page.locator(".problems").count()).toBe(0);
  });

  it("is found again after a reload, and not after it was forgotten", async () => {
    const { page } = await openPage(browser, null);
    await page.locator("input[data-chooses=files]").setInputFiles(SMALL_SHEETS);
    await planned(page);
    await page.locator("#policy-horizon_months").fill("24");
    await page.locator("#policy-horizon_months").press("Enter");
    await page.locator(".changed").waitFor();
    await reloaded(page);
    await planned(page);
    expect(await page.locator("#policy-horizon_months").inputValue()).toBe("24");

    await page.locator("#forget").click();
    await page.locator(".status", { hasText: "Forgotten" }).waitFor();
    // The keyboard stays where the button was, and nothing is said to be kept, also once the report is drawn anew.
    expect(await page.evaluate(() => document.activeElement?.textContent)).toContain("Forgotten");
    const kept = page.locator("#sheets", { hasText: "so that a reload finds them" });
    expect(await kept.count()).toBe(0);
    await page.locator("#iso-dates").check();
    await page.locator("#orders", { hasText: "2026-" }).waitFor();
    await planned(page);
    expect(await kept.count()).toBe(0);
    await reloaded(page);
    await page.locator("#try-sample").waitFor();
    expect(await page.locator("#assumptions").count()).toBe(0);
  });

  it("that came inside the page is planned anew after a reload, and no file is said to be read", async () => {
    const { page } = await openPage(browser, { plan: smallPlan, reading: smallReading });
    await page.addInitScript(() => {
      const said = new Set<string>();
      Object.assign(window, { said });
      const hear = () => said.add(document.querySelector(".status")?.textContent ?? "");
      new MutationObserver(hear).observe(document, { subtree: true, childList: true, characterData: true });
    });
    await page.locator("#policy-swap_before_expiry_days").fill("21");
    await page.locator("#policy-swap_before_expiry_days").press("Enter");
    await page.locator(".status", { hasText: "The plan is ready" }).waitFor();
    await reloaded(page);
    await page.locator(".status", { hasText: "is back" }).waitFor();
    const said = await page.evaluate(() => [...(window as unknown as { said: Set<string> }).said].join());
    expect(said).toContain("Planning anew");
    expect(said).not.toContain("Reading");
  });

  it("takes assumptions from a colleague's policy file and leaves the fleet as it is", async () => {
    const { page } = await openPage(browser, null);
    await page.locator("input[data-chooses=files]").setInputFiles(SMALL_SHEETS);
    await planned(page);
    const devices = await page.locator(".masthead .facts").nth(1).textContent();
    await page.locator("input[data-chooses=files]").setInputFiles({
      name: "policy.csv",
      mimeType: "text/csv",
      buffer: Buffer.from("key,value\nservice_level,0.8\n"),
    });
    await page.locator(".changed").waitFor();
    expect(await page.locator("#policy-service_level").inputValue()).toBe("0.8");
    expect(await page.locator(".masthead .facts").nth(1).textContent()).toBe(devices);
  });

  it("carries the assumptions in a link, and says of a value that cannot be used why not", async () => {
    const { page } = await openPage(browser, null, { permissions: ["clipboard-read", "clipboard-write"] });
    await page.locator("input[data-chooses=files]").setInputFiles(SMALL_SHEETS);
    await planned(page);
    await page.locator("#policy-service_level").fill("0.8");
    await page.locator("#policy-service_level").press("Enter");
    await page.locator("#copy-link").click();
    await page.getByText("Copied.").waitFor();
    const link = await page.evaluate(() => navigator.clipboard.readText());
    expect(link).toBe(`${page.url()}#with?service_level=0.8`);

    // as on a page that is served without encryption
    await page.evaluate(() => Object.defineProperty(navigator, "clipboard", { value: undefined }));
    await page.locator("#copy-link").click();
    expect(await page.getByText("Copy it from here:").locator("a").getAttribute("href")).toBe(link);

    await page.goto(`${link}&horizon_months=many&serial=P1`);
    await page.locator(".problems", { hasText: "horizon_months" }).waitFor();
    expect(await page.locator("#policy-service_level").inputValue()).toBe("0.8");
    expect(page.url()).not.toContain("#");

    const other = (await openPage(browser, null)).page;
    await other.goto(`${other.url()}#with?service_level=0.7`);
    await other.locator(".status", { hasText: "1 assumption was taken from the link." }).waitFor();
    await other.locator("input[data-chooses=files]").setInputFiles(SMALL_SHEETS);
    await planned(other);
    expect(await other.locator("#policy-service_level").inputValue()).toBe("0.7");
  });

  it("compares every change with a plan that was kept for it", async () => {
    const { page } = await openPage(browser, null);
    await page.locator("input[data-chooses=files]").setInputFiles(SMALL_SHEETS);
    await planned(page);
    await page.locator("#keep-plan").click();
    for (const percent of ["85", "90"]) {
      await page.locator("#policy-end_of_life_percent").fill(percent);
      await page.locator("#policy-end_of_life_percent").press("Enter");
      await page.locator(".status", { hasText: "ready" }).waitFor();
    }
    await page.locator("#policy-end_of_life_percent").fill("80");
    await page.locator("#policy-end_of_life_percent").press("Enter");
    await page.locator(".changed", { hasText: "The plan is the same as before." }).waitFor();
  });

  it("finds the plan to compare with again after a reload, until it is let go or forgotten", async () => {
    const { page } = await openPage(browser, null);
    await page.locator("input[data-chooses=files]").setInputFiles(SMALL_SHEETS);
    await planned(page);
    const row = page.locator(".changed tr", { hasText: "End of life" });
    const change = async (percent: string) => {
      await page.locator("#policy-end_of_life_percent").fill(percent);
      await page.locator("#policy-end_of_life_percent").press("Enter");
      await row.filter({ hasText: percent }).waitFor();
      return row.locator("td").allTextContents();
    };
    const again = async () => {
      await reloaded(page);
      await planned(page);
    };
    await page.locator("#keep-plan").click();
    await page.getByText("Changes are compared with the plan that you kept.").waitFor();
    expect((await change("90")).slice(1, 3)).toEqual(["80", "90"]);
    await again();
    await row.waitFor();
    expect(await page.locator("#keep-plan").textContent()).toBe("Compare with the last change again");
    expect((await change("85")).slice(1, 3)).toEqual(["80", "85"]);

    await page.locator("#keep-plan").click();
    await page.locator("#keep-plan", { hasText: "Keep this plan" }).waitFor();
    await again();
    expect(await page.locator(".changed").count()).toBe(0);
    expect((await change("88")).slice(1, 3)).toEqual(["85", "88"]);

    await page.locator("#keep-plan").click();
    await page.getByText("Changes are compared with the plan that you kept.").waitFor();
    await page.locator("#forget").click();
    await page.locator(".status", { hasText: "Forgotten" }).waitFor();
    await reloaded(page);
    await page.locator("input[data-chooses=files]").setInputFiles(SMALL_SHEETS);
    await planned(page);
    expect(await page.locator("#keep-plan").textContent()).toBe("Keep this plan to compare with");
  });

  it("says so where the browser keeps no plan to compare with", async () => {
    const { page } = await openPage(browser, null);
    await page.locator("input[data-chooses=files]").setInputFiles(SMALL_SHEETS);
    await planned(page);
    await page.evaluate(() => {
      IDBObjectStore.prototype.put = () => {
        throw new DOMException("no room", "QuotaExceededError");
      };
    });
    await page.locator("#keep-plan").click();
    await page.locator(".status", { hasText: "after a reload there is no plan to compare with" }).waitFor();
  });
});
