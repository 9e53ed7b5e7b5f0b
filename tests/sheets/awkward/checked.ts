import type { AwkwardSheet } from "./awkward-sheet.ts";

/** Sheets in which people write what a check or test found in words and numbers at once. */
export const CHECKED: AwkwardSheet[] = [
  {
    name: "results with their percentage in brackets",
    text: `Battery S/N,Test date,Result
A1,2026-03-01,Pass (92%)
A2,2026-03-01,Fail (61%)
A3,2026-03-02,Pass
`,
    rows: {
      runtime_tests: [
        { serial: "A1", date: "2026-03-01", percent: 92, result: "pass" },
        { serial: "A2", date: "2026-03-01", percent: 61, result: "fail" },
        { serial: "A3", date: "2026-03-02", percent: null, result: "pass" },
      ],
    },
  },
  {
    name: "a kit list with each battery's state in words and percent",
    text: `Hillside Community First Responders - kit list
Kit,AED no.,Battery no.,Battery state,Checked,Pads expire
K1,A-1,BN-1,OK 92 %,03 Oct 2026,Jun-27
K3,A-3,BN-3,Low 40 %,04 Oct 2026,Dec-26
K5,A-5,BN-5,flat 0 %,11 Oct 2026,expired
`,
    rows: {
      packs: [{ serial: "BN-1" }, { serial: "BN-3" }, { serial: "BN-5" }],
      runtime_tests: [
        { serial: "BN-1", date: "2026-10-03", percent: 92, result: "pass" },
        { serial: "BN-3", date: "2026-10-04", percent: 40, result: "fail" },
        { serial: "BN-5", date: "2026-10-11", percent: null, result: "fail" },
      ],
      dated_stock: [
        { place: "A-1", expiry: "2027-06-30" },
        { place: "A-3", expiry: "2026-12-31" },
      ],
    },
    findings: ["nothing-left", "fault-unread"],
  },
  {
    name: "a column for each day of testing, one of them with a word",
    text: `Battery S/N,Location,Test 23/02/2026 (%),Test 05/08/2026 (%)
V-501,ICU store,92,88
V-503,Bed 4,71,fail
V-505,Bed 9,,99
`,
    rows: {
      packs: [{ serial: "V-501", site: "ICU store" }, { serial: "V-503" }, { serial: "V-505" }],
      runtime_tests: [
        { serial: "V-501", date: "2026-02-23", percent: 92 },
        { serial: "V-501", date: "2026-08-05", percent: 88 },
        { serial: "V-503", date: "2026-02-23", percent: 71 },
        { serial: "V-503", date: "2026-08-05", percent: null, result: "fail" },
        { serial: "V-505", date: "2026-08-05", percent: 99 },
      ],
    },
    findings: ["nothing-left"],
  },
  {
    name: "tests by day of which nothing says what they measure",
    text: `S/N,Type,Location,Test 23/02/2026,Test 20/08/2026
V-501,Vent battery,ICU store,92,88
V-503,Vent battery,Bed 4,71,fail
`,
    rows: { packs: [], runtime_tests: [] },
    aside: [
      [2, "unknown-table"],
      [3, "unknown-table"],
    ],
    unread: ["S/N", "Type", "Location", "Test 23/02/2026", "Test 20/08/2026"],
  },
  {
    name: "remarks on each season's check beside the register",
    text: `Hut,AED #,Batt changed,Pads exp,Check Dec 2024,Check Dec 2025
Summit,S1,Nov 2023,10/2027,OK 92 %,OK 86 %
Mid station,S2,Mar 2025,10/2027,failed - replaced 3/25,OK 97 %
`,
    rows: {
      devices: [{ device: "S1" }, { device: "S2" }],
      packs: [
        { device: "S1", in_service: "2023-11-01" },
        { device: "S2", in_service: "2025-03-01" },
      ],
      dated_stock: [{ place: "S1" }, { place: "S2" }],
    },
    findings: ["fault-unread"],
    unread: ["Check Dec 2024", "Check Dec 2025"],
  },
  {
    name: "a device that is out of order by its status",
    text: `Ref,Location,Adult pads exp,Battery exp,Last checked,Status
AED 1,Town Hall,31/03/2027,30/11/2028,25/10/2026,OK
AED 2,Library,31/03/2027,30/11/2028,25/10/2026,Out of order
`,
    rows: {
      devices: [{ device: "AED 1" }, { device: "AED 2" }],
      dated_stock: [{ place: "AED 1" }, { place: "AED 1" }, { place: "AED 2" }, { place: "AED 2" }],
    },
    findings: ["fault-unread"],
    unread: ["Last checked"],
  },
];
