import type { AwkwardSheet } from "./awkward-sheet.ts";

/** Sheets from other trades' habits: checklists, medical technology, school and fire-service lists. */
export const STRANGERS: AwkwardSheet[] = [
  {
    name: "a checklist under a title, month first",
    text: `AED Inventory Checklist,,,,,,,
Updated 10/15/2026,,,,,,,
Location,AED Serial #,Model,Battery Expiration,Adult Pad Lot,Adult Pad Exp,Peds Pad Exp,Notes
Gym,X123,M1,6/30/2028,L22,3/31/2027,4/30/2027,ok
Pool,X124,M1,6/30/2028,L22,3/31/2027,,
`,
    rows: {
      devices: [
        { device: "X123", type: "M1", site: "Gym" },
        { device: "X124", type: "M1", site: "Pool" },
      ],
      dated_stock: [
        { item: "Battery", expiry: "2028-06-30", place: "X123" },
        { item: "Adult Pad", expiry: "2027-03-31", lot: "L22", place: "X123" },
        { item: "Peds Pad", expiry: "2027-04-30", place: "X123" },
        { item: "Battery", expiry: "2028-06-30", place: "X124" },
        { item: "Adult Pad", expiry: "2027-03-31", lot: "L22", place: "X124" },
      ],
    },
    unread: ["Notes"],
  },
  {
    name: "kits with par levels",
    text: `Kit,Item,Qty On Hand,Par,Lot #,Exp Date
Medic 1,Adult Defib Pads,4,4,A100,05/31/2027
Medic 1,Pedi Defib Pads,2,2,A101,11/30/2026
`,
    rows: {
      dated_stock: [
        { item: "Adult Defib Pads", expiry: "2027-05-31", lot: "A100", quantity: 4, place: "Medic 1" },
        { item: "Pedi Defib Pads", expiry: "2026-11-30", lot: "A101", quantity: 2, place: "Medic 1" },
      ],
    },
    unread: ["Par"],
  },
  {
    name: "French packs with their last test",
    text: `Batterie;Type;N° de série;Date de mise en service;Nb cycles;Dernier test;Autonomie (min);Résultat
1;LX;FR-001;15/03/2022;120;13/05/2026;84;conforme
2;LX;FR-002;15/03/2022;98;13/05/2026;61;non conforme
`,
    rows: {
      packs: [
        { serial: "FR-001", item: "LX", in_service: "2022-03-15", cycles: 120 },
        { serial: "FR-002", item: "LX", in_service: "2022-03-15", cycles: 98 },
      ],
      runtime_tests: [
        { serial: "FR-001", date: "2026-05-13", minutes: 84, result: "pass" },
        { serial: "FR-002", date: "2026-05-13", minutes: 61, result: "fail" },
      ],
    },
    unread: ["Batterie"],
  },
  {
    name: "a French hospital's devices with three expiries",
    text: `Numéro d'inventaire;Service;Modèle;Date d'installation;Électrodes adultes - péremption;Électrodes enfants - péremption;Batterie - péremption
INV1;Urgences;M1;13/05/2021;31/01/2027;28/02/2027;30/06/2028
INV2;Bloc;M1;14/05/2021;31/01/2027;;30/06/2028
`,
    rows: {
      devices: [
        { device: "INV1", site: "Urgences", type: "M1", in_service: "2021-05-13" },
        { device: "INV2", site: "Bloc", type: "M1", in_service: "2021-05-14" },
      ],
      dated_stock: [
        { item: "Électrodes adultes", expiry: "2027-01-31", place: "INV1" },
        { item: "Électrodes enfants", expiry: "2027-02-28", place: "INV1" },
        { item: "Batterie", expiry: "2028-06-30", place: "INV1" },
        { item: "Électrodes adultes", expiry: "2027-01-31", place: "INV2" },
        { item: "Batterie", expiry: "2028-06-30", place: "INV2" },
      ],
    },
  },
  {
    name: "numbered capacity tests, dates behind the figures",
    text: `Battery register
Serial No;Part No;Location;Date of manufacture;Date into service;Capacity test 1;Date of test 1;Capacity test 2;Date of test 2
LI-001;LX;N;Jan 2021;15.03.2021;98%;20.03.2021;91%;21.03.2023
LI-002;LX;N;Jan 2021;15.03.2021;97%;20.03.2021;;
`,
    rows: {
      packs: [
        { serial: "LI-001", item: "LX", site: "N", made: "2021-01-01", in_service: "2021-03-15" },
        { serial: "LI-002", item: "LX", site: "N", made: "2021-01-01", in_service: "2021-03-15" },
      ],
      runtime_tests: [
        { serial: "LI-001", date: "2021-03-20", percent: 98 },
        { serial: "LI-001", date: "2023-03-21", percent: 91 },
        { serial: "LI-002", date: "2021-03-20", percent: 97 },
      ],
    },
  },
  {
    name: "a run sheet of what was used",
    text: `Date,Time,Unit,Item used,Number,Incident
2026-01-02,10:30,M1,Adult pads,1,I-1
2026-01-03,11:30,M2,Paper roll,2,I-2
`,
    rows: {
      use_log: [
        { date: "2026-01-02", item: "Adult pads", quantity: 1, place: "M1" },
        { date: "2026-01-03", item: "Paper roll", quantity: 2, place: "M2" },
      ],
    },
    unread: ["Time", "Incident"],
  },
  {
    name: "tests that pass with yes",
    text: `SN,Test Dt,Run Time (mins),Pass?
B1,5/13/26,84,Yes
B2,5/14/26,61,No
`,
    rows: {
      runtime_tests: [
        { serial: "B1", date: "2026-05-13", minutes: 84, result: "pass" },
        { serial: "B2", date: "2026-05-14", minutes: 61, result: "fail" },
      ],
    },
  },
  {
    name: "stock on hand, never orders",
    text: `Consumable,Unit of issue,On hand,Soonest expiry,Location
ECG paper roll,box of 10,12,11/2027,Store A
SpO2 sensor,each,3,,Store A
`,
    rows: {
      dated_stock: [{ item: "ECG paper roll", expiry: "2027-11-30", quantity: 12, place: "Store A" }],
      on_order: [],
    },
    aside: [[3, "missing-required"]],
    unread: ["Unit of issue"],
  },
  {
    name: "a German use log and a price list without kinds",
    text: `Datum;Artikel;Verbrauch;Fahrzeug
13.05.2026;Elektroden;2;RTW 1
14.05.2026;EKG-Papier;1;RTW 2

Item;Supplier;Price;Currency;Lead time
Pads;Acme;1.234,00;EUR;3 weeks
Gel;Acme;12,50;EUR;10 days
`,
    rows: {
      use_log: [
        { date: "2026-05-13", item: "Elektroden", quantity: 2, place: "RTW 1" },
        { date: "2026-05-14", item: "EKG-Papier", quantity: 1, place: "RTW 2" },
      ],
      catalogue: [
        { item: "Pads", kind: "pads", supplier: "Acme", price: "1234", currency: "EUR", lead_days: 21 },
        { item: "Gel", kind: "gel", supplier: "Acme", price: "12.50", currency: "EUR", lead_days: 10 },
      ],
    },
    findings: ["kind-from-name"],
  },
  {
    name: "two lists side by side",
    text: `Serial,Type,Installed,,Item,Expiry,Qty,Store
B1,P,2022-01-01,,Pad A,2027-01,10,Main
B2,P,2022-01-02,,Pad B,2027-02,2,Main
B3,P,2022-01-03,,,,,
`,
    rows: {
      packs: [{ serial: "B1" }, { serial: "B2" }, { serial: "B3", in_service: "2022-01-03" }],
      dated_stock: [
        { item: "Pad A", expiry: "2027-01-31", quantity: 10, place: "Main" },
        { item: "Pad B", expiry: "2027-02-28", quantity: 2, place: "Main" },
      ],
    },
  },
  {
    name: "a register with an empty column between its groups",
    text: `Device,Site,,Battery S/N,Cycles,,Pads exp
D1,North,,B1,12,,2027-01-31
D2,South,,B2,14,,2027-02-28
`,
    rows: {
      devices: [{ device: "D1" }, { device: "D2" }],
      packs: [
        { serial: "B1", device: "D1", cycles: 12 },
        { serial: "B2", device: "D2", cycles: 14 },
      ],
      dated_stock: [{ place: "D1" }, { place: "D2" }],
    },
  },
];
