import type { NamedBytes } from "./intake.ts";

const sheets = import.meta.glob<string>("../../sample-data/*.csv", { query: "?raw", import: "default", eager: true });

/** The sample's sheets, carried inside the page. */
export function sampleFiles(): NamedBytes[] {
  return Object.entries(sheets).map(([path, text]) => ({
    name: path.slice(path.lastIndexOf("/") + 1),
    bytes: new TextEncoder().encode(text),
    fromFolder: true,
  }));
}
