import { columnOfField, sheetSpec } from "../../fleet/columns.ts";
import { saysUse } from "../words/says-use.ts";
import { DATED_THINGS } from "../words/vocabulary.ts";
import { assign } from "./assign.ts";
import { fieldSource } from "./field-source.ts";
import { impliedItem } from "./group-outputs.ts";
import type { Heading } from "./heading.ts";
import type { ColumnView } from "./score-column.ts";
import type { Output, Unclear } from "./table.ts";

/** What a column headed by supplies may say of its numbers. */
const COUNTS = /^(uses|quantity| )*$/;
/** Columns of a list whose lines are of single things, not of what was used on a day. */
const OF_SINGLE_THINGS = /expiry|serial|lot|cycles|capacity|made|install/;
/** The share of a column's filled cells that must be numbers. */
const MOSTLY = 0.9;
/** The share of cells with nothing in them, or 0, from which numbers are of uses: few things are used every time. */
const OFTEN_NONE = 0.15;
/** Words that say of numbers that they were counted, not used. */
const SAYS_STOCK =
  /stock|on hand|count|inventor|bestand|level|par\b|remain|present|there|check|kontroll|vorhanden|inventaire|exist|voorraad/i;

/**
 * What a log yields that has a date and a column for each kind of supplies: a row for each number. Null for other
 * tables; what is missing where nothing tells used units from counted ones.
 */
export function usesByColumn(views: readonly ColumnView[], heading: Heading | null): Output[] | Unclear | null {
  const items = views.filter(isItem);
  if (items.length === 0 || views.some(({ meaning }) => OF_SINGLE_THINGS.test(meaning.says))) return null;
  const sheet = sheetSpec("use_log");
  const fields = assign(sheet, withDates(views.filter((view) => !items.includes(view))));
  const has = (field: string) => fields.some(({ spec }) => spec.field === field);
  if (!has("date") || has("item") || has("quantity")) return null;
  const said = `${heading?.text ?? ""} ${items.map(({ name, groupSubject }) => `${groupSubject} ${name}`).join(" ")}`;
  const used = saysUse(said);
  const seldom = items.reduce((sum, { profile }) => sum + profile.nothing, 0) / items.length >= OFTEN_NONE;
  if (!used && items.length < 2) return null;
  if (!used && (SAYS_STOCK.test(said) || !seldom)) return unclear(items);
  const quantity = columnOfField(sheet, "quantity");
  return items.map((view) => ({
    sheet,
    fields: [...fields, fieldSource(quantity, view, 6)],
    implied: { item: itemOf(view) || view.name.trim() },
    own: [view.column],
    ...(!used && { presumed: "uses" as const }),
  }));
}

/** Columns of which the only one of dates is called one, whatever heads it: "Month". */
function withDates(views: readonly ColumnView[]): ColumnView[] {
  const dates = views.filter(({ profile }) => profile.dates > MOSTLY);
  return views.map((view) =>
    dates.length === 1 && dates[0] === view && view.meaning.says === ""
      ? { ...view, things: "", joined: null, meaning: { ...view.meaning, says: "date", coverage: 1 } }
      : view,
  );
}

/** A column of numbers headed by supplies, or by what was used. */
function isItem(view: ColumnView): boolean {
  const { meaning, things, profile, index } = view;
  if (index !== null || profile.filled === 0 || profile.numbers < MOSTLY || !COUNTS.test(meaning.says)) return false;
  const thing = things.split(" ").find((each) => DATED_THINGS.has(each)) ?? "";
  // "Razors used" too names its item
  return (thing !== "" && thing !== "battery") || (saysUse(view.name) && itemOf(view) !== "");
}

function itemOf(view: ColumnView): string {
  return impliedItem([view]) || view.meaning.subject;
}

function unclear(items: readonly ColumnView[]): Unclear {
  const names = items.map(({ name }) => name).slice(0, 3);
  return {
    message: `Nothing says whether the numbers under ${names.join(", ")} were used or are there.`,
    fix: 'Write "used" into each header ("Gel used") or above the table; units that are there need their expiry.',
  };
}
