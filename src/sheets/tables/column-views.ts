import type { Day } from "../../calendar/day.ts";
import type { GridRow } from "../grid.ts";
import { parseHeader } from "../words/parse-header.ts";
import { DATED_THINGS } from "../words/vocabulary.ts";
import type { HeaderRows } from "./header-rows.ts";
import { profileColumn } from "./profile.ts";
import type { ColumnView } from "./score-column.ts";

/** Every named column of a header, with what its words and its cells say. */
export function columnViews({ header, groups }: HeaderRows, rows: readonly GridRow[], today: Day | null): ColumnView[] {
  let after = "";
  return header.flatMap((name, column): ColumnView[] => {
    if (name === null) return [];
    const meaning = parseHeader(name);
    const group = groups[column] ?? null;
    const above = group === null ? null : parseHeader(group);
    const things = meaning.things || above?.things || "";
    const before = after;
    if (things !== "")
      after = things.split(" ").find((thing) => DATED_THINGS.has(thing)) ?? (things.includes("device") ? "device" : "");
    return [
      {
        column,
        meaning,
        things,
        after: before,
        variant: meaning.variant || above?.variant || "",
        index: meaning.index ?? above?.index ?? null,
        groupSubject: group === null ? "" : group.replace(/\s+/g, " ").trim(),
        joined: group === null ? null : parseHeader(`${group} ${name}`),
        profile: profileColumn(rows, column, today),
      },
    ];
  });
}
