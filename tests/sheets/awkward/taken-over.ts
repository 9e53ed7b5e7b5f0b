import type { AwkwardSheet } from "./awkward-sheet.ts";

/** Sheets of which a cell is easily taken for another thing than it is, and nothing would tell. */
export const TAKEN_OVER: AwkwardSheet[] = [
  {
    // ISO 8601: week 11 of 2024 began on 11 March, week 12 on 18 March, week 9 of 2023 on 27 February
    name: "weeks that could be months, of years before them",
    text: `Serial,Item,Made (YYWW),In service
A1,Pack,2411,2024-08-01
A2,Pack,2412,2024-12-01
A3,Pack,2309,2024-03-01
`,
    rows: {
      packs: [
        { serial: "A1", made: "2024-03-11", in_service: "2024-08-01" },
        { serial: "A2", made: "2024-03-18", in_service: "2024-12-01" },
        { serial: "A3", made: "2023-02-27", in_service: "2024-03-01" },
      ],
    },
  },
  {
    // ISO 8601: week 31 of 2024 began on 29 July
    name: "weeks before their years",
    text: `Serial;Item;Manufactured (WW/YY);In service
B1;Pack;11/24;2024-08-01
B2;Pack;31/24;2024-12-01
`,
    rows: {
      packs: [
        { serial: "B1", made: "2024-03-11" },
        { serial: "B2", made: "2024-07-29" },
      ],
    },
  },
  {
    name: "minutes of a discharge cut short, which count no discharges, and the end of a test",
    text: `Batt ID,Nom. mAh,Meas. mAh,Cap %,Disch. min,End V,Result,Test end
00417,5600,5040,90,205,9.1,PASS,14/02/2026 11:02
00419,5600,3640,65,140,9.0,FAIL,14/02/2026 10:48
`,
    rows: {
      runtime_tests: [
        { serial: "00417", date: "2026-02-14", minutes: 205, ah: 5.04, percent: 90, cycles: null, result: "pass" },
        { serial: "00419", date: "2026-02-14", minutes: 140, ah: 3.64, percent: 65, cycles: null, result: "fail" },
      ],
    },
    unread: ["Nom. mAh", "End V"],
  },
  {
    name: "a line of several dates in words below a header, which is no header itself",
    text: `AED;Site;Pads;Battery
AED 01;Reception;exp. 03/2027;installed 12/2024, good till 12/2028
AED 02;Canteen;exp. 05/2027;installed 01/2025, good till 01/2029
`,
    rows: {
      devices: [
        { device: "AED 01", site: "Reception", in_service: null },
        { device: "AED 02", site: "Canteen", in_service: null },
      ],
      dated_stock: [
        { item: "Pads", expiry: "2027-03-31", place: "AED 01" },
        { item: "Pads", expiry: "2027-05-31", place: "AED 02" },
      ],
    },
    unread: ["Battery"],
  },
  {
    name: "words that say where to look, which are no serial, and batteries lettered L and R",
    text: `,Monitor,Battery L,,Battery R,
Callsign,Asset no,Serial,Fitted,Serial,Fitted
A101,004512,0001234,03/2024,0001235,03/2024
A103,004514,see note,,0001303,01/2025
`,
    rows: {
      packs: [
        { serial: "0001234", device: "004512", in_service: "2024-03-01" },
        { serial: "0001235", device: "004512", in_service: "2024-03-01" },
        { serial: "0001303", device: "004514", in_service: "2025-01-01" },
      ],
    },
    findings: ["missing-required"],
  },
  {
    name: "batteries on the left and on the right in French",
    text: `Moniteur;Batterie gauche;Mise en service;Batterie droite;Mise en service
M1;BG1;12/01/2024;BD1;25/02/2024
M2;BG2;12/01/2024;BD2;26/02/2024
`,
    rows: {
      packs: [
        { serial: "BG1", device: "M1", in_service: "2024-01-12" },
        { serial: "BD1", device: "M1", in_service: "2024-02-25" },
        { serial: "BG2", device: "M2", in_service: "2024-01-12" },
        { serial: "BD2", device: "M2", in_service: "2024-02-26" },
      ],
    },
  },
  {
    name: "tests of two days below each other, each below its own day",
    text: `Test date: 14/02/2026,,
Battery,Minutes,Remarks
B1,205,
B2,181,

Test date: 16/08/2026,,
Battery,Minutes,Remarks
B3,199,
B4,172,weak
`,
    rows: {
      runtime_tests: [
        { serial: "B1", date: "2026-02-14", minutes: 205 },
        { serial: "B2", date: "2026-02-14", minutes: 181 },
        { serial: "B3", date: "2026-08-16", minutes: 199 },
        { serial: "B4", date: "2026-08-16", minutes: 172 },
      ],
    },
    unread: ["Remarks", "Remarks"],
  },
  {
    name: "parts used on a device that is described besides",
    text: `Job no,Date,Equip no,Description,Parts used,Qty
J1,12/01/2026,D-044,Defibrillator,Battery pack,1
J2,28/01/2026,D-051,Defibrillator,Adult pads,2
`,
    rows: {
      use_log: [
        { date: "2026-01-12", item: "Battery pack", quantity: 1, place: "D-044" },
        { date: "2026-01-28", item: "Adult pads", quantity: 2, place: "D-051" },
      ],
    },
    unread: ["Job no", "Description"],
  },
  {
    name: "how many pads of a monitor there are, which counts no monitors",
    text: `Unit,Monitor pads (qty),Monitor pads (exp),AED pads (qty),AED pads (exp)
M1,3,05/27,1,04/27
M2,2,03/27,1,06/27
`,
    rows: {
      dated_stock: [
        { item: "AED pads", expiry: "2027-04-30", quantity: 1, place: "M1" },
        { item: "Monitor pads", expiry: "2027-05-31", quantity: 3, place: "M1" },
        { item: "AED pads", expiry: "2027-06-30", quantity: 1, place: "M2" },
        { item: "Monitor pads", expiry: "2027-03-31", quantity: 2, place: "M2" },
      ],
    },
  },
  {
    name: "article numbers that look like months of a far year",
    text: `Art.-Nr.,Bezeichnung,Preis
4711-01,Defi-Elektroden Erw.,"38,50"
4711-02,Defi-Elektroden Kind,"44,00"
`,
    rows: {
      catalogue: [
        { item: "4711-01", kind: "pads", price: "38.50" },
        { item: "4711-02", kind: "pads", price: "44" },
      ],
    },
    unread: ["Bezeichnung"],
  },
  {
    name: "prices in cents, which are no whole ones",
    text: `Item,Supplier,Price (ct),Lead time (wk)
Adult pads,Northside,2850,3
`,
    rows: { catalogue: [{ item: "Adult pads", price: null, lead_days: 21 }] },
    unread: ["Price (ct)"],
  },
  {
    name: "prices for a hundred behind a stroke",
    text: `Item,Supplier,Price/100
ECG electrodes,Northside,12.50
`,
    rows: { catalogue: [{ price: "12.50", price_per: "box", units_per_box: 100 }] },
  },
  {
    name: "the least and the most of a temperature, which are no mean of it",
    text: `Device,Site,Temp min (°C),Temp max (°C)
D1,Hut 1,-12,31
D2,Hut 2,-15,28
`,
    rows: { devices: [{ device: "D1", temperature_c: null }, { device: "D2" }] },
    unread: ["Temp min (°C)", "Temp max (°C)"],
  },
  {
    name: "orders with the day on which they arrived",
    text: `PO,Item,Qty,Ordered,Arrived
4501,Adult pads,20,2026-08-03,2026-08-20
4502,Child pads,10,2026-10-05,
`,
    rows: { on_order: [{ item: "Child pads", quantity: 10, order: "4502" }] },
    aside: [[2, "order-settled"]],
    unread: ["Ordered", "Arrived"],
  },
  {
    name: "pads whose number in a list of all sorts is their lot",
    text: `Type,ID,In service,Expiry
Device,D1,2019-04-01,
Battery,B1,2024-03-01,
Pads,L2231,,2027-03-31
Device,D2,2020-04-01,
Battery,B2,2024-06-01,
Pads,L2240,,2027-05-31
`,
    rows: {
      dated_stock: [
        { item: "Pads", lot: "L2231", expiry: "2027-03-31", place: "D1" },
        { item: "Pads", lot: "L2240", expiry: "2027-05-31", place: "D2" },
      ],
    },
    findings: ["holder-presumed"],
  },
];
