import type { Plan } from "../../src/index.ts";
import { button, make } from "../dom.ts";
import { filteredTable } from "../filtered-table.ts";
import { dayWords, percentWords } from "../format.ts";
import { say } from "../strings.ts";
import type { TableSpec } from "../table-spec.ts";
import { placeAndSite } from "../where.ts";

type Pack = Plan["packs"][number];

// One printed page: the next to be replaced.
const PRINTED = 40;

/** Every pack by its likely date; a serial opens the pack's own chart. */
export function packTable(packs: Pack[], choose: (pack: Pack) => void): HTMLElement {
  const words = say.batteries.table;
  const day = (value: string | null) => (value === null ? say.none : dayWords(value));
  const spec: TableSpec<Pack> = {
    caption: words.caption,
    rows: packs,
    printed: PRINTED,
    file: "packs.csv",
    columns: [
      {
        title: words.heads.serial,
        value: (row) => row.serial,
        show: (row) => button(row.serial, () => choose(row), { class: "link" }),
      },
      { title: words.heads.p50, value: (row) => row.replaceBy.p50, show: (row) => likely(row) },
      { title: words.heads.early, value: (row) => row.replaceBy.p10, show: (row) => day(row.replaceBy.p10) },
      { title: words.heads.late, value: (row) => row.replaceBy.p90, show: (row) => day(row.replaceBy.p90) },
      {
        title: words.heads.because,
        value: (row) => (row.replaceBy.because ? words.because[row.replaceBy.because] : null),
      },
      {
        title: words.heads.where,
        value: (row) => placeAndSite(row.device, row.site),
        wide: true,
      },
      { title: words.heads.item, value: (row) => row.item },
      {
        title: words.heads.now,
        value: (row) => row.capacityNow?.p50 ?? null,
        show: (row) => (row.capacityNow ? percentWords(row.capacityNow.p50) : say.none),
        figures: true,
      },
      { title: words.heads.basis, value: (row) => words.basis[row.basis] },
    ],
  };
  return filteredTable(spec, [
    { id: "filter-site", label: words.filters.site, of: (row) => row.site },
    { id: "filter-item", label: words.filters.item, of: (row) => row.item },
    { id: "filter-quarter", label: words.filters.quarter, of: dueQuarter },
    {
      id: "filter-because",
      label: words.filters.because,
      of: (row) => (row.replaceBy.because ? words.because[row.replaceBy.because] : null),
    },
  ]);

  function dueQuarter({ replaceBy: { kind, p50 } }: Pack): string {
    return words.kinds[kind] || words.quarter(p50!.slice(0, 4), String(Math.ceil(Number(p50!.slice(5, 7)) / 3)));
  }

  function likely(row: Pack): string | Node {
    const { kind, p50 } = row.replaceBy;
    if (kind === "already-due") return make("span", { class: "act" }, make("em", {}, words.kinds[kind]));
    return p50 === null ? words.kinds[kind] : dayWords(p50);
  }
}
