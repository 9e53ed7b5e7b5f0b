import { groupedText } from "./money.ts";

/** A whole number for people: 12,345. */
export function countText(count: number): string {
  return groupedText(String(count));
}

/** An expected number for people, to the tenth: 12,345.7. */
export function tenthsText(expected: number): string {
  return groupedText(expected.toFixed(1));
}

/** A count with its noun: "1 pack", "12 packs"; the plural is given where an s does not make it. */
export function counted(count: number, singular: string, plural = `${singular}s`): string {
  return `${countText(count)} ${count === 1 ? singular : plural}`;
}

/** A chance for people in whole percent; what is neither none nor certain never shows as 0 % or 100 %. */
export function chanceText(chance: number): string {
  if (chance > 0 && chance < 0.01) return "< 1 %";
  if (chance < 1 && chance > 0.99) return "> 99 %";
  return `${Math.round(chance * 100)} %`;
}
