import type { Plan } from "../../src/index.ts";
import { chanceColumn, countColumn } from "../columns.ts";
import { button, make } from "../dom.ts";
import { monthWords, numberWords } from "../format.ts";
import type { PlannedSession } from "../session.ts";
import { say } from "../strings.ts";
import { table } from "../table.ts";
import { answer } from "./section.ts";

type EarlySign = Plan["earlySigns"][number];

/** What wears faster than its like, how much and how surely: worth a look, and why next year costs what it does. */
export function earlySignsTable(session: PlannedSession, choose: (pack: Plan["packs"][number]) => void): HTMLElement {
  const words = say.batteries.signs;
  const signs = session.plan.earlySigns;
  if (signs.length === 0) return answer(words.heading, make("p", {}, words.none));
  return answer(
    words.heading,
    make("p", {}, words.lead),
    table<EarlySign>({
      caption: words.heading,
      rows: signs,
      first: 12,
      columns: [
        { title: words.heads[0]!, value: (row) => words.kinds[row.kind] },
        { title: words.heads[1]!, value: (row) => row.name, show: name },
        { title: words.heads[2]!, value: (row) => row.item, wide: true },
        countColumn(words.heads[3]!, (row) => row.packs),
        countColumn(words.heads[4]!, (row) => row.timesAsFast.p50, 1),
        { title: words.heads[5]!, value: (row) => row.timesAsFast.p10, show: rangeWords },
        chanceColumn(words.heads[6]!, (row) => row.chance),
        {
          title: words.heads[7]!,
          value: (row) => row.dueWithinYear,
          show: (row) => words.ofPacks(numberWords(row.dueWithinYear, 1), numberWords(row.inService)),
          figures: true,
        },
      ],
    }),
  );

  function rangeWords({ timesAsFast: { p10, p90 } }: EarlySign): string {
    return words.range(numberWords(p10, 1), numberWords(p90, 1));
  }

  function name(sign: EarlySign): string | Node {
    if (sign.kind === "batch") return monthWords(sign.name);
    const pack = sign.kind === "pack" ? session.plan.packs.find((row) => row.serial === sign.name) : undefined;
    return pack ? button(sign.name, () => choose(pack), { class: "link" }) : sign.name;
  }
}
