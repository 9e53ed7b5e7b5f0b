import type { AwkwardSheet } from "./awkward-sheet.ts";

/** Sheets of those who keep accounts: grids of ticks, orders of which nothing is to come. */
export const BOOKKEEPING: AwkwardSheet[] = [
  {
    name: "a grid of ticks by month beside expiries",
    text: `AED #,Site,Jan,Feb,Mar,Pads exp
1,Lobby,✓,✓,✓,03/2027
2,Gym,✓,x,✓,04/2027
`,
    rows: {
      devices: [
        { device: "1", site: "Lobby" },
        { device: "2", site: "Gym" },
      ],
      dated_stock: [
        { place: "1", expiry: "2027-03-31" },
        { place: "2", expiry: "2027-04-30" },
      ],
    },
    unread: ["Jan", "Feb", "Mar"],
  },
  {
    name: "orders of which nothing is outstanding",
    text: `PO,Material,Ordered,Open,Promised
4500,Adult pads,10,6,2026-12-15
4501,Gel,24,0,2026-10-15
`,
    rows: { on_order: [{ item: "Adult pads", quantity: 6, arrives: "2026-12-15" }] },
    aside: [[3, "order-settled"]],
    unread: ["Ordered"],
  },
  {
    name: "subtotals of parts of a list",
    text: `Serial,Device,In service
Station North,,
B1,MD-1,2023-01-05
Subtotal North,1,
Station South,,
B2,MD-2,2023-03-05
Sub-total South,1,
`,
    rows: { packs: [{ serial: "B1" }, { serial: "B2" }] },
    aside: [
      [2, "section-line"],
      [4, "total-row"],
      [5, "section-line"],
      [7, "total-row"],
    ],
  },
  {
    name: "totals of an item that repeat its next expiry, and an item that only sounds like one",
    text: `Item,Next expiry,Qty
Adult pads,2027-03-31,4
Adult pads,2027-04-30,6
Total adult pads,2027-03-31,10
Child pads,2027-05-31,3
Child pads total,2027-05-31,3
Total care gel,2027-06-30,2
`,
    rows: { dated_stock: [{ quantity: 4 }, { quantity: 6 }, { quantity: 3 }, { item: "Total care gel", quantity: 2 }] },
    aside: [
      [4, "total-row"],
      [6, "total-row"],
    ],
  },
  {
    name: "barcodes of trade and of the house beside items",
    text: `Barcode,Item,Qty,Exp
4012345678901,Adult pads,4,2027-03-31
ST-0042,Gel,6,2027-04-30
`,
    rows: {
      dated_stock: [
        { item: "Adult pads", expiry: "2027-03-31", quantity: 4 },
        { item: "Gel", expiry: "2027-04-30", quantity: 6, label: null },
      ],
    },
    findings: ["label-unreadable"],
  },
  {
    name: "batteries and whether they are active",
    text: "Battery,Active?,Device,Installed\nB1,Y,MD-1,2024-03-12\nB2,N,,2020-03-12\n",
    rows: { packs: [{ serial: "B1" }, { serial: "B2" }] },
    findings: ["fault-unread"],
    unread: ["Active?"],
  },
  {
    name: "the foot and the head of a printed page among devices",
    text: `Device,Site,Battery,Pads exp
MD-1,ED,B1,2027-03-31
Printed 30/10/2026 08:00,,,Page 1 of 2
Device,Site,Battery,Pads exp
MD-2,ICU,B2,2027-04-30
Page 2 of 2,,,
`,
    rows: { devices: [{ device: "MD-1" }, { device: "MD-2" }], packs: [{ serial: "B1" }, { serial: "B2" }] },
    aside: [
      [3, "note-row"],
      [4, "repeated-header"],
      [6, "note-row"],
    ],
  },
  {
    name: "devices that were moved from one place",
    text: `Device,Type,Old location,Site
MD-1,monitor,ED,ICU
MD-2,monitor,ICU,ED
`,
    rows: {
      devices: [
        { device: "MD-1", site: "ICU" },
        { device: "MD-2", site: "ED" },
      ],
    },
    unread: ["Old location"],
  },
  {
    name: "vehicles looked at week by week",
    text: `Week,Vehicle,Adult pads exp,Peds pads exp
W40 2026,M1,2027-03-31,2027-05-31
W41 2026,M1,2027-03-31,2027-05-31
W40 2026,M2,2027-04-30,2027-05-31
W41 2026,M2,2027-06-30,2027-05-31
`,
    rows: {
      dated_stock: [
        { item: "Adult pads", expiry: "2027-03-31", place: "M1" },
        { item: "Peds pads", expiry: "2027-05-31", place: "M1" },
        { item: "Adult pads", expiry: "2027-06-30", place: "M2" },
        { item: "Peds pads", expiry: "2027-05-31", place: "M2" },
      ],
    },
    aside: [
      [2, "earlier-check"],
      [4, "earlier-check"],
    ],
    unread: ["Week"],
  },
  {
    name: "stock counted by two, who need not agree",
    text: `Item,Lot,Expiry,Count 1 (JH),Count 2 (RK),Diff
Adult pads,A1,2027-03-31,12,12,0
Child pads,C1,2027-04-30,8,7,1
`,
    rows: { dated_stock: [{ quantity: 12 }, { item: "Child pads" }] },
    findings: ["copies-disagree"],
    unread: ["Diff"],
  },
  {
    name: "stock counted again where the first count was in doubt",
    text: `Item,Lot,Expiry,System qty,Counted,Recount
Adult pads,A1,2027-03-31,12,12,
Child pads,C1,2027-04-30,9,7,8
`,
    rows: { dated_stock: [{ quantity: 12 }, { quantity: 8 }] },
    unread: ["System qty"],
  },
  {
    name: "stock counted by two and settled by a third, in German",
    text: `Artikel;Verfall;1. Zählung;2. Zählung;Final count
Elektroden;31.03.2027;12;11;11
Gel;30.04.2027;6;6;6
`,
    rows: { dated_stock: [{ quantity: 11 }, { quantity: 6 }] },
  },
  {
    name: "batteries on hire until a day on which they do not expire",
    text: `Battery,On hire to,Since,Until,Cycles
B1,Clinic North,2026-01-05,2026-12-31,110
B2,Clinic South,2026-02-05,2027-01-31,92
`,
    rows: { packs: [{ serial: "B1" }, { serial: "B2" }], dated_stock: [] },
    findings: ["expiry-unread"],
    unread: ["On hire to", "Until"],
  },
  {
    name: "a spare battery behind numbered ones",
    text: `Vehicle,Batt 1,Batt 2,Spare
M1,B1,B2,B9
M2,B3,B4,B8
`,
    rows: {
      packs: ["B1", "B2", "B9", "B3", "B4", "B8"].map((serial, at) => ({ serial, device: at < 3 ? "M1" : "M2" })),
    },
  },
  {
    name: "how many spares lie beside a battery",
    text: "Device,Battery,Spare\nM1,B1,2\nM2,B2,1\n",
    rows: { packs: [{ serial: "B1" }, { serial: "B2" }] },
    unread: ["Spare"],
  },
];
