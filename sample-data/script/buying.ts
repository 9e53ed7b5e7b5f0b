import type { Sheet, SheetRow } from "./sheet.ts";

const BATTERIES = "Fenwold Batteries";
const SUPPLIES = "Quillmark Supplies";
const SPARE_SUPPLIES = "Ostlane Trading";

const item = (name: string, kind: string, supplier: string, price: string, rest: SheetRow): SheetRow => ({
  item: name,
  kind,
  supplier,
  price,
  currency: "EUR",
  ...rest,
});

/** catalogue.csv: what can be bought, from whom, for how much and how long it takes. */
export function catalogueSheet(): Sheet {
  const monitor = "monitor-defibrillator";
  return {
    name: "catalogue.csv",
    columns: [
      "item",
      "kind",
      "supplier",
      "price",
      "currency",
      "units_per_box",
      "minimum_order",
      "price_breaks",
      "lead_days",
      "lead_sd_days",
      "shelf_months",
      "arrives_with_months",
      "service_months",
      "rated_wh",
      "rated_minutes",
      "opened_days",
      "per_device",
      "fits",
      "chemistry",
    ],
    rows: [
      item("pack-md", "pack", BATTERIES, "412.00", {
        price_breaks: "10:389.00; 25:368.00",
        lead_days: 42,
        lead_sd_days: 9,
        rated_wh: 75,
        per_device: 2,
        fits: monitor,
        chemistry: "li-ion",
      }),
      item("pack-pm", "pack", BATTERIES, "164.50", {
        lead_days: 35,
        rated_minutes: 240,
        per_device: 1,
        fits: "patient monitor",
        chemistry: "li-ion",
      }),
      item("pack-aed-trainer", "pack", BATTERIES, "58.00", {
        lead_days: 21,
        per_device: 1,
        fits: "aed trainer",
        chemistry: "li-ion",
      }),
      item("primary-aed", "primary", BATTERIES, "247.00", {
        lead_days: 84,
        lead_sd_days: 14,
        shelf_months: 60,
        service_months: 48,
        per_device: 1,
        fits: "aed",
      }),
      item("pads-adult", "pads", SUPPLIES, "38.50", {
        units_per_box: 10,
        price_breaks: "50:35.00; 100:33.20",
        lead_days: 28,
        lead_sd_days: 6,
        shelf_months: 30,
        arrives_with_months: 26,
        per_device: 2,
        fits: `${monitor}; aed`,
      }),
      item("pads-adult", "pads", SPARE_SUPPLIES, "41.20", {
        units_per_box: 5,
        lead_days: 9,
        shelf_months: 30,
        arrives_with_months: 22,
        per_device: 2,
        fits: `${monitor}; aed`,
      }),
      item("pads-child", "pads", SUPPLIES, "46.00", {
        units_per_box: 5,
        lead_days: 35,
        shelf_months: 24,
        arrives_with_months: 20,
        per_device: 1,
        fits: `${monitor}; aed`,
      }),
      item("gel-tube", "gel", SUPPLIES, "4.20", {
        units_per_box: 12,
        lead_days: 14,
        shelf_months: 24,
        arrives_with_months: 20,
        opened_days: 60,
        per_device: 1,
        fits: monitor,
      }),
      item("paper-roll", "paper", SUPPLIES, "3.10", {
        units_per_box: 20,
        lead_days: 14,
        shelf_months: 60,
        arrives_with_months: 54,
        per_device: 1,
        fits: monitor,
      }),
      item("spo2-sensor", "sensor", SUPPLIES, "12.80", {
        units_per_box: 24,
        lead_days: 21,
        shelf_months: 36,
        arrives_with_months: 30,
        per_device: 1,
        fits: `${monitor}; patient monitor`,
      }),
    ],
  };
}

/** suppliers.csv: what an order costs beside its goods. */
export function suppliersSheet(): Sheet {
  return {
    name: "suppliers.csv",
    columns: ["supplier", "order_fee", "free_over", "order_every_months", "currency"],
    rows: [
      { supplier: BATTERIES, order_fee: "65.00", free_over: "2500.00", currency: "EUR" },
      { supplier: SUPPLIES, order_fee: "24.00", free_over: "600.00", currency: "EUR" },
      { supplier: SPARE_SUPPLIES, order_fee: "12.00", currency: "EUR" },
    ],
  };
}

/** on_order.csv: what is on its way already. */
export function onOrderSheet(): Sheet {
  return {
    name: "on_order.csv",
    columns: ["order", "item", "quantity", "supplier", "arrives", "expiry"],
    rows: [
      {
        order: "TA-2611",
        item: "pads-child",
        quantity: 10,
        supplier: SUPPLIES,
        arrives: "2026-11-20",
        expiry: "2028-07-31",
      },
      { order: "TA-2612", item: "pack-pm", quantity: 2, supplier: BATTERIES, arrives: "2026-12-04" },
    ],
  };
}

/** routine.csv: what the test programme uses. */
export function routineSheet(): Sheet {
  return {
    name: "routine.csv",
    columns: ["task", "per_year", "duty", "item", "quantity", "cycles"],
    rows: [
      { task: "start-of-shift check", per_year: 730, duty: "ambulance", item: "paper-roll", quantity: "0.004" },
      { task: "start-of-shift check", per_year: 365, duty: "rapid response", item: "paper-roll", quantity: "0.004" },
      { task: "weekly discharge test", per_year: 52, duty: "ambulance", cycles: "0.1" },
      {
        task: "yearly performance check",
        per_year: 1,
        duty: "ambulance",
        item: "gel-tube",
        quantity: "0.5",
        cycles: 1,
      },
    ],
  };
}

/** policy.csv: the planner's choices. */
export function policySheet(): Sheet {
  const choices: [string, string][] = [
    ["as_of", "2026-11-01"],
    ["horizon_months", "36"],
    ["fiscal_year_starts", "4"],
    ["end_of_life_percent", "80"],
    ["service_level", "0.95"],
    ["spares_percent", "10"],
    ["swap_before_expiry_days", "14"],
    ["order_before_need_days", "14"],
    ["use_log_from", "2025-05-01"],
    ["currency", "EUR"],
  ];
  return { name: "policy.csv", columns: ["key", "value"], rows: choices.map(([key, value]) => ({ key, value })) };
}
