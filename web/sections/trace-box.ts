import type { Plan, Reading } from "../../src/index.ts";
import { countColumn } from "../columns.ts";
import { make } from "../dom.ts";
import { ask } from "../engine/engine.ts";
import type { Traced, Without } from "../engine/trace.ts";
import { dayWords } from "../format.ts";
import { keepChoice, keptChoice } from "../kept-choices.ts";
import type { PlannedSession } from "../session.ts";
import { say } from "../strings.ts";
import { table } from "../table.ts";
import { placeAndSite } from "../where.ts";
import { where } from "./findings.ts";
import { answer, list } from "./section.ts";

/** What was traced last: the section made anew shows it at once. */
let last: { what: string; reading: Reading; policy: Plan["policy"]; traced: Traced } | null = null;

/** Asks for a lot, serial, device or label, and lists every row that bears it and what it takes to do without (for recalls). */
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
    const { policy } = plan;
    if (last?.what !== what || last.reading !== reading || last.policy !== policy) {
      try {
        const traced = await ask("trace", { wanted: what, reading, policy });
        // something else may have been asked for since
        if (asked !== what) return;
        last = { what, reading, policy, traced };
      } catch (error) {
        found.textContent = say.intake.failed((error as Error).message);
        return;
      }
    }
    const { rows, units, places, without, wrong } = last.traced;
    if (rows.length === 0) {
      found.textContent = wrong === null ? words.found(0, what) : words.wrong(what, wrong);
      return;
    }
    found.replaceChildren(
      list(
        words.found(rows.length, what),
        make(
          "div",
          {},
          units > 0 && make("p", {}, words.units(units, places)),
          without.length > 0 && doWithout(without),
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

/** What it takes to do without: what would be missed, and when what is lacking can be there. */
function doWithout(rows: Without[]): HTMLElement {
  const { caption, heads, now, unknown, how } = say.dates.trace.without;
  const anyLacks = rows.some(({ lacking }) => lacking > 0);
  const there = ({ lacking, coveredOn }: Without) =>
    lacking === 0 ? now : coveredOn === null ? unknown : dayWords(coveredOn);
  return answer(
    caption,
    table<Without>({
      caption,
      rows,
      columns: [
        { title: heads[0]!, value: ({ item }) => item },
        countColumn(heads[1]!, ({ inUse }) => inUse),
        countColumn(heads[2]!, ({ onShelves }) => onShelves),
        countColumn(heads[3]!, ({ onOrder }) => onOrder),
        countColumn(heads[4]!, ({ usableElsewhere }) => usableElsewhere),
        countColumn(heads[5]!, ({ lacking }) => lacking),
        ...(anyLacks ? [{ title: heads[6]!, value: ({ coveredOn }: Without) => coveredOn, show: there }] : []),
      ],
    }),
    anyLacks && make("p", {}, how),
  );
}
