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
];
