import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import type { Browser, BrowserContextOptions, Page } from "playwright-core";
import { inject, onTestFinished, TestRunner } from "vitest";
import { embedInPage } from "../../src/out/embed-in-page.ts";
import type { Plan } from "../../src/out/plan-schema.ts";
import type { Reading } from "../../src/sheets/reading.ts";
import { folderWith } from "../folders.ts";
import { launchChromium } from "./launch-chromium.ts";

const BUILT = "dist/page.html";

/** How long a test waits for what it asks for: the sample's plan takes its time on a busy machine. */
const PATIENCE_MS = 110_000;

/** Starts the browser that the global set-up found. */
export function startBrowser(): Promise<Browser> {
  return launchChromium(inject("chromiumPath"));
}

/** The built page, as text. */
export function builtPage(): string {
  if (!existsSync(BUILT)) throw new Error(`${BUILT} is missing: run "npm run build" first.`);
  return readFileSync(BUILT, "utf8");
}

/** A page opened from disk, with everything that it complained of or asked the network for. */
export interface OpenedPage {
  page: Page;
  complaints: string[];
  requests: string[];
}

/**
 * Opens the empty page, or the page with a plan inside, from a file. What a test opens is closed with it: a page left open
 * goes on with what it does in its idle time, beside the next test.
 */
export async function openPage(
  browser: Browser,
  data: { plan: Plan; reading: Reading } | null,
  context: BrowserContextOptions = {},
): Promise<OpenedPage> {
  const html = data ? embedInPage(builtPage(), data.plan, data.reading) : builtPage();
  const path = join(folderWith({ "page.html": html }), "page.html");
  const opens = await browser.newContext({ locale: "en-GB", ...context });
  opens.setDefaultTimeout(PATIENCE_MS);
  if (TestRunner.getCurrentTest() !== undefined) onTestFinished(() => opens.close());
  const page = await opens.newPage();
  const opened: OpenedPage = { page, complaints: [], requests: [] };
  page.on("console", (message) => {
    if (message.type() === "error" || message.type() === "warning") opened.complaints.push(message.text());
  });
  page.on("pageerror", (error) => opened.complaints.push(error.message));
  page.on("request", (request) => {
    // The page itself, and what it carries inside, are no network.
    if (!/^(file|blob|data):/.test(request.url())) opened.requests.push(request.url());
  });
  await page.goto(pathToFileURL(path).href);
  await page.locator(data ? "#plan[data-unfinished='']" : "h1").waitFor();
  return opened;
}

/** Waits until every part of the page is there and every chart of it is drawn. */
export async function chartsDrawn(page: Page): Promise<void> {
  await page.waitForFunction(
    () =>
      document.querySelector<HTMLElement>("#plan")?.dataset.unfinished === "" &&
      [...document.querySelectorAll("canvas")].every((canvas) => canvas.style.display === "block" && canvas.width > 0),
  );
}
