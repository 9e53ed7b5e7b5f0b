/** A value to 10 significant digits: beyond them, engines may differ. */
export function steady(value: number): number {
  return Number(value.toPrecision(10));
}
