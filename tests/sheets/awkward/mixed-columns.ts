import type { AwkwardSheet } from "./awkward-sheet.ts";

/** Sheets whose columns hold two things at once, or a thing other than their heading alone suggests. */
export const MIXED_COLUMNS: readonly AwkwardSheet[] = [
  {
    name: "several items in a line, each beside its own expiry",
    text: `Cabinet,Item 1,Exp 1,Item 2,Exp 2,Item 3,Exp 3
Lobby,Adult pads,05/2027,Child pads,01/2027,Battery,09/2028
Cafe,Adult pads,06/2027,,,Battery,10/2028
`,
    rows: {
      dated_stock: [
        { item: "Adult pads", expiry: "2027-05-31", place: "Lobby" },
        { item: "Child pads", expiry: "2027-01-31", place: "Lobby" },
        { item: "Battery", expiry: "2028-09-30", place: "Lobby" },
        { item: "Adult pads", expiry: "2027-06-30", place: "Cafe" },
        { item: "Battery", expiry: "2028-10-31", place: "Cafe" },
      ],
    },
  },
  {
    name: "how each battery is, which names none, and since when a device stands as it does",
    text: `Device,Status,Since,Location,Battery,Pads
MN-01,In use,2024-02-01,Ward 1,OK,exp 2027-04
MN-02,In repair,2026-10-30,Workshop,OK,exp 2027-04
MN-03,Decommissioned,2026-06-30,Store,weak,
MN-04,Spare,2025-09-12,Store,low,exp 2026-12
MN-05,In use,2023-03-03,Ward 2,replace,exp 2027-09
`,
    rows: {
      packs: [],
      devices: [
        { device: "MN-01", in_service: null },
        { device: "MN-02", in_service: null },
        { device: "MN-03", in_service: null, retired: "2026-11-01" },
        { device: "MN-04", in_service: null },
        { device: "MN-05", in_service: null },
      ],
      dated_stock: [{ place: "MN-01" }, { place: "MN-02" }, { place: "MN-04" }, { place: "MN-05" }],
    },
    findings: ["fault-unread", "gone-undated"],
    unread: ["Since", "Battery"],
  },
  {
    name: "what was bought, which is neither used nor still to come",
    text: `Date,Item,Qty,Vendor,Unit cost
2026-01-14,Adult pads,20,North Supply,58.00
2026-03-30,ECG paper,40,North Supply,3.10
2026-06-18,Monitor battery,6,South Supply,298.00
`,
    rows: {
      use_log: [],
      on_order: [],
      catalogue: [
        { item: "Adult pads", supplier: "North Supply", price: "58" },
        { item: "ECG paper", price: "3.10" },
        { item: "Monitor battery", supplier: "South Supply", price: "298" },
      ],
    },
    unread: ["Date", "Qty"],
  },
  {
    name: "uses with what they cost",
    text: `Consumption 2026
Date,Item,Qty,Unit cost
2026-01-14,Adult pads,2,58.00
2026-03-30,ECG paper,4,3.10
`,
    rows: {
      use_log: [
        { item: "Adult pads", quantity: 2 },
        { item: "ECG paper", quantity: 4 },
      ],
    },
    unread: ["Unit cost"],
  },
  {
    name: "uses with what they cost, told by the place",
    text: `Date,Vehicle,Item,Qty,Cost,Crew
2026-01-05,Medic 1,Adult pads,2,32.50,A
2026-02-07,Medic 2,Gel,1,4.20,B
`,
    rows: {
      use_log: [
        { item: "Adult pads", quantity: 2, place: "Medic 1" },
        { item: "Gel", quantity: 1, place: "Medic 2" },
      ],
    },
    unread: ["Cost", "Crew"],
  },
  {
    name: "uses with what they cost, told by a header",
    text: `Date,Item,Qty used,Unit price
2026-01-05,Adult pads,2,32.50
2026-02-07,Gel,1,4.20
`,
    rows: {
      use_log: [
        { item: "Adult pads", quantity: 2 },
        { item: "Gel", quantity: 1 },
      ],
    },
    unread: ["Unit price"],
  },
  {
    name: "the means of columns below a list of batteries",
    text: `Akku-Nr.,Gerät,Inbetriebnahme,Kapazität,gemessen,Zyklen
A-01,RTW 1,2023-05-02,92 %,2026-10-12,188
A-02,RTW 1,2023-05-02,88 %,2026-10-12,201
Mittelwert,,,90 %,,195
`,
    rows: { packs: [{ serial: "A-01" }, { serial: "A-02" }], runtime_tests: [{ percent: 92 }, { percent: 88 }] },
    aside: [[4, "total-row"]],
  },
  {
    name: "a matrix of one item by its months of expiry and by place",
    text: `Pads expiring,Store,Ambulance depot,Hospital A,Sum
Nov 2026,0,4,2,6
Mar 2027,10,2,3,15
Sum,10,6,5,21
`,
    rows: {
      dated_stock: [
        { item: "Pads", expiry: "2026-11-30", place: "Store", quantity: 0 },
        { item: "Pads", expiry: "2026-11-30", place: "Ambulance depot", quantity: 4 },
        { item: "Pads", expiry: "2026-11-30", place: "Hospital A", quantity: 2 },
        { item: "Pads", expiry: "2027-03-31", place: "Store", quantity: 10 },
        { item: "Pads", expiry: "2027-03-31", place: "Ambulance depot", quantity: 2 },
        { item: "Pads", expiry: "2027-03-31", place: "Hospital A", quantity: 3 },
      ],
    },
    aside: [[4, "total-row"]],
    unread: ["Sum"],
  },
  {
    name: "counts with their expiry in brackets, of vehicles and of a supply of batteries",
    text: `Vehicle,Adult pads,Child pads,Battery
Medic 1,2 (exp 05/27),1 (exp 02/27),3 (exp 03/28)
Medic 2,2 (exp 11/26),,1 x 09/2028
`,
    rows: {
      packs: [],
      dated_stock: [
        { item: "Battery", expiry: "2028-03-31", quantity: 3, place: "Medic 1" },
        { item: "Adult pads", expiry: "2027-05-31", quantity: 2, place: "Medic 1" },
        { item: "Child pads", expiry: "2027-02-28", quantity: 1, place: "Medic 1" },
        { item: "Battery", expiry: "2028-09-30", quantity: 1, place: "Medic 2" },
        { item: "Adult pads", expiry: "2026-11-30", quantity: 2, place: "Medic 2" },
      ],
    },
  },
  {
    name: "counts with their expiry in brackets below each vehicle",
    text: `Item,Engine 7-1,Rescue 7,Store
Adult pads,2 (exp 05/27),3 (exp 11/26),10 (03/2028)
Pedi pads,1 (exp 02/27),,4 (06/2027)
Razor,1,1,
`,
    rows: {
      dated_stock: [
        { item: "Adult pads", expiry: "2027-05-31", quantity: 2, place: "Engine 7-1" },
        { item: "Adult pads", expiry: "2026-11-30", quantity: 3, place: "Rescue 7" },
        { item: "Adult pads", expiry: "2028-03-31", quantity: 10, place: "Store" },
        { item: "Pedi pads", expiry: "2027-02-28", quantity: 1, place: "Engine 7-1" },
        { item: "Pedi pads", expiry: "2027-06-30", quantity: 4, place: "Store" },
      ],
    },
    aside: [[4, "missing-required"]],
  },
  {
    name: "a bare day of each battery, before every expiry of its line",
    text: `AED serial,Location,Pads A exp,Pads B exp,Battery date
S1,Gate,2027-02-28,2027-02-28,2024-03-01
S2,Office,2027-02-28,2027-08-31,2022-06-01
`,
    rows: {
      packs: [
        { device: "S1", in_service: "2024-03-01" },
        { device: "S2", in_service: "2022-06-01" },
      ],
      dated_stock: [{ item: "Pads" }, { item: "Pads" }, { item: "Pads" }, { item: "Pads" }],
    },
    findings: ["battery-unnamed", "date-presumed"],
  },
  {
    name: "numbered batteries of a monitor, checked day by day",
    text: `Date,Vehicle,Monitor bat 1 SN,Monitor bat 2 SN
2026-10-01,M1,B1,B2
2026-10-02,M1,B1,B3
2026-10-01,M2,B7,B8
`,
    rows: {
      packs: [
        { serial: "B1", device: "M1" },
        { serial: "B2", device: "M1" },
        { serial: "B3", device: "M1" },
        { serial: "B7", device: "M2" },
        { serial: "B8", device: "M2" },
      ],
    },
    unread: ["Date"],
  },
  {
    name: "capacities headed by their months, one verdict behind them and a test that was not made",
    text: `Visit: 2026-10-12   Engineer: field service

Device,Battery serial,Made,Cap. Jan 2025 (%),Cap. Jan 2026 (%),Verdict
DM-1,Q100,2022-11,97,91,OK
DM-2,Q101,2022-11,95,74,Replace
DM-3,Q103,2023-04,98,n/t,OK
`,
    rows: {
      packs: [
        { serial: "Q100", device: "DM-1", site: null },
        { serial: "Q101", site: null },
        { serial: "Q103", site: null },
      ],
      runtime_tests: [
        { serial: "Q100", date: "2025-01-31", percent: 97, result: null },
        { serial: "Q100", date: "2026-01-31", percent: 91, result: null },
        { serial: "Q101", date: "2025-01-31", percent: 95, result: null },
        { serial: "Q101", date: "2026-01-31", percent: 74, result: null },
        { serial: "Q103", date: "2025-01-31", percent: 98, result: null },
      ],
    },
    findings: ["fault-unread"],
    unread: ["Verdict"],
  },
  {
    name: "numbered tests in minutes, whose headings say so behind the number",
    text: `Pack ID,Fitted to,Test 1 date,Test 1 min,Test 2 date,Test 2 min
PK1,M1,2024-03-01,182,2026-03-02,160
PK2,M1,2024-03-01,178,2026-03-02,121
`,
    rows: {
      packs: [{ serial: "PK1" }, { serial: "PK2" }],
      runtime_tests: [
        { serial: "PK1", date: "2024-03-01", minutes: 182 },
        { serial: "PK1", date: "2026-03-02", minutes: 160 },
        { serial: "PK2", date: "2024-03-01", minutes: 178 },
        { serial: "PK2", date: "2026-03-02", minutes: 121 },
      ],
    },
  },
  {
    name: "goods by the day on which they came, of which nothing says that they were used",
    text: `Received,Item,Qty
2026-01-14,Adult pads,20
2026-03-30,ECG paper,40
`,
    rows: { use_log: [], dated_stock: [], on_order: [] },
    aside: [
      [2, "unknown-table"],
      [3, "unknown-table"],
    ],
    unread: ["Received", "Item", "Qty"],
  },
  {
    name: "two sets of pads under one heading",
    text: `AED,Location,Adult pads,Adult pads,Child pads,Battery
A1,Gym,2027-05-31,2027-11-30,2027-01-31,2028-03-31
A2,Pool,2027-05-31,,2027-01-31,2026-12-31
`,
    rows: {
      devices: [{ device: "A1" }, { device: "A2" }],
      dated_stock: [
        { item: "Adult pads", expiry: "2027-05-31", place: "A1" },
        { item: "Adult pads", expiry: "2027-11-30", place: "A1" },
        { item: "Child pads", expiry: "2027-01-31", place: "A1" },
        { item: "Battery", expiry: "2028-03-31", place: "A1" },
        { item: "Adult pads", expiry: "2027-05-31", place: "A2" },
        { item: "Child pads", expiry: "2027-01-31", place: "A2" },
        { item: "Battery", expiry: "2026-12-31", place: "A2" },
      ],
    },
  },
  {
    name: "a capacity and behind it the result",
    text: `Serial,Purchase date,Last test,Last result
B1,2023-01-15,2026-09-01,91% Pass
B2,2023-01-15,2026-09-02,75% (fail)
`,
    rows: {
      runtime_tests: [
        { serial: "B1", percent: 91, result: "pass", date: "2026-09-01" },
        { serial: "B2", percent: 75, result: "fail", date: "2026-09-02" },
      ],
    },
  },
];
