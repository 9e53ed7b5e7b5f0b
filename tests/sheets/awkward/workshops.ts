import type { AwkwardSheet } from "./awkward-sheet.ts";

/** Sheets of workshops, crews and stores: replacements, use by incident, kits, printed reports. */
export const WORKSHOPS: AwkwardSheet[] = [
  {
    name: "a German log of replaced batteries",
    text: `Datum;Gerät;Akku alt (SN);Akku neu (SN);Grund
05.03.2026;Defi 3;A-11;B-21;Kapazität zu gering
17.03.2026;Defi 5;A-14;B-22;Defekt
28.04.2026;Defi 7;A-19;B-23;turnusmäßig
`,
    rows: {
      packs: [
        { serial: "A-11", retired: "2026-03-05", retired_because: "faded" },
        { serial: "B-21", device: "Defi 3", in_service: "2026-03-05" },
        { serial: "A-14", retired: "2026-03-17", retired_because: "failed" },
        { serial: "B-22", device: "Defi 5", in_service: "2026-03-17" },
        { serial: "A-19", retired: "2026-04-28" },
        { serial: "B-23", device: "Defi 7", in_service: "2026-04-28" },
      ],
    },
    findings: ["word-unknown"],
  },
  {
    name: "use by incident",
    text: `Incident #,Date/Time,Unit,Consumable used,Qty,Circumstances
26-10021,10/02/2026 14:22,Medic 4,Adult defib pads,1,Cardiac arrest
26-10077,10/17/2026 03:05,Medic 2,Adult defib pads,2,Cardiac arrest
26-10090,10/19/2026 09:00,Medic 4,ECG paper roll,1,Monthly check
`,
    rows: {
      use_log: [
        { date: "2026-10-02", item: "Adult defib pads", quantity: 1, place: "Medic 4", reason: "use" },
        { date: "2026-10-17", item: "Adult defib pads", quantity: 2, place: "Medic 2", reason: "use" },
        { date: "2026-10-19", item: "ECG paper roll", quantity: 1, place: "Medic 4", reason: "routine" },
      ],
    },
    unread: ["Incident #"],
  },
  {
    name: "packs bought and put in service, two-digit years",
    text: `"Batt ID","Bat Type","Truck","Date Purchased","Date In Svc","Out of Svc?","Date Out","Why Out",,,
"101","LP pack","M-11","3/4/21","3/15/21","N","","",,,
"102","LP pack","M-12","3/4/21","3/16/21","Y","6/30/25","won't hold charge - low capacity",,,
"103","LP pack","M-14","7/22/23","8/1/23","N","","",,,
`,
    rows: {
      packs: [
        { serial: "101", item: "LP pack", in_service: "2021-03-15" },
        { serial: "102", item: "LP pack", in_service: "2021-03-16", retired: "2025-06-30", retired_because: "faded" },
        { serial: "103", item: "LP pack", in_service: "2023-08-01" },
      ],
    },
    unread: ["Date Purchased", "Out of Svc?"],
  },
  {
    name: "kits with their contents",
    text: `Kit,Contents,Req,Have,Exp
RESUS-A,Defib pads (adult),2,2,MAY 2027
RESUS-A,Defib pads (child),1,1,Nov-26
RESUS-B,Defib pads (adult),2,1,JUN 2027
RESUS-B,Defib pads (child),1,0,
`,
    rows: {
      dated_stock: [
        { place: "RESUS-A", item: "Defib pads (adult)", quantity: 2, expiry: "2027-05-31" },
        { place: "RESUS-A", item: "Defib pads (child)", quantity: 1, expiry: "2026-11-30" },
        { place: "RESUS-B", item: "Defib pads (adult)", quantity: 1, expiry: "2027-06-30" },
      ],
    },
    aside: [[5, "missing-required"]],
    findings: ["missing-required"],
    unread: ["Req"],
  },
  {
    name: "headers broken over lines",
    text: `Akku SN;"Herstell-
datum";"Lager-
platz";Zustand
C-1;2025-03;Regal 4;neu
C-2;2025-03;Regal 4;neu
C-3;2024-11;Regal 5;gesperrt
`,
    rows: {
      packs: [
        { serial: "C-1", made: "2025-03-01", site: "Regal 4" },
        { serial: "C-2", made: "2025-03-01", site: "Regal 4" },
        { serial: "C-3", made: "2024-11-01", site: "Regal 5", held: "gesperrt" },
      ],
    },
  },
  {
    name: "capacities by year beside the year of make",
    text: `Akkukapazität in % der Nennkapazität (jeweils Jahresprüfung)
Akku-Nr.;Baujahr;2023;2024;2025
K1;2021;99;95;90
K2;2021;98;92;84
K3;2022;100;97;93
`,
    rows: {
      packs: [
        { serial: "K1", made: "2021-01-01" },
        { serial: "K2", made: "2021-01-01" },
        { serial: "K3", made: "2022-01-01" },
      ],
      runtime_tests: [
        { serial: "K1", date: "2023-06-30", percent: 99 },
        { serial: "K1", date: "2024-06-30", percent: 95 },
        { serial: "K1", date: "2025-06-30", percent: 90 },
        { serial: "K2", date: "2023-06-30", percent: 98 },
        { serial: "K2", date: "2024-06-30", percent: 92 },
        { serial: "K2", date: "2025-06-30", percent: 84 },
        { serial: "K3", date: "2023-06-30", percent: 100 },
        { serial: "K3", date: "2024-06-30", percent: 97 },
        { serial: "K3", date: "2025-06-30", percent: 93 },
      ],
    },
    findings: ["year-alone"],
  },
  {
    name: "a report of two printed pages",
    text: `MEDICAL STORES - STOCK REPORT,,,,
Run date: 01/10/2026,,,,Page 1 of 2
Item code,Item name,Batch,Expiry date,Qty
10011,Defib pads adult,BB1,31/05/2027,14
10012,Defib pads paed,BB2,28/02/2027,6
MEDICAL STORES - STOCK REPORT,,,,
Run date: 01/10/2026,,,,Page 2 of 2
Item code,Item name,Batch,Expiry date,Qty
20044,ECG paper,BB3,30/09/2029,40
,,,Grand total,60
*** End of report ***,,,,
`,
    rows: {
      dated_stock: [
        { item: "10011", lot: "BB1", expiry: "2027-05-31", quantity: 14 },
        { item: "10012", lot: "BB2", expiry: "2027-02-28", quantity: 6 },
        { item: "20044", lot: "BB3", expiry: "2029-09-30", quantity: 40 },
      ],
    },
    aside: [
      [6, "repeated-header"],
      [7, "repeated-header"],
      [8, "repeated-header"],
      [10, "total-row"],
      [11, "note-row"],
    ],
    unread: ["Item name"],
  },
  {
    name: "work orders that are tests",
    text: `WO #,Asset,Battery S/N,WO Type,Completed Date,Measured Runtime (min),Result,Labor Hrs
WO-1001,MON-22,BB-1,PM,2026-03-04,131,Passed,0.5
WO-1002,MON-23,BB-2,PM,2026-03-04,88,Failed,0.5
WO-1003,MON-24,BB-3,PM,2026-03-05,127,Passed,0.5
`,
    rows: {
      runtime_tests: [
        { serial: "BB-1", date: "2026-03-04", minutes: 131, result: "pass" },
        { serial: "BB-2", date: "2026-03-04", minutes: 88, result: "fail" },
        { serial: "BB-3", date: "2026-03-05", minutes: 127, result: "pass" },
      ],
    },
    unread: ["WO #", "WO Type", "Labor Hrs"],
  },
  {
    name: "stock with a column for each place",
    text: `Artikel;Charge;MHD;Lager;Wache 1;Wache 2
Elektroden Erw.;C1;31.03.2027;20;4;2
Elektroden Kind;C2;30.11.2026;6;1;1
`,
    rows: {
      dated_stock: [
        { item: "Elektroden Erw.", lot: "C1", expiry: "2027-03-31", place: "Lager", quantity: 20 },
        { item: "Elektroden Erw.", lot: "C1", expiry: "2027-03-31", place: "Wache 1", quantity: 4 },
        { item: "Elektroden Erw.", lot: "C1", expiry: "2027-03-31", place: "Wache 2", quantity: 2 },
        { item: "Elektroden Kind", lot: "C2", expiry: "2026-11-30", place: "Lager", quantity: 6 },
        { item: "Elektroden Kind", lot: "C2", expiry: "2026-11-30", place: "Wache 1", quantity: 1 },
        { item: "Elektroden Kind", lot: "C2", expiry: "2026-11-30", place: "Wache 2", quantity: 1 },
      ],
    },
  },
  {
    name: "packs with the form of dates in a header and yes or no in another",
    text: `Serial number	Part	Mfg (YYYYMM)	In use (Y/N)	Quarantine
30001	BP-7	202203	Y	
30002	BP-7	202203	N	cracked case
30003	BP-7	202311	Y	
`,
    rows: {
      packs: [
        { serial: "30001", item: "BP-7", made: "2022-03-01" },
        { serial: "30002", item: "BP-7", made: "2022-03-01", held: "cracked case" },
        { serial: "30003", item: "BP-7", made: "2023-11-01" },
      ],
    },
    unread: ["In use (Y/N)"],
  },
  {
    name: "cycles as of a day in the header",
    text: `Pack,Built,Deployed,Cycles so far (as of 30 Sept. 2026)
N1,Sept. 2022,"Oct. 3, 2022",211
N2,Sept. 2022,"Nov. 14, 2022",190
N3,June 2024,"July 1, 2024",77
`,
    rows: {
      packs: [
        { serial: "N1", made: "2022-09-01", in_service: "2022-10-03", cycles: 211 },
        { serial: "N2", made: "2022-09-01", in_service: "2022-11-14", cycles: 190 },
        { serial: "N3", made: "2024-06-01", in_service: "2024-07-01", cycles: 77 },
      ],
    },
  },
  {
    name: "a pharmacy's list of outdates by cart and drawer",
    text: `Crash Cart Outdate List
Cart #,Drawer,Item Description,Lot#,Outdate
01,2,"ELECTRODE, DEFIB ADULT",00771,05/27
01,2,"ELECTRODE, DEFIB PEDS",00812,11/26
02,2,"ELECTRODE, DEFIB ADULT",00771,05/27
`,
    rows: {
      dated_stock: [
        { item: "ELECTRODE, DEFIB ADULT", lot: "00771", expiry: "2027-05-31", place: "01" },
        { item: "ELECTRODE, DEFIB PEDS", lot: "00812", expiry: "2026-11-30", place: "01" },
        { item: "ELECTRODE, DEFIB ADULT", lot: "00771", expiry: "2027-05-31", place: "02" },
      ],
    },
    unread: ["Drawer"],
  },
  {
    name: "a status that says which packs are held and which are gone",
    text: `Serial,Item,Device,In service,Cycles,Status
B1,Main pack,D1,2022-03-14,210,In service
B3,Main pack,,2019-05-20,500,Retired
B4,Main pack,,2019-05-20,480,Scrapped 13/06/2025
B5,Main pack,,2023-05-20,80,Quarantine
B6,Main pack,,2023-05-20,85,Lost 2026-02-01
B7,Main pack,,,,Spare - new
B8,Main pack,D2,2021-05-20,510,failed - replaced 3/25
B9,Main pack,D3,2021-05-20,530,"défaillant, remplacé 03/2025"
`,
    rows: {
      packs: [
        { serial: "B1", held: null, retired: null },
        { serial: "B4", held: null, retired: "2025-06-13" },
        { serial: "B5", held: "Quarantine", retired: null },
        { serial: "B6", held: null, retired: "2026-02-01", retired_because: "lost" },
        { serial: "B7", held: null, retired: null },
        { serial: "B8", held: null, retired: "2025-03-31" },
        { serial: "B9", held: null, retired: "2025-03-31" },
      ],
    },
    aside: [[3, "gone-undated"]],
  },
  {
    name: "a status beside the day of retirement",
    text: `Serial No;Item;Inbetriebnahme;Zustand;ausgesondert am
17-A;Akku;2019-04-01;ausgesondert;2025-09-30
17-B;Akku;2024-04-01;in Betrieb;
`,
    rows: {
      packs: [
        { serial: "17-A", held: null, retired: "2025-09-30" },
        { serial: "17-B", held: null, retired: null },
      ],
    },
  },
  {
    name: "a register in which a status says of devices that they are gone, with what was in them",
    text: `Device,Status,Battery S/N,Installed,Pads exp
D1,In use,B1,2023-01-05,2027-03-31
D2,Retired,B2,2019-06-05,2025-05-31
`,
    rows: {
      // gone by as-of, so that what is in it serves nothing
      devices: [
        { device: "D1", retired: null },
        { device: "D2", retired: "2026-11-01" },
      ],
      packs: [
        { serial: "B1", device: "D1" },
        { serial: "B2", device: "D2" },
      ],
      dated_stock: [
        { place: "D1", expiry: "2027-03-31" },
        { place: "D2", expiry: "2025-05-31" },
      ],
    },
    findings: ["gone-undated"],
  },
  {
    name: "devices with a status",
    text: `Device,Type,Site,Status
D1,AED,Hall,Active
D2,AED,Gym,Decommissioned
D3,AED,Pool,Out for repair
`,
    rows: { devices: [{ device: "D1" }, { device: "D2", retired: "2026-11-01" }, { device: "D3", retired: null }] },
    findings: ["gone-undated"],
  },
  {
    name: "a status that is the result of a test",
    text: `Pack serial,Test date,Minutes,Status
R1,2026-03-01,112,PASS
R2,2026-03-01,61,FAIL
`,
    rows: {
      runtime_tests: [
        { serial: "R1", minutes: 112, result: "pass" },
        { serial: "R2", minutes: 61, result: "fail" },
      ],
    },
  },
  {
    name: "batteries that came out and went in, by the unit that they are in",
    text: `Date,Unit,Battery out,Battery in,Reason
2026-02-01,M1,B1,B9,weak
2026-08-09,M1,B9,B11,failed test
`,
    rows: {
      packs: [
        { serial: "B1", retired: "2026-02-01", retired_because: "faded" },
        { serial: "B9", device: "M1", in_service: "2026-02-01", retired: "2026-08-09", retired_because: "failed" },
        { serial: "B11", device: "M1", in_service: "2026-08-09" },
      ],
    },
    findings: ["date-presumed", "merged"],
  },
  {
    name: "a list of batteries for each device, of one battery too",
    text: `Device: MD-1,,,
Battery,Fitted,Capacity,Tested
B1,2023-05-01,88%,2026-10-05
B2,2023-05-01,84%,2026-10-05
,,,
Device: MD-2,,,
Battery,Fitted,Capacity,Tested
B3,2024-05-01,93%,2026-10-06
`,
    rows: {
      packs: [
        { serial: "B1", device: "MD-1", in_service: "2023-05-01" },
        { serial: "B2", device: "MD-1", in_service: "2023-05-01" },
        { serial: "B3", device: "MD-2", in_service: "2024-05-01" },
      ],
    },
    findings: ["from-heading"],
  },
];
