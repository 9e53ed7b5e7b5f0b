import type { AwkwardSheet } from "./awkward-sheet.ts";

/** Sheets of which a slip in reading makes other counts, days or names, with nothing to tell the planner. */
export const SILENT: AwkwardSheet[] = [
  {
    name: "the batteries that devices work with, headed as those in them",
    text: `AED,Site,Battery in AED,Installed
AED 1,Hall,BT-1001,2024-03-01
AED 2,Gym,BT-1002,2025-05-01
`,
    rows: {
      devices: [
        { device: "AED 1", site: "Hall", in_service: null },
        { device: "AED 2", site: "Gym", in_service: null },
      ],
      packs: [
        { serial: "BT-1001", device: "AED 1", in_service: "2024-03-01" },
        { serial: "BT-1002", device: "AED 2", in_service: "2025-05-01" },
      ],
      dated_stock: [],
    },
  },
  {
    name: "the same in German, beside their spares",
    text: `Gerät,Standort,Akku im Gerät,Reserveakku
D1,Wache 1,A-100,A-200
D2,Wache 2,A-101,A-201
`,
    rows: {
      devices: [{ device: "D1" }, { device: "D2" }],
      packs: [
        { serial: "A-100", device: "D1" },
        { serial: "A-200", device: "D1" },
        { serial: "A-101", device: "D2" },
        { serial: "A-201", device: "D2" },
      ],
    },
  },
  {
    name: "batteries with the day each was fitted and the one it was replaced on, which one that is in has not",
    text: `Battery serial,AED,Fitted,Replaced on
B1,AED 1,2020-01-01,2024-02-01
B2,AED 1,2024-02-01,
B3,AED 2,2022-01-01,
`,
    rows: {
      devices: [],
      packs: [
        { serial: "B1", device: "AED 1", in_service: "2020-01-01", retired: "2024-02-01" },
        { serial: "B2", device: "AED 1", in_service: "2024-02-01", retired: null },
        { serial: "B3", device: "AED 2", in_service: "2022-01-01", retired: null },
      ],
    },
  },
  {
    name: "the same in German, by words for putting in and taking out",
    text: `Akku-Nr,Gerät,Eingebaut,Ausgebaut
B1,D1,01.01.2020,21.02.2024
B2,D1,21.02.2024,
`,
    rows: {
      packs: [
        { serial: "B1", in_service: "2020-01-01", retired: "2024-02-21" },
        { serial: "B2", in_service: "2024-02-21", retired: null },
      ],
    },
  },
  {
    name: "a day of replacement of every battery, which may be the last of each or the first of the one after it",
    text: `Battery S/N,Fitted,Replaced
B1,2020-01-01,2024-02-01
B2,2021-02-01,2025-03-01
`,
    rows: {
      packs: [
        { serial: "B1", in_service: "2020-01-01", retired: null },
        { serial: "B2", in_service: "2021-02-01", retired: null },
      ],
    },
    findings: ["thing-unread"],
    unread: ["Replaced"],
  },
  {
    name: "a device's own installation before its battery's replacement, of which some have none",
    text: `AED,Installed,Battery S/N,Battery replaced
AED 1,2019-01-01,B2,2024-02-01
AED 2,2022-01-01,B3,
`,
    rows: {
      devices: [{ in_service: "2019-01-01" }, { in_service: "2022-01-01" }],
      packs: [
        { serial: "B2", in_service: "2024-02-01", retired: null },
        { serial: "B3", in_service: null, retired: null },
      ],
    },
  },
  {
    name: "ages of batteries on no day that is told",
    text: `Standort,Gerät,Akku-SN,Alter (Jahre)
Wache 1,D1,A-100,2.5
Wache 1,D2,A-101,4
`,
    rows: { packs: [{ serial: "A-100", in_service: null }, { serial: "A-101" }] },
    findings: ["age-undated"],
    unread: ["Alter (Jahre)"],
  },
  {
    name: "ages beside the days that tell more",
    text: `Battery,Fitted,Age (months)
B1,2024-01-01,22
B2,2023-01-01,34
`,
    rows: { packs: [{ in_service: "2024-01-01" }, { in_service: "2023-01-01" }] },
    findings: ["column-unread"],
    unread: ["Age (months)"],
  },
  {
    name: "several devices in a line, each with the expiry of its pads",
    text: `Site,AED 1,AED 1 pads expiry,AED 2,AED 2 pads expiry
Hall,S100,2027-03-01,S101,2027-05-01
Gym,S102,2027-04-01,,
`,
    rows: {
      devices: [
        { device: "S100", site: "Hall" },
        { device: "S101", site: "Hall" },
        { device: "S102", site: "Gym" },
      ],
      dated_stock: [
        { item: "pads", expiry: "2027-03-01", place: "S100" },
        { item: "pads", expiry: "2027-05-01", place: "S101" },
        { item: "pads", expiry: "2027-04-01", place: "S102" },
      ],
    },
  },
  {
    name: "the same where the columns behind each device do not number it",
    text: `Site,AED 1,Pads exp,AED 2,Pads exp
Hall,S100,2027-03-01,S101,2027-05-01
Gym,S102,2027-04-01,,
`,
    rows: {
      devices: [{ device: "S100" }, { device: "S101" }, { device: "S102" }],
      dated_stock: [
        { expiry: "2027-03-01", place: "S100" },
        { expiry: "2027-05-01", place: "S101" },
        { expiry: "2027-04-01", place: "S102" },
      ],
    },
  },
  {
    name: "several devices in a line with two batteries each",
    text: `Site,AED 1 S/N,AED 1 battery 1 S/N,AED 1 battery 2 S/N,AED 2 S/N,AED 2 battery 1 S/N,AED 2 battery 2 S/N
Hall,S1,B1,B2,S2,B3,B4
Gym,S3,B5,B6,,,
`,
    rows: {
      devices: [{ device: "S1" }, { device: "S2" }, { device: "S3" }],
      packs: [
        { serial: "B1", device: "S1" },
        { serial: "B2", device: "S1" },
        { serial: "B3", device: "S2" },
        { serial: "B4", device: "S2" },
        { serial: "B5", device: "S3" },
        { serial: "B6", device: "S3" },
      ],
    },
  },
  {
    name: "several devices in a vehicle, and pads of which none is said to be at either",
    text: `Vehicle,Monitor 1 SN,Monitor 2 SN,Pads exp
M1,MN-1,MN-2,2027-03-31
M2,MN-3,,2027-04-30
`,
    rows: {
      devices: [
        { device: "MN-1", site: "M1" },
        { device: "MN-2", site: "M1" },
        { device: "MN-3", site: "M2" },
      ],
      dated_stock: [
        { expiry: "2027-03-31", place: "M1" },
        { expiry: "2027-04-30", place: "M2" },
      ],
    },
  },
  {
    name: "items that carry their lot and expiry in brackets, beside how many there are",
    text: `Item,Qty,Place
"Adult pads (L1, exp 03/2027)",2,AED 1
"Child pads (L2, exp 04/2027)",3,AED 2
`,
    rows: {
      dated_stock: [
        { item: "Adult pads", lot: "L1", expiry: "2027-03-31", quantity: 2, place: "AED 1" },
        { item: "Child pads", lot: "L2", expiry: "2027-04-30", quantity: 3, place: "AED 2" },
      ],
    },
  },
  {
    name: "the same in German, cut short, and one size whose number is no count",
    text: `Artikel,Menge
"Elektroden Erw. (Ch. K12, verw. bis 03/2027)",2
"Elektroden 12 cm (Ch. K13, verw. bis 04/2027)",3
`,
    rows: {
      dated_stock: [
        { item: "Elektroden Erw.", lot: "K12", expiry: "2027-03-31", quantity: 2 },
        { item: "Elektroden 12 cm", lot: "K13", expiry: "2027-04-30", quantity: 3 },
      ],
    },
  },
  {
    name: "items that carry their lot, beside their expiry: two lots of one item",
    text: `Item,Qty,Expiry
Adult pads (lot 22413),2,2027-03-31
Adult pads (lot 22414),3,2027-05-31
`,
    rows: {
      dated_stock: [
        { item: "Adult pads", lot: "22413", quantity: 2 },
        { item: "Adult pads", lot: "22414", quantity: 3 },
      ],
    },
  },
  {
    name: "capacities with the day they were measured in the same cell",
    text: `Battery,Device,Capacity
B1,AED 1,92% (03/2026)
B2,AED 2,85 % (2026-04-02)
`,
    rows: {
      packs: [{ serial: "B1" }, { serial: "B2" }],
      runtime_tests: [
        { serial: "B1", date: "2026-03-31", percent: 92 },
        { serial: "B2", date: "2026-04-02", percent: 85 },
      ],
    },
  },
  {
    name: "the day of each battery's last test with what it gave",
    text: `Battery,Device,Last test
B1,AED 1,12.03.2026 - 92%
B2,AED 2,14.03.2026 - 85%
`,
    rows: {
      packs: [{ serial: "B1" }, { serial: "B2" }],
      runtime_tests: [
        { serial: "B1", date: "2026-03-12", percent: 92 },
        { serial: "B2", date: "2026-03-14", percent: 85 },
      ],
    },
  },
  {
    name: "a vehicle's call sign between it and its defibrillator, which is what holds the batteries",
    text: `Fahrzeug,Kennung,Defi,Akku 1,Akku 2
RTW 1,HH-1,D100,A1,A2
RTW 2,HH-2,D101,A3,A4
`,
    rows: {
      devices: [
        { device: "D100", site: "RTW 1" },
        { device: "D101", site: "RTW 2" },
      ],
      packs: [
        { serial: "A1", device: "D100" },
        { serial: "A2", device: "D100" },
        { serial: "A3", device: "D101" },
        { serial: "A4", device: "D101" },
      ],
    },
    unread: ["Kennung"],
  },
  {
    name: "how full batteries were before and after a run, which is no capacity",
    text: `Date;Battery;Start %;End %;Minutes
05/01/2026;B1;100;20;180
19/01/2026;B2;100;25;170
`,
    rows: {
      runtime_tests: [
        { serial: "B1", date: "2026-01-05", minutes: 180, percent: null },
        { serial: "B2", date: "2026-01-19", minutes: 170, percent: null },
      ],
    },
    unread: ["Start %", "End %"],
  },
  {
    name: "the day of a test headed by a German word for of the, beside the month of a count",
    text: `Battery;Zyklen;Stand;Kapazität;vom
A1;120;10/2026;88;14.10.2026
A2;90;10/2026;93;15.10.2026
`,
    rows: {
      runtime_tests: [
        { serial: "A1", date: "2026-10-14", percent: 88 },
        { serial: "A2", date: "2026-10-15", percent: 93 },
      ],
    },
  },
  {
    name: "what people took on a day",
    text: `Name,Item,Taken,Date
P1,Adult pads,2,2026-03-01
P2,Child pads,1,2026-04-01
`,
    rows: {
      devices: [],
      use_log: [
        { item: "Adult pads", quantity: 2, date: "2026-03-01" },
        { item: "Child pads", quantity: 1, date: "2026-04-01" },
      ],
    },
    unread: ["Name"],
  },
  {
    name: "pads lettered behind their expiry, or counted before it, and until when they last",
    text: `Gerät,Elektroden bis,Pad exp A,Pad exp B,1st pads exp
D1,31.03.2027,2027-03-01,2027-05-01,2027-07-01
D2,30.04.2027,2027-04-01,2027-06-01,2027-08-01
`,
    rows: {
      dated_stock: [
        { item: "Elektroden", expiry: "2027-03-31" },
        { item: "Pad", expiry: "2027-03-01" },
        { item: "Pad", expiry: "2027-05-01" },
        { item: "pads", expiry: "2027-07-01" },
        { item: "Elektroden", expiry: "2027-04-30" },
        { item: "Pad", expiry: "2027-04-01" },
        { item: "Pad", expiry: "2027-06-01" },
        { item: "pads", expiry: "2027-08-01" },
      ],
    },
  },
  {
    name: "batteries that are counted beside their device and listed nowhere",
    text: `Unit,Device type,Qty batteries
M1,Monitor,2
M2,Monitor,3
`,
    rows: { devices: [{ device: "M1" }, { device: "M2" }], packs: [] },
    findings: ["thing-unread"],
    unread: ["Qty batteries"],
  },
  {
    name: "how many are on the shelf, with no other place counted beside it",
    text: `Item,On shelf,Expiry
Adult pads,4,03/2027
Child pads,2,04/2027
`,
    rows: {
      dated_stock: [
        { item: "Adult pads", quantity: 4, place: "On shelf" },
        { item: "Child pads", quantity: 2, place: "On shelf" },
      ],
    },
  },
  {
    name: "how many lie in bags beside those on the shelf, and in both together",
    text: `Item,On shelf,In bags,Total,Next expiry
Adult pads,4,6,10,03/2027
`,
    rows: {
      dated_stock: [
        { item: "Adult pads", quantity: 4, place: "On shelf" },
        { item: "Adult pads", quantity: 6, place: "In bags" },
      ],
    },
    unread: ["Total"],
  },
  {
    name: "what came in and went out, told by the direction",
    text: `Date,Qty,Item,Direction
2026-01-01,10,Adult pads,IN
2026-02-01,3,Adult pads,OUT
`,
    rows: {
      use_log: [
        { quantity: 10, reason: "restock" },
        { quantity: 3, reason: "use" },
      ],
    },
  },
  {
    name: "how many pads a heading says that there are, at the defibrillators of named units",
    text: `Name of unit,Defib,Pads x2 exp,Gel exp
M1,Z1,2027-03-31,2027-08-31
M2,Z2,2027-04-30,2027-09-30
`,
    rows: {
      devices: [
        { device: "Z1", site: "M1" },
        { device: "Z2", site: "M2" },
      ],
      dated_stock: [
        { item: "Pads", quantity: 2, place: "Z1" },
        { item: "Gel", quantity: 1 },
        { item: "Pads", quantity: 2, place: "Z2" },
        { item: "Gel", quantity: 1 },
      ],
    },
  },
  {
    name: "headings cut short, and days by which to replace",
    text: `Loc,Dev,Bat S/N,Inst,Battery replace due,Pads replace due
N,D1,B1,2024-01-05,2028-01-05,2027-03-31
N,D2,B2,2024-02-05,2028-02-05,2027-04-30
`,
    rows: {
      devices: [{ device: "D1", site: "N" }, { device: "D2" }],
      packs: [
        { serial: "B1", device: "D1", in_service: "2024-01-05" },
        { serial: "B2", device: "D2" },
      ],
      dated_stock: [
        { serial: "B1", expiry: "2028-01-05", place: "D1" },
        { item: "Pads", expiry: "2027-03-31", place: "D1" },
        { serial: "B2", expiry: "2028-02-05" },
        { item: "Pads", expiry: "2027-04-30" },
      ],
    },
  },
  {
    name: "pads that are told by whom they are for alone, below a heading that names pads",
    text: `AED name,Pad type,Pad expiry,Pad type 2,Pad expiry 2
Gym,Adult,2027-03-31,Child,2027-05-31
Hall,Quick adult,2027-04-30,,
`,
    rows: {
      dated_stock: [
        { item: "Adult pads", expiry: "2027-03-31", place: "Gym" },
        { item: "Child pads", expiry: "2027-05-31", place: "Gym" },
        { item: "Quick adult", expiry: "2027-04-30", place: "Hall" },
      ],
    },
  },
  {
    name: "batteries in place and their spares, in French, with the test of those in place",
    text: `Ambulance;Moniteur;Batterie en place;Batterie de réserve;Test batt. (min);Date test
VSAV 1;M1;B1;B2;210;12/03/2026
VSAV 2;M2;B3;B4;190;23/03/2026
`,
    rows: {
      devices: [
        { device: "M1", site: "VSAV 1" },
        { device: "M2", site: "VSAV 2" },
      ],
      packs: [{ serial: "B1" }, { serial: "B2" }, { serial: "B3" }, { serial: "B4" }],
      runtime_tests: [
        { serial: "B1", minutes: 210 },
        { serial: "B3", minutes: 190 },
      ],
    },
  },
  {
    name: "two lots in a line, which letters tell apart",
    text: `Item,Lot A,Lot B,Exp A,Exp B,Qty A,Qty B
Adult pads,L1,L2,2027-03-31,2027-09-30,4,6
Child pads,C1,,2027-04-30,,2,
`,
    rows: {
      dated_stock: [
        { item: "Adult pads", lot: "L1", expiry: "2027-03-31", quantity: 4 },
        { item: "Adult pads", lot: "L2", expiry: "2027-09-30", quantity: 6 },
        { item: "Child pads", lot: "C1", expiry: "2027-04-30", quantity: 2 },
      ],
    },
  },
  {
    name: "until when pads and batteries are all right",
    text: `AED,Elektr. bis,Child pads ok until,Battery ok until
D1,03/2027,05/2027,06/2029
D2,04/2027,,07/2029
`,
    rows: {
      dated_stock: [
        { item: "Elektr", expiry: "2027-03-31" },
        { item: "Child pads", expiry: "2027-05-31" },
        { item: "Battery", expiry: "2029-06-30" },
        { item: "Elektr", expiry: "2027-04-30" },
        { item: "Battery", expiry: "2029-07-31" },
      ],
    },
  },
  {
    name: "a place that is blank in the lines below it, above a line that sums up",
    text: `Location,Item,Qty,Exp
M1,Adult pads,2,03/2027
,Child pads,1,05/2027
M2,Adult pads,2,04/2027
Total,,5,
`,
    rows: {
      dated_stock: [
        { item: "Adult pads", place: "M1" },
        { item: "Child pads", place: "M1" },
        { item: "Adult pads", place: "M2" },
      ],
    },
    aside: [[5, "total-row"]],
    findings: ["carried-down"],
  },
  {
    name: "what happened at each use, told by the event",
    text: `Date,Device,Event,Item,Qty
2026-01-05,D1,Pads replaced - expired,Adult pads,1
2026-02-05,D2,Pads used on patient,Adult pads,1
`,
    rows: { use_log: [{ reason: "lapsed" }, { reason: "use" }] },
  },
  {
    name: "the next batteries and pads, which may be a day to change them or only to look",
    text: `Site,AED,Battery replaced,Next battery,Next pads
N,D1,2024-01-05,2028-01-05,2027-03-01
S,D2,2024-02-05,2028-02-05,2027-04-01
`,
    rows: { packs: [{ in_service: "2024-01-05" }, { in_service: "2024-02-05" }], dated_stock: [] },
    findings: ["thing-unread"],
    unread: ["Next battery", "Next pads"],
  },
  {
    name: "parts of equipment that a column sorts, whose numbers could be taken for those of devices",
    text: `Equipment no.,Equipment,Component,Serial,Fitted
E1,Monitor,Battery,B1,2023-01-05
E1,Monitor,Battery,B2,2023-01-05
E2,Monitor,Sensor,S1,2025-01-05
`,
    rows: { packs: [], dated_stock: [] },
    findings: ["thing-unread"],
    unread: ["Equipment no.", "Component"],
  },
];
