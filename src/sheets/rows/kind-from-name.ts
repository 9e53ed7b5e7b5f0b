import type { Source } from "../../fleet/rows.ts";
import { shortened } from "../../fleet/shortened.ts";
import type { FindingLog } from "../finding-log.ts";
import { kindNamed } from "../values/choice-words.ts";

/**
 * Fills a catalogue row's blank kind where its item's name says it ("Adult pads"), or the description beside its number,
 * with a finding.
 */
export function kindFromName(
  values: Record<string, unknown> & { source: Source },
  description: string,
  log: FindingLog,
): void {
  const item = typeof values.item === "string" ? values.item : "";
  const kind = kindNamed(item) ?? kindNamed(description);
  if (kind === null) return;
  values.kind = kind;
  const { file, sheet, line } = values.source;
  log.add("kind-from-name", { file, sheet, line, column: null, value: item }, () => ({
    message: `"${shortened(item)}" has no kind that is known in the catalogue and was taken for ${kind} by its name.`,
  }));
}

/** Words under a kind's heading that sort an item without saying what it is. */
const SORTS_ONLY = /^(accessor(y|ies)|(consum|dispos)ables?|misc\.?|supplies)$/i;

/** True for a word such as "Consumables", beside which an item's name says more. */
export function namesNoKind(word: string): boolean {
  return SORTS_ONLY.test(word.trim());
}
