import type { AwkwardSheet } from "./awkward-sheet.ts";

/** Lists of one kind under other people's headers. */
export const LISTS: AwkwardSheet[] = [
  {
    name: "batteries with abbreviations",
    text: `Batt. S/N\tP/N\tMfg date\tIn svc\tCycles #\tLoc.
0001\tLX\t2021-11\t2022-01-10\t120\tDepot
0002\tLX\t2021-11\t2022-01-10\t98\tDepot
`,
    rows: {
      packs: [
        { serial: "0001", item: "LX", made: "2021-11-01", in_service: "2022-01-10", cycles: 120, site: "Depot" },
        { serial: "0002", item: "LX", made: "2021-11-01", in_service: "2022-01-10", cycles: 98, site: "Depot" },
      ],
    },
  },
  {
    name: "typing errors in the header",
    text: `Battery Seriel No,Battery Tpye,Instaled,Cylces
B1,LX,2022-01-10,120
B2,LX,2022-01-11,98
`,
    rows: {
      packs: [
        { serial: "B1", item: "LX", in_service: "2022-01-10", cycles: 120 },
        { serial: "B2", item: "LX", in_service: "2022-01-11", cycles: 98 },
      ],
    },
  },
  {
    name: "runtime tests in hours with a decimal comma",
    text: `Akku-Nr;Prüfdatum;Laufzeit (h);Last (W);Ergebnis
A1;13.05.2026;1,5;25;bestanden
A2;14.05.2026;0,75;25;nicht bestanden
`,
    rows: {
      runtime_tests: [
        { serial: "A1", date: "2026-05-13", minutes: 90, load_w: 25, result: "pass" },
        { serial: "A2", date: "2026-05-14", minutes: 45, load_w: 25, result: "fail" },
      ],
    },
  },
  {
    name: "capacities in mAh and as shares",
    text: `Serial,Tested on,Capacity (mAh),SOH
S1,2026-01-13,4350,0.87
S2,2026-01-14,4800,0.96
`,
    rows: {
      runtime_tests: [
        { serial: "S1", date: "2026-01-13", ah: 4.35, percent: 87 },
        { serial: "S2", date: "2026-01-14", ah: 4.8, percent: 96 },
      ],
    },
  },
  {
    name: "runtimes as clock times, and two tests of a day",
    text: `Serial No,Date/Time,Run time
S1,2026-01-13 08:00,1:12
S1,2026-01-13 16:30,1:05
S2,2026-01-14T09:15:00Z,0:58
`,
    rows: {
      runtime_tests: [
        { serial: "S1", date: "2026-01-13", minutes: 72 },
        { serial: "S1", date: "2026-01-13", minutes: 65 },
        { serial: "S2", date: "2026-01-14", minutes: 58 },
      ],
    },
  },
  {
    name: "a store of pads with boxes, words and a subtotal",
    text: `Stock list,,,
,,,
Description,Exp. date,Qty,Where
Adult pads,Mar-27,x10,Main store
Child pads,Q2 2027,4 pcs,Main store
Gel,31/12/2026,1,Van 3
Subtotal,,15,
`,
    rows: {
      dated_stock: [
        { item: "Adult pads", expiry: "2027-03-31", quantity: 10, place: "Main store" },
        { item: "Child pads", expiry: "2027-06-30", quantity: 4, place: "Main store" },
        { item: "Gel", expiry: "2026-12-31", quantity: 1, place: "Van 3" },
      ],
    },
    aside: [[7, "total-row"]],
  },
  {
    name: "an expiry list that only its title names",
    text: `Electrode pads

Exp,Lot,Qty,Station
2027-05,A1,4,North
2027-06,A2,2,South
`,
    rows: {
      dated_stock: [
        { item: "Electrode pads", expiry: "2027-05-31", lot: "A1", quantity: 4, place: "North" },
        { item: "Electrode pads", expiry: "2027-06-30", lot: "A2", quantity: 2, place: "South" },
      ],
    },
  },
  {
    name: "two tables in one file",
    text: `Batteries
Serial,Type,Installed
B1,P,2022-01-01
B2,P,2022-01-02

Consumables
Item,Expiry,Qty,Store
Pad A,2027-01,10,Main
Pad B,2027-02,2,Main
`,
    rows: {
      packs: [
        { serial: "B1", item: "P" },
        { serial: "B2", item: "P" },
      ],
      dated_stock: [
        { item: "Pad A", expiry: "2027-01-31", quantity: 10, place: "Main" },
        { item: "Pad B", expiry: "2027-02-28", quantity: 2, place: "Main" },
      ],
    },
  },
  {
    name: "a header repeated on every printed page",
    text: `Asset,Station,Department
A1,North,ED
A2,North,ED
Asset,Station,Department
A3,South,ICU
`,
    rows: { devices: [{ device: "A1" }, { device: "A2" }, { device: "A3" }] },
    aside: [[4, "repeated-header"]],
    unread: ["Department"],
  },
  {
    name: "a usage log",
    text: `Date used,Consumable,Qty used,Vehicle,Reason
13.01.2026,Pads adult,1,RTW 1,Einsatz
14.01.2026,Paper,2,RTW 2,Prüfung
15.01.2026,Pads adult,1,RTW 1,
`,
    rows: {
      use_log: [
        { date: "2026-01-13", item: "Pads adult", quantity: 1, place: "RTW 1", reason: "use" },
        { date: "2026-01-14", item: "Paper", quantity: 2, place: "RTW 2", reason: "routine" },
        { date: "2026-01-15", item: "Pads adult", quantity: 1, place: "RTW 1", reason: "use" },
      ],
    },
  },
  {
    name: "open orders",
    text: `PO number;Article;Ordered;Delivery date;Supplier
4711;Pads;20;KW 50/2026;Nord GmbH
4712;Paper;100;12/2026;Nord GmbH
`,
    rows: {
      on_order: [
        { order: "4711", item: "Pads", quantity: 20, arrives: "2026-12-13", supplier: "Nord GmbH" },
        { order: "4712", item: "Paper", quantity: 100, arrives: "2026-12-31", supplier: "Nord GmbH" },
      ],
    },
  },
  {
    name: "a price list with currency signs and weeks",
    text: `Part no,Category,Vendor,Unit price,Per box,MOQ,Lead time (weeks),Shelf life,Rated capacity (Wh)
P-1,Battery,Acme,"€ 1.234,50",1,1,6,,70
PD-2,Electrodes,Acme,"€ 38,00",10,10,2,2 years,
`,
    rows: {
      catalogue: [
        {
          item: "P-1",
          kind: "pack",
          supplier: "Acme",
          price: "1234.50",
          units_per_box: 1,
          minimum_order: 1,
          lead_days: 42,
          rated_wh: 70,
        },
        {
          item: "PD-2",
          kind: "pads",
          supplier: "Acme",
          price: "38",
          units_per_box: 10,
          lead_days: 14,
          shelf_months: 24,
        },
      ],
    },
  },
  {
    name: "a routine in words",
    text: `Task,Frequency,Item,Units
Weekly print test,weekly,Paper,0.5
Monthly check,monthly,,
`,
    rows: {
      routine: [
        { task: "Weekly print test", per_year: 52, item: "Paper", quantity: 0.5 },
        { task: "Monthly check", per_year: 12, item: null },
      ],
    },
  },
  {
    name: "suppliers",
    text: `Vendor name,Delivery charge,Free delivery over,Currency
Acme,12.50,500,EUR
Bolt,9,,EUR
`,
    rows: {
      suppliers: [
        { supplier: "Acme", order_fee: "12.50", free_over: "500", currency: "EUR" },
        { supplier: "Bolt", order_fee: "9", free_over: null },
      ],
    },
  },
  ...[
    "Bestellgebühr",
    "Bestellpauschale",
    "Gebühr",
    "Versandpauschale",
    "Handling fee",
    "Order charge",
    "Delivery costs",
  ].map((fee) => ({
    name: `suppliers with a column ${fee}`,
    text: `Lieferant;${fee};Frei ab;Währung\nAcre;12,50;500;EUR\n`,
    rows: { suppliers: [{ supplier: "Acre", order_fee: "12.50", free_over: "500", currency: "EUR" }] },
  })),
  {
    name: "settings",
    text: `Setting,Value
As of,1 Nov 2026
Service level,95 %
`,
    rows: {
      policy: [
        { key: "as_of", value: "2026-11-01" },
        { key: "service_level", value: "0.95" },
      ],
    },
  },
  {
    name: "a list of devices in Fahrenheit",
    text: `Unit ID,Unit type,Fire station,Ambient temp (F),Date in service
E1,AED,Station 9,104,2020-05-13
E2,AED,Station 9,95,2020-05-14
`,
    rows: {
      devices: [
        { device: "E1", type: "AED", site: "Station 9", temperature_c: 40, in_service: "2020-05-13" },
        { device: "E2", type: "AED", site: "Station 9", temperature_c: 35, in_service: "2020-05-14" },
      ],
    },
  },
  {
    name: "retired packs with notes as reasons",
    text: `Pack,Installed,Retired on,Reason retired
B1,2019-01-10,2024-03-02,capacity below 60 %
B2,2019-01-10,2024-03-02,dropped
B3,2019-01-10,2024-03-02,recall notice
`,
    rows: {
      packs: [
        { serial: "B1", retired: "2024-03-02", retired_because: "faded" },
        { serial: "B2", retired_because: "damaged" },
        { serial: "B3", retired_because: "recalled" },
      ],
    },
  },
  {
    name: "an inventory with suppliers and prices",
    text: `Item,Lot,Expiry,Qty,Location,Supplier,Unit price (EUR),Lead time
Adult pads,A1,2027-03-31,10,Station 1,Corrigan Supply,38.50,2-3 wks
Adult pads,A2,2027-09-30,6,Station 2,Corrigan Supply,38.50,2-3 wks
Child pads,C1,2026-12-31,2,Station 1,Corrigan Supply,44.00,14 days
Wound glue,G9,2027-02-28,4,Stores,Halse Ltd,2.52,7 days
,L5,2027-05-31,,,Halse Ltd,3.10,
`,
    rows: {
      dated_stock: [
        { item: "Adult pads", lot: "A1", quantity: 10, place: "Station 1" },
        { item: "Adult pads", lot: "A2", quantity: 6, place: "Station 2" },
        { item: "Child pads", lot: "C1", quantity: 2 },
        { item: "Wound glue", lot: "G9", quantity: 4 },
      ],
      catalogue: [
        {
          item: "Adult pads",
          kind: "pads",
          supplier: "Corrigan Supply",
          price: "38.50",
          currency: "EUR",
          lead_days: 21,
        },
        { item: "Child pads", kind: "pads", supplier: "Corrigan Supply", price: "44", lead_days: 14 },
        { item: "Wound glue", kind: "other", supplier: "Halse Ltd", price: "2.52", lead_days: 7 },
      ],
    },
    aside: [[6, "missing-required"]],
    findings: ["kind-from-name", "missing-required"],
  },
  {
    name: "a battery register with ratings and prices, one of them twice",
    text: `Serial,Model,Rated capacity (mAh),Device,In service,Last test,Measured (mAh),Supplier,Price
B1,BP-2,4300,D1,2022-03-01,2026-03-01,3700,Norland,320
B2,BP-2,4300,D2,2022-03-01,2026-03-01,3650,Norland,335
B3,BP-9,2900,D3,2023-05-01,2026-03-01,2710,Norland,210
`,
    rows: {
      packs: [
        { serial: "B1", item: "BP-2", device: "D1" },
        { serial: "B2", item: "BP-2", device: "D2" },
        { serial: "B3", item: "BP-9", device: "D3" },
      ],
      runtime_tests: [
        { serial: "B1", ah: 3.7 },
        { serial: "B2", ah: 3.65 },
        { serial: "B3", ah: 2.71 },
      ],
      catalogue: [
        { item: "BP-2", kind: "pack", rated_ah: 4.3, supplier: "Norland", price: null },
        { item: "BP-9", kind: "pack", rated_ah: 2.9, supplier: "Norland", price: "210" },
      ],
    },
    findings: ["item-facts-differ"],
  },
  {
    name: "a stock list that counts one expiry an item",
    text: `Item,Min,Max,On hand,Earliest exp,Supplier,Pack size,Price/box,Lead time
Electrodes adult,20,60,34,2027-03,Corrigan,10 pr,£185.00,2-3 wks
ECG paper 90 mm,30,80,51,n/a,Corrigan,20 rolls,£38,5 days
`,
    rows: {
      catalogue: [
        { item: "Electrodes adult", kind: "pads", units_per_box: 10, price: "185", lead_days: 21 },
        { item: "ECG paper 90 mm", kind: "paper", units_per_box: 20, price: "38", lead_days: 5 },
      ],
      dated_stock: [{ item: "Electrodes adult", quantity: 34, expiry: "2027-03-31" }],
    },
    findings: ["kind-from-name"],
    unread: ["Min", "Max"],
  },
  {
    name: "serials and dates alone",
    text: `Serie;Fecha
4477120;2021-05-10
4477188;2022-11-02
`,
    rows: {
      packs: [
        { serial: "4477120", in_service: "2021-05-10" },
        { serial: "4477188", in_service: "2022-11-02" },
      ],
    },
    findings: ["date-presumed"],
  },
  {
    name: "a history of orders, of which some have come",
    text: `Order date,PO number,Item description,Qty ordered,Qty received,Date received,Unit price
2026-09-02,PO-881,Adult defib pads,50,50,2026-09-16,38.50
2026-10-20,PO-902,Adult defib pads,40,0,,39.10
2026-10-21,PO-903,Printer paper roll,100,40,2026-10-30,3.10
`,
    rows: {
      on_order: [
        { order: "PO-902", item: "Adult defib pads", quantity: 40 },
        { order: "PO-903", item: "Printer paper roll", quantity: 60 },
      ],
    },
    aside: [[2, "order-settled"]],
    findings: [],
    unread: ["Order date", "Qty received", "Date received", "Unit price"],
  },
  {
    name: "orders with a status",
    text: `Bestellnr;Artikel;Menge;Liefertermin;Status
B-1;Elektroden;20;2026-12-01;offen
B-2;Elektroden;20;2026-09-01;geliefert
B-3;Gel;5;2026-12-08;teilweise geliefert
B-4;Gel;5;2026-12-08;storniert
`,
    rows: {
      on_order: [
        { order: "B-1", quantity: 20 },
        { order: "B-3", quantity: 5 },
      ],
    },
    aside: [
      [3, "order-settled"],
      [5, "order-settled"],
    ],
    unread: ["Status"],
  },
  {
    name: "several lots of an item in a line",
    text: `Local,Item,Lote 1,Validade 1,Qtd 1,Lote 2,Validade 2,Qtd 2
Base Norte,Eletrodo adulto,L77,05/2027,6,L81,11/2027,4
Base Sul,Eletrodo adulto,L77,05/2027,2,,,
`,
    rows: {
      dated_stock: [
        { item: "Eletrodo adulto", place: "Base Norte", lot: "L77", expiry: "2027-05-31", quantity: 6 },
        { item: "Eletrodo adulto", place: "Base Norte", lot: "L81", expiry: "2027-11-30", quantity: 4 },
        { item: "Eletrodo adulto", place: "Base Sul", lot: "L77", expiry: "2027-05-31", quantity: 2 },
      ],
    },
  },
  {
    name: "a stocktake with the places above the counts",
    text: `,,Station 1,,Station 2,,Store,
Item,Expiry,Qty,Checked,Qty,Checked,Qty,Checked
Adult pads,03/2027,4,ok,2,ok,20,ok
Child pads,12/2026,1,ok,1,ok,4,ok
`,
    rows: {
      dated_stock: [
        { item: "Adult pads", place: "Station 1", quantity: 4 },
        { item: "Adult pads", place: "Station 2", quantity: 2 },
        { item: "Adult pads", place: "Store", quantity: 20 },
        { item: "Child pads", place: "Station 1", quantity: 1 },
        { item: "Child pads", place: "Station 2", quantity: 1 },
        { item: "Child pads", place: "Store", quantity: 4 },
      ],
    },
    unread: ["Checked", "Checked", "Checked"],
  },
  {
    name: "pack sizes in words",
    text: `Libellé;Unité;Conditionnement;Prix HT (€);Fournisseur
Électrodes adulte;paire;par 10;32,50;Fournil
Papier ECG;rouleau;boîte de 20;2,35;Fournil
`,
    rows: {
      catalogue: [
        { item: "Électrodes adulte", units_per_box: 10, price_per: "unit" },
        { item: "Papier ECG", units_per_box: 20, price_per: "unit" },
      ],
    },
    findings: ["kind-from-name"],
  },
];
