import type { AwkwardSheet } from "./awkward-sheet.ts";

/** Sheets whose words could be taken for another kind of sheet's, or for another column's. */
export const MISTAKEN: AwkwardSheet[] = [
  {
    name: "what happened to batteries by day, which are no expiries",
    text: `Battery,Event,Date,Note
B1,Installed,2022-01-01,
B1,Tested 91 %,2025-01-01,
B2,Removed,2026-05-01,capacity low
`,
    rows: { dated_stock: [], packs: [] },
    aside: [2, 3, 4].map((line): [number, string] => [line, "unknown-table"]),
    unread: ["Battery", "Event", "Date", "Note"],
  },
  {
    name: "serials of sensors, which are no batteries",
    text: `Sensor type,S/N,First use,Replace by
SpO2 adult,X1,2025-06-01,2027-06-01
SpO2 child,X2,2025-09-01,2027-09-01
`,
    rows: {
      packs: [],
      dated_stock: [
        { item: "SpO2 adult", serial: "X1", expiry: "2027-06-01" },
        { item: "SpO2 child", serial: "X2", expiry: "2027-09-01" },
      ],
    },
    unread: ["First use"],
  },
  {
    name: "a register headed in two languages",
    text: `Gerät / Device,Standort / Site,Akku SN / Battery SN,Pads Verfall / Pads expiry
D1,Halle,B1,31.03.2027
D2,Wache,B2,30.04.2027
`,
    rows: {
      packs: [{ serial: "B1", device: "D1" }, { serial: "B2" }],
      dated_stock: [{ item: "Pads", expiry: "2027-03-31", place: "D1" }, { item: "Pads" }],
    },
  },
  {
    name: "names of places beside the dates of what hangs there, which are no items",
    text: `Name,Remarks,Pads,Battery
Lobby,,Exp: Mar 2027,Exp: Jun 2028
Gym,by the door,Exp: Oct 2026,Exp: Jun 2028
`,
    rows: {
      devices: [{ device: "Lobby" }, { device: "Gym" }],
      dated_stock: [
        { item: "Pads", expiry: "2027-03-31", place: "Lobby" },
        { item: "Battery", expiry: "2028-06-30", place: "Lobby" },
        { item: "Pads", expiry: "2026-10-31", place: "Gym" },
        { item: "Battery", place: "Gym" },
      ],
    },
    unread: ["Remarks"],
  },
  {
    name: "names of devices beside what numbers them, which number them",
    text: `Name,Device ID,Site,Pads exp
Lobby AED,D1,North,2027-03-31
Gym AED,D2,South,2027-04-30
`,
    rows: {
      devices: [
        { device: "D1", site: "North" },
        { device: "D2", site: "South" },
      ],
      dated_stock: [{ item: "Pads", place: "D1" }, { place: "D2" }],
    },
    unread: ["Name"],
  },
  {
    name: "names of pads beside their lots, which are no devices",
    text: `Name,Lot,Pads expiry,Qty
Adult pads,L1,2027-03-31,4
Child pads,L2,2027-04-30,2
`,
    rows: {
      devices: [],
      dated_stock: [
        { item: "Adult pads", lot: "L1", quantity: 4 },
        { item: "Child pads", lot: "L2", quantity: 2 },
      ],
    },
  },
  {
    name: "the numbers of lines before batteries, which name no devices",
    text: `No,Batt,Mfr date,Cap %,Cap date
1,B1,2022-03,91,2026-10-01
2,B2,2021-03,74,2026-10-02
`,
    rows: {
      devices: [],
      packs: [
        { serial: "B1", device: null },
        { serial: "B2", device: null },
      ],
      runtime_tests: [{ percent: 91 }, { percent: 74 }],
    },
    unread: ["No"],
  },
  {
    name: "joules of a shock, which are no watt hours of a battery",
    text: "Defib,Test date,Energy set (J),Battery test (min),Battery S/N\nD1,2026-10-01,200,182,B1\n",
    rows: { runtime_tests: [{ serial: "B1", minutes: 182, wh: null }] },
    unread: ["Energy set (J)"],
  },
  {
    name: "prices of what stands under Per",
    text: `Item,Price,Per,Currency
Adult pads,42.50,pair,EUR
Gel,30,box of 10,EUR
`,
    rows: {
      catalogue: [
        { item: "Adult pads", price: "42.50", price_per: "unit" },
        { item: "Gel", price: "30", price_per: "box", units_per_box: 10 },
      ],
    },
  },
  {
    name: "checks whose days can be read in two orders, beside days that can be read in one",
    text: `Device,Date checked,Pads expiry
D1,01/09/2026,31/03/2027
D1,01/10/2026,31/08/2028
D2,01/10/2026,30/04/2027
`,
    rows: {
      dated_stock: [
        { place: "D1", expiry: "2028-08-31" },
        { place: "D2", expiry: "2027-04-30" },
      ],
    },
    findings: ["earlier-check"],
    unread: ["Date checked"],
  },
  {
    name: "stock with a supplier and a reference, which is not on order",
    text: `Name,Expiration date,QOH,Supplier,Ref no,Par level
Adult pads,2027-03-31,6,Quillmark,R10,4
Adult pads,2027-09-30,2,Quillmark,R10,4
Gel tube,2026-12-31,5,Quillmark,R8,2
`,
    rows: {
      dated_stock: [
        { item: "Adult pads", expiry: "2027-03-31", quantity: 6 },
        { item: "Adult pads", expiry: "2027-09-30", quantity: 2 },
        { item: "Gel tube", expiry: "2026-12-31", quantity: 5 },
      ],
      on_order: [],
    },
    unread: ["Ref no", "Par level"],
  },
  {
    name: "a number that counts, beside lots and places",
    text: `Item,Lot no,Expiry,Number,Cupboard
Adult pads,L1,2027-03-31,6,North
Gel tube,L2,2026-12-31,2,North
Gel tube,L3,2027-02-28,2,Quay
`,
    rows: {
      dated_stock: [
        { item: "Adult pads", quantity: 6, place: "North" },
        { item: "Gel tube", quantity: 2, place: "North" },
        { item: "Gel tube", quantity: 2, place: "Quay" },
      ],
    },
  },
  {
    name: "a price list sorted by words of its own",
    text: `Item,Category,Vendor,Price (EUR)
Gel tube,Tubes,Quillmark,2.00
Adult pads,Consumables,Quillmark,30.00
Razor,Prep,Quillmark,1.00
Mask,Disposables,Quillmark,0.50
`,
    rows: {
      catalogue: [
        { item: "Gel tube", kind: "gel", supplier: "Quillmark", price: "2" },
        { item: "Adult pads", kind: "pads" },
        { item: "Mask", kind: "other", price: "0.50" },
      ],
    },
    aside: [[4, "missing-required"]],
    findings: ["word-unknown", "kind-from-name"],
  },
  {
    name: "the day of a battery's test, which is no expiry, and pads that are no test",
    text: `ID,Ward,Battery ID,Battery last tested,SoH,Paeds pads,Adult exp,Next service
E-1,ED,B-1,2026-05-04,91,2027-03,2027-04,2027-01-10
E-2,ICU,B-2,2026-06-08,84,2027-05,2027-08,2027-01-10
`,
    rows: {
      devices: [
        { device: "E-1", site: "ED" },
        { device: "E-2", site: "ICU" },
      ],
      packs: [
        { serial: "B-1", device: "E-1", site: "ED" },
        { serial: "B-2", device: "E-2", site: "ICU" },
      ],
      runtime_tests: [
        { serial: "B-1", date: "2026-05-04", percent: 91 },
        { serial: "B-2", date: "2026-06-08", percent: 84 },
      ],
      dated_stock: [
        { item: "Paeds pads", expiry: "2027-03-31", place: "E-1" },
        { item: "Adult pads", expiry: "2027-04-30", place: "E-1" },
        { item: "Paeds pads", expiry: "2027-05-31", place: "E-2" },
        { item: "Adult pads", expiry: "2027-08-31", place: "E-2" },
      ],
    },
    unread: ["Next service"],
  },
  {
    name: "a battery's dates that lie before every expiry, which are when it was fitted",
    text: `Device,Battery S/N,Battery in,Pads exp
E-1,B-1,2022-05-04,2027-03-31
E-2,B-2,2024-06-08,2027-05-31
`,
    rows: {
      packs: [
        { serial: "B-1", device: "E-1", in_service: "2022-05-04" },
        { serial: "B-2", device: "E-2", in_service: "2024-06-08" },
      ],
      dated_stock: [
        { expiry: "2027-03-31", place: "E-1" },
        { expiry: "2027-05-31", place: "E-2" },
      ],
    },
  },
  {
    name: "orders whose headings all say ordered",
    text: `Item ordered,Qty ordered,PO no,Ordered from,Ordered on,Expected
Adult pads,12,PO-7,Quillmark,2026-10-01,2026-12-04
`,
    rows: {
      on_order: [{ item: "Adult pads", quantity: 12, order: "PO-7", supplier: "Quillmark", arrives: "2026-12-04" }],
    },
    unread: ["Ordered on"],
  },
  {
    name: "two batteries of a line, each with the test of its own number",
    text: `Device,Battery 1 S/N,Battery 1 test date,Battery 1 %,Battery 2 S/N,Battery 2 test date,Battery 2 %
E-1,B-1,2026-02-21,88,B-2,2026-06-25,90
`,
    rows: {
      packs: [
        { serial: "B-1", device: "E-1" },
        { serial: "B-2", device: "E-1" },
      ],
      runtime_tests: [
        { serial: "B-1", date: "2026-02-21", percent: 88 },
        { serial: "B-2", date: "2026-06-25", percent: 90 },
      ],
    },
  },
  {
    name: "two lettered batteries that were tested on one day",
    text: `Vehicle,Monitor S/N,Bat A,Bat B,Bat A test %,Bat B test %,Test date
Medic 1,M-1,B-1,B-2,88,90,2026-06-25
`,
    rows: {
      runtime_tests: [
        { serial: "B-1", date: "2026-06-25", percent: 88 },
        { serial: "B-2", date: "2026-06-25", percent: 90 },
      ],
    },
  },
  {
    name: "batteries without numbers of their own, one in each device",
    text: `AED,Location,Battery installed,Pads expiry
E-1,Lobby,2019-02-23,2027-05
E-2,Gym,2018-02-14,2027-01
`,
    rows: {
      packs: [
        { serial: "E-1", device: "E-1", site: "Lobby", in_service: "2019-02-23" },
        { serial: "E-2", device: "E-2", site: "Gym", in_service: "2018-02-14" },
      ],
    },
    findings: ["battery-unnamed"],
  },
  {
    name: "batteries without numbers that have an expiry, which are dated stock and no packs besides",
    text: `AED,Location,Battery installed,Battery expiry
E-1,Lobby,2023-02-23,2028-02
`,
    rows: { packs: [], dated_stock: [{ item: "Battery", expiry: "2028-02-29", place: "E-1" }] },
    unread: ["Battery installed"],
  },
  {
    name: "stock with what is to be ordered, which is not ordered",
    text: `Item,Expiry,On hand,Min,Max,To order
Adult pads,2027-05-31,4,6,10,6
Gel,2027-06-30,2,4,6,4
`,
    rows: {
      on_order: [],
      dated_stock: [
        { item: "Adult pads", expiry: "2027-05-31", quantity: 4 },
        { item: "Gel", expiry: "2027-06-30", quantity: 2 },
      ],
    },
    unread: ["Min", "Max", "To order"],
  },
  {
    name: "devices with two batteries each that have no numbers, which are not one",
    text: `Equipment no,Battery qty,Battery P/N,Battery changed
E-1,2,PK-42,2021-02-23
`,
    rows: { devices: [{ device: "E-1" }], packs: [] },
    unread: ["Battery qty", "Battery P/N", "Battery changed"],
  },
  {
    name: "stock with the number under which it is ordered",
    text: `Item,Exp,On hand,Shelf,Order no.
Adult pads,2027-05-31,4,A1,R-10
Gel,2027-06-30,2,A2,R-8
`,
    rows: {
      on_order: [],
      dated_stock: [
        { item: "Adult pads", expiry: "2027-05-31", quantity: 4, place: "A1" },
        { item: "Gel", expiry: "2027-06-30", quantity: 2, place: "A2" },
      ],
    },
    unread: ["Order no."],
  },
  {
    name: "days that are headed like tags",
    text: `Tag;Akku SN;Kapazität %;Techniker
23.02.2026;A-1;88;AB
14.03.2026;A-2;91;CD
`,
    rows: {
      runtime_tests: [
        { serial: "A-1", date: "2026-02-23", percent: 88 },
        { serial: "A-2", date: "2026-03-14", percent: 91 },
      ],
    },
    unread: ["Techniker"],
  },
  {
    name: "a number that is headed like a name",
    text: `Désignation;Péremption;Nombre;Armoire
Électrodes;31/03/2027;4;A1
Gel;30/06/2027;2;A2
`,
    rows: {
      dated_stock: [
        { item: "Électrodes", expiry: "2027-03-31", quantity: 4, place: "A1" },
        { item: "Gel", expiry: "2027-06-30", quantity: 2, place: "A2" },
      ],
    },
  },
  {
    name: "calibrations of devices with their serials, which are no batteries",
    text: `Certificate no,Device,Serial,Calibrated on,Due,Result
C-1,Analyser 1,S-11,2026-02-01,2027-02-01,pass
C-2,Analyser 2,S-12,2026-02-02,2027-02-02,fail
`,
    rows: { devices: [{ device: "Analyser 1" }, { device: "Analyser 2" }], packs: [], runtime_tests: [] },
    findings: ["little-read", "fault-unread"],
    unread: ["Certificate no", "Serial", "Calibrated on", "Due", "Result"],
  },
  {
    name: "checks of batteries, as their title says, with the device of each",
    text: "Battery checks\n\nDevice,Serial,Tested,Result\nMonitor 1,S-11,2026-02-01,pass\nMonitor 2,S-12,2026-02-02,fail\n",
    rows: {
      packs: [
        { serial: "S-11", device: "Monitor 1" },
        { serial: "S-12", device: "Monitor 2" },
      ],
      runtime_tests: [{ result: "pass" }, { result: "fail" }],
    },
  },
  {
    name: "serials with the device that each is in",
    text: "Serial,Device,Tested,Result\nS-11,Monitor 1,2026-02-01,pass\nS-12,Monitor 2,2026-02-02,fail\n",
    rows: {
      packs: [
        { serial: "S-11", device: "Monitor 1" },
        { serial: "S-12", device: "Monitor 2" },
      ],
      runtime_tests: [{ result: "pass" }, { result: "fail" }],
    },
  },
  {
    name: "goods by the day on which they came, in French, which are neither used nor still to come",
    text: "Article;Quantité;Reçu le;Emplacement\nÉlectrodes;10;13/03/2026;Réserve\nGel;5;14/04/2026;Réserve\n",
    rows: { use_log: [], on_order: [], dated_stock: [] },
    aside: [
      [2, "unknown-table"],
      [3, "unknown-table"],
    ],
    unread: ["Article", "Quantité", "Reçu le", "Emplacement"],
  },
  {
    name: "goods by the day of their delivery in French",
    text: "Article;Quantité;Livré le;Emplacement\nÉlectrodes;10;13/03/2026;Réserve\nGel;5;14/04/2026;Réserve\n",
    rows: { use_log: [], on_order: [], dated_stock: [] },
    aside: [
      [2, "unknown-table"],
      [3, "unknown-table"],
    ],
    unread: ["Article", "Quantité", "Livré le", "Emplacement"],
  },
  {
    name: "serials of devices, as their model says, which are no batteries",
    text: `Equipment register
Serial,Model,Manufacturer,Ward,In service,Last PM
M-100,Defibrillator,Acme,ICU,13/05/2021,13/05/2026
M-101,Defibrillator,Acme,ED,14/05/2021,14/05/2026
`,
    rows: {
      packs: [],
      devices: [
        { device: "M-100", type: "Defibrillator", site: "ICU", in_service: "2021-05-13" },
        { device: "M-101", type: "Defibrillator", site: "ED", in_service: "2021-05-14" },
      ],
    },
    unread: ["Manufacturer", "Last PM"],
  },
  {
    name: "serials of devices, as their description says, in French",
    text: `N° de série;Désignation;Service;Mise en service
M-100;Défibrillateur;Urgences;13/05/2021
M-101;Moniteur;SAMU;13/06/2021
`,
    rows: {
      packs: [],
      devices: [
        { device: "M-100", site: "Urgences" },
        { device: "M-101", site: "SAMU" },
      ],
    },
  },
  {
    name: "batteries described by what they are for, with cycles, a device or a heading of their own",
    text: `Battery serial,Description,Ward,In service
B-1,Defibrillator,ICU,13/05/2021
B-2,Monitor,ED,14/05/2021

Serial,Description,Ward,Cycles
B-3,Defibrillator,ICU,88
B-4,Monitor,ED,91
`,
    rows: { packs: [{ serial: "B-1" }, { serial: "B-2" }, { serial: "B-3" }, { serial: "B-4" }], devices: [] },
  },
  {
    name: "batteries described by the devices that they are for, as their title says",
    text: `Batteries
Serial No,Description,In service,Dept
B1,Defibrillator,12/05/2023,ICU
B2,Monitor,13/05/2023,ED
`,
    rows: { packs: [{ serial: "B1" }, { serial: "B2" }], devices: [] },
  },
  {
    name: "packs of goods, which are counted and are no batteries",
    text: `Item,Lot,Expiry,Packs
Adult pads,L1,2027-05-31,4
Gel,L2,2027-05-31,2
`,
    rows: { packs: [], dated_stock: [{ quantity: 4 }, { quantity: 2 }] },
  },
  {
    name: "the size of a pack of goods, which is no battery",
    text: `Item,Supplier,Unit price,Pack
Adult pads,Medico,38.50,1
Gel,Medico,34.50,box of 12
Paper,Medico,4.50,10
`,
    rows: { packs: [], catalogue: [{ units_per_box: 1 }, { units_per_box: 12 }, { units_per_box: 10 }] },
  },
  {
    name: "the year of each battery, which is no serial of one",
    text: `AED,Location,Battery (year),Pads (exp)
A1,Hall,2022,05/2027
A2,Gym,2023,06/2027
`,
    rows: {
      packs: [
        { device: "A1", made: "2022-01-01" },
        { device: "A2", made: "2023-01-01" },
      ],
      dated_stock: [{ item: "Pads" }, { item: "Pads" }],
    },
    findings: ["year-alone", "battery-unnamed"],
  },
  {
    name: "a day of each battery before those of its pads, both headed date",
    text: `AED,Battery date,Pads date
A1,05/2023,05/2027
A2,06/2023,06/2027
`,
    rows: {
      packs: [
        { device: "A1", in_service: "2023-05-01" },
        { device: "A2", in_service: "2023-06-01" },
      ],
      dated_stock: [{ item: "Pads", expiry: "2027-05-31" }, { item: "Pads" }],
    },
    findings: ["date-presumed"],
  },
  {
    name: "notes on a device in each line, of which none heads the others",
    text: `AED notes
AED-01: pads adult lot A12 exp 3/27; battery B-77 inst 5/24
AED-02: pads adult lot A13 exp 6/27; battery B-78 inst 5/24
AED-03: pads adult lot A12 exp 3/27; pads child lot C1 exp 5/27; battery B-79 inst 6/25
`,
    rows: { dated_stock: [], devices: [], packs: [] },
    aside: [2, 3, 4].map((line) => [line, "unknown-table"]),
    findings: ["unknown-table"],
    unread: ["AED notes"],
  },
  {
    name: "a last line that names an expiry and heads nothing",
    text: `Maintenance,How often
Condition battery,every 3 months
Replace battery,every 2 years
Replace pads,at expiry
`,
    rows: { dated_stock: [], routine: [] },
    findings: ["no-table"],
  },
];
