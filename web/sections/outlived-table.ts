import type { Plan } from "../../src/index.ts";
import { countColumn } from "../columns.ts";
import { make } from "../dom.ts";
import { numberWords } from "../format.ts";
import { say } from "../strings.ts";
import { table } from "../table.ts";
import { answer } from "./section.ts";

/** Share of packs that outlives each age without a sudden failure, as seen beside as planned, where any failed. */
export function outlivedTable({ suddenFailures }: Plan): HTMLElement | null {
  const words = say.batteries.outlived;
  const rows = suddenFailures
    .filter(({ failures }) => failures > 0)
    .flatMap(({ item, survival }) => survival.filter(({ atRisk }) => atRisk > 0).map((row) => ({ item, ...row })));
  if (rows.length === 0) return null;
  const share = (value: number) => words.percent(numberWords(100 * value, 1));
  return answer(
    words.heading,
    make("p", {}, words.lead),
    table<(typeof rows)[number]>({
      caption: words.heading,
      rows,
      first: 12,
      columns: [
        { title: words.heads.item, value: (row) => row.item },
        countColumn(words.heads.years, (row) => row.years),
        countColumn(words.heads.watched, (row) => row.atRisk),
        { title: words.heads.seen, value: (row) => row.seen, show: (row) => share(row.seen), figures: true },
        {
          title: words.heads.error,
          value: (row) => row.standardError,
          show: (row) => (row.standardError === 0 ? say.none : share(row.standardError)),
          figures: true,
        },
        {
          title: words.heads.planned,
          value: (row) => row.planned,
          show: (row) => share(row.planned),
          figures: true,
        },
      ],
    }),
  );
}
