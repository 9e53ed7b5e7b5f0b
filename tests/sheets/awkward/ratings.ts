import type { AwkwardSheet } from "./awkward-sheet.ts";

/** Logs of tests that say beside each what the pack is rated, and name no item. Shares worked out by hand. */
export const RATINGS: AwkwardSheet[] = [
  {
    name: "a log with the rated Ah beside the measured",
    text: `Serial,Test date,Ah,Rated Ah
B-1,2026-01-05,2.4,3
B-1,2026-07-05,2.25,3
B-2,2026-01-05,4,5
B-3,2026-01-05,4,
`,
    rows: {
      runtime_tests: [
        { serial: "B-1", date: "2026-01-05", ah: 2.4, percent: 80 },
        { serial: "B-1", date: "2026-07-05", ah: 2.25, percent: 75 },
        { serial: "B-2", ah: 4, percent: 80 },
        { serial: "B-3", ah: 4, percent: null },
      ],
    },
  },
  {
    name: "mAh, with a pack that is all but empty and one that holds too much",
    text: `Battery S/N,Date,Measured mAh,Nominal mAh
B-1,2026-01-05,2400,3000
B-2,2026-01-05,100,5000
B-3,2026-01-05,6000,3000
`,
    rows: {
      runtime_tests: [
        { serial: "B-1", ah: 2.4, percent: 80, result: null },
        { serial: "B-2", ah: 0.1, percent: null, result: "fail" },
      ],
    },
    aside: [[4, "capacity-over-rated"]],
  },
  {
    name: "packs with their test and rating in Wh",
    text: `Serial;Eingebaut;Nennenergie (Wh);Messdatum;Gemessen (Wh)
B-1;15.01.2023;60;15.01.2026;48
`,
    rows: {
      packs: [{ serial: "B-1", in_service: "2023-01-15" }],
      runtime_tests: [{ serial: "B-1", date: "2026-01-15", wh: 48, percent: 80 }],
    },
  },
  {
    name: "the minutes that are specified, which may be the device's need, and the Ah, which are the battery's",
    text: `Battery;Tested;Spec (min);Runtime (min);Measured (Ah);Spec (Ah)
B1;13/05/2026;60;84;4.0;5.0
B2;14/05/2026;60;55;3.0;5.0
`,
    rows: {
      runtime_tests: [
        { serial: "B1", date: "2026-05-13", minutes: 84, ah: 4, percent: 80 },
        { serial: "B2", date: "2026-05-14", minutes: 55, ah: 3, percent: 60 },
      ],
    },
    unread: ["Spec (min)"],
  },
  {
    name: "minutes that should be and are, German",
    text: "Akku-Nr;Prüfdatum;Soll (min);Ist (min)\nG1;13.05.2026;60;84\nG2;13.05.2026;60;55\n",
    rows: {
      runtime_tests: [
        { serial: "G1", minutes: 84, percent: null },
        { serial: "G2", minutes: 55, percent: null },
      ],
    },
    unread: ["Soll (min)"],
  },
];
