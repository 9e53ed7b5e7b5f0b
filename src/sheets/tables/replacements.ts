import { columnOfField, sheetSpec } from "../../fleet/columns.ts";
import { assign } from "./assign.ts";
import { fieldSource } from "./field-source.ts";
import type { ColumnView } from "./score-column.ts";
import type { FieldSource, Output } from "./table.ts";

/** Words beside a battery's number that say whether it came out or went in. */
export const CAME_OUT =
  /\b(alt|alte[rs]?|(?<=serial |s\/n |batt |battery |pack )out|old|previous|removed|ausgebaut|ancienn?e?|viej[oa]|antig[oa]|oude?|vecchi[oa]|gaml?e?|gammal|star[aye])\b/i;
export const WENT_IN =
  /\b(neue?[rs]?|(?<=serial |s\/n |batt |battery |pack )in|new|fitted|installed|eingebaut|nouv\w*|nuev[oa]|nov[oa]|nuov[oa]|nieuwe?|ny[ta]?|now[aye])\b/i;

/** What a log of replaced batteries yields: on a line's date one pack is retired and another put in service; null for others. */
export function replacedPacks(views: readonly ColumnView[]): Output[] | null {
  const ofBatteries = views.some(({ profile }) => profile.batteries === 1);
  const batteries = views.filter(({ things, meaning: { says, things: named } }) =>
    things === "battery"
      ? /^(id|serial|install|retired|rated|serial .*|.* serial)?$/.test(says)
      : ofBatteries && named === "" && says.includes("serial"),
  );
  const one = (words: RegExp, not: RegExp) => batteries.find(({ name }) => words.test(name) && !not.test(name));
  const old = one(CAME_OUT, WENT_IN);
  const fresh = one(WENT_IN, CAME_OUT);
  if (!old || !fresh) return null;
  const rest = views.filter((view) => view !== old && view !== fresh);
  const sheet = sheetSpec("packs");
  const date = rest.find(
    ({ meaning, things }) => things !== "pads" && /^(date|install|date install)$/.test(meaning.says),
  );
  if (!date) return null;
  const shared = assign(sheet, rest).filter(({ spec: { name } }) => ["device", "site", "item"].includes(name));
  const why = assign(sheet, rest).filter(({ spec: { name } }) => name === "retired_because");
  const pack = (view: ColumnView, on: string, more: FieldSource[]): Output => ({
    sheet,
    fields: [
      fieldSource(columnOfField(sheet, "serial"), view, 6),
      fieldSource(columnOfField(sheet, on), date, 6),
      ...more,
    ],
    implied: {},
    own: [view.column],
  });
  return [
    pack(old, "retired", [...why, ...shared.filter(({ spec: { name } }) => name === "item")]),
    pack(fresh, "inService", shared),
  ];
}
