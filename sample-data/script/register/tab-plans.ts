import { dotted, monthAlone, monthFirst, slashed, spreadsheetDate, withMonthName } from "./date-styles.ts";
import type { RegisterColumn, TabPlan } from "./lay-out-tab.ts";

const number = (text: string) => Number(text);
const percent = (text: string) => ({ value: Number(text) / 100, numFmt: "0%" });
const degrees = (text: string) => ({ value: Number(text), numFmt: '0 "°C"' });
const minutes = (text: string) => `${text} min`;

/** Columns that need no other words than the fleet's own. */
const plain = (...names: string[]): RegisterColumn[] => names.map((name) => ({ header: name, from: name }));

/** How the register keeps each sheet of the fleet, by the name of the CSV sheet. */
export const TAB_PLANS: Readonly<Record<string, TabPlan>> = {
  "devices.csv": {
    name: "Fleet",
    title: ["Tarnfell Ambulance: equipment register", "kept at the Central Store, ask before you sort", null],
    columns: [
      { group: "Device", header: "No.", from: "device" },
      { group: "Device", header: "Type", from: "type" },
      { group: "Where it is", header: "Station", from: "site" },
      { group: "Where it is", header: "Duty", from: "duty" },
      { group: "Where it is", header: "Ambient temp.", from: "temperature_c", write: degrees, hidden: true },
      { group: "Life", header: "Install Dt", from: "in_service", write: spreadsheetDate("dd/mm/yyyy") },
      { group: "Life", header: "Retired on", from: "retired", write: monthFirst },
    ],
    headerAgainAfter: 30,
  },
  "packs.csv": {
    name: "Batteries",
    title: ["Batteries in use, on the shelf and gone", null],
    columns: [
      { header: "Batt S/N", from: "serial" },
      { header: "Article", from: "item" },
      { header: "Fitted in (device)", from: "device" },
      { header: "Station", from: "site" },
      { header: "Mfg. Dt", from: "made", write: withMonthName },
      { header: "Install Dt", from: "in_service", write: realOrTyped },
      { header: "Cyc.", from: "cycles", write: number },
      { header: "Cyc. read on", from: "cycles_on", write: slashed },
      { header: "Withdrawn", from: "retired", write: dotted },
      { header: "Why withdrawn", from: "retired_because" },
      { header: "On hold", from: "held" },
    ],
    blankAfter: 29,
  },
  "runtime_tests.csv": {
    name: "Bench tests",
    title: [null, "Runtime tests from the bench, newest at the bottom"],
    columns: [
      { header: "Battery serial no.", from: "serial" },
      { header: "Test dt", from: "date", write: slashed },
      { header: "Runtime", from: "minutes", write: minutes },
      { header: "Capacity", from: "percent", write: percent },
      { header: "Load (W)", from: "load_w", write: number },
      { header: "Temp °C", from: "temperature_c", write: number },
      { header: "Cycle count", from: "cycles", write: number },
      { header: "From full?", from: "full_charge" },
      { header: "Stopped early", from: "at_least" },
      { header: "Pass/Fail", from: "result" },
    ],
    headerAgainAfter: 250,
  },
  "dated_stock.csv": {
    name: "Pads and more",
    title: ["Pads, gel, paper, sensors: what lies where", null, null],
    columns: [
      { header: "What", from: "item" },
      { header: "Lot no.", from: "lot" },
      { header: "Pad exp.", from: "expiry", write: monthAlone },
      { header: "Qty", from: "quantity", write: number },
      { header: "Kept at", from: "place" },
      { header: "Opened on", from: "opened", write: spreadsheetDate("d-mmm-yy") },
      { header: "On hold", from: "held" },
    ],
    headerAgainAfter: 90,
  },
  "use_log.csv": {
    name: "Used",
    title: [],
    columns: [
      { header: "Date used", from: "date", write: spreadsheetDate("ddd d mmm yyyy") },
      { header: "Article", from: "item" },
      { header: "Qty used", from: "quantity", write: number },
      { header: "Place", from: "place" },
      { header: "Reason", from: "reason" },
    ],
    blankAfter: 100,
  },
  "catalogue.csv": {
    name: "Catalogue",
    title: ["Prices as agreed in spring", null],
    columns: plain(
      ...["item", "kind", "supplier", "price", "currency", "units_per_box", "minimum_order", "price_breaks"],
      ...["lead_days", "lead_sd_days", "shelf_months", "arrives_with_months", "service_months", "rated_wh"],
      ...["rated_minutes", "opened_days", "per_device", "fits", "chemistry"],
    ),
  },
  "suppliers.csv": {
    name: "Suppliers",
    title: [],
    columns: plain("supplier", "order_fee", "free_over", "order_every_months", "currency"),
  },
  "on_order.csv": {
    name: "On order",
    title: ["Open orders", null],
    columns: [
      { header: "PO no.", from: "order" },
      { header: "Article", from: "item" },
      { header: "Qty ordered", from: "quantity", write: number },
      { header: "Supplier", from: "supplier" },
      { header: "Due in", from: "arrives", write: spreadsheetDate("yyyy-mm-dd") },
      { header: "Exp.", from: "expiry", write: monthAlone },
    ],
  },
  "routine.csv": {
    name: "Routine",
    title: [],
    columns: plain("task", "per_year", "duty", "item", "quantity", "cycles"),
  },
  "policy.csv": { name: "Policy", title: [], columns: plain("key", "value") },
};

/** Most dates were entered as dates; what is no date at all stayed the text that was typed. */
function realOrTyped(iso: string) {
  return iso === "2024-02-30" ? slashed(iso) : spreadsheetDate("d-mmm-yy")(iso);
}
