import type { About } from "../made-registers/headings.ts";

/** A column of a list, and the chance that the list has it; left out for one that it always has. */
export interface ListColumn extends About {
  chance?: number;
}

/** A kind of list as offices keep it: what its lines must be read as, and its columns in their usual order. */
export interface ListKind {
  kind: string;
  columns: ListColumn[];
}

// Common practice, no source: headings as lists of batteries, tests, stock, uses, orders and prices carry them.
const column = (
  headings: string,
  cell: string,
  fields: string[],
  more: { chance?: number; spare?: true } = {},
): ListColumn => ({ headings: headings.split(" | "), cell, fields, ...more });

const REMARKS = column("Comment | Notes | Remarks", "nothing", [], { chance: 0.4 });

export const LISTS: Record<string, ListKind> = {
  batteries: {
    kind: "packs",
    columns: [
      column(
        "Serial | S/N | Battery S/N | Serial number | Battery serial | Battery ID | Battery | Pack S/N | Battery no | SN | Pack | Batt no.",
        "serial",
        ["packs.serial", "runtime_tests.serial"],
      ),
      column(
        "Battery type | Model | Type | Battery model | Part no | Battery part number | P/N | Item",
        "batteryType",
        ["packs.item", "catalogue.item"],
        { chance: 0.6 },
      ),
      column(
        "Device | In device | Fitted to | Installed in | Used in | Device ID | Host device | Monitor",
        "device",
        ["packs.device"],
        { chance: 0.5 },
      ),
      column("Location | Site | Station | Department | Base | Ward | Where", "site", ["packs.site"], { chance: 0.5 }),
      column(
        "Mfg date | Date of manufacture | Manufactured | Made | Made on | DOM | Production date | Mfd | Build date",
        "made",
        ["packs.made"],
        { chance: 0.4 },
      ),
      column(
        "In service | First use | In use since | Commissioned | Date in service | Start date | Put in service | Installed | Service start | Purchased | Received | Date received | Issued",
        "since",
        ["packs.in_service"],
        { chance: 0.7 },
      ),
      column(
        "Cycles | Cycle count | Charge cycles | No of cycles | Cycles to date | Charges | Total cycles | Cycle no",
        "cycles",
        ["packs.cycles", "runtime_tests.cycles"],
        { chance: 0.5 },
      ),
      column(
        "Retired | Scrapped | Disposed | Withdrawn | Date retired | Disposal date | Out of service | Discarded on",
        "retired",
        ["packs.retired"],
        { chance: 0.2 },
      ),
      REMARKS,
    ],
  },
  tests: {
    kind: "runtime_tests",
    columns: [
      column("Date | Test date | Tested on | Date of test | Tested | Day | Date tested", "past", [
        "runtime_tests.date",
      ]),
      column(
        "Serial | S/N | Battery S/N | Battery serial | Battery | Battery ID | Pack | Serial no | Battery no. | Batt ID | Pack S/N",
        "serial",
        ["runtime_tests.serial"],
      ),
      column(
        "Runtime (min) | Minutes | Run time | Runtime | Discharge time (min) | Time to shutdown (min) | Duration | Run time min | Minutes on load",
        "minutes",
        ["runtime_tests.minutes"],
        { chance: 0.5 },
      ),
      column(
        "Capacity % | Capacity | % capacity | SOH % | Result % | Measured % | Cap % | Capacity measured (%) | Percent | % of new",
        "percent",
        ["runtime_tests.percent"],
      ),
      column("Result | Pass/Fail | Outcome | P/F | Verdict | Pass? | OK?", "result", ["runtime_tests.result"], {
        chance: 0.4,
      }),
      column(
        "Temp | Temperature | Temp (C) | Room temp °C | Ambient temp",
        "celsius",
        ["runtime_tests.temperature_c"],
        {
          chance: 0.2,
        },
      ),
      column("Load (W) | Load | Test load W", "watts", ["runtime_tests.load_w"], { chance: 0.15 }),
      column(
        "Required capacity (%) | Min % | Min. capacity | Minimum capacity % | Capacity limit (%) | SoC % | State of charge (%) | Charge level (%) | Capacity loss % | Wear %",
        "percent",
        [],
        { chance: 0.2 },
      ),
      column("Voltage | Volts", "volts", [], { chance: 0.1 }),
      column("Tester | Tested by | Technician | Initials | Operator | Checked by", "initials", [], { chance: 0.4 }),
      REMARKS,
    ],
  },
  stock: {
    kind: "dated_stock",
    columns: [
      column(
        "Item | Product | Description | Article | Item description | Consumable | Supply | Material | Item name | Name",
        "item",
        ["dated_stock.item", "catalogue.item"],
      ),
      column("Lot | LOT | Batch | Lot no | Lot number | Batch no. | Lot # | Batch/Lot", "lot", ["dated_stock.lot"], {
        chance: 0.7,
      }),
      column(
        "Expiry | Exp | Exp date | Expiry date | Use by | Expires | Best before | Expiration date | EXP | Exp. | Expiration | Use-by date | Valid until",
        "expiry",
        ["dated_stock.expiry"],
      ),
      column(
        "Qty | Quantity | Count | On hand | In stock | Units | Stock | Number | QOH | Pcs | Amount | Counted | Found",
        "several",
        ["dated_stock.quantity"],
      ),
      column(
        "Location | Place | Station | Site | Where | Vehicle | Store | Ambulance | Cupboard | Shelf | Room | Bag | Stored at | Surgery | Practice | Appliance",
        "site",
        ["dated_stock.place"],
      ),
      column("Supplier | Vendor | Ordered from", "supplier", ["catalogue.supplier"], { chance: 0.2, spare: true }),
      column("Par | Par level | Min stock | Minimum | Reorder level | To order", "few", [], { chance: 0.3 }),
      REMARKS,
    ],
  },
  uses: {
    kind: "use_log",
    columns: [
      column("Date | Day | Date used | Used on | When | Date of use", "past", ["use_log.date"]),
      column("Item | Product | Item used | Consumable | Description | Article | Supply used", "item", ["use_log.item"]),
      column(
        "Qty | Quantity | Used | Number | Qty used | Quantity used | Units used | Count | How many | No. used | Amount used",
        "few",
        ["use_log.quantity"],
      ),
      column(
        "Station | Vehicle | Place | Location | Ambulance | Site | Unit | Where | Base",
        "site",
        ["use_log.place"],
        { chance: 0.8 },
      ),
      column("Initials | Crew | Entered by | Signed", "initials", [], { chance: 0.3 }),
    ],
  },
  orders: {
    kind: "on_order",
    columns: [
      column("Item | Product | Description | Article | Item ordered", "item", ["on_order.item"]),
      column("Qty | Quantity | Qty ordered | Ordered | Quantity ordered | Order qty | Units ordered", "several", [
        "on_order.quantity",
      ]),
      column("PO | PO no | PO number | Order no | Order number | Purchase order | Order ref | PO # | Order", "order", [
        "on_order.order",
      ]),
      column(
        "ETA | Expected | Due | Due date | Delivery date | Expected delivery | Arrival | Expected on | Delivery due | Arrives",
        "soon",
        ["on_order.arrives"],
      ),
      column("Supplier | Vendor | Ordered from", "supplier", ["on_order.supplier"], { chance: 0.6 }),
      column("Order date | Ordered on | Date ordered | PO date", "past", [], { chance: 0.5 }),
    ],
  },
  prices: {
    kind: "catalogue",
    columns: [
      column("Item | Product | Description | Article | Item name | Material", "ownItem", ["catalogue.item"]),
      column("Kind | Type | Category | Group", "kind", ["catalogue.kind"], { chance: 0.6 }),
      column("Supplier | Vendor | Distributor | Source", "supplier", ["catalogue.supplier"]),
      column(
        "Price | Unit price | Price each | Cost | Price (EUR) | Unit cost | Net price | List price | Price per unit",
        "price",
        ["catalogue.price"],
      ),
      column(
        "Lead time | Lead time (days) | Delivery time | Lead days | Delivery (days) | Lead time days",
        "days",
        ["catalogue.lead_days"],
        { chance: 0.8 },
      ),
      column(
        "Box | Pack size | Units per box | Per box | Box qty | Pcs per pack | Box of | Case qty",
        "several",
        ["catalogue.units_per_box"],
        { chance: 0.5 },
      ),
      column("MOQ | Min order | Minimum order | Min qty", "few", ["catalogue.minimum_order"], { chance: 0.3 }),
    ],
  },
};
