import { sheetSpec } from "../../fleet/columns.ts";
import { sharedField } from "./field-source.ts";
import { fieldsIn, type Group } from "./group-fields.ts";
import type { ColumnView } from "./score-column.ts";
import type { FieldSource, Output } from "./table.ts";

/** A pack of a line, and which of the line's it is. */
interface PackOfLine {
  serial: FieldSource;
  index: number | null;
  variant: string;
}

/**
 * Test columns beside the packs they measure, one output for each numbered test: of several packs each has the tests of
 * its own number, on the line's one day of testing where a number has no day of its own.
 *
 * @param rest  the columns that nothing else uses
 */
export function testsBeside(
  rest: readonly ColumnView[],
  views: readonly ColumnView[],
  before: readonly Output[],
): Output[] {
  const packs = packsOf(views, before);
  if (packs.length === 0) return [];
  const sheet = sheetSpec("runtime_tests");
  const telling = rest.filter(mayTellOfTest);
  const ofAll = testFields(telling.filter(({ index, variant }) => index === null && variant === ""));
  const lineDay = ofAll.find(({ spec }) => spec.field === "date");
  return [...new Set(telling.map(memberOf))].flatMap((member): Output[] => {
    const own = telling.filter((view) => memberOf(view) === member);
    const pack = packs.length === 1 ? packs[0] : packs.find((each) => memberOf(each) === member);
    if (!pack) return [];
    const fields = testFields(own);
    const dated = fields.some(({ spec }) => spec.field === "date");
    const all = dated || lineDay === undefined ? fields : [lineDay, ...fields];
    const has = (field: string) => all.some(({ spec }) => spec.field === field);
    if (!has("date") || !sheet.oneOf.some(has)) return [];
    return [
      {
        sheet,
        fields: [sharedField(pack.serial, sheet, "serial"), ...all],
        implied: {},
        own: all.flatMap(({ columns }) => columns),
      },
    ];
  });
}

function testFields(views: ColumnView[]): FieldSource[] {
  const group: Group = { thing: "test", views };
  return fieldsIn("runtime_tests", group).filter(({ spec }) => spec.field !== "serial");
}

function packsOf(views: readonly ColumnView[], before: readonly Output[]): PackOfLine[] {
  return before.flatMap(({ sheet, fields }) => {
    const serial = sheet.kind === "packs" ? fields.find(({ spec }) => spec.field === "serial") : undefined;
    if (!serial) return [];
    const view = views.find(({ column }) => column === serial.columns[0]);
    return [{ serial, index: view?.index ?? null, variant: view?.variant ?? "" }];
  });
}

const memberOf = ({ index, variant }: Pick<PackOfLine, "index" | "variant">) => `${index}/${variant}`;

/** True for a column that names no other thing, and says something. */
function mayTellOfTest({ things, meaning }: ColumnView): boolean {
  return things === ""
    ? meaning.says !== ""
    : things.split(" ").every((thing) => thing === "test" || thing === "battery");
}
