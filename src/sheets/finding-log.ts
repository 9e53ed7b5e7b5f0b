import { counted } from "../fleet/count-text.ts";
import type { Finding, Severity } from "../fleet/finding.ts";
import { shortened } from "../fleet/shortened.ts";
import { FINDING_CODES, type FindingCodeName } from "./finding-codes.ts";

/** Where a finding stands. */
export interface Place {
  file: string | null;
  sheet: string | null;
  /** null where the finding is about a column or a file. */
  line: number | null;
  /** 1-based. */
  column: number | null;
  value: string | null;
}

/** What a finding says beside its code's own words. */
interface Words {
  message: string;
  fix?: string;
  severity?: Severity;
  /** Findings of one code, place and group are one finding with several lines; the column by default. */
  group?: string;
}

/** Collects findings; one that repeats in the same column becomes one finding with several lines. */
export class FindingLog {
  readonly #found = new Map<string, Finding>();

  /** Adds a finding. `words` is called only for the first of a group, so that repeats cost little. */
  add(code: FindingCodeName, place: Place, words: () => Words, group = ""): void {
    const key = `${code}\0${place.file}\0${place.sheet}\0${place.column}\0${group}`;
    const before = this.#found.get(key);
    if (before) {
      if (place.line !== null && place.line !== before.line && place.line !== before.lines.at(-1)) {
        before.lines.push(place.line);
      }
      return;
    }
    const { message, fix, severity } = words();
    this.#found.set(key, {
      code,
      severity: severity ?? FINDING_CODES[code].severity,
      file: place.file,
      sheet: place.sheet,
      line: place.line,
      lines: [],
      column: place.column,
      value: place.value === null ? null : shortened(place.value),
      message,
      fix: fix ?? FINDING_CODES[code].fix,
    });
  }

  /** Every finding, in the order of its first place, each saying how many more rows share it. */
  all(): Finding[] {
    return [...this.#found.values()].map((finding) => {
      const more = finding.lines.length;
      if (more === 0) return finding;
      const message = `${finding.message.replace(/\.$/, "")}; and ${counted(more, "more row")}.`;
      return { ...finding, message };
    });
  }
}
