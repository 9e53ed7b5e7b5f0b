import { counted, countText } from "../fleet/count-text.ts";
import type { Reading } from "../sheets/reading.ts";
import { findingLines, setAsideLines } from "./finding-lines.ts";
import { joinLines, section, type TextSetting } from "./text-section.ts";

/** How label scans were read: how many, and what was wrong with which. */
export function scanText(reading: Reading, setting: TextSetting): string {
  const { rows = 0, used = 0 } = reading.inputs[0] ?? {};
  const counts = `${counted(rows, "scan")}: ${countText(used)} used, ${countText(rows - used)} set aside.`;
  return joinLines([
    rows === 0 ? "No scan came on standard input." : counts,
    ...section("Scans set aside", setAsideLines(reading, setting.width), setting),
    ...section("Findings", findingLines(reading, setting.width), setting),
  ]);
}
