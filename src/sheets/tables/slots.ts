import { type ColumnView, MOSTLY_DIFFERENT } from "./score-column.ts";

const OF_BATTERIES = /\b(capacity|cycles|minutes|wh|ah)\b/;
const SLOT = /\bposition\b ?/;

/**
 * The columns, those of numbered slots taken for the batteries in them ("Slot 1 S/N, Slot 1 cap %", "Charger bay 2"), where the
 * line speaks of batteries, of chargers or of what such slots' things measure.
 */
export function withSlots(views: ColumnView[]): ColumnView[] {
  const slots = views.filter(
    ({ things, index, meaning, profile }) =>
      things === "" &&
      index !== null &&
      SLOT.test(meaning.says) &&
      (meaning.says !== "position" || (profile.distinct > MOSTLY_DIFFERENT && !profile.fewEach)),
  );
  const ofBatteries = views.some(
    ({ things, variant, meaning }) =>
      things.includes("battery") || variant === "charging" || OF_BATTERIES.test(meaning.says),
  );
  if (slots.length === 0 || !ofBatteries) return views;
  return views.map((view) =>
    slots.includes(view)
      ? {
          ...view,
          things: "battery",
          joined: null,
          meaning: { ...view.meaning, says: view.meaning.says.replace(SLOT, "").trim() },
        }
      : view,
  );
}
