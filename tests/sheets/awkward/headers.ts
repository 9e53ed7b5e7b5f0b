import type { AwkwardSheet } from "./awkward-sheet.ts";

/** Headers that say less than they should, or more: misspelt, run together, over two lines, with units and years in them. */
export const HEADERS: AwkwardSheet[] = [
  {
    name: "capacities whose unit only the cells name",
    text: `Battery no.,Tested on,Measured capacity,Load
B-01,2026-02-03,3900 mAh,30 W
B-02,2026-02-03,3450 mAh,30 W
B-03,2026-02-04,2.9 Ah,30 W
`,
    rows: {
      runtime_tests: [
        { serial: "B-01", date: "2026-02-03", ah: 3.9, load_w: 30 },
        { serial: "B-02", date: "2026-02-03", ah: 3.45, load_w: 30 },
        { serial: "B-03", date: "2026-02-04", ah: 2.9, load_w: 30 },
      ],
    },
  },
  {
    name: "a two-row header with batteries A and B",
    text: `Device,,,Battery A,,Battery B,,Electrodes,
Asset,Dept,Model,Serial,In use since,Serial,In use since,Lot,Expires
4401,ED,MD5,BA1,2023-04-01,BA2,2023-04-01,E55,2027-08-31
4402,OR,MD5,BA3,2023-06-15,,,E56,2027-09-30
`,
    rows: {
      devices: [
        { device: "4401", site: "ED", type: "MD5" },
        { device: "4402", site: "OR", type: "MD5" },
      ],
      packs: [
        { serial: "BA1", device: "4401", site: "ED", in_service: "2023-04-01" },
        { serial: "BA2", device: "4401", site: "ED", in_service: "2023-04-01" },
        { serial: "BA3", device: "4402", site: "OR", in_service: "2023-06-15" },
      ],
      dated_stock: [
        { item: "Electrodes", lot: "E55", expiry: "2027-08-31", place: "4401" },
        { item: "Electrodes", lot: "E56", expiry: "2027-09-30", place: "4402" },
      ],
    },
  },
  {
    name: "spares headed by that word alone, which are of what stands before",
    text: `AED,Battery exp,Spare exp,Pads exp,Spare exp
D1,2027-03-31,2028-03-31,2028-01-31,2028-06-30
D2,2027-04-30,,2028-02-28,
`,
    rows: {
      dated_stock: [
        { item: "Battery", expiry: "2027-03-31" },
        { item: "Spare battery", expiry: "2028-03-31" },
        { item: "Pads", expiry: "2028-01-31" },
        { item: "Spare pads", expiry: "2028-06-30" },
        { item: "Battery", expiry: "2027-04-30" },
        { item: "Pads", expiry: "2028-02-28" },
      ],
    },
  },
  {
    name: "how many spare pads there are, with their expiry behind it",
    text: `Unit,Pads expiry,Spare pads,Spare expiry
M1,05/2027,1,07/2027
M2,10/2027,2,08/2027
`,
    rows: {
      dated_stock: [
        { item: "Pads", quantity: 1, expiry: "2027-05-31" },
        { item: "Spare pads", quantity: 1, expiry: "2027-07-31" },
        { item: "Pads", quantity: 1, expiry: "2027-10-31" },
        { item: "Spare pads", quantity: 2, expiry: "2027-08-31" },
      ],
    },
  },
  {
    name: "dates of spares beside words for yes and no",
    text: `Ward;AED no.;Status OK?;Pads date;Spare pads?;Spare pads date;Battery date
A1;AED-001;Y;05/2027;Y;06/2027;03/2029
A2;AED-002;Y;06/2027;N;;04/2029
B1;AED-003;N;11/2026;Y;01/2027;05/2029
`,
    rows: {
      devices: [
        { device: "AED-001", site: "A1" },
        { device: "AED-002", site: "A2" },
        { device: "AED-003", site: "B1" },
      ],
      dated_stock: [
        { item: "Pads", expiry: "2027-05-31", place: "AED-001" },
        { item: "Spare pads", expiry: "2027-06-30", place: "AED-001" },
        { item: "Battery", expiry: "2029-03-31", place: "AED-001" },
        { item: "Pads", expiry: "2027-06-30", place: "AED-002" },
        { item: "Battery", expiry: "2029-04-30", place: "AED-002" },
        { item: "Pads", expiry: "2026-11-30", place: "AED-003" },
        { item: "Spare pads", expiry: "2027-01-31", place: "AED-003" },
        { item: "Battery", expiry: "2029-05-31", place: "AED-003" },
      ],
    },
    unread: ["Status OK?", "Spare pads?"],
  },
  {
    name: "typing errors in nearly every header",
    text: `Devcie,Loction,Battrey Serail,Instal date,Cylces,Pads Expirey,Pads Lott
D1,East,B9,2024-01-05,10,2027-02-28,Q1
D2,West,B8,2024-01-06,22,2027-03-31,Q2
`,
    rows: {
      devices: [
        { device: "D1", site: "East" },
        { device: "D2", site: "West" },
      ],
      packs: [
        { serial: "B9", device: "D1", site: "East", in_service: "2024-01-05", cycles: 10 },
        { serial: "B8", device: "D2", site: "West", in_service: "2024-01-06", cycles: 22 },
      ],
      dated_stock: [
        { item: "Pads", expiry: "2027-02-28", lot: "Q1", place: "D1" },
        { item: "Pads", expiry: "2027-03-31", lot: "Q2", place: "D2" },
      ],
    },
  },
  {
    name: "expiries written out in their cells under a thing's name",
    text: `Unit,Pads Adult,Pads Child
Engine 1,Exp: 03/2027,Exp: 01/2027
Engine 2,Exp: 04/2027,exp 12/2026
Ladder 1,exp. 05/27,none
`,
    rows: {
      dated_stock: [
        { item: "Pads Adult", expiry: "2027-03-31", place: "Engine 1" },
        { item: "Pads Child", expiry: "2027-01-31", place: "Engine 1" },
        { item: "Pads Adult", expiry: "2027-04-30", place: "Engine 2" },
        { item: "Pads Child", expiry: "2026-12-31", place: "Engine 2" },
        { item: "Pads Adult", expiry: "2027-05-31", place: "Ladder 1" },
      ],
      devices: [{ device: "Engine 1" }, { device: "Engine 2" }, { device: "Ladder 1" }],
    },
  },
  {
    name: "capacities by year without a date",
    text: `Serial,Cap 2024 (%),Cap 2025 (%),Cap 2026 (%)
B1,98,93,88
B2,97,94,90
`,
    rows: {
      runtime_tests: [
        { serial: "B1", date: "2024-06-30", percent: 98 },
        { serial: "B1", date: "2025-06-30", percent: 93 },
        { serial: "B1", date: "2026-06-30", percent: 88 },
        { serial: "B2", date: "2024-06-30", percent: 97 },
        { serial: "B2", date: "2025-06-30", percent: 94 },
        { serial: "B2", date: "2026-06-30", percent: 90 },
      ],
    },
    findings: ["year-alone"],
  },
  {
    name: "when a battery is to be replaced as reckoned, which is not when it was",
    text: `Device,Battery remaining (%),Battery est. replace,Pads expiry
D1,74,2028-02-01,2027-03-31
D2,12,2026-12-15,2027-04-30
`,
    rows: {
      packs: [],
      dated_stock: [
        { item: "Battery", expiry: "2028-02-01", place: "D1" },
        { item: "Pads", place: "D1" },
        { item: "Battery", expiry: "2026-12-15", place: "D2" },
        { item: "Pads", place: "D2" },
      ],
    },
    unread: ["Battery remaining (%)"],
  },
  {
    name: "how long things last in brackets behind their expiry",
    text: "AED,Battery Expiration (4 yr),Pads Expiration (2 yrs)\nLobby,06/30/2028,03/31/2027\n",
    rows: { dated_stock: [{ item: "Battery" }, { item: "Pads" }] },
  },
  {
    name: "spare pads in a cabinet beside those in the device",
    text: "AED ID,Pads in AED exp,Spare pads in cabinet exp\nD1,2027-03-31,2027-09-30\nD2,2027-04-30,\n",
    rows: {
      dated_stock: [
        { item: "Pads", expiry: "2027-03-31", place: "D1" },
        { item: "Spare pads", expiry: "2027-09-30", place: "D1" },
        { item: "Pads", expiry: "2027-04-30", place: "D2" },
      ],
    },
  },
  {
    name: "left and right pads, each with its own expiry",
    text: "AED,Left pad expiry,Right pad expiry\nD1,2027-06-30,2027-03-31\nD2,2027-06-30,\n",
    rows: {
      dated_stock: [
        { item: "pad", expiry: "2027-06-30", place: "D1" },
        { item: "pad", expiry: "2027-03-31", place: "D1" },
        { item: "pad", expiry: "2027-06-30", place: "D2" },
      ],
    },
  },
  {
    name: "what was replaced and what is next due",
    text: `Ward,Defib Asset No,Batt Last Replaced,Batt Next Due,Pads Expire,Gel Expire,Paper (Y/N)
W1,DF100,15-Jan-25,15-Jan-28,31-Mar-27,30-Jun-27,Y
W2,DF101,20-Jan-25,20-Jan-28,30-Apr-27,31-Jul-27,N
`,
    rows: {
      devices: [
        { device: "DF100", site: "W1" },
        { device: "DF101", site: "W2" },
      ],
      dated_stock: [
        { item: "Batt", expiry: "2028-01-15", place: "DF100" },
        { item: "Pads", expiry: "2027-03-31", place: "DF100" },
        { item: "Gel", expiry: "2027-06-30", place: "DF100" },
        { item: "Batt", expiry: "2028-01-20", place: "DF101" },
        { item: "Pads", expiry: "2027-04-30", place: "DF101" },
        { item: "Gel", expiry: "2027-07-31", place: "DF101" },
      ],
    },
    unread: ["Batt Last Replaced", "Paper (Y/N)"],
  },
  {
    name: "weeks and a Roman quarter",
    text: `Artikel;Charge;MHD;Bestand
Pads;C1;KW 23/2027;4
Pads;C2;KW 40/2027;4
Gel;C3;III. Quartal 2027;9
`,
    rows: {
      dated_stock: [
        { item: "Pads", lot: "C1", expiry: "2027-06-13", quantity: 4 },
        { item: "Pads", lot: "C2", expiry: "2027-10-10", quantity: 4 },
        { item: "Gel", lot: "C3", expiry: "2027-09-30", quantity: 9 },
      ],
    },
  },
  {
    name: "column names run together",
    text: `serialno,partno,mfgdate,svcdate,cyc
77001,LB2,20210315,20210601,310
77002,LB2,20210315,20210601,288
`,
    rows: {
      packs: [
        { serial: "77001", item: "LB2", made: "2021-03-15", in_service: "2021-06-01", cycles: 310 },
        { serial: "77002", item: "LB2", made: "2021-03-15", in_service: "2021-06-01", cycles: 288 },
      ],
    },
  },
  {
    name: "boxes beside their size, and a unit of measure that is a box",
    text: `Product,Units/box,Stock,UOM,Exp.,Lot
Adult pads,10,2 boxes,BX,2027-08-31,Z1
Child pads,5,1,BX,2027-07-31,Z2
Gel,12,7,EA,2027-01-31,Z3
Paper,,3,BX,2028-01-31,Z4
`,
    rows: {
      dated_stock: [
        { item: "Adult pads", quantity: 20, expiry: "2027-08-31", lot: "Z1" },
        { item: "Child pads", quantity: 5, expiry: "2027-07-31", lot: "Z2" },
        { item: "Gel", quantity: 7, expiry: "2027-01-31", lot: "Z3" },
      ],
    },
    aside: [[5, "boxes-unknown"]],
    findings: ["boxes-unknown"],
    unread: ["Units/box", "UOM"],
  },
  {
    name: "units in a row of their own below the names",
    text: `Battery,Tested,Runtime,Load,Result,Rated
,,h,W,Ah,Ah
B1,2026-05-13,1.5,50,3.3,4.4
B2,2026-05-14,1.25,50,2.2,4.4
`,
    rows: {
      runtime_tests: [
        { serial: "B1", date: "2026-05-13", minutes: 90, load_w: 50, ah: 3.3, percent: 75 },
        { serial: "B2", date: "2026-05-14", minutes: 75, load_w: 50, ah: 2.2, percent: 50 },
      ],
    },
  },
  {
    name: "units in brackets and the form of dates below German names",
    text: `Akku;Prüfdatum;Kapazität;Temperatur
-;(tt.mm.jjjj);[mAh];[°C]
B1;13.05.2026;3850;21
B2;14.05.2026;2950;22
`,
    rows: {
      runtime_tests: [
        { serial: "B1", date: "2026-05-13", ah: 3.85, temperature_c: 21 },
        { serial: "B2", date: "2026-05-14", ah: 2.95, temperature_c: 22 },
      ],
    },
  },
  {
    name: "what is counted and dated in brackets in a row of its own below the names",
    text: `Serial,In service,Cycles,Temperature
,(date),(n),(°C)
B1,2023-05-13,120,21
B2,2023-05-14,90,22
`,
    rows: {
      packs: [
        { serial: "B1", in_service: "2023-05-13", cycles: 120, temperature_c: 21 },
        { serial: "B2", in_service: "2023-05-14", cycles: 90, temperature_c: 22 },
      ],
    },
  },
];
