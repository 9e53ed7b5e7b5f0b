import type { AwkwardSheet } from "./awkward-sheet.ts";

/** Sheets as planners of hospitals, fire brigades, ferries and schools keep them for themselves. */
export const PLANNERS: AwkwardSheet[] = [
  {
    name: "a stock-take headed by what was counted",
    text: `Stock take 24 Oct 2026,,,,,,
Bin,Description,Par,Counted,Lot,Expiry,Remarks
B1-03,AED pads adult (pair),12,9,4471A,EXP 08/26,quarantine
B1-03,AED pads adult (pair),,6,4502B,08/2027,
B1-04,AED pads paed,4,4,9913,best before 2026-08,
B2-02,Print paper 50 mm,10,11,-,no date,
`,
    rows: {
      dated_stock: [
        { item: "AED pads adult (pair)", expiry: "2026-08-31", lot: "4471A", quantity: 9, place: "B1-03" },
        { item: "AED pads adult (pair)", expiry: "2027-08-31", lot: "4502B", quantity: 6, place: "B1-03" },
        { item: "AED pads paed", expiry: "2026-08-31", lot: "9913", quantity: 4, place: "B1-04" },
      ],
    },
    aside: [[6, "missing-required"]],
    unread: ["Par", "Remarks"],
  },
  {
    name: "cells that say themselves what their dates are",
    text: `Vessel,AED S/N,Battery,Pads on board
MV Heron,70011,installed 2023 (4 yr),"2 x adult 03/27, 1 x paed 11/26"
MV Plover,70015,installed 06/2022 (4 yr),2 x adult 09/27
`,
    rows: {
      devices: [
        { device: "70011", site: "MV Heron" },
        { device: "70015", site: "MV Plover" },
      ],
      packs: [
        { device: "70011", in_service: "2023-01-01" },
        { device: "70015", in_service: "2022-06-01" },
      ],
      dated_stock: [
        { item: "adult pads", expiry: "2027-03-31", quantity: 2, place: "70011" },
        { item: "paed pads", expiry: "2026-11-30", quantity: 1, place: "70011" },
        { item: "adult pads", expiry: "2027-09-30", quantity: 2, place: "70015" },
      ],
    },
    findings: ["year-alone"],
  },
  {
    name: "cells that say what their dates are, beside a remark made of words that head columns",
    text: `Unit,Defib battery,Pads,Notes
M1,installed 05/2024,exp 03/2027,
M2,installed 05/2023,exp 04/2027,replace pads soon
`,
    rows: {
      dated_stock: [
        { item: "Pads", expiry: "2027-03-31", place: "M1" },
        { item: "Pads", expiry: "2027-04-30", place: "M2" },
      ],
    },
    findings: ["fault-unread"],
    // the day of fitting is no expiry
    unread: ["Defib battery", "Notes"],
  },
  {
    name: "pads whose expiry is said to be past",
    text: `Surgery,Item,Qty,Expiry date
Mill Lane,AED pads adult,1,Dec 2026
Station Rd,AED pads adult,2,expired 09/26
`,
    rows: {
      dated_stock: [
        { item: "AED pads adult", expiry: "2026-12-31", quantity: 1, place: "Mill Lane" },
        { item: "AED pads adult", expiry: "2026-09-30", quantity: 2, place: "Station Rd" },
      ],
    },
  },
  {
    name: "a stock list with two columns for each ambulance",
    text: `,Medic 1,,Medic 2,
Item,Qty,Exp,Qty,Exp
Adult pads,2,03/27,2,06/27
Paed pads,1,12/26,1,01/27
`,
    rows: {
      dated_stock: [
        { item: "Adult pads", expiry: "2027-03-31", quantity: 2, place: "Medic 1" },
        { item: "Adult pads", expiry: "2027-06-30", quantity: 2, place: "Medic 2" },
        { item: "Paed pads", expiry: "2026-12-31", quantity: 1, place: "Medic 1" },
        { item: "Paed pads", expiry: "2027-01-31", quantity: 1, place: "Medic 2" },
      ],
    },
  },
  {
    name: "units carried from store to station, none of which was used",
    text: `Stock movements
Date,Item,Qty,From,To,Signed
2026-09-03,Adult pads,4,Main store,Station 2,LM
2026-09-12,ECG paper,10,Main store,Station 1,OK
`,
    rows: {
      use_log: [
        { date: "2026-09-03", item: "Adult pads", quantity: 4, place: "Station 2", reason: "restock" },
        { date: "2026-09-12", item: "ECG paper", quantity: 10, place: "Station 1", reason: "restock" },
      ],
    },
    findings: ["moves"],
    unread: ["From", "Signed"],
  },
  {
    name: "a notice's lots, which nobody need have",
    text: `FIELD SAFETY NOTICE - affected lots
Product,Lot number,Expiry date,Action
Adult pads,W2701,2027-01,Return
Child pads,W1188,2027-05,Return
`,
    rows: { dated_stock: [] },
    aside: [
      [3, "unknown-table"],
      [4, "unknown-table"],
    ],
    unread: ["Product", "Lot number", "Expiry date", "Action"],
  },
  {
    name: "the fleet's own units of recalled lots",
    text: `Recall: affected lots
Product,Lot number,Expiry date,Location
Adult pads,W2701,2027-01,Medic 1
`,
    rows: { dated_stock: [{ item: "Adult pads", lot: "W2701", place: "Medic 1" }] },
  },
  {
    name: "a school's register with a tick a month",
    text: `Lakeview School District #12 - AED Program - 2026/27 monthly checks
School,AED Serial,Bldg / room,Pads Exp,Batt Inst,Aug,Sep,Oct,Nov,Dec,Initials
Lincoln Elem,A-55012,Main office,9/30/2027,8/15/2024,x,x,x,,,KL
Central High,A-55032,Pool,5/31/2028,2/3/2025,x,,x,,,TR
`,
    rows: {
      devices: [
        { device: "A-55012", site: "Lincoln Elem" },
        { device: "A-55032", site: "Central High" },
      ],
      packs: [
        { device: "A-55012", in_service: "2024-08-15" },
        { device: "A-55032", in_service: "2025-02-03" },
      ],
      dated_stock: [
        { item: "Pads", expiry: "2027-09-30", place: "A-55012" },
        { item: "Pads", expiry: "2028-05-31", place: "A-55032" },
      ],
    },
    unread: ["Bldg / room", "Aug", "Sep", "Oct", "Nov", "Dec", "Initials"],
  },
  {
    name: "a French log of uses by material",
    text: `Date;Intervention n°;Véhicule;Matériel;Quantité;Motif
03/09/2026;2026-1881;VSAV 1;Électrodes adulte;1;Intervention
15/09/2026;;VSAV 2;Électrodes enfant;1;Périmé
`,
    rows: {
      use_log: [
        { date: "2026-09-03", item: "Électrodes adulte", quantity: 1, place: "VSAV 1", reason: "use" },
        { date: "2026-09-15", item: "Électrodes enfant", quantity: 1, place: "VSAV 2", reason: "lapsed" },
      ],
    },
    unread: ["Intervention n°"],
  },
  {
    name: "Spanish tests that were or were not apt",
    text: `Fecha;Nº batería;Autonomía (min);Capacidad (%);Resultado
15/01/2026;B-21;182;91;Apta
15/01/2026;B-22;141;70,5;No apta
`,
    rows: {
      runtime_tests: [
        { serial: "B-21", date: "2026-01-15", minutes: 182, percent: 91, result: "pass" },
        { serial: "B-22", date: "2026-01-15", minutes: 141, percent: 70.5, result: "fail" },
      ],
    },
  },
  {
    name: "a swap log whose old battery would not hold its charge",
    text: `Date,Unit,Old battery,New battery,Why
22/01/2025,Medic 3,BT-13,BT-43,would not hold charge
`,
    rows: {
      packs: [
        { serial: "BT-13", retired: "2025-01-22", retired_because: "faded" },
        { serial: "BT-43", device: "Medic 3", in_service: "2025-01-22" },
      ],
    },
  },
  {
    name: "kits whose practice stands once above its items",
    text: `Practice,Item,Qty,Expiry date
High St,GTN spray,1,Oct 2028
,AED pads adult,1,May 2027
,AED pads child,1,Jan 2027
Mill Lane,AED pads adult,1,Dec 2026
,ECG paper,2,n/a
Station Rd,AED pads adult,2,Mar 2028
`,
    rows: {
      dated_stock: [
        { item: "GTN spray", place: "High St" },
        { item: "AED pads adult", expiry: "2027-05-31", place: "High St" },
        { item: "AED pads child", place: "High St" },
        { item: "AED pads adult", expiry: "2026-12-31", place: "Mill Lane" },
        { item: "AED pads adult", expiry: "2028-03-31", place: "Station Rd" },
      ],
    },
    aside: [[6, "missing-required"]],
    findings: ["carried-down"],
  },
  {
    name: "a register that leaves the monitor blank beside its second battery",
    text: `Monitor,Ward,Battery S/N,Fitted,Pads exp
M1,ED,B1,2024-01-05,2027-05
,,B2,2024-01-06,
M2,ICU,B3,2025-01-05,2027-06
,,B4,2025-01-06,
`,
    rows: {
      devices: [
        { device: "M1", site: "ED" },
        { device: "M2", site: "ICU" },
      ],
      packs: [
        { serial: "B1", device: "M1", site: "ED" },
        { serial: "B2", device: "M1", site: "ED", in_service: "2024-01-06" },
        { serial: "B3", device: "M2", site: "ICU" },
        { serial: "B4", device: "M2", site: "ICU", in_service: "2025-01-06" },
      ],
      dated_stock: [
        { place: "M1", expiry: "2027-05-31" },
        { place: "M2", expiry: "2027-06-30" },
      ],
    },
    findings: ["carried-down"],
  },
  {
    name: "stock of which some lies at no known place",
    text: `Vehicle,Item,Exp
A1,Adult pads,2027-05
A2,Adult pads,2027-06
A3,Adult pads,2027-07
,Adult pads,2028-01
`,
    rows: { dated_stock: [{ place: "A1" }, { place: "A2" }, { place: "A3" }, { place: null, expiry: "2028-01-31" }] },
  },
  {
    name: "spares beside what is in use, each under its own title",
    text: `IN USE,,,,SPARES,,
Battery,Device,Fitted,,Battery,Bought,Shelf
L-101,Mon 1,22.03.2023,,L-201,15.01.2026,A
L-102,Mon 2,22.03.2023,,L-202,15.01.2026,A
L-103,Mon 3,28.11.2024,,,,
`,
    rows: {
      packs: [
        { serial: "L-101", device: "Mon 1", in_service: "2023-03-22" },
        { serial: "L-102", device: "Mon 2", in_service: "2023-03-22" },
        { serial: "L-103", device: "Mon 3", in_service: "2024-11-28" },
        { serial: "L-201", device: null, site: "A", in_service: null },
        { serial: "L-202", device: null, site: "A", in_service: null },
      ],
    },
    unread: ["Bought"],
  },
  {
    name: "a form for each battery, its serial and rating above the log",
    text: `BATTERY TEST RECORD
Serial: BT-3001,,Rating: 5.0 Ah,
Date,Capacity (Ah),Tested by
12/01/2025,4.75,GH
14/07/2025,4.60,GH

BATTERY TEST RECORD
Serial:,BT-3002,Rated capacity:,5000 mAh
Date,Capacity (Ah),Tested by
12/01/2025,4.30,GH
14/07/2025,4.05,GH
`,
    rows: {
      runtime_tests: [
        { serial: "BT-3001", date: "2025-01-12", ah: 4.75, percent: 95 },
        { serial: "BT-3001", date: "2025-07-14", ah: 4.6, percent: 92 },
        { serial: "BT-3002", date: "2025-01-12", ah: 4.3, percent: 86 },
        { serial: "BT-3002", date: "2025-07-14", ah: 4.05, percent: 81 },
      ],
    },
    aside: [[7, "repeated-header"]],
    findings: ["from-heading"],
    unread: ["Tested by", "Tested by"],
  },
  {
    name: "a calendar of what expires in which month",
    text: `ADULT PADS - EXPIRY CALENDAR 2027 (number of sets)

Station,Jan,Feb,Mar,Apr,Total
Station 1,2,,4,,6
HQ store,,20,,,20
Total,2,20,4,0,26
`,
    rows: {
      dated_stock: [
        { item: "ADULT PADS", expiry: "2027-01-31", quantity: 2, place: "Station 1" },
        { item: "ADULT PADS", expiry: "2027-03-31", quantity: 4, place: "Station 1" },
        { item: "ADULT PADS", expiry: "2027-02-28", quantity: 20, place: "HQ store" },
      ],
    },
    aside: [[6, "total-row"]],
    unread: ["Total"],
  },
  {
    name: "how often tasks are done, in words",
    text: `Task,Frequency
Battery calibration,quarterly
Pads check,monthly
Paper change,twice a year
Full test,every 6 mo
Inspection,3 monthly
Overhaul,every 2 years
`,
    rows: {
      routine: [
        { task: "Battery calibration", per_year: 4 },
        { task: "Pads check", per_year: 12 },
        { task: "Paper change", per_year: 2 },
        { task: "Full test", per_year: 2 },
        { task: "Inspection", per_year: 4 },
        { task: "Overhaul", per_year: 0.5 },
      ],
    },
  },
  {
    name: "after how many months tasks come again",
    text: `Task,Frequency (months),Item,Qty
Paper change,6,Paper,1
Battery check,3,,
`,
    rows: {
      routine: [
        { task: "Paper change", per_year: 2, item: "Paper", quantity: 1 },
        { task: "Battery check", per_year: 4 },
      ],
    },
  },
];
