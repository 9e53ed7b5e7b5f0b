import type { AwkwardSheet } from "./awkward-sheet.ts";

/** Lists of consumables as stores keep them: counts and lots in one cell, packs of a size, cards of one item. */
export const STOCKROOMS: AwkwardSheet[] = [
  {
    name: "lots of which some lie at each of several places, with a count of all before them",
    text: `Item,Lot,Expiry,Total qty,Store A,Store B,Vehicles
Adult pads,L1,2027-03-31,16,10,2,4
Child pads,L2,2027-05-31,5,4,1,0
`,
    rows: {
      dated_stock: [
        { lot: "L1", quantity: 10, place: "Store A" },
        { lot: "L1", quantity: 2, place: "Store B" },
        { lot: "L1", quantity: 4, place: "Vehicles" },
        { lot: "L2", quantity: 4, place: "Store A" },
        { lot: "L2", quantity: 1, place: "Store B" },
        { lot: "L2", quantity: 0, place: "Vehicles" },
      ],
    },
    unread: ["Total qty"],
  },
  {
    name: "two places in a line, each with how many lie there",
    text: `Item,Location 1,Qty 1,Location 2,Qty 2,Expiry
Adult pads,Store,10,M1,2,2027-03-31
Child pads,Store,4,,,2027-05-31
`,
    rows: {
      dated_stock: [
        { item: "Adult pads", quantity: 10, place: "Store", expiry: "2027-03-31" },
        { item: "Adult pads", quantity: 2, place: "M1", expiry: "2027-03-31" },
        { item: "Child pads", quantity: 4, place: "Store", expiry: "2027-05-31" },
      ],
    },
  },
  {
    name: "places whose names begin with a word that says whose they are",
    text: "Responder bag,Item,Lot,Expiry\nBag 1,Adult pads,L1,2027-03-31\nBag 2,Adult pads,L2,2027-04-30\n",
    rows: { dated_stock: [{ place: "Bag 1" }, { place: "Bag 2" }] },
  },
  {
    name: "units that were counted twice, with what counts in the end",
    text: `Location,Item,Count 1,Count 2,Final count,Expiry
Store,Adult pads,20,19,19,2027-03-31
Store,Child pads,6,6,6,2027-05-31
`,
    rows: {
      dated_stock: [
        { item: "Adult pads", quantity: 19, place: "Store" },
        { item: "Child pads", quantity: 6, place: "Store" },
      ],
    },
  },
  {
    name: "for whom some units of a lot are reserved, which does not hold all of it",
    text: `Item,Lot,Expiry,Qty,Reserved for,Reserved qty
Adult pads,L1,2027-03-31,20,M1,4
Gel,G1,2027-06-30,5,,
`,
    rows: {
      dated_stock: [
        { quantity: 20, held: null },
        { quantity: 5, held: null },
      ],
    },
    unread: ["Reserved for", "Reserved qty"],
  },
  {
    name: "uses by quarter",
    text: `Quarter,Item,Used
2025 Q3,Adult pads,14
2025 Q4,Adult pads,16
`,
    rows: {
      use_log: [
        { date: "2025-09-30", item: "Adult pads", quantity: 14 },
        { date: "2025-12-31", item: "Adult pads", quantity: 16 },
      ],
    },
  },
  {
    name: "vehicles told by a word and a colon above the list of each",
    text: `Vehicle: M1,,
Item,Exp,Qty
Adult pads,2027-03-31,2
,,
Vehicle: M2,,
Item,Exp,Qty
Adult pads,2027-05-31,2
`,
    rows: {
      dated_stock: [
        { item: "Adult pads", place: "M1", expiry: "2027-03-31" },
        { item: "Adult pads", place: "M2", expiry: "2027-05-31" },
      ],
    },
    aside: [
      [5, "section-line"],
      [6, "repeated-header"],
    ],
  },
  {
    name: "levels between which stock is kept, which are no minimum order",
    text: `Store,Item,Expiry date,Qty,Min qty,Max qty
Main,Adult pads,31.03.2027,10,5,20
Main,Child pads,30.04.2027,3,2,10
`,
    rows: {
      dated_stock: [
        { item: "Adult pads", quantity: 10 },
        { item: "Child pads", quantity: 3 },
      ],
      catalogue: [],
    },
    unread: ["Min qty", "Max qty"],
  },
  {
    name: "a least quantity beside lots, which is a level and no minimum order",
    text: `Depot;Artikel;Charge;MHD;Menge;ME;Mindestmenge
Zentral;Elektroden Erw.;C1;31.03.2027;1.200;ST;100
Zentral;Elektroden Kind;C2;31.05.2027;4;ST;2
`,
    rows: { dated_stock: [{ quantity: 1200 }, { quantity: 4 }], catalogue: [] },
    // what it is measured in is used, though no field holds it
    unread: ["ME", "Mindestmenge"],
  },
  {
    name: "when a unit was scanned, which is no scan of its label",
    text: `Serial,Lot,Item,Expiry,Location,Scanned at
S1,L1,Adult pads,2027-03-31,D1,2026-10-01 10:00
S2,L1,Adult pads,2027-03-31,D3,2026-10-15 10:05
`,
    rows: {
      dated_stock: [
        { serial: "S1", place: "D1" },
        { serial: "S2", place: "D3" },
      ],
    },
    unread: ["Scanned at"],
  },
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
  {
    name: "what was there first, came in, went out and is there last",
    text: `Item,Opening stock,Received,Used,Closing stock,Expiry
Adult pads,10,5,3,12,31/05/2027
Gel,4,0,1,3,30/06/2027
`,
    rows: {
      dated_stock: [
        { item: "Adult pads", quantity: 12 },
        { item: "Gel", quantity: 3 },
      ],
      use_log: [],
    },
    unread: ["Opening stock", "Received", "Used"],
  },
  {
    name: "the same by month, with no expiry",
    text: `Month,Item,Opening,Received,Consumed,Closing
Jan 2026,Adult pads,10,5,3,12
Feb 2026,Adult pads,12,0,2,10
`,
    rows: {
      use_log: [
        { date: "2026-01-31", item: "Adult pads", quantity: 3 },
        { date: "2026-02-28", item: "Adult pads", quantity: 2 },
      ],
    },
    unread: ["Opening", "Received", "Closing"],
  },
  {
    name: "movements in and out, of which only those out are uses",
    text: `Datum;Bewegungsart;Artikel;Menge
12.10.2026;Abgang;Defi-Pads;2
13.10.2026;Zugang;Defi-Pads;10
`,
    rows: {
      use_log: [
        { quantity: 2, reason: "use" },
        { quantity: 10, reason: "restock" },
      ],
    },
  },
  {
    name: "movements by the words in and out",
    text: "Date,Item,In/Out,Qty\n12/10/2026,Adult pads,Out,2\n13/10/2026,Adult pads,In,10\n",
    rows: { use_log: [{ reason: "use" }, { quantity: 10, reason: "restock" }] },
  },
  {
    name: "units written off, with their expiry and why",
    text: `Write-offs 2026
Date,Item,Qty,Lot,Expiry,Reason
15/03/2026,Adult pads,3,L11,28/02/2026,Expired
20/04/2026,Gel,2,G2,31/03/2026,Expired
`,
    rows: {
      dated_stock: [],
      use_log: [
        { date: "2026-03-15", item: "Adult pads", quantity: 3, reason: "lapsed" },
        { date: "2026-04-20", item: "Gel", quantity: 2, reason: "lapsed" },
      ],
    },
    unread: ["Lot", "Expiry"],
  },
  {
    name: "Spanish uses by service and reason",
    text: `Fecha;Artículo;Cantidad consumida;Servicio;Motivo
02/10/2026;Parches adulto;2;UCI;Paciente
13/10/2026;Gel;1;Urgencias;Caducado
`,
    rows: {
      use_log: [
        { item: "Parches adulto", quantity: 2, place: "UCI", reason: "use" },
        { item: "Gel", quantity: 1, place: "Urgencias", reason: "lapsed" },
      ],
    },
  },
  {
    name: "totals behind the name of each item",
    text: `Item,Location,Qty,Expiry
Adult pads,Store A,4,31/05/2027
Adult pads,Store B,3,31/05/2027
Adult pads total,,7,
`,
    rows: { dated_stock: [{ quantity: 4 }, { quantity: 3 }] },
    aside: [[4, "total-row"]],
  },
  {
    name: "a column of yes and no under a word for expired",
    text: "Item,Qty,Expiry,Expired?\nAdult pads,2,31/05/2027,No\nGel,1,30/09/2026,Yes\n",
    rows: { dated_stock: [{ quantity: 2 }, { quantity: 1 }] },
    unread: ["Expired?"],
  },
  {
    name: "pads and batteries in quarantine by their place, and a ward of that name",
    text: `Item,Expiry,Qty,Location
Adult pads,2027-05-31,4,Quarantine
Adult pads,2027-05-31,3,Quarantänelager
Adult pads,2027-05-31,2,Store
Adult pads,2027-05-31,1,Quarantine ward

Serial,Type,Fitted,Location
B1,LX,2022-01-13,Quarantine shelf
B2,LX,2022-01-14,Monitor 1
`,
    rows: {
      dated_stock: [
        { quantity: 4, held: "Quarantine" },
        { quantity: 3, held: "Quarantänelager" },
        { quantity: 2, held: null },
        { quantity: 1, held: null },
      ],
      packs: [
        { serial: "B1", held: "Quarantine shelf" },
        { serial: "B2", held: null },
      ],
    },
  },
  {
    name: "counts for adults and children beside their expiries, with no word for pads",
    text: `Location,Adult qty,Adult exp,Pedi,Pedi exp
Store,6,2027-03-31,2,2027-08-31
Medic 1,2,2027-05-31,1,2027-06-30
`,
    rows: {
      dated_stock: [
        { item: "Adult pads", expiry: "2027-03-31", quantity: 6, place: "Store" },
        { item: "Pedi pads", expiry: "2027-08-31", quantity: 2, place: "Store" },
        { item: "Adult pads", expiry: "2027-05-31", quantity: 2, place: "Medic 1" },
        { item: "Pedi pads", expiry: "2027-06-30", quantity: 1, place: "Medic 1" },
      ],
    },
  },
  {
    name: "how many to order of what is there, which numbers no order",
    text: `Item,Par,OH,Order,Exp
Adult pads,6,4,2,2027-03-31
Ped pads,2,2,0,2027-06-30
`,
    rows: {
      on_order: [],
      dated_stock: [
        { item: "Adult pads", quantity: 4, expiry: "2027-03-31" },
        { item: "Ped pads", quantity: 2, expiry: "2027-06-30" },
      ],
    },
    unread: ["Par", "Order"],
  },
  {
    name: "two lists side by side with no column between, below a unit's name each",
    text: `Unit 51,,,Unit 52,,
Item,Qty,Exp,Item,Qty,Exp
Adult pads,2,2027-03-31,Adult pads,2,2027-05-31
Ped pads,1,2027-06-30,Ped pads,1,2027-06-30
`,
    rows: {
      dated_stock: [
        { item: "Adult pads", quantity: 2, expiry: "2027-03-31", place: "Unit 51" },
        { item: "Ped pads", quantity: 1, expiry: "2027-06-30", place: "Unit 51" },
        { item: "Adult pads", quantity: 2, expiry: "2027-05-31", place: "Unit 52" },
        { item: "Ped pads", quantity: 1, expiry: "2027-06-30", place: "Unit 52" },
      ],
    },
  },
  {
    name: "packs of goods told by how many are in a box, which are no batteries",
    text: `Item,Vendor,Cost,Pack,Exp,QOH
Adult pads,North,285.00,10/bx,2027-03-31,3
Gel,West,25.20,12/cs,2028-01-31,2
`,
    rows: {
      packs: [],
      dated_stock: [
        { item: "Adult pads", expiry: "2027-03-31", quantity: 3 },
        { item: "Gel", expiry: "2028-01-31", quantity: 2 },
      ],
      catalogue: [
        { item: "Adult pads", price: "285", units_per_box: 10 },
        { item: "Gel", price: "25.20", units_per_box: 12 },
      ],
    },
  },
  {
    name: "boxes of ten, the number before the word",
    text: `Item,Qty,UOM,Exp
Adult pads,3,10/bx,2027-03-31
Gel,12,EA,2028-01-31
`,
    rows: {
      dated_stock: [
        { item: "Adult pads", quantity: 30 },
        { item: "Gel", quantity: 12 },
      ],
    },
    unread: ["UOM"],
  },
];
