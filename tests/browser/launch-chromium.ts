import { type Browser, chromium } from "playwright-core";

/** Starts the browser at a path as tests and pictures need it: in a container, without a screen. */
export function launchChromium(executablePath: string): Promise<Browser> {
  return chromium.launch({ executablePath, args: ["--no-sandbox", "--disable-gpu", "--disable-dev-shm-usage"] });
}
