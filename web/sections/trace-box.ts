import type { Reading } from "../../src/index.ts";
import { make } from "../dom.ts";
import { dayWords } from "../format.ts";
import { keepChoice, keptChoice } from "../kept-choices.ts";
import { say } from "../strings.ts";
import { table } from "../table.ts";
import { trace } from "../trace.ts";
import { placeAndSite } from "../where.ts";
import { where } from "./findings.ts";
import { answer, list } from "./section.ts";

/** Asks for a lot, serial or device, and lists every row that bears it (for recalls). */
export function traceBox(reading: Reading): HTMLElement {
  const words = say.dates.trace;
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
        show();
      },
    },
    make("label", { for: "trace" }, words.label),
    box,
    make("button", { type: "submit" }, words.go),
  );
  show();
  return make("div", {}, answer(words.heading, form), found);

  function show(): void {
    const rows = trace(box.value, reading);
    found.replaceChildren();
    if (box.value.trim() === "") return;
    const what = box.value.trim();
    if (rows.length === 0) {
      found.append(make("p", {}, words.found(0, what)));
      return;
    }
    const stands = rows.filter(({ kind }) => kind === "dated stock" || kind === "pack");
    const units = stands.reduce((sum, { quantity }) => sum + (quantity ?? 0), 0);
    const places = new Set(stands.map(({ place }) => place)).size;
    found.append(
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
