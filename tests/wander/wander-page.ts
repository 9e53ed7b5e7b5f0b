// Does at random what a reader may do on the page, and tells what it complains of: npm run wander -- [SECONDS] [SEED]
import { pathToFileURL } from "node:url";
import type { Locator, Page } from "playwright-core";
import { seededRandom } from "../../src/maths/random.ts";
import { findChromium } from "../browser/find-chromium.ts";
import { launchChromium } from "../browser/launch-chromium.ts";

const SECONDS = Number(process.argv[2] ?? 120);
const SEED = Number(process.argv[3] ?? 1);
const WIDTHS = [320, 390, 768, 1024, 1440];
const KEYS = ["Tab", "Shift+Tab", "Enter", "Space", "Escape", "ArrowDown", "ArrowRight", "End", "Home"];
/** What may be typed anywhere: numbers, days, labels, and what is none of these. */
const TEXTS = ["", "0", "-1", "1e9", "abc", "12,5", "80", "0.9", "2027-02-30", "2027-05-01", "=1+1", "<b>x</b>"].concat(
  ["(01)09501101530003(17)270531(10)A1", "]C101095011015300031727053110A1", "pads-adult", "M22-001", "  ", "12 345"],
);
const PRESSED = "button:visible, summary:visible, a[href^='#']:visible, label:visible";
const TYPED = "input:visible:not([type=file], [type=checkbox]), textarea:visible";
/** An element that went or was covered before the hand came to it. */
const MISSED = /Timeout|detached|not visible|not stable|intercepts|not an? /;
const PATIENCE_MS = 800;
const REMEMBERED = 6;

const random = seededRandom(SEED);
const whole = (below: number) => Math.floor(random.uniform() * below);
const pick = <T>(of: readonly T[]) => of[whole(of.length)] as T;

const done: string[] = [];
let complaints = 0;

function complain(what: string): void {
  complaints += 1;
  console.log(`${what}\n  after ${done.slice(-REMEMBERED).join(" > ")}`);
}

const anyOf = async (all: Locator) => all.nth(whole(await all.count()));

/** What a reader does, each as often as the others. */
const ACTIONS: ((page: Page) => Promise<void>)[] = [
  async (page) => {
    const at = await anyOf(page.locator(PRESSED));
    done.push(`press ${(await at.textContent({ timeout: PATIENCE_MS }))?.trim().slice(0, 40)}`);
    await at.click({ timeout: PATIENCE_MS });
  },
  async (page) => {
    const at = await anyOf(page.locator("select:visible"));
    const value = pick(await at.evaluate((select: HTMLSelectElement) => [...select.options].map((one) => one.value)));
    done.push(`choose ${value}`);
    await at.selectOption(value, { timeout: PATIENCE_MS });
  },
  async (page) => {
    const at = await anyOf(page.locator(TYPED));
    if ((await at.getAttribute("type")) === "range") {
      done.push("walk along a chart");
      await at.focus();
      for (const key of ["ArrowLeft", "Home", "ArrowRight", "PageUp", "End"]) await page.keyboard.press(key);
      return;
    }
    const text = pick(TEXTS);
    done.push(`type ${text} into ${await at.getAttribute("id")}`);
    await at.fill(text, { timeout: PATIENCE_MS });
    await page.keyboard.press(pick(["Enter", "Tab", "Escape"]));
  },
  async (page) => {
    const key = pick(KEYS);
    done.push(`key ${key}`);
    await page.keyboard.press(key);
  },
  async (page) => {
    const width = pick(WIDTHS);
    done.push(`width ${width}`);
    await page.setViewportSize({ width, height: 900 });
  },
  async (page) => {
    if (whole(REMEMBERED) > 0) return;
    done.push("reload");
    await page.reload();
    await page.locator("#assumptions").waitFor();
  },
];

/** Text that only a program would say. */
function slipIn(page: Page): Promise<string | null> {
  return page.evaluate(() => {
    const text = document.getElementById("page")!.textContent;
    const slip = /\b(undefined|NaN|null|Infinity)\b|\[object/.exec(text);
    return slip === null ? null : text.slice(Math.max(0, slip.index - 60), slip.index + 40);
  });
}

async function wander(): Promise<void> {
  const browser = await launchChromium(await findChromium());
  const page = await browser.newPage({ locale: "en-GB" });
  page.on("pageerror", (error) => complain(error.stack ?? error.message));
  page.on("console", (message) => {
    if (message.type() === "error" || message.type() === "warning") complain(message.text());
  });
  page.on("request", (request) => {
    if (!/^(file|blob|data):/.test(request.url())) complain(`asked the network for ${request.url()}`);
  });
  await page.addInitScript(() => {
    window.print = () => {};
  });
  await page.goto(pathToFileURL("dist/page.html").href);
  await page.locator("#try-sample").click();
  await page.locator("#assumptions").waitFor();
  const end = Date.now() + SECONDS * 1000;
  while (Date.now() < end) {
    await pick(ACTIONS)(page).catch((error: Error) => {
      if (!MISSED.test(error.message)) complain(error.message);
    });
    await page.waitForTimeout(pick([10, 50, 300]));
    const slip = await slipIn(page).catch(() => null);
    if (slip !== null) complain(`says: ${slip}`);
  }
  await browser.close();
  console.log(`${done.length} actions in ${SECONDS} s, seed ${SEED}: ${complaints} complaints`);
  if (complaints > 0) process.exitCode = 1;
}

await wander();
