import type { Reading } from "../../src/index.ts";
import { make } from "../dom.ts";
import { ask } from "../engine/engine.ts";
import type { Trace } from "../engine/trace.ts";
import { dayWords } from "../format.ts";
import { keepChoice, keptChoice } from "../kept-choices.ts";
import { dayNumber } from "../months.ts";
import type { PlannedSession } from "../session.ts";
import { say } from "../strings.ts";
import { table } from "../table.ts";
import { placeAndSite } from "../where.ts";
import { where } from "./findings.ts";
import { answer, list } from "./section.ts";

/** What was traced last: the section made anew shows it at once. */
let last: { what: string; reading: Reading; rows: Trace[] } | null = null;

/** Asks for a lot, serial, device or label, and lists every row that bears it (for recalls). */
export function traceBox({ reading, plan }: Pick<PlannedSession, "reading" | "plan">): HTMLElement {
  const words = say.dates.trace;
  let asked = "";
  const found = make("div", { role: "status", id: "traced" });
  const box = make("input", {
    type: "text",
    id: "trace",
    value: keptChoice("trace") ?? "",
    autocomplete: "off",
    spellcheck: "false",
  });
  const form = make(
    "form",
    {
      class: "choices",
      submit: (event) => {
        event.preventDefault();
        keepChoice("trace", box.value.trim() || null);
        void show();
      },
    },
    make("label", { for: "trace" }, words.label),
    box,
    make("button", { type: "submit" }, words.go),
  );
  void show();
  return make("div", {}, answer(words.heading, form), found);

  async function show(): Promise<void> {
    const what = box.value.trim();
    asked = what;
    found.replaceChildren();
    if (what === "") return;
    if (last?.what !== what || last.reading !== reading) {
      try {
        const rows = await ask("trace", { wanted: what, reading, asOf: dayNumber(plan.asOf) });
        // something else may have been asked for since
        if (asked !== what) return;
        last = { what, reading, rows };
      } catch (error) {
        found.textContent = say.intake.failed((error as Error).message);
        return;
      }
    }
    const { rows } = last;
    if (rows.length === 0) {
      found.textContent = words.found(0, what);
      return;
    }
    const stands = rows.filter(({ kind }) => kind === "dated stock" || kind === "pack");
    const units = stands.reduce((sum, { quantity }) => sum + (quantity ?? 0), 0);
    const places = new Set(stands.map(({ place }) => place)).size;
    found.replaceChildren(
      list(
        words.found(rows.length, what),
        make(
          "div",
          {},
          units > 0 && make("p", {}, words.units(units, places)),
          table({
            caption: words.heading,
            rows,
            columns: [
              { title: words.heads[0]!, value: (row) => words.kinds[row.kind] },
              { title: words.heads[1]!, value: (row) => row.name },
              { title: words.heads[2]!, value: (row) => row.item },
              {
                title: words.heads[3]!,
                value: (row) => placeAndSite(row.place, row.site),
                wide: true,
              },
              { title: words.heads[4]!, value: (row) => row.quantity, figures: true },
              { title: words.heads[5]!, value: (row) => row.until, show: (row) => row.until && dayWords(row.until) },
              {
                title: words.heads[6]!,
                value: where,
              },
            ],
          }),
        ),
      ),
    );
  }
}
