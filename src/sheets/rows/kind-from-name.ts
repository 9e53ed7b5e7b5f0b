import type { Source } from "../../fleet/rows.ts";
import type { FindingLog } from "../finding-log.ts";
import { parseHeader } from "../words/parse-header.ts";

/** The kind of item that a thing of the vocabulary is. */
const KIND_OF_THING: Record<string, string> = {
  battery: "pack",
  pads: "pads",
  gel: "gel",
  paper: "paper",
  sensor: "sensor",
};

/** Fills a catalogue row's blank kind where its item's name says it ("Adult pads"), with a finding. */
export function kindFromName(values: Record<string, unknown> & { source: Source }, log: FindingLog): void {
  const item = typeof values.item === "string" ? values.item : "";
  const kinds = parseHeader(item)
    .things.split(" ")
    .flatMap((thing) => KIND_OF_THING[thing] ?? []);
  // "Battery for pads" names two things: then the name does not say it.
  if (kinds.length !== 1) return;
  values.kind = kinds[0];
  const { file, sheet, line } = values.source;
  log.add("kind-from-name", { file, sheet, line, column: null, value: item }, () => ({
    message: `"${item.slice(0, 60)}" has no kind in the catalogue and was taken for ${kinds[0]} by its name.`,
  }));
}
