import type { AwkwardSheet } from "./awkward-sheet.ts";

/** Sheets that list supplies inside a cell. */
export const CELL_LISTS: AwkwardSheet[] = [
  {
    name: "consumables of vehicles in one cell",
    text: `Vehicle,Consumables,Checked
Ambulance 1,"2 x adult pads exp 03/2027; 1 roll paper",25/10/2026
Ambulance 2,"1 x adult pads exp 08/2027; 2 rolls paper; gel 3",26/10/2026
Ambulance 3,"child pads x2 (lot C77, exp 30/11/2026), 1 tube gel exp Jan 2028",25/10/2026
Ambulance 4,"adult pads 03/2027 05/2027",25/10/2026
Ambulance 5,,25/10/2026
`,
    rows: {
      dated_stock: [
        { item: "adult pads", quantity: 2, expiry: "2027-03-31", place: "Ambulance 1" },
        { item: "adult pads", quantity: 1, expiry: "2027-08-31", place: "Ambulance 2" },
        { item: "child pads", quantity: 2, expiry: "2026-11-30", lot: "C77", place: "Ambulance 3" },
        { item: "gel", quantity: 1, expiry: "2028-01-31", place: "Ambulance 3" },
      ],
    },
    aside: [
      [5, "listed-unreadable"],
      [6, "missing-required"],
    ],
    findings: ["listed-undated", "listed-unreadable"],
    unread: ["Checked"],
  },
  {
    name: "a register with the contents of each cabinet",
    text: `AED,Location,Battery exp,Contents
AED 1,Gym,2028-05-31,"adult pads 2 (exp 2027-03-31), child pads 1 (exp 2027-04-30)"
AED 2,Pool,2028-06-30,"adult pads 1, exp 2027-09-30
razor 1"
`,
    rows: {
      devices: [
        { device: "AED 1", site: "Gym" },
        { device: "AED 2", site: "Pool" },
      ],
      dated_stock: [
        { item: "Battery", expiry: "2028-05-31", place: "AED 1" },
        { item: "adult pads", quantity: 2, expiry: "2027-03-31", place: "AED 1" },
        { item: "child pads", quantity: 1, expiry: "2027-04-30", place: "AED 1" },
        { item: "Battery", expiry: "2028-06-30", place: "AED 2" },
        { item: "adult pads", quantity: 1, expiry: "2027-09-30", place: "AED 2" },
      ],
    },
    findings: ["listed-undated"],
  },
  {
    name: "the order of days in lists, settled by all of a column's cells together",
    text: `Station,Kit
North,"Elektroden Erw. 2 Stk, Verfall 03.04.2027; Gel 1, Verfall 30.04.2027"
South,"Elektroden Erw. 1 Stk, Verfall 05.06.2027"
`,
    rows: {
      dated_stock: [
        { item: "Elektroden Erw.", quantity: 2, expiry: "2027-04-03", place: "North" },
        { item: "Gel", quantity: 1, expiry: "2027-04-30", place: "North" },
        { item: "Elektroden Erw.", quantity: 1, expiry: "2027-06-05", place: "South" },
      ],
    },
  },
  {
    name: "a log of uses with what was used in one cell",
    text: `Date,Vehicle,Used
2026-03-01,Medic 1,"2 x adult pads; 1 gel"
2026-03-09,Medic 2,1 x adult pads
2026-04-02,Medic 1,"paper roll x3, electrodes"
`,
    rows: {
      use_log: [
        { date: "2026-03-01", item: "adult pads", quantity: 2, place: "Medic 1" },
        { date: "2026-03-01", item: "gel", quantity: 1, place: "Medic 1" },
        { date: "2026-03-09", item: "adult pads", quantity: 1, place: "Medic 2" },
        { date: "2026-04-02", item: "paper roll", quantity: 3, place: "Medic 1" },
        { date: "2026-04-02", item: "electrodes", quantity: 1, place: "Medic 1" },
      ],
    },
  },
  {
    name: "item names that hold numbers, which are no lists",
    text: `Item,Expiry,Qty
Adult pads 2,2027-03-31,4
"Electrodes, adult, 2 pairs",2027-05-31,3
`,
    rows: {
      dated_stock: [
        { item: "Adult pads 2", quantity: 4, expiry: "2027-03-31" },
        { item: "Electrodes, adult, 2 pairs", quantity: 3, expiry: "2027-05-31" },
      ],
    },
  },
  {
    name: "two batteries of a device in one cell, and serials that hold a stroke themselves",
    text: `Device,Battery serial,Battery in service,Last test,Result,Pads exp
M1,B-01 / B-02,2022-03-15,2026-05-13,pass,2027-05-31
M2,"B-03
B-04",2022-03-16,,,
M3,"B-05, B-06",2022-03-17,,,
M4,B-07 + B-08,2022-03-18,,,
M5,12/345,2022-03-19,,,
M6,B-09 / spare,2022-03-20,,,
`,
    rows: {
      packs: [
        { serial: "B-01", device: "M1", in_service: "2022-03-15" },
        { serial: "B-02", device: "M1", in_service: "2022-03-15" },
        { serial: "B-03", device: "M2", in_service: "2022-03-16" },
        { serial: "B-04", device: "M2", in_service: "2022-03-16" },
        { serial: "B-05", device: "M3", in_service: "2022-03-17" },
        { serial: "B-06", device: "M3", in_service: "2022-03-17" },
        { serial: "B-07", device: "M4", in_service: "2022-03-18" },
        { serial: "B-08", device: "M4", in_service: "2022-03-18" },
        { serial: "12/345", device: "M5", in_service: "2022-03-19" },
        { serial: "B-09 / spare", device: "M6", in_service: "2022-03-20" },
      ],
      runtime_tests: [
        { serial: "B-01", date: "2026-05-13", result: "pass" },
        { serial: "B-02", date: "2026-05-13", result: "pass" },
      ],
      dated_stock: [{ item: "Pads", place: "M1", expiry: "2027-05-31" }],
    },
  },
  {
    name: "a battery's serial and expiry in one cell, as a lot and its expiry",
    text: `Device,Battery 1 (SN / exp),Battery 2 (SN / exp),Pads (lot / exp)
D1,B1 / 06-2028,B2 / 07-2028,L1 / 03-2027
D2,B3 / 06-2028,,L2 / 04-2027
`,
    rows: {
      packs: [
        { serial: "B1", item: "Battery", device: "D1" },
        { serial: "B2", item: "Battery", device: "D1" },
        { serial: "B3", item: "Battery", device: "D2" },
      ],
      dated_stock: [
        { item: "Battery", expiry: "2028-06-30", serial: "B1", place: "D1" },
        { item: "Battery", expiry: "2028-07-31", serial: "B2", place: "D1" },
        { item: "Pads", expiry: "2027-03-31", lot: "L1", place: "D1" },
        { item: "Battery", expiry: "2028-06-30", serial: "B3", place: "D2" },
        { item: "Pads", expiry: "2027-04-30", lot: "L2", place: "D2" },
      ],
    },
  },
  {
    name: "a runtime of two batteries together, which is neither's",
    text: `Battery,Tested,Runtime (min)
B-01 / B-02,2026-05-13,180
B-03,2026-05-14,92
`,
    rows: {
      runtime_tests: [
        { serial: "B-01 / B-02", minutes: 180 },
        { serial: "B-03", minutes: 92 },
      ],
    },
  },
  {
    name: "batteries by the first and the last of their serials, with a count that fits or without",
    text: `Battery serials,Device,Made,Qty
B1001 - B1003,AED 1,2024-05,
SN 98-101,AED 2,2024-05,4
LP-08 bis LP-09,AED 3,2024-05,2
12A15,AED 4,2024-05,1
`,
    rows: {
      packs: [
        { serial: "B1001", device: "AED 1" },
        { serial: "B1002", device: "AED 1" },
        { serial: "B1003", device: "AED 1" },
        { serial: "SN 98", device: "AED 2" },
        { serial: "SN 99", device: "AED 2" },
        { serial: "SN 100", device: "AED 2" },
        { serial: "SN 101", device: "AED 2" },
        { serial: "LP-08", device: "AED 3" },
        { serial: "LP-09", device: "AED 3" },
        { serial: "12A15", device: "AED 4" },
      ],
    },
    unread: ["Qty"],
  },
  {
    name: "serials with a stroke inside, which need not be the first and the last of several",
    text: `Battery serial,Made,Qty
SN 2019-2145,2024-05,
2021-2045,2024-05,
SN 1001-1010,2024-05,12
AB12-CD14,2024-05,3
`,
    rows: {
      packs: [{ serial: "SN 2019-2145" }, { serial: "2021-2045" }, { serial: "SN 1001-1010" }, { serial: "AB12-CD14" }],
    },
    findings: ["count-unread"],
    unread: ["Qty"],
  },
  {
    name: "lots in a cell, each with its count and its date",
    text: `Item,Par,Count,Lots / exp
Adult defib pads,20,14,"L101 (6) 3/27, L102 (8) 9/27"
Pedi pads,8,8,"C55 x8 exp 5/27"
Gel bottles,10,3,G9 1/28
`,
    rows: {
      dated_stock: [
        { item: "Adult defib pads", lot: "L101", expiry: "2027-03-31", quantity: 6 },
        { item: "Adult defib pads", lot: "L102", expiry: "2027-09-30", quantity: 8 },
        { item: "Pedi pads", lot: "C55", expiry: "2027-05-31", quantity: 8 },
        { item: "Gel bottles", lot: "G9", expiry: "2028-01-31", quantity: 3 },
      ],
    },
    unread: ["Par"],
  },
  {
    name: "two counts with their dates in a cell below a thing's name",
    text: `Vehicle,Adult pads,Gel
Medic 1,2 (03/27),1 (01/28)
Medic 2,"1 (03/27), 3 (05/27)",1 (01/28)
`,
    rows: {
      dated_stock: [
        { item: "Adult pads", expiry: "2027-03-31", quantity: 2, place: "Medic 1" },
        { item: "Gel", expiry: "2028-01-31", quantity: 1, place: "Medic 1" },
        { item: "Adult pads", expiry: "2027-03-31", quantity: 1, place: "Medic 2" },
        { item: "Adult pads", expiry: "2027-05-31", quantity: 3, place: "Medic 2" },
        { item: "Gel", expiry: "2028-01-31", quantity: 1, place: "Medic 2" },
      ],
    },
  },
  {
    name: "lots in one cell and their dates in another, in the same order",
    text: `Item,On hand,Lot numbers,Expiration dates
Adult pads,2,"L101, L102","2027-03-31, 2027-09-30"
Gel,3,G9,2028-01-31
`,
    rows: {
      dated_stock: [
        { item: "Adult pads", lot: "L101", expiry: "2027-03-31", quantity: 1 },
        { item: "Adult pads", lot: "L102", expiry: "2027-09-30", quantity: 1 },
        { item: "Gel", lot: "G9", quantity: 3 },
      ],
    },
  },
];
