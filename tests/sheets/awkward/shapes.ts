import type { AwkwardSheet } from "./awkward-sheet.ts";

/** Sheets of another shape than a row for each thing: months as columns, cards, sections, cells that hold two things. */
export const SHAPES: AwkwardSheet[] = [
  {
    name: "use by month, a column for each",
    text: `Consumption by month (units issued to wards),,,,
Item,Jun 2026,Jul 2026,Aug 2026,Sep 2026
Adult pads,12,9,14,11
Paediatric pads,1,0,2,1
Total,13,9,16,12
`,
    rows: {
      use_log: [
        { item: "Adult pads", date: "2026-06-30", quantity: 12 },
        { item: "Adult pads", date: "2026-07-31", quantity: 9 },
        { item: "Adult pads", date: "2026-08-31", quantity: 14 },
        { item: "Adult pads", date: "2026-09-30", quantity: 11 },
        { item: "Paediatric pads", date: "2026-06-30", quantity: 1 },
        { item: "Paediatric pads", date: "2026-07-31", quantity: 0 },
        { item: "Paediatric pads", date: "2026-08-31", quantity: 2 },
        { item: "Paediatric pads", date: "2026-09-30", quantity: 1 },
      ],
    },
    aside: [[5, "total-row"]],
  },
  {
    name: "capacity by month, a column for each",
    text: `Measured capacity in % of rated
Pack serial,Mar 2025,Sep 2025,Mar 2026,Sep 2026
T-900,98,95,93,90
T-901,97,94,,85
`,
    rows: {
      runtime_tests: [
        { serial: "T-900", date: "2025-03-31", percent: 98 },
        { serial: "T-900", date: "2025-09-30", percent: 95 },
        { serial: "T-900", date: "2026-03-31", percent: 93 },
        { serial: "T-900", date: "2026-09-30", percent: 90 },
        { serial: "T-901", date: "2025-03-31", percent: 97 },
        { serial: "T-901", date: "2025-09-30", percent: 94 },
        { serial: "T-901", date: "2026-09-30", percent: 85 },
      ],
    },
  },
  {
    name: "battery cards with a column for each battery",
    text: `Battery serial,BX-101,BX-102,BX-103
Manufactured,2022-01-15,2022-01-15,2023-06-30
Put in service,2022-03-01,2022-03-02,2023-09-11
Device,Monitor 4,Monitor 5,Monitor 7
Charge cycles,310,288,140
`,
    rows: {
      packs: [
        { serial: "BX-101", made: "2022-01-15", in_service: "2022-03-01", device: "Monitor 4" },
        { serial: "BX-102", made: "2022-01-15", in_service: "2022-03-02", device: "Monitor 5" },
        { serial: "BX-103", made: "2023-06-30", in_service: "2023-09-11", device: "Monitor 7" },
      ],
    },
    findings: ["told-as-list"],
  },
  {
    name: "lot and expiry in one cell",
    text: `Cart,Supply,Lot / Exp,Count
Crash cart 4W,Multi-function pads,L2231 / 05-31-2027,2
Crash cart 5E,Multi-function pads,L2231 / 05-31-2027,1
Crash cart ICU,Paediatric pads,M0098 / 11-30-2026,1
`,
    rows: {
      dated_stock: [
        { place: "Crash cart 4W", item: "Multi-function pads", lot: "L2231", expiry: "2027-05-31", quantity: 2 },
        { place: "Crash cart 5E", item: "Multi-function pads", lot: "L2231", expiry: "2027-05-31", quantity: 1 },
        { place: "Crash cart ICU", item: "Paediatric pads", lot: "M0098", expiry: "2026-11-30", quantity: 1 },
      ],
    },
  },
  {
    name: "a German service report whose date stands above the table",
    text: `Servicebericht Nr. 2026-117;;;
Kunde:;Klinikum West;;
Prüfdatum:;12.03.2026;;
Techniker:;KB;;
;;;
Akku-Nr.;Restkapazität %;Laufzeit min;Ergebnis
W-01;88;124;i.O.
W-02;59;77;n.i.O.
`,
    rows: {},
    aside: [
      [7, "date-order-unsettled"],
      [8, "date-order-unsettled"],
    ],
    findings: ["date-order-unsettled"],
  },
  {
    name: "ditto marks",
    text: `Serial,Model group,Station,Made,In service
Z-1,monitor pack,Harbour,2023-02-01,2023-04-01
Z-2,",,",ditto,2023-02-01,2023-04-01
Z-3,monitor pack,ditto,2023-02-01,2023-04-03
Z-4,monitor pack,Hill,2024-02-01,2024-04-01
`,
    rows: {
      packs: [
        { serial: "Z-1", site: "Harbour", made: "2023-02-01", in_service: "2023-04-01" },
        { serial: "Z-2", site: "Harbour", made: "2023-02-01", in_service: "2023-04-01" },
        { serial: "Z-3", site: "Harbour", made: "2023-02-01", in_service: "2023-04-03" },
        { serial: "Z-4", site: "Hill", made: "2024-02-01", in_service: "2024-04-01" },
      ],
    },
    unread: ["Model group"],
  },
  {
    name: "stock in sections by station",
    text: `Item,Lot,Expiry,Qty
STATION NORTH,,,
Adult pads,K100,2027-06-30,4
Gel,K200,2028-01-31,2
STATION SOUTH,,,
Adult pads,K101,2027-07-31,3
`,
    rows: {
      dated_stock: [
        { item: "Adult pads", lot: "K100", expiry: "2027-06-30", quantity: 4, place: "STATION NORTH" },
        { item: "Gel", lot: "K200", expiry: "2028-01-31", quantity: 2, place: "STATION NORTH" },
        { item: "Adult pads", lot: "K101", expiry: "2027-07-31", quantity: 3, place: "STATION SOUTH" },
      ],
    },
    aside: [
      [2, "section-line"],
      [5, "section-line"],
    ],
  },
  {
    name: "stock by month that nothing says to be used up",
    text: `Item,Jul 2026,Aug 2026,Sep 2026
Adult pads,12,9,14
Gel,3,4,4
`,
    rows: {},
    aside: [
      [2, "unknown-table"],
      [3, "unknown-table"],
    ],
    findings: ["unknown-table"],
    unread: ["Item", "Jul 2026", "Aug 2026", "Sep 2026"],
  },
  {
    name: "months without a year below a title that names it",
    text: `Verbrauch 2026
Artikel;Jan;Feb;Mär
Elektroden;4;7;5
`,
    rows: {
      use_log: [
        { item: "Elektroden", date: "2026-01-31", quantity: 4 },
        { item: "Elektroden", date: "2026-02-28", quantity: 7 },
        { item: "Elektroden", date: "2026-03-31", quantity: 5 },
      ],
    },
  },
  {
    name: "a table of words unknown here",
    text: `Quarx;Blorb;Fnord
A1;2026-01-01;5
A2;2026-01-02;6
A3;2026-01-03;7
`,
    rows: {},
    aside: [
      [2, "unknown-table"],
      [3, "unknown-table"],
      [4, "unknown-table"],
    ],
    findings: ["unknown-table"],
    unread: ["Quarx", "Blorb", "Fnord"],
  },
  {
    name: "a short table of stock below one of packs",
    text: `serial,in_service
B1,2024-01-01
B2,2024-02-01

item,expiry
pads,2027-04-30
gel,2027-02-28
`,
    rows: {
      packs: [{ serial: "B1" }, { serial: "B2" }],
      dated_stock: [
        { item: "pads", expiry: "2027-04-30" },
        { item: "gel", expiry: "2027-02-28" },
      ],
    },
  },
  {
    name: "a form of two columns of names, each left of its values, which heads no list",
    text: `Monthly defibrillator check,,,
Vehicle:,Medic 4,Date:,2026-10-03
Unit S/N:,MD-4471,Checked by:,P. R.
Battery 1 S/N:,BT-01,Battery 2 S/N:,BT-02
Battery 1 exp:,06/2028,Battery 2 exp:,09/2028
Adult pads lot:,PL-77,Child pads lot:,PC-12
Adult pads exp:,2027-03-31,Child pads exp:,2027-08-31
Self test:,Pass,Remarks:,
`,
    rows: {
      devices: [{ device: "MD-4471", site: "Medic 4" }],
      packs: [
        { serial: "BT-01", device: "MD-4471" },
        { serial: "BT-02", device: "MD-4471" },
      ],
      runtime_tests: [],
      dated_stock: [
        { serial: "BT-01", expiry: "2028-06-30" },
        { serial: "BT-02", expiry: "2028-09-30" },
        { item: "Adult pads", lot: "PL-77", expiry: "2027-03-31", place: "MD-4471" },
        { item: "Child pads", lot: "PC-12", expiry: "2027-08-31", place: "MD-4471" },
      ],
    },
    findings: ["told-as-list"],
    unread: ["Date", "Checked by", "Self test", "Remarks"],
  },
  {
    name: "two forms side by side, whose first lines are no header",
    text: `Medic unit,M4,,Medic unit,M5
Monitor,MX-1,,Monitor,MX-2
Battery A,B1,,Battery A,B3
Battery B,B2,,Battery B,B4
Pads exp,2027-03-31,,Pads exp,2027-06-30
`,
    rows: {
      devices: [
        { device: "MX-1", site: "M4" },
        { device: "MX-2", site: "M5" },
      ],
      packs: [
        { serial: "B1", device: "MX-1", site: "M4" },
        { serial: "B2", device: "MX-1", site: "M4" },
        { serial: "B3", device: "MX-2", site: "M5" },
        { serial: "B4", device: "MX-2", site: "M5" },
      ],
      dated_stock: [
        { place: "MX-1", expiry: "2027-03-31" },
        { place: "MX-2", expiry: "2027-06-30" },
      ],
    },
    findings: ["told-as-list"],
  },
];
