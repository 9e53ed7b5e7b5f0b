import type { AwkwardSheet } from "./awkward-sheet.ts";

/** Answers to forms, as the programs that ask the questions export them, and habits of writing counts and prices. */
export const FORMS: AwkwardSheet[] = [
  {
    name: "answers to a form, headed by its questions, of which the last for a device counts",
    text: `Timestamp,Which AED are you checking?,Is the light green?,When do the pads expire?,What is the battery expiration date?
8/3/2026 8:14:22,AED 1,Yes,5/31/2027,3/31/2029
8/13/2026 9:01:10,AED 2,No,6/30/2027,4/30/2029
10/14/2026 9:11:10,AED 1,Yes,10/31/2028,3/31/2029
`,
    rows: {
      devices: [{ device: "AED 1" }, { device: "AED 2" }],
      dated_stock: [
        { item: "pads", place: "AED 2", expiry: "2027-06-30" },
        { item: "battery", place: "AED 2", expiry: "2029-04-30" },
        { item: "pads", place: "AED 1", expiry: "2028-10-31" },
        { item: "battery", place: "AED 1", expiry: "2029-03-31" },
      ],
    },
    findings: ["earlier-check"],
    unread: ["Timestamp", "Is the light green?"],
  },
  {
    name: "answers to a French form",
    text: `Horodateur,Quel défibrillateur ?,Date de péremption des électrodes,Voyant vert ?
02/09/2026 08:01:00,DAE Mairie,31/05/2027,Oui
13/09/2026 08:01:00,DAE Stade,31/08/2027,Non
02/10/2026 08:01:00,DAE Mairie,31/05/2029,Oui
`,
    rows: {
      devices: [{ device: "DAE Mairie" }, { device: "DAE Stade" }],
      dated_stock: [
        { place: "DAE Stade", expiry: "2027-08-31" },
        { place: "DAE Mairie", expiry: "2029-05-31" },
      ],
    },
    findings: ["earlier-check"],
    unread: ["Horodateur", "Voyant vert ?"],
  },
  {
    name: "answers to a form that numbers them, which names no device",
    text: `ID,Start time,Completion time,AED ID,Pad expiry date
1,9/1/26 8:01:00,9/1/26 8:02:00,X1,5/31/2027
2,10/16/26 8:01:00,10/16/26 8:02:00,X1,5/31/2029
3,10/16/26 8:05:00,10/16/26 8:07:00,X2,6/30/2027
`,
    rows: {
      devices: [{ device: "X1" }, { device: "X2" }],
      dated_stock: [
        { place: "X1", expiry: "2029-05-31" },
        { place: "X2", expiry: "2027-06-30" },
      ],
    },
    findings: ["earlier-check"],
    unread: ["ID", "Start time", "Completion time"],
  },
  {
    name: "boxes of a size, counted on the shelf",
    text: `Item,On shelf,Expiry
Adult pads,3 boxes of 10,06/2027
Child pads,2 boxes of 5,03/2027
Sensors,4,12/2028
`,
    // 3 x 10, 2 x 5
    rows: { dated_stock: [{ quantity: 30 }, { quantity: 10 }, { quantity: 4 }] },
  },
  {
    name: "counts with a word cut short",
    text: "Item,Qty,Exp.\nAdult pads,3 pr.,04/30/2027\nChild pads,2 ea.,05/31/2027\n",
    rows: { dated_stock: [{ quantity: 3 }, { quantity: 2 }] },
  },
  {
    name: "prices of boxes whose size the heading tells",
    text: "Item,Price/box of 5,Lead time wks\nAdult pads,225.00,2\nChild pads,275.00,2\n",
    rows: {
      catalogue: [
        { item: "Adult pads", price: "225", price_per: "box", units_per_box: 5, lead_days: 14 },
        { item: "Child pads", price: "275", price_per: "box", units_per_box: 5 },
      ],
    },
  },
  {
    name: "prices for ten, and weeks cut short",
    text: "Item,Kind,Price per 10,Lead time\nSensors,sensor,22.50,14 days\nPaper,paper,18.00,2 Wo.\n",
    rows: {
      catalogue: [
        { item: "Sensors", price: "22.50", price_per: "box", units_per_box: 10, lead_days: 14 },
        { item: "Paper", price: "18", price_per: "box", units_per_box: 10, lead_days: 14 },
      ],
    },
  },
  {
    name: "prices for a year, which is no size of a box",
    text: "Item,Kind,Price for 2026 (EUR),Box\nPads,pads,45.00,10\nGel,gel,4.50,12\n",
    rows: {
      catalogue: [
        { price: "45", price_per: null, units_per_box: 10 },
        { price: "4.50", price_per: null, units_per_box: 12 },
      ],
    },
  },
  {
    name: "a stock card with expiries, whose units that went out are not there",
    text: `Date,Item,Expiry,In,Out,Balance
2026-01-05,Adult pads,2027-05-31,10,,10
2026-02-05,Adult pads,2027-05-31,,4,6
`,
    rows: { use_log: [{ date: "2026-02-05", item: "Adult pads", quantity: 4 }], dated_stock: [] },
    aside: [[2, "missing-required"]],
    unread: ["Expiry", "In", "Balance"],
  },
  {
    name: "pads to train with, which no patient gets",
    text: "Item,Lot,Expiry,Qty,Training only\nAdult pads,L1,2027-04-30,4,\nAdult pads,L2,2026-12-31,2,x\n",
    rows: {
      dated_stock: [
        { lot: "L1", held: null },
        { lot: "L2", held: "x" },
      ],
    },
  },
  {
    name: "tests and tasks with words cut short, and a French stocktake",
    text: `SN,Test dt,Run (min),Load (W),Ambient (F)
K9,2026-03-03,190,20,77

Tâche,Périodicité,Consommable,Qté par tâche
Test papier,Mensuel,Papier ECG,1

Article,Stock mini,Stock réel,Péremption la plus proche
Électrodes adultes,5,12,2027-06-30
`,
    // 77 °F = (77 - 32) * 5 / 9 = 25 °C
    rows: {
      runtime_tests: [{ serial: "K9", date: "2026-03-03", minutes: 190, load_w: 20, temperature_c: 25 }],
      routine: [{ task: "Test papier", per_year: 12, item: "Papier ECG", quantity: 1 }],
      dated_stock: [{ item: "Électrodes adultes", quantity: 12, expiry: "2027-06-30" }],
    },
    unread: ["Stock mini"],
  },
];
