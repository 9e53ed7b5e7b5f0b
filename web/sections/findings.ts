import type { Reading } from "../../src/index.ts";
import { make } from "../dom.ts";
import { numberWords } from "../format.ts";
import { say } from "../strings.ts";
import { fileAndTab } from "../where.ts";

type Finding = Reading["findings"][number];

const SHOWN_OF_A_KIND = 3;
const SEVERITIES = ["error", "warning", "info"] as const;

/** Findings grouped by how much they matter and by kind; of many alike the first few stand for the rest. */
export function findings(reading: Pick<Reading, "findings">): HTMLElement {
  if (reading.findings.length === 0) return make("p", {}, say.sheets.noFindings);
  return make(
    "div",
    { class: "findings" },
    SEVERITIES.map((severity) => {
      const found = reading.findings.filter((finding) => finding.severity === severity);
      if (found.length === 0) return null;
      return make(
        "div",
        {},
        make("h4", {}, `${say.sheets.severity[severity]} (${numberWords(found.length)})`),
        byCode(found),
      );
    }),
  );
}

function byCode(found: Finding[]): HTMLElement {
  const groups = new Map<string, Finding[]>();
  for (const finding of found) groups.set(finding.code, [...(groups.get(finding.code) ?? []), finding]);
  return make(
    "ul",
    {},
    [...groups.values()].map((group) =>
      make(
        "li",
        {},
        group
          .slice(0, SHOWN_OF_A_KIND)
          .map((finding) =>
            make(
              "p",
              {},
              make("span", { class: "where" }, where(finding)),
              ` ${finding.message} `,
              make("span", { class: "fix" }, say.sheets.fixHere(finding.fix)),
            ),
          ),
        group.length > SHOWN_OF_A_KIND &&
          make("p", { class: "where" }, say.sheets.more(numberWords(group.length - SHOWN_OF_A_KIND))),
      ),
    ),
  );
}

/** The file, tab and line of a finding or a row. */
export function where({ file, sheet, line }: Pick<Finding, "file" | "sheet" | "line">): string {
  if (file === null) return "";
  return say.sheets.where(fileAndTab(file, sheet), line === null ? "" : String(line));
}
