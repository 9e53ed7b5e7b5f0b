import type { AwkwardSheet } from "./awkward-sheet.ts";

/** Registers with several runtime tests of a pack in one line. */
export const REPEATED_TESTS: AwkwardSheet[] = [
  {
    name: "tests whose headers only repeat, dated day first as the last of them shows",
    text: `Akku-Nr.;Gerät;Kap. %;Datum;Kap. %;Datum;Kap. %;Datum
A1;D1;98;10.01.2022;94;12.01.2023;90;19.01.2024
A2;D2;99;10.01.2022;95;12.01.2023;;
`,
    rows: {
      packs: [
        { serial: "A1", device: "D1", in_service: null },
        { serial: "A2", device: "D2", in_service: null },
      ],
      runtime_tests: [
        { serial: "A1", date: "2022-01-10", percent: 98 },
        { serial: "A1", date: "2023-01-12", percent: 94 },
        { serial: "A1", date: "2024-01-19", percent: 90 },
        { serial: "A2", date: "2022-01-10", percent: 99 },
        { serial: "A2", date: "2023-01-12", percent: 95 },
      ],
    },
  },
  {
    name: "numbered tests that only their cells' signs tell to be percentages",
    text: `Serial,Test 1,Date 1,Test 2,Date 2,Test 3,Date 3
B1,98 %,2022-01-10,94 %,2023-01-12,90 %,2024-01-09
B2,99 %,2022-01-10,95 %,2023-01-12,,
`,
    rows: {
      packs: [{ serial: "B1" }, { serial: "B2" }],
      runtime_tests: [
        { serial: "B1", date: "2022-01-10", percent: 98 },
        { serial: "B1", date: "2023-01-12", percent: 94 },
        { serial: "B1", date: "2024-01-09", percent: 90 },
        { serial: "B2", date: "2022-01-10", percent: 99 },
        { serial: "B2", date: "2023-01-12", percent: 95 },
      ],
    },
  },
  {
    name: "numbered tests of bare numbers, which may be percentages or minutes",
    text: "Serial,Test 1,Date 1,Test 2,Date 2\nB1,98,2022-01-10,94,2023-01-12\nB2,99,2022-01-10,95,2023-01-12\n",
    rows: { packs: [], runtime_tests: [] },
    aside: [
      [2, "unknown-table"],
      [3, "unknown-table"],
    ],
    unread: ["Serial", "Test 1", "Date 1", "Test 2", "Date 2"],
  },
  {
    name: "numbered runtimes with dates that bear no number, beside a device and its pads",
    text: `AED,Location,Battery S/N,Pads exp,Runtime 1 (min),Date,Runtime 2 (min),Date
D1,Gym,B1,2027-03-31,240,2022-01-10,230,2023-01-12
D2,Pool,B2,2027-04-30,241,2022-01-10,,
`,
    rows: {
      devices: [{ device: "D1" }, { device: "D2" }],
      packs: [
        { serial: "B1", device: "D1", in_service: null },
        { serial: "B2", device: "D2", in_service: null },
      ],
      runtime_tests: [
        { serial: "B1", date: "2022-01-10", minutes: 240 },
        { serial: "B1", date: "2023-01-12", minutes: 230 },
        { serial: "B2", date: "2022-01-10", minutes: 241 },
      ],
      dated_stock: [{ expiry: "2027-03-31" }, { expiry: "2027-04-30" }],
    },
  },
  {
    name: "a year above each test",
    text: `,,2022,,2023,
Battery serial,In service,Date,Cap %,Date,Cap %
B1,2021-01-01,01/10/2022,98,25/09/2023,90
B2,2021-01-01,02/10/2022,99,,
`,
    rows: {
      packs: [
        { serial: "B1", in_service: "2021-01-01" },
        { serial: "B2", in_service: "2021-01-01" },
      ],
      runtime_tests: [
        { serial: "B1", date: "2022-10-01", percent: 98 },
        { serial: "B1", date: "2023-09-25", percent: 90 },
        { serial: "B2", date: "2022-10-02", percent: 99 },
      ],
    },
  },
  {
    name: "ordinals before each test",
    text: `Pack No.,1st test,1st result,2nd test,2nd result
P1,2022-01-10,98%,2023-01-10,95%
P2,2022-01-10,97%,2023-01-10,96%
`,
    rows: {
      runtime_tests: [
        { serial: "P1", date: "2022-01-10", percent: 98 },
        { serial: "P1", date: "2023-01-10", percent: 95 },
        { serial: "P2", date: "2022-01-10", percent: 97 },
        { serial: "P2", date: "2023-01-10", percent: 96 },
      ],
    },
  },
  {
    name: "repeated milliampere hours, 1,000 to the ampere hour",
    text: "S/N,Install,Date,mAh,Date,mAh\nB1,2021-01-04,2022-01-10,5100,2023-01-12,4900\n",
    rows: {
      packs: [{ serial: "B1", in_service: "2021-01-04" }],
      runtime_tests: [
        { serial: "B1", date: "2022-01-10", ah: 5.1 },
        { serial: "B1", date: "2023-01-12", ah: 4.9 },
      ],
    },
  },
  {
    name: "milliampere hours behind a word",
    text: "Serial,Test date,Measured mAh\nB1,2022-01-10,5100\nB1,2023-01-12,4900\n",
    rows: { runtime_tests: [{ ah: 5.1 }, { ah: 4.9 }] },
  },
  {
    name: "results and minutes of each test, dates of two orders that settle each other nowhere",
    text: "Serial,Date,Result,Minutes,Date,Result,Minutes\nB1,25/01/2022,pass,230,01/30/2023,fail,150\n",
    rows: { packs: [{ serial: "B1" }], runtime_tests: [] },
    findings: ["date-order-contradicts"],
  },
];
