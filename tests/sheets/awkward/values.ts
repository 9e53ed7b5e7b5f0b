import type { AwkwardSheet } from "./awkward-sheet.ts";

/** Sheets whose cells are the trouble. */
export const VALUES: AwkwardSheet[] = [
  {
    name: "dates in every shape",
    text: `item,expiry
A,2027-03-31
B,31 March 2027
C,31-Mar-27
D,März 2027
E,03/2027
F,2027-03
G,20270331
H,46477
I,"Wed, 31 Mar 2027"
J,31 mars 2027
K,31 de marzo de 2027
L,31 maart 2027
M,2027-W13
N,2027-090
O,2027-03-31T23:59:59+02:00
`,
    rows: {
      dated_stock: "ABCDEFGHIJKLMNO".split("").map((item) => ({
        item,
        // Week 13 of 2027 ends on Sunday 4 April; all others are 31 March.
        expiry: item === "M" ? "2027-04-04" : "2027-03-31",
      })),
    },
    findings: ["date-from-serial"],
  },
  {
    name: "dates that cannot be",
    text: `item,expiry
A,2027-02-30
B,31/04/2027
C,soon
D,2027
E,1850-01-01
F,2027-12-24
G,13/13/2027
`,
    rows: { dated_stock: [{ item: "F", expiry: "2027-12-24" }] },
    aside: [
      [2, "date-impossible"],
      [3, "date-impossible"],
      [4, "date-unreadable"],
      [5, "date-impossible"],
      [6, "date-out-of-range"],
      [8, "date-impossible"],
    ],
  },
  {
    name: "an order that one late cell settles",
    text: `item,expiry
A,03/04/2027
B,05/06/2027
C,13/07/2027
`,
    rows: { dated_stock: [{ expiry: "2027-04-03" }, { expiry: "2027-06-05" }, { expiry: "2027-07-13" }] },
  },
  {
    name: "an order that nothing settles",
    text: `item,expiry
A,03/04/2027
B,05/06/2027
`,
    rows: { dated_stock: [] },
    aside: [
      [2, "date-order-unsettled"],
      [3, "date-order-unsettled"],
    ],
    findings: ["date-order-unsettled"],
  },
  {
    name: "two-digit years with an option",
    text: `item,expiry
A,03/04/27
B,05/06/28
`,
    dateOrder: "dmy",
    rows: { dated_stock: [{ expiry: "2027-04-03" }, { expiry: "2028-06-05" }] },
  },
  {
    name: "numbers with units and thousands",
    text: `serial,cycles,temperature_c
A,"1,214",21 °C
B,87 cycles,70 F
C,2 000,-5
D,12.5,900
`,
    rows: {
      packs: [
        { serial: "A", cycles: 1214, temperature_c: 21 },
        { serial: "B", cycles: 87, temperature_c: 21.1111111111 },
        { serial: "C", cycles: 2000, temperature_c: -5 },
        { serial: "D", cycles: null, temperature_c: null },
      ],
    },
    findings: ["number-not-whole", "number-out-of-range"],
  },
  {
    name: "another column's numbers where quantities belong",
    text: `date,item,quantity,place
2026-03-01,pads,2,MD-1
2026-03-02,pads,100234567,MD-1
`,
    rows: { use_log: [{ date: "2026-03-01", quantity: 2 }] },
    aside: [[3, "number-out-of-range"]],
  },
  {
    name: "another column's numbers in a routine",
    text: `task,per_year,item,quantity
hourly check,8766,gel,0.1
self-test,26001234,gel,1
training,12,gel,260012
`,
    rows: { routine: [{ task: "hourly check", per_year: 8766, quantity: 0.1 }] },
    aside: [
      [3, "number-out-of-range"],
      [4, "number-out-of-range"],
    ],
  },
  {
    name: "words for nothing",
    text: `serial,site,in_service,cycles
A,n/a,-,N/A
B,?,unknown,none
`,
    rows: {
      packs: [
        { serial: "A", site: null, in_service: null, cycles: null },
        { serial: "B", site: null, in_service: null, cycles: null },
      ],
    },
  },
  {
    name: "serials that a spreadsheet has spoilt",
    text: `serial,cycles
1.23457E+11,10
000817,12
'=A1,3
`,
    rows: { packs: [{ serial: "000817" }, { serial: "=A1" }] },
    aside: [[2, "serial-mangled"]],
  },
  {
    name: "labels beside their cells",
    text: `label,expiry,place,lot
(01)09506000134352(17)270131(10)A1,,North,
(01)09506000134352(17)270131(10)A1,2028-01-31,North,
0109506000134353,,North,
`,
    rows: { dated_stock: [{ item: "09506000134352", expiry: "2027-01-31", lot: "A1", place: "North" }] },
    aside: [
      [3, "missing-required"],
      [4, "label-unreadable"],
    ],
    findings: ["label-disagrees", "label-unreadable"],
  },
  {
    name: "an Expiry column twice",
    text: `item,expiry,lot,expiry
A,2027-01-31,L1,2027-01-31
B,2027-01-31,L2,2028-01-31
C,,L3,2027-03-31
`,
    rows: {
      dated_stock: [
        { item: "A", expiry: "2027-01-31" },
        { item: "C", expiry: "2027-03-31" },
      ],
    },
    aside: [[3, "missing-required"]],
    findings: ["copies-disagree"],
  },
  {
    name: "a sep line, a mark and quoted line ends",
    text: `\ufeffsep=;
serial;site;held
A;"Room
1";no
B;North;
`,
    rows: {
      packs: [
        { serial: "A", site: "Room\n1" },
        { serial: "B", site: "North", held: null },
      ],
    },
  },
  {
    name: "yes and no in words",
    text: `serial,date,percent,full charge,stopped early
A,2026-01-13,90,ja,nein
B,2026-01-14,91,oui,non
C,2026-01-15,92,Y,N
D,2026-01-16,93,,x
`,
    rows: {
      runtime_tests: [
        { serial: "A", full_charge: "yes", at_least: "no" },
        { serial: "B", full_charge: "yes", at_least: "no" },
        { serial: "C", full_charge: "yes", at_least: "no" },
        { serial: "D", full_charge: null, at_least: "yes" },
      ],
    },
  },
  {
    name: "error cells of a spreadsheet",
    text: `serial,site,cycles
A,#REF!,#N/A
#VALUE!,North,3
`,
    rows: { packs: [{ serial: "A", site: null, cycles: null }] },
    aside: [[3, "error-cell"]],
    findings: ["error-cell"],
  },
  {
    name: "months alone in columns of each rule",
    text: `serial,made,in service,retired,cycles,cycles on
A,2021-11,2022-01,2026-03,10,2026-11
`,
    rows: {
      packs: [{ made: "2021-11-01", in_service: "2022-01-01", retired: "2026-03-31", cycles_on: "2026-11-01" }],
    },
  },
  {
    name: "dates whose order only their heading says",
    text: `Item,Made (DD/MM/YYYY),Expiry (mm/dd/yy)
Adult pads,02/03/2025,03/04/27
Gel,05/06/2025,05/06/28
`,
    rows: {
      dated_stock: [
        { item: "Adult pads", made: "2025-03-02", expiry: "2027-03-04" },
        { item: "Gel", made: "2025-06-05", expiry: "2028-05-06" },
      ],
    },
  },
  {
    name: "dates that are not written as their heading says, in the order that they prove",
    text: `Item,Expiry (DD/MM/YYYY)
Adult pads,03/31/2027
Gel,05/06/2028
`,
    rows: { dated_stock: [{ expiry: "2027-03-31" }, { expiry: "2028-05-06" }] },
  },
];
