import type { AwkwardSheet } from "./awkward-sheet.ts";

/** Lists of consumables as stores keep them: counts and lots in one cell, packs of a size, cards of one item. */
export const STOCKROOMS: AwkwardSheet[] = [
  {
    name: "counts behind and before the items, with no column of their own",
    text: `Item,Expiry,Location
Adult pads x2,31/05/2027,Store A
2 x child pads,30/06/2027,Store A
ECG gel (3x),31/07/2027,Store A
Electrodes 5x4 cm,31/08/2027,Store A
`,
    rows: {
      dated_stock: [
        { item: "Adult pads", quantity: 2, expiry: "2027-05-31" },
        { item: "child pads", quantity: 2, expiry: "2027-06-30" },
        { item: "ECG gel", quantity: 3, expiry: "2027-07-31" },
        { item: "Electrodes 5x4 cm", quantity: 1, expiry: "2027-08-31" },
      ],
    },
  },
  {
    name: "the size of a pack behind an item whose packs are counted",
    text: `Item,Qty,Expiry
ECG dots x50,2,31/05/2027
`,
    rows: { dated_stock: [{ item: "ECG dots x50", quantity: 2 }] },
  },
  {
    name: "two expiries in a cell, one for each of two units, and with five of which nobody says how they part",
    text: `Item,Qty,Expiry
Adult pads,2,"05/2027, 11/2027"
Child pads,1,06/2027
Gel,5,05/2027 & 11/2027
Paper,5,05/2027 (2) / 11/2027 (3)
`,
    rows: {
      dated_stock: [
        { item: "Adult pads", quantity: 1, expiry: "2027-05-31" },
        { item: "Adult pads", quantity: 1, expiry: "2027-11-30" },
        { item: "Child pads", quantity: 1, expiry: "2027-06-30" },
        { item: "Gel", quantity: 4, expiry: "2027-05-31" },
        { item: "Gel", quantity: 1, expiry: "2027-11-30" },
        { item: "Paper", quantity: 2, expiry: "2027-05-31" },
        { item: "Paper", quantity: 3, expiry: "2027-11-30" },
      ],
    },
    findings: ["lots-counted-together"],
  },
  {
    name: "days of several lots in a cell, whose order one of them settles",
    text: `Item,Expiry,Lot
Adult pads,13/05/2027; 01/11/2027,L1
Gel,2 exp 05/06/2027,
`,
    rows: {
      dated_stock: [
        { item: "Adult pads", expiry: "2027-05-13" },
        { item: "Adult pads", expiry: "2027-11-01" },
        { item: "Gel", expiry: "2027-06-05", quantity: 2 },
      ],
    },
  },
  {
    name: "French sets counted behind their date",
    text: `Article;Emplacement;Péremption
Électrodes adulte;VSAV 1;06/2028 (2 jeux)
Électrodes enfant;VSAV 1;05/2027
`,
    rows: {
      dated_stock: [
        { item: "Électrodes adulte", quantity: 2, expiry: "2028-06-30", place: "VSAV 1" },
        { item: "Électrodes enfant", quantity: 1, expiry: "2027-05-31" },
      ],
    },
  },
  {
    name: "two dates in a register's cell",
    text: `AED;Site;Adult pads exp;Child pads exp
1;Town hall;05/2027, 11/2027;06/2027
2;Library;06/2027 x2;
`,
    rows: {
      dated_stock: [
        { item: "Adult pads", quantity: 1, expiry: "2027-05-31", place: "1" },
        { item: "Adult pads", quantity: 1, expiry: "2027-11-30", place: "1" },
        { item: "Child pads", quantity: 1, expiry: "2027-06-30", place: "1" },
        { item: "Adult pads", quantity: 2, expiry: "2027-06-30", place: "2" },
      ],
    },
  },
  {
    name: "units of measure that say how many a box holds",
    text: `Item,UOM,Qty,Expiry
Adult pads,EA,4,2027-05-31
ECG dots,BX/10,2,2027-05-31
ECG paper,Pack of 5,3,2027-05-31
Gel,CS24,1,2027-05-31
`,
    rows: { dated_stock: [{ quantity: 4 }, { quantity: 20 }, { quantity: 15 }, { quantity: 24 }] },
    unread: ["UOM"],
  },
  {
    name: "packs of a size and measures of one beside the count",
    text: `Item,Quantity,Expiry
Adult pads,2 BX/10,2027-05-31
ECG dots,2 bags of 50,2027-05-31
ECG paper,1 box (10 rolls),2027-05-31
Recorder paper,3 PK,2027-05-31
Gel,4 x 250 ml,2027-05-31
`,
    rows: {
      dated_stock: [{ quantity: 20 }, { quantity: 100 }, { quantity: 10 }, { quantity: 3 }, { quantity: 4 }],
    },
  },
  {
    name: "a card of one item with what came in and went out",
    text: `STOCK CARD
Item: Adult defibrillation pads,,,,
Unit: each,,,,
Date,Reference,Received,Issued,Balance
05/03/2026,ICU,,2,10
20/03/2026,DN 4412,10,,20
04/04/2026,ED,,3,17
`,
    rows: {
      packs: [],
      use_log: [
        { date: "2026-03-05", item: "Adult defibrillation pads", quantity: 2 },
        { date: "2026-04-04", item: "Adult defibrillation pads", quantity: 3 },
      ],
    },
    aside: [[6, "missing-required"]],
    findings: ["from-heading"],
    unread: ["Reference", "Received", "Balance"],
  },
  {
    name: "lots of the item that a line above names",
    text: `Item: Adult pads
Lot,Expiry,Qty
L1,05/2027,4
L2,06/2027,2
`,
    rows: {
      dated_stock: [
        { item: "Adult pads", lot: "L1", quantity: 4 },
        { item: "Adult pads", lot: "L2", quantity: 2 },
      ],
    },
  },
  {
    name: "consignment stock, of which some is used and the rest remains",
    text: `Item,Lot,Expiry,Qty used,Qty remaining
Adult pads,L77,2027-08-31,4,6
`,
    rows: { dated_stock: [{ item: "Adult pads", quantity: 6 }] },
    unread: ["Qty used"],
  },
  {
    name: "lots that were thrown away, and one that was not",
    text: `Item,Lot,Expiry,Qty,Date disposed
Adult pads,L11,28/02/2026,3,15/03/2026
Gel,G2,31/05/2027,2,
`,
    rows: { dated_stock: [{ item: "Gel", quantity: 2 }] },
    aside: [[2, "gone"]],
    unread: ["Date disposed"],
  },
  {
    name: "units with the day on which they were used",
    text: `Item,Lot,Expiry,Qty,Date used
Adult pads,L1,31/05/2027,1,12/10/2026
Gel,L2,31/05/2027,1,
`,
    rows: { dated_stock: [{ item: "Gel", quantity: 1 }] },
    aside: [[2, "gone"]],
    unread: ["Date used"],
  },
];
