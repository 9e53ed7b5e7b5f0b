import { readFileSync } from "node:fs";
import type { Page } from "playwright-core";
import { expect } from "vitest";
import { chartsDrawn } from "./open-page.ts";

/** Waits until a plan stands on the page. */
export async function planned(page: Page): Promise<void> {
  await page.locator("#assumptions").waitFor();
  await chartsDrawn(page);
}

/** Opens the page anew once it is at rest: while it works, what was changed last may not be kept yet. */
export async function reloaded(page: Page): Promise<void> {
  await page.locator(".status button").waitFor({ state: "detached" });
  await page.reload();
}

/** What is downloaded when something is clicked. */
export async function savedBy(page: Page, selector: string): Promise<Buffer> {
  const [download] = await Promise.all([page.waitForEvent("download"), page.locator(selector).click()]);
  return readFileSync((await download.path())!);
}

/** What the download behind a button holds. */
export async function saved(page: Page, button: string): Promise<Buffer> {
  const [download] = await Promise.all([
    page.waitForEvent("download"),
    page.getByRole("button", { name: button, exact: true }).click(),
  ]);
  expect(download.suggestedFilename()).toBe(button);
  return readFileSync((await download.path())!);
}
