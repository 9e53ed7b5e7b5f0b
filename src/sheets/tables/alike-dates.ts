import { headerWords } from "../words/header-words.ts";
import type { ColumnView } from "./score-column.ts";
import type { FieldSource, Output } from "./table.ts";

/** The outputs with their date columns that only a number tells apart ("Date 1", "Date 2") noted as one column laid side by side. */
export function withAlikeDates(outputs: readonly Output[], views: readonly ColumnView[]): Output[] {
  const names = new Map(views.map(({ column, name, groupSubject }) => [column, `${groupSubject} ${name}`]));
  const alike = new Map<string, Set<number>>();
  const keyOf = ({ spec, columns, part }: FieldSource, kind: string) =>
    `${kind} ${spec.name} ${part} ${headerWords(names.get(columns[0] as number) ?? "").replace(/\d+/g, "")}`;
  const dates = outputs.flatMap(({ sheet, fields }) =>
    fields.flatMap((field) => (field.spec.type === "date" ? [[keyOf(field, sheet.kind), field] as const] : [])),
  );
  for (const [key, { columns }] of dates) alike.set(key, new Set([...(alike.get(key) ?? []), ...columns]));
  for (const [key, field] of dates) {
    const columns = alike.get(key) as Set<number>;
    if (columns.size > 1 && field.part === null) field.alike = [...columns];
  }
  return [...outputs];
}
