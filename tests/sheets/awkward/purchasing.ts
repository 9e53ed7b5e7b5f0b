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
  {
    name: "a log of deliveries, of which nobody says what is left",
    text: `Date received,Delivered by,Item,Qty,Lot,Expiry,Delivery note
13/02/2025,Medsupply,Adult pads,10,L123,31/05/2027,DN-551
15/07/2026,Medsupply,Gel,4,G9,30/11/2026,DN-602
`,
    rows: { dated_stock: [], on_order: [], use_log: [] },
    aside: [
      [2, "unknown-table"],
      [3, "unknown-table"],
    ],
    unread: ["Date received", "Delivered by", "Item", "Qty", "Lot", "Expiry", "Delivery note"],
  },
  {
    name: "deliveries that lie where a column says",
    text: `Date received,Item,Qty,Lot,Expiry,Delivery note,Shelf
13/02/2026,Adult pads,10,L123,31/05/2027,DN-551,A1
`,
    rows: { dated_stock: [{ item: "Adult pads", quantity: 10, place: "A1" }] },
    unread: ["Date received", "Delivery note"],
  },
  {
    name: "stock with what is on order and when it comes, told once for an item of two lots",
    text: `Item,Lot,Expiry,On hand,On order,ETA
Adult pads,L1,31/05/2027,4,10,15/12/2026
Adult pads,L2,30/06/2027,2,10,15/12/2026
Gel,G1,30/06/2027,3,,
Paper,P1,31/12/2028,12,0,
`,
    rows: {
      dated_stock: [{ quantity: 4 }, { quantity: 2 }, { quantity: 3 }, { quantity: 12 }],
      on_order: [{ item: "Adult pads", quantity: 10, arrives: "2026-12-15" }],
    },
  },
  {
    name: "stock at a place with what is outstanding",
    text: `Item,Location,Qty,Expiry,Outstanding,Due in
Adult pads,Store,4,31/05/2027,10,15/12/2026
Gel,Store,3,30/06/2027,0,
`,
    rows: {
      dated_stock: [
        { item: "Adult pads", quantity: 4, place: "Store" },
        { item: "Gel", quantity: 3, place: "Store" },
      ],
      on_order: [{ item: "Adult pads", quantity: 10, arrives: "2026-12-15" }],
    },
  },
  {
    name: "German stock with orders on their way",
    text: `Artikel;Bestand;MHD;In Bestellung;Liefertermin
Defi-Pads;4;05/2027;10;15.12.2026
Gel;3;06/2027;0;
`,
    rows: {
      dated_stock: [{ quantity: 4 }, { quantity: 3 }],
      on_order: [{ item: "Defi-Pads", quantity: 10, arrives: "2026-12-15" }],
    },
  },
  {
    name: "what a supplier has sent and what is back ordered",
    text: `Our ref,Product,Ordered,Despatched,Back ordered,Due date
SO-9,Adult pads,20,15,5,2026-12-15
`,
    rows: { on_order: [{ order: "SO-9", item: "Adult pads", quantity: 5, arrives: "2026-12-15" }] },
    unread: ["Ordered", "Despatched"],
  },
  {
    name: "French stock with orders on their way, counted by quantity, and prices",
    text: `Produit;Lot;Péremption;Qté en stock;Qté en commande;Livraison prévue;Prix HT
Électrodes adultes;L1;31/03/2027;12;6;15/12/2026;42,50
Électrodes enfants;L2;31/05/2027;4;0;;48,00
`,
    rows: {
      dated_stock: [{ quantity: 12 }, { quantity: 4 }],
      on_order: [{ item: "Électrodes adultes", quantity: 6, arrives: "2026-12-15" }],
    },
  },
  {
    name: "two lots of an item in a line, with what is on order of it",
    text: `Item,On hand,On order,Supplier,Expiry 1,Qty 1,Expiry 2,Qty 2
Adult pads,9,6,Alpha,2027-03-31,4,2027-09-30,5
Child pads,2,4,Alpha,2027-05-31,2,,
`,
    rows: {
      dated_stock: [{ quantity: 4 }, { quantity: 5 }, { quantity: 2 }],
      on_order: [
        { item: "Adult pads", quantity: 6, supplier: "Alpha" },
        { item: "Child pads", quantity: 4, supplier: "Alpha" },
      ],
    },
    unread: ["On hand"],
  },
  {
    name: "the number of an order and how it stands in one column",
    text: `Item,Qty,PO / status,Due
Adult pads,10,4711 / open,30/11/2026
Gel,5,4712 / received,15/10/2026
Paper,5,4713 - shipped,15/12/2026
`,
    rows: {
      on_order: [
        { item: "Adult pads", order: "4711" },
        { item: "Paper", order: "4713" },
      ],
    },
    aside: [[3, "order-settled"]],
  },
  {
    name: "German orders whose number might be an article's",
    text: `Bestell-Nr.;Bestelldatum;Lieferant;Artikel;Menge;Liefertermin;Status
4711;01.10.2026;Medico;Defi-Pads;10;15.11.2026;offen
4712;05.09.2026;Medico;Gel;5;20.09.2026;geliefert
`,
    rows: { on_order: [{ item: "Defi-Pads", order: "4711", quantity: 10, arrives: "2026-11-15" }] },
    aside: [[3, "order-settled"]],
    unread: ["Bestelldatum", "Status"],
  },
  {
    name: "a delivery note, whose title alone tells what it is",
    text: "Delivery note DN-551\nItem,Qty,Lot,Expiry\nAdult pads,10,L1,31/05/2027\n",
    rows: { dated_stock: [] },
    aside: [[3, "unknown-table"]],
    unread: ["Item", "Qty", "Lot", "Expiry"],
  },
  {
    name: "an order that a remark says was cancelled",
    text: `Order,Item,Qty,Expected,Notes
P1,Adult pads,10,30/11/2026,deliver to back door
P2,Gel,5,15/12/2026,cancelled 12/10
`,
    rows: { on_order: [{ item: "Adult pads", order: "P1" }] },
    aside: [[3, "order-settled"]],
    unread: ["Notes"],
  },
  {
    name: "an order of which a remark says in capitals that a part has come",
    text: "Order,Item,Qty,Expected,Notes\nP3,Gel,5,15/12/2026,RECEIVED IN PART\n",
    rows: { on_order: [{ item: "Gel", order: "P3" }] },
    unread: ["Notes"],
  },
  {
    name: "orders of which a status or a remark says how many have come",
    text: `PO,Item,Qty,Expected,Status,Remarks
1,Pads,10,2026-11-20,4 of 10 received,
2,Gel,10,2026-11-20,open,part delivered (4)
3,Paper,20,2026-11-20,open,Teillieferung 8 Stk am 10.10.2026
4,Sensors,5,2026-11-20,5 of 5 received,
5,Pads,8,2026-11-20,open,"part delivered, 3 to follow"
6,Pads,9,2026-11-20,open,spare part 7
7,Pads,11,2026-11-20,open,Part delivered 10/10/2026
8,Pads,12,2026-11-20,12.10.2026 received,
`,
    rows: {
      on_order: [
        { order: "1", quantity: 6 },
        { order: "2", quantity: 6 },
        { order: "3", quantity: 12 },
        { order: "5", quantity: 8 },
        { order: "6", quantity: 9 },
        { order: "7", quantity: 11 },
      ],
    },
    aside: [
      [5, "order-settled"],
      [9, "order-settled"],
    ],
    unread: ["Status", "Remarks"],
  },
  {
    name: "orders that say in a word whether they have come",
    text: `PO,Item,Qty,Expected,Delivered?
1,Pads,10,2026-11-20,yes
2,Gel,20,2026-11-20,No
3,Paper,5,2026-11-20,
4,Sensors,7,2026-11-20,✓
`,
    rows: {
      on_order: [
        { order: "2", quantity: 20 },
        { order: "3", quantity: 5 },
      ],
    },
    aside: [
      [2, "order-settled"],
      [5, "order-settled"],
    ],
    unread: ["Delivered?"],
  },
  {
    name: "orders of which a part has come, told by a stroke, in words that do not count it, or below Received",
    text: `PO,Item,Qty ordered,Qty received,Expected,Status
1,Pads,10,,2026-11-20,Partial
2,Gel,10,,2026-11-20,6/10 delivered
3,Paper,5,,2026-11-20,6/10 delivered
4,Sensors,10,,2026-11-20,received 10/10
5,Pads,10,,2026-11-20,4 of 10 outstanding
6,Gel,4,4 of 4,2026-11-20,
7,Gel,4,1,2026-11-20,Partial
8,Gel,4,2,2026-11-20,Spare parts
`,
    rows: {
      on_order: [
        { order: "1", quantity: 10 },
        { order: "2", quantity: 4 },
        { order: "5", quantity: 10 },
        { order: "7", quantity: 3 },
        { order: "8", quantity: 2 },
      ],
    },
    aside: [
      [4, "order-settled"],
      [5, "order-settled"],
      [7, "order-settled"],
    ],
    findings: ["order-part"],
    unread: ["Qty received", "Status"],
  },
  {
    name: "remarks that begin like what has come, and tell when the rest will",
    text: `Commande;Article;Quantité;Livraison prévue;Remarque
1;Électrodes;10;30/11/2026;Livraison le lundi
2;Gel;5;30/11/2026;livré le 12/10
3;Papier;5;30/11/2026;complete set
`,
    rows: { on_order: [{ order: "1", quantity: 10 }, { order: "3" }] },
    aside: [[3, "order-settled"]],
    unread: ["Remarque"],
  },
  {
    name: "orders with what came of them each time and what is open",
    text: "PO,Item,Ordered,Delivery 1,Delivery 2,Open\n1,Pads,20,8,6,6\n2,Gel,10,4,,6\n",
    rows: {
      on_order: [
        { item: "Pads", quantity: 6 },
        { item: "Gel", quantity: 6 },
      ],
    },
    unread: ["Ordered", "Delivery 1", "Delivery 2"],
  },
  {
    name: "German orders of which a part has come, told without its count",
    text: "Bestellung;Artikel;Menge;Liefertermin;Status\n1;Pads;10;15.12.2026;Teillieferung\n2;Gel;10;15.12.2026;offen\n",
    rows: { on_order: [{ quantity: 10 }, { quantity: 10 }] },
    findings: ["order-part"],
    unread: ["Status"],
  },
  {
    name: "a delivery note with what was ordered, what was shipped and what is still to come, which is no stock",
    text: `Delivery note 2231 of 2026-10-20
Pos,Article,Ordered,Shipped,Backorder,Batch,Best before
1,Adult pads,20,12,8,L55,2028-05
`,
    rows: { dated_stock: [] },
    aside: [[3, "unknown-table"]],
    unread: ["Pos", "Article", "Ordered", "Shipped", "Backorder", "Batch", "Best before"],
  },
  {
    name: "units in a store by how many were ordered, which is not how many there are",
    text: "Article,Qty ordered,Batch,Best before,Store\nAdult pads,20,L55,2028-05,Main\nGel,10,G12,2028-01,Main\n",
    rows: {
      dated_stock: [
        { item: "Adult pads", quantity: 1, place: "Main" },
        { item: "Gel", quantity: 1, place: "Main" },
      ],
    },
    findings: ["count-unread"],
    unread: ["Qty ordered"],
  },
  {
    name: "items and prices, and nothing else",
    text: "Artikel;Einzelpreis EUR\nDefi-Pads;38,50\nKontaktgel;2,40\n",
    rows: {
      catalogue: [
        { item: "Defi-Pads", price: "38.50", currency: "EUR" },
        { item: "Kontaktgel", price: "2.40" },
      ],
    },
  },
  {
    name: "prices with and without taxes",
    text: "Item,Price excl. VAT,VAT %,Price incl. VAT,Lead time\nAdult pads,38.50,20,46.20,14\n",
    rows: { catalogue: [{ item: "Adult pads", price: "38.50", lead_days: 14 }] },
    unread: ["VAT %", "Price incl. VAT"],
  },
  {
    name: "prices of cases of a size, beside what the line costs",
    text: "Item,UOM,Unit Price,Ext Price\nAdult pads,EA,$38.50,$77.00\nGel,CS/24,$48.00,$48.00\n",
    rows: {
      catalogue: [
        { item: "Adult pads", price: "38.50", price_per: "unit" },
        { item: "Gel", price: "48", price_per: "box", units_per_box: 24 },
      ],
    },
    unread: ["Ext Price"],
  },
  {
    name: "prices of a contract with the days on which it begins and ends",
    text: `Supplier,Article,Contract price,Minimum order quantity,Lead time,Valid from,Valid to
Medico,Adult pads,36.20,10,2 weeks,01.01.2026,31.12.2028
`,
    rows: { catalogue: [{ supplier: "Medico", price: "36.20", minimum_order: 10, lead_days: 14 }], dated_stock: [] },
    unread: ["Valid from", "Valid to"],
  },
  {
    name: "what is outstanding, of which a cancelled order brings nothing",
    text: `Order #,Item,Ordered,Received,Outstanding,Status
P1,Adult pads,30,20,10,Partial
P2,Gel,24,,24,Open
P3,Paper,50,,50,Cancelled
`,
    rows: {
      on_order: [
        { order: "P1", item: "Adult pads", quantity: 10 },
        { order: "P2", item: "Gel", quantity: 24 },
      ],
    },
    aside: [[4, "order-settled"]],
    unread: ["Ordered", "Received", "Status"],
  },
  {
    name: "prices for ten, as a column of numbers says",
    text: `Supplier,Item,Price,per
North,Adult pads,285.00,10
West,Paper,2.80,1
`,
    rows: {
      catalogue: [
        { item: "Adult pads", price: "285", price_per: "box", units_per_box: 10 },
        { item: "Paper", price: "2.80", units_per_box: null },
      ],
    },
  },
  {
    name: "standard packs, which are no batteries, and prices per unit of measure",
    text: `Part,Description,Std pack,Price/UOM,Currency
P1,Adult pads,1,28.50,USD
P2,Gel,12,2.10,USD
`,
    rows: {
      packs: [],
      catalogue: [
        { item: "P1", kind: "pads", price: "28.50", units_per_box: 1 },
        { item: "P2", kind: "gel", price: "2.10", units_per_box: 12 },
      ],
    },
    unread: ["Description"],
  },
  {
    name: "prices of which each names its own currency",
    text: `Item,Unit price
Adult pads,£28.50
Paper,2.80 EUR
`,
    rows: {
      catalogue: [
        { item: "Adult pads", price: "28.50", currency: "GBP" },
        { item: "Paper", price: "2.80", currency: "EUR" },
      ],
    },
  },
  {
    name: "an order whose number and day stand in one cell above it",
    text: `Vendor: Northside Medical,,
PO: 88123      Date: 2026-10-13,,
SKU,Qty,ETA
PAD-A,40,2026-12-18
`,
    rows: {
      on_order: [{ item: "PAD-A", quantity: 40, order: "88123", supplier: "Northside Medical", arrives: "2026-12-18" }],
    },
  },
  {
    name: "what was bought, with the days of ordering and receiving, which is no price list",
    text: `Date ordered,Item,Qty,Cost ea.,Rec'd (Y/N),Rec'd date
2026-09-15,Adult pads,20,28.50,Y,2026-09-25
2026-10-16,Child pads,10,39.00,N,
2026-10-17,Battery pack,2,310.00,partial,2026-10-25
`,
    rows: {
      catalogue: [],
      on_order: [
        { item: "Child pads", quantity: 10 },
        { item: "Battery pack", quantity: 2 },
      ],
    },
    aside: [[2, "order-settled"]],
    findings: ["order-part"],
    unread: ["Date ordered", "Cost ea.", "Rec'd (Y/N)", "Rec'd date"],
  },
  {
    name: "orders whose rest is told in French",
    text: `Order;Article;Commandé;Livré;Reliquat;Date prévue;PU HT
C1;Électrodes adulte;20;10;10;15/01/2027;28,50
C2;Batterie BP-10;4;0;4;28/02/2027;310,00
`,
    rows: {
      on_order: [
        { order: "C1", quantity: 10, arrives: "2027-01-15" },
        { order: "C2", quantity: 4, arrives: "2027-02-28" },
      ],
    },
    unread: ["Commandé", "Livré", "PU HT"],
  },
  {
    name: "a list price beside what is paid",
    text: `Item,List price,Discount %,Net
Adult pads,30.00,5,28.50
Battery,400.00,25,300.00
`,
    rows: {
      catalogue: [
        { item: "Adult pads", price: "28.50" },
        { item: "Battery", price: "300" },
      ],
    },
    findings: ["kind-from-name"],
    unread: ["List price", "Discount %"],
  },
  {
    name: "what one costs beside the price of ten",
    text: `Item,Price per 10,Price each
Adult pads,270.00,28.50
Paper,25.00,2.80
`,
    rows: {
      catalogue: [
        { item: "Adult pads", price: "28.50", price_per: null, units_per_box: null },
        { item: "Paper", price: "2.80", price_per: null, units_per_box: null },
      ],
    },
    findings: ["kind-from-name"],
    unread: ["Price per 10"],
  },
  {
    name: "what one costs beside the price of a pack",
    text: `Description,Pack,Price,Each
Adult pads,10,285.00,28.50
Paper,20,56.00,2.80
`,
    rows: {
      catalogue: [
        { item: "Adult pads", price: "28.50", units_per_box: 10 },
        { item: "Paper", price: "2.80", units_per_box: 20 },
      ],
    },
    findings: ["kind-from-name"],
    unread: ["Price"],
  },
];
