import type { FieldSource, Output } from "./table.ts";

/**
 * Outputs in which a battery goes by one item: where a line's battery is read as a pack and, with its expiry, as dated
 * stock, and no column names its item, the pack takes the name that its header gave the other. Else both would be bought.
 */
export function withOneItem(outputs: readonly Output[]): Output[] {
  const packs = outputs.find(({ sheet }) => sheet.kind === "packs");
  const serial = packs && fieldOf(packs, "serial")?.columns[0];
  const dated = outputs.find(
    (output) => output.sheet.kind === "dated_stock" && fieldOf(output, "serial")?.columns[0] === serial,
  );
  const item = dated?.implied.item;
  if (!packs || serial === undefined || item === undefined || fieldOf(packs, "item")) return [...outputs];
  return outputs.map((output) => (output === packs ? { ...packs, implied: { ...packs.implied, item } } : output));
}

function fieldOf({ fields }: Output, field: string): FieldSource | undefined {
  return fields.find(({ spec }) => spec.field === field);
}
