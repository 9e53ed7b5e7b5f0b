import type { AwkwardSheet } from "./awkward-sheet.ts";

/** Sheets with a column for each kind of supplies, or for each year of tests. */
export const COLUMNS_OF_NUMBERS: AwkwardSheet[] = [
  {
    name: "a log with a column for each kind of supplies",
    text: `Date,Station,Adult pads,Paper rolls,Gel
2026-01-05,North,2,1,0
2026-01-09,South,1,,1
2026-02-11,North,,2,
`,
    rows: {
      use_log: [
        { date: "2026-01-05", item: "Adult pads", quantity: 2, place: "North" },
        { date: "2026-01-05", item: "Paper rolls", quantity: 1, place: "North" },
        { date: "2026-01-05", item: "Gel", quantity: 0, place: "North" },
        { date: "2026-01-09", item: "Adult pads", quantity: 1, place: "South" },
        { date: "2026-01-09", item: "Gel", quantity: 1, place: "South" },
        { date: "2026-02-11", item: "Paper rolls", quantity: 2, place: "North" },
      ],
    },
    findings: ["uses-presumed"],
  },
  {
    name: "such a log whose headers say that units were used, of things unknown here too",
    text: `Date;Fahrzeug;Pads Erw. verbraucht;Rasierer verbraucht
05.01.2026;RTW 1;1;2
19.01.2026;RTW 2;1;1
`,
    rows: {
      use_log: [
        { date: "2026-01-05", item: "Pads Erw", quantity: 1, place: "RTW 1" },
        { date: "2026-01-05", item: "Rasierer", quantity: 2, place: "RTW 1" },
        { date: "2026-01-19", item: "Pads Erw", quantity: 1, place: "RTW 2" },
        { date: "2026-01-19", item: "Rasierer", quantity: 1, place: "RTW 2" },
      ],
    },
  },
  {
    name: "numbers of a daily check, which may be what is there",
    text: `Date,Vehicle,Adult pads,Gel,Paper
2026-01-05,A1,2,1,3
2026-01-06,A1,2,1,3
`,
    rows: { use_log: [] },
    aside: [
      [2, "unknown-table"],
      [3, "unknown-table"],
    ],
    unread: ["Date", "Vehicle", "Adult pads", "Gel", "Paper"],
  },
  {
    name: "capacities headed by years, beside the packs",
    text: `Battery,Model,In service,Cap 2022 (%),Cap 2023 (%),Cap 2026 (%)
B-1,LX,2021-04-01,99,95,90
B-2,LX,2021-05-01,98,94,
`,
    rows: {
      packs: [
        { serial: "B-1", item: "LX", in_service: "2021-04-01" },
        { serial: "B-2", item: "LX", in_service: "2021-05-01" },
      ],
      // the middle of the year, since nothing says more
      runtime_tests: [
        { serial: "B-1", date: "2022-06-30", percent: 99 },
        { serial: "B-1", date: "2023-06-30", percent: 95 },
        { serial: "B-1", date: "2026-06-30", percent: 90 },
        { serial: "B-2", date: "2022-06-30", percent: 98 },
        { serial: "B-2", date: "2023-06-30", percent: 94 },
      ],
    },
    findings: ["year-alone"],
  },
  {
    name: "bare years below a title that says what was measured",
    text: "Capacity in % of rated\nSerial,2024,2025\nB-1,99,95\n",
    rows: {
      runtime_tests: [
        { serial: "B-1", date: "2024-06-30", percent: 99 },
        { serial: "B-1", date: "2025-06-30", percent: 95 },
      ],
    },
    findings: ["year-alone"],
  },
  {
    name: "bare years of which nothing says what was measured",
    text: "Serial,2024,2025\nB-1,99,95\n",
    rows: { runtime_tests: [] },
    aside: [[2, "unknown-table"]],
    unread: ["Serial", "2024", "2025"],
  },
];
