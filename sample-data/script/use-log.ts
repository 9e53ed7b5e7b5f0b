import { addMonths, isoFromDay } from "../../src/calendar/day.ts";
import { DEVICES } from "./devices.ts";
import { poisson, whole } from "./random.ts";
import type { Sheet, SheetRow } from "./sheet.ts";
import { AS_OF, day } from "./story.ts";

const FROM = day("2025-05-01");

/** Units used a month, by duty and item. */
const USE_PER_MONTH: Record<string, Record<string, number>> = {
  ambulance: { "pads-adult": 0.16, "pads-child": 0.01, "gel-tube": 0.06, "paper-roll": 0.35, "spo2-sensor": 0.4 },
  "rapid response": {
    "pads-adult": 0.22,
    "pads-child": 0.012,
    "gel-tube": 0.05,
    "paper-roll": 0.25,
    "spo2-sensor": 0.25,
  },
  transfer: { "spo2-sensor": 0.3 },
  "public access": { "pads-adult": 0.012 },
  event: { "pads-adult": 0.04 },
};

/** use_log.csv: what was used where since May 2025; a few units lapsed. */
export function useLogSheet(): Sheet {
  const rows: SheetRow[] = [];
  for (let month = 0; addMonths(FROM, month) < AS_OF; month++) {
    const from = addMonths(FROM, month);
    const days = addMonths(FROM, month + 1) - from;
    for (const device of DEVICES) {
      if (device.retired !== undefined || String(device.in_service) > isoFromDay(from)) continue;
      for (const [item, mean] of Object.entries(USE_PER_MONTH[String(device.duty)] ?? {})) {
        for (let used = poisson(mean); used > 0; used--) {
          rows.push({ date: isoFromDay(from + whole(0, days - 1)), item, quantity: 1, place: String(device.device) });
        }
      }
    }
  }
  rows.push({ date: "2026-01-12", item: "pads-adult", quantity: 6, place: "Hilltop", reason: "lapsed" });
  rows.push({ date: "2026-05-29", item: "spo2-sensor", quantity: 10, place: "Harbour", reason: "restock" });
  rows.sort((a, b) => (String(a.date) < String(b.date) ? -1 : String(a.date) > String(b.date) ? 1 : 0));
  return { name: "use_log.csv", columns: ["date", "item", "quantity", "place", "reason"], rows };
}
