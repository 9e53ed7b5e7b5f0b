import { describe, expect, it } from "vitest";
import { rowThing } from "../../../src/sheets/words/row-thing.ts";

// What people call these things in the languages of headers; common practice, no source.
describe("rowThing", () => {
  it.each([
    "AED",
    "Automated External Defibrillator",
    "Défibrillateur semi-automatique",
    "Desfibrilador",
    "Hjärtstartare",
    "Defibrylator",
    "Patient monitor",
    "Gerät",
  ])("takes %s for a device", (text) => expect(rowThing(text)).toBe("device"));

  it.each(["Battery", "AED battery", "Rechargeable battery pack", "Akku", "Batería litio", "Accu", "Spare battery"])(
    "takes %s for a battery",
    (text) => expect(rowThing(text)).toBe("battery"),
  );

  it.each(["Adult pads", "Elektroden Erwachsene", "Électrodes adulte", "Kontaktgel", "ECG paper", "SpO2 sensor"])(
    "takes %s for supplies",
    (text) => expect(rowThing(text)).toBe("supply"),
  );

  it.each([
    "Battery charger",
    "Ladegerät",
    "AED cabinet",
    "AED trainer",
    "AED kit",
    "Batteries and pads",
    "AED with battery",
    "Fire extinguisher",
    "A-1001",
    "",
    "The battery was replaced by the supplier after it had failed its test in May",
  ])("takes %s for nothing known", (text) => expect(rowThing(text)).toBeNull());
});
