import type { Plan } from "../../src/index.ts";
import { make } from "../dom.ts";
import type { EarlySign } from "../early-signs.ts";
import { monthWords, numberWords } from "../format.ts";
import type { PlannedSession } from "../session.ts";
import { say } from "../strings.ts";
import { table } from "../table.ts";
import { answer } from "./section.ts";

/** Packs, sites and batches that lie below their like: worth a look before the forecast says so. */
export function earlySignsTable(session: PlannedSession, choose: (pack: Plan["packs"][number]) => void): HTMLElement {
  const words = say.batteries.signs;
  const { signs } = session;
  if (signs.length === 0) return answer(words.heading, make("p", {}, words.none));
  return answer(
    words.heading,
    make("p", {}, words.lead),
    table({
      caption: words.heading,
      rows: signs,
      first: 12,
      columns: [
        { title: words.heads[0]!, value: (row) => words.kinds[row.kind] },
        { title: words.heads[1]!, value: (row) => row.name, show: name },
        { title: words.heads[2]!, value: (row) => row.item, wide: true },
        { title: words.heads[3]!, value: (row) => row.packs, figures: true },
        { title: words.heads[4]!, value: (row) => row.below, show: (row) => numberWords(row.below, 1), figures: true },
      ],
    }),
  );

  function name(sign: EarlySign): string | Node {
    if (sign.kind === "batch") return monthWords(sign.name);
    const pack = sign.kind === "pack" ? session.plan.packs.find((row) => row.serial === sign.name) : undefined;
    return pack ? make("button", { type: "button", class: "link", click: () => choose(pack) }, sign.name) : sign.name;
  }
}
