/** What a test's number is by the unit of its cells. */
export const MEASURE_BY_UNIT: Readonly<Record<string, string>> = {
  "%": "capacity",
  min: "minutes",
  ah: "ah",
  mah: "ah",
  wh: "wh",
};

/** The capacity unit behind a number. */
const UNIT = /^[\d.,]+\s*(m?a[·⋅∙]?h|w[·⋅∙]?h|min|%)$/i;

/**
 * The unit that numbers carry most often, lower case; empty where half of a column's filled cells or more carry none.
 *
 * @param filled  how many cells are filled
 */
export function carriedUnit(texts: readonly string[], filled: number): string {
  const units = new Map<string, number>();
  let total = 0;
  for (const text of texts) {
    const unit = UNIT.exec(text)?.[1]?.toLowerCase().replace(/[·⋅∙]/, "");
    if (unit === undefined) continue;
    units.set(unit, (units.get(unit) ?? 0) + 1);
    total++;
  }
  const [unit = ""] = [...units].sort((a, b) => b[1] - a[1])[0] ?? [];
  return total > filled / 2 ? unit : "";
}
