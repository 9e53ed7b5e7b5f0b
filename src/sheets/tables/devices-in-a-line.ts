import { parseHeader } from "../words/parse-header.ts";
import type { ColumnView } from "./score-column.ts";
import type { Output } from "./table.ts";

/** What a column says that names a device. */
const NAMES = /^(id|serial|name|)$/;

/**
 * What a line yields that names several devices, each with what it holds ("AED 1, AED 1 pads exp, AED 2, AED 2 pads exp"); null for
 * others.
 *
 * @param read  what columns yield that tell of one device
 */
export function devicesInALine(
  views: readonly ColumnView[],
  read: (views: readonly ColumnView[]) => readonly Output[],
): Output[] | null {
  const named = views.filter(
    ({ things, index, meaning }) => things === "device" && index !== null && NAMES.test(meaning.says),
  );
  const numbers = named.map(({ index }) => index);
  if (named.length < 2 || new Set(numbers).size < named.length) return null;
  // "Pads exp" behind each of them is that one's
  const numberOf = ({ index, column, name }: ColumnView) =>
    index ??
    (views.filter((other) => other.name === name).length > 1
      ? (named.filter((device) => device.column < column).at(-1)?.index ?? null)
      : null);
  const shared = views.filter((view) => numberOf(view) === null);
  const outputs = numbers.flatMap((number) => {
    const own = views.filter((view) => numberOf(view) === number);
    const columns = new Set(own.map(({ column }) => column));
    return read([...shared, ...own.map(withoutDevice)]).flatMap((output) => {
      const of = output.own.filter((column) => columns.has(column));
      return of.length > 0 ? { ...output, own: of } : [];
    });
  });
  const ofAll = read(shared).filter(({ sheet }) => sheet.kind !== "devices");
  return outputs.some(({ fields }) => fields.length > 1) ? [...outputs, ...ofAll] : null;
}

/** A column of a numbered device by what it says of it: "AED 1 pads exp" as "pads exp". */
function withoutDevice(view: ColumnView): ColumnView {
  const [before = "", name] = view.name.split(/(?<=^\D+\d+)\W+(.+)/);
  if (name === undefined || parseHeader(before).things !== "device") return { ...view, index: null };
  const meaning = parseHeader(name);
  return { ...view, name, meaning, index: meaning.index, things: meaning.things || "device" };
}
