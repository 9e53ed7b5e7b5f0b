import { execFileSync } from "node:child_process";
import { mkdtempSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { findChromium } from "../../tests/browser/find-chromium.ts";
import { launchChromium } from "../../tests/browser/launch-chromium.ts";

/** The README's pictures: what each shows, by the section of the page and how much of it. */
const PICTURES = [
  { name: "ahead", section: "#ahead", height: 845 },
  { name: "batteries", section: "#batteries", height: 625 },
];
const WIDTH = 1000;

/** Takes the README's pictures of the page with the sample fleet's plan inside. */
async function takePictures(): Promise<void> {
  const folder = mkdtempSync(join(tmpdir(), "pictures-"));
  execFileSync("node", ["dist/wanecast.cjs", "page", "sample-data", "--out", folder]);
  const browser = await launchChromium(await findChromium());
  const page = await browser.newPage({
    viewport: { width: WIDTH, height: 1600 },
    colorScheme: "light",
    locale: "en-GB",
  });
  await page.goto(pathToFileURL(join(folder, "page.html")).href);
  await page.addStyleTag({ content: "nav { position: static !important }" });
  await page.waitForTimeout(2000);
  for (const { name, section, height } of PICTURES) {
    const at = page.locator(section);
    await at.scrollIntoViewIfNeeded();
    await page.waitForTimeout(1000);
    const box = await at.boundingBox();
    if (box === null) throw new Error(`The page has no ${section}.`);
    await page.screenshot({
      path: `web/pictures/${name}.png`,
      fullPage: true,
      clip: {
        x: 0,
        y: box.y + (await page.evaluate(() => scrollY)) - 20,
        width: WIDTH,
        height: Math.min(height, box.height + 40),
      },
    });
  }
  await browser.close();
}

void takePictures();
