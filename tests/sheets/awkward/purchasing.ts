import type { AwkwardSheet } from "./awkward-sheet.ts";

/** Orders, deliveries and prices as those who buy keep them. */
export const PURCHASING: AwkwardSheet[] = [
  {
    name: "an order whose supplier, number and day stand above its lines",
    text: `Purchase order
Supplier: Medico Supplies
Order no.: 4711
Order date: 12/10/2026
Expected: 30/11/2026

Item,Qty,Unit price
Adult pads,10,38.50
Gel,5,2.40
`,
    rows: {
      on_order: [
        { item: "Adult pads", quantity: 10, supplier: "Medico Supplies", order: "4711", arrives: "2026-11-30" },
        { item: "Gel", quantity: 5, supplier: "Medico Supplies", order: "4711", arrives: "2026-11-30" },
      ],
    },
    findings: ["from-heading"],
    unread: ["Unit price"],
  },
  {
    name: "two orders under each other, each below its supplier",
    text: `Supplier: Medico
PO: 4711
Item,Qty,Due
Adult pads,10,30/11/2026

Supplier: Heartline
PO: 4712
Item,Qty,Due
Adult pads,4,15/12/2026
`,
    rows: {
      on_order: [
        { quantity: 10, supplier: "Medico", order: "4711", arrives: "2026-11-30" },
        { quantity: 4, supplier: "Heartline", order: "4712", arrives: "2026-12-15" },
      ],
    },
  },
  {
    name: "prices below the supplier who offers them",
    text: `Quotation
Supplier: Medico
Item,Unit price,Lead time
Adult pads,38.50,14 days
`,
    rows: { catalogue: [{ item: "Adult pads", supplier: "Medico", price: "38.50", lead_days: 14 }], on_order: [] },
  },
];
