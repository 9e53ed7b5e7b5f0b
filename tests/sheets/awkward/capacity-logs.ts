import type { AwkwardSheet } from "./awkward-sheet.ts";

/** Logs of capacity tests, with what stands beside a measurement and is none. */
export const CAPACITY_LOGS: AwkwardSheet[] = [
  {
    name: "the least capacity that passes, the charge and the loss beside the capacity",
    text: `Battery SN,Required capacity %,Capacity %,Tested,SoC %,Capacity loss %
B1,80,91,14/02/2026,100,9
B2,80,77,14/02/2026,98,23
`,
    rows: {
      runtime_tests: [
        { serial: "B1", date: "2026-02-14", percent: 91 },
        { serial: "B2", date: "2026-02-14", percent: 77 },
      ],
    },
    unread: ["Required capacity %", "SoC %", "Capacity loss %"],
  },
  {
    name: "a daily check of the charge, which is no capacity",
    text: "Battery SN,Battery level (%),Last test,Result\nB1,100,14/02/2026,pass\nB2,62,14/02/2026,fail\n",
    rows: { runtime_tests: [{ result: "pass" }, { serial: "B2", percent: null, result: "fail" }] },
    unread: ["Battery level (%)"],
  },
  {
    name: "least and measured capacities in German",
    text: "Akku-Nr.;Mindestkapazität (%);Kapazität (%);Ladezustand (%);Kapazitätsverlust (%);Geprüft\nA1;80;91;100;9;14.02.2026\n",
    rows: { runtime_tests: [{ serial: "A1", date: "2026-02-14", percent: 91 }] },
    unread: ["Mindestkapazität (%)", "Ladezustand (%)", "Kapazitätsverlust (%)"],
  },
  {
    name: "the day and the charge of the next test in French",
    text: "Batterie;Prochain test;Dernier test;Capacité (%);Niveau de charge (%)\nBA1;12/02/2027;13/02/2026;88;100\n",
    rows: { runtime_tests: [{ serial: "BA1", date: "2026-02-13", percent: 88 }] },
    unread: ["Prochain test", "Niveau de charge (%)"],
  },
  {
    name: "a least percentage headed Min behind bare results",
    text: "Battery SN,Test date,Result %,Min,Pass/Fail\nB1,14/02/2026,91,80,Pass\nB2,14/02/2026,77,80,Fail\n",
    rows: {
      runtime_tests: [
        { percent: 91, minutes: null, result: "pass" },
        { percent: 77, minutes: null, result: "fail" },
      ],
    },
    unread: ["Min"],
  },
  {
    name: "results and their least with signs, and a verdict",
    text: "Battery SN,Test date,Result,Min,Verdict\nB1,14/02/2026,91%,80%,Pass\nB2,14/02/2026,77%,80%,Fail\n",
    rows: {
      runtime_tests: [
        { percent: 91, minutes: null, result: "pass" },
        { percent: 77, minutes: null, result: "fail" },
      ],
    },
    unread: ["Min"],
  },
  {
    name: "minutes headed Min beside a load",
    text: "Battery SN,Tested,Min,Load W\nB1,14/02/2026,222,25\nB2,14/02/2026,188,25\n",
    rows: { runtime_tests: [{ minutes: 222 }, { minutes: 188 }] },
  },
  {
    name: "charged and discharged milliampere hours, and a resistance",
    // 2520 of 2800 mAh are 90 %
    text: "Battery,Date,Charge mAh,Discharge mAh,Rated mAh,Ri mOhm\nL1,14/02/2026,2610,2520,2800,96\n",
    rows: { runtime_tests: [{ serial: "L1", date: "2026-02-14", ah: 2.52, percent: 90 }] },
    unread: ["Charge mAh", "Ri mOhm"],
  },
  {
    name: "units with a point between, in headings and cells",
    text: "Battery S/N,Capacity (A·h),Tested,Nominal\nB1,4.9,14/02/2026,5600 mA·h\nB2,4.2,14/02/2026,5600 mA·h\n",
    rows: {
      runtime_tests: [
        { ah: 4.9, percent: 87.5 },
        { ah: 4.2, percent: 75 },
      ],
    },
  },
  {
    name: "batteries that passed or failed, by their device",
    text: "Device,Test date,Battery test\nMonitor 1,14/02/2026,Pass\nMonitor 2,14/02/2026,Fail\n",
    rows: {
      runtime_tests: [
        { serial: "Monitor 1", result: "pass" },
        { serial: "Monitor 2", result: "fail" },
      ],
    },
  },
  {
    name: "a maker's date code in words",
    text: 'Pack,Device,Mfg code,In svc\nP1,AED-1,"week 12, 2023",May-23\n',
    // the Monday of ISO week 12 of 2023
    rows: { packs: [{ serial: "P1", made: "2023-03-20", in_service: "2023-05-01" }] },
  },
  {
    name: "milliampere hours that only their size tells, beside a count of cycles read on one day",
    // 2520 of 2800 are 90 %, 2100 are 75 %
    text: `Battery,Cycle count,Max cycles,Design capacity,Full charge capacity,Read on
B1,120,500,2800,2520,12/02/2026
B2,340,500,2800,2100,13/02/2026
`,
    rows: {
      runtime_tests: [
        { date: "2026-02-12", ah: 2.52, percent: 90, cycles: 120 },
        { date: "2026-02-13", ah: 2.1, percent: 75, cycles: 340 },
      ],
    },
    unread: ["Max cycles"],
  },
  {
    name: "capacities by quarter in German",
    // a quarter of tests is dated its last day
    text: "Akku;Gerät;Kapazität Q1 2026;Kapazität Q2 2026\nA1;G1;95;94\nA2;G2;88;85\n",
    rows: {
      runtime_tests: [
        { serial: "A1", date: "2026-03-31", percent: 95 },
        { serial: "A1", date: "2026-06-30", percent: 94 },
        { serial: "A2", date: "2026-03-31", percent: 88 },
        { serial: "A2", date: "2026-06-30", percent: 85 },
      ],
    },
  },
  {
    name: "capacities below the days of their checks",
    text: "Battery,Health check 13/02/2026,Health check 13/08/2026\nB1,91%,89%\n",
    rows: {
      runtime_tests: [
        { serial: "B1", date: "2026-02-13", percent: 91 },
        { serial: "B1", date: "2026-08-13", percent: 89 },
      ],
    },
  },
  {
    name: "a load in amperes, which are no watts",
    text: "Battery Serial,Date,Load (A),Duration\nB1,02/14/2026,0.5,4:49\n",
    rows: { runtime_tests: [{ minutes: 289, load_w: null }] },
    unread: ["Load (A)"],
  },
  {
    name: "a bare word for the test above its results",
    text: "Battery,Date,Test\nB1,12/02/2026,Pass\nB2,13/02/2026,Fail\n",
    rows: {
      runtime_tests: [
        { serial: "B1", date: "2026-02-12", result: "pass" },
        { serial: "B2", date: "2026-02-13", result: "fail" },
      ],
    },
  },
  {
    name: "a pass mark behind the runtimes",
    text: "Battery,Last test,Runtime,Pass mark\nB1,14/02/2026,222 min,180 min\nB2,15/02/2026,170 min,180 min\n",
    rows: { runtime_tests: [{ minutes: 222 }, { minutes: 170 }] },
    unread: ["Pass mark"],
  },
  {
    name: "what a French test took, what it should and what is left",
    text: "Batterie SN;Date;Temps de décharge;Temps requis;Capacité restante\nBA1;14/02/2026;3h42;3h00;88 %\n",
    rows: { runtime_tests: [{ serial: "BA1", date: "2026-02-14", minutes: 222, percent: 88 }] },
    unread: ["Temps requis"],
  },
  {
    name: "percentages below batteries, which are no names of them",
    text: "Monitor,Battery A,Battery B,Checked\nM1,91%,88%,14/02/2026\nM2,85%,79%,15/02/2026\nM1,90%,87%,14/03/2026\n",
    rows: { packs: [], runtime_tests: [] },
    aside: [2, 3, 4].map((line) => [line, "unknown-table"]),
    findings: ["unknown-table"],
    unread: ["Monitor", "Battery A", "Battery B", "Checked"],
  },
  {
    name: "days and capacities with the numbers of their batteries",
    text: `Device,Battery 1,Battery 2,Date fitted 1,Date fitted 2,Cap 1,Cap 2,Tested
M1,A1,A2,12/03/2024,14/03/2024,91,88,14/02/2026
`,
    rows: {
      packs: [
        { serial: "A1", device: "M1", in_service: "2024-03-12" },
        { serial: "A2", device: "M1", in_service: "2024-03-14" },
      ],
      runtime_tests: [
        { serial: "A1", date: "2026-02-14", percent: 91 },
        { serial: "A2", date: "2026-02-14", percent: 88 },
      ],
    },
  },
  {
    name: "the time of day of a test, which is no runtime",
    text: "Battery,Test date,Test time,Capacity\nB1,13/05/2026,09:30,88%\nB2,14/05/2026,14:15,71%\n",
    rows: {
      runtime_tests: [
        { serial: "B1", date: "2026-05-13", minutes: null, percent: 88 },
        { serial: "B2", date: "2026-05-14", minutes: null, percent: 71 },
      ],
    },
    unread: ["Test time"],
  },
  {
    name: "the time of day of a test with a.m. and p.m.",
    text: "Battery,Test date,Test time,Capacity\nB1,5/13/2026,9:30 AM,88%\nB2,5/14/2026,2:15 PM,71%\n",
    rows: {
      runtime_tests: [
        { serial: "B1", date: "2026-05-13", percent: 88 },
        { serial: "B2", date: "2026-05-14", percent: 71 },
      ],
    },
    unread: ["Test time"],
  },
  {
    name: "the time that a test took in hours and minutes",
    text: "Battery,Test date,Test time,Result\nB1,13/05/2026,1:30,pass\nB2,14/05/2026,2:05,pass\n",
    rows: { runtime_tests: [{ minutes: 90 }, { minutes: 125 }] },
  },
  {
    name: "capacities before and after batteries were reconditioned",
    text: "Pack,Reconditioned,Capacity before (%),Capacity after (%)\nP1,2026-03-03,71,85\nP2,2026-03-04,65,66\n",
    rows: {
      runtime_tests: [
        { serial: "P1", date: "2026-03-03", percent: 85 },
        { serial: "P2", date: "2026-03-04", percent: 66 },
      ],
    },
    unread: ["Capacity before (%)"],
  },
  {
    name: "capacities before and after in German",
    text: "Akku;Datum;Kapazität vor;Kapazität nach\nP1;13.03.2026;71 %;85 %\nP2;14.03.2026;65 %;66 %\n",
    rows: { runtime_tests: [{ percent: 85 }, { percent: 66 }] },
    unread: ["Kapazität vor"],
  },
  {
    name: "what was discharged, which counts no discharges",
    text: "Battery,Tested,Discharged,Energy discharged (Wh)\nB1,2026-05-13,3850,41\nB2,2026-05-14,2950,32\n",
    rows: {
      runtime_tests: [
        { serial: "B1", wh: 41, cycles: null },
        { serial: "B2", wh: 32, cycles: null },
      ],
    },
    unread: ["Discharged"],
  },
  {
    name: "capacities before and after below a line that says which",
    text: `Battery,Date,Before,,After,
,,Ah,%,Ah,%
B1,2026-05-13,3.1,70,3.9,88
B2,2026-05-14,2.9,66,3.0,68
`,
    rows: {
      runtime_tests: [
        { serial: "B1", ah: 3.9, percent: 88 },
        { serial: "B2", ah: 3, percent: 68 },
      ],
    },
    unread: ["Ah", "%"],
  },
  {
    name: "how long a discharge took, which is no count of them",
    text: `Pack,Date,Discharge min,Ah out,Verdict
B1,2026-10-05,185,5.2,pass
B2,2026-10-05,140,4.3,fail
`,
    rows: {
      runtime_tests: [
        { serial: "B1", minutes: 185, ah: 5.2, cycles: null, result: "pass" },
        { serial: "B2", minutes: 140, ah: 4.3, cycles: null, result: "fail" },
      ],
    },
  },
  {
    name: "a discharge in hours and minutes, as its heading says",
    text: `Date,Pack,Discharge to cutoff (h:mm),Cap
2026-10-01,B1,3:05,91%
2026-10-02,B2,2:20,74%
`,
    rows: {
      runtime_tests: [
        { serial: "B1", minutes: 185, percent: 91 },
        { serial: "B2", minutes: 140, percent: 74 },
      ],
    },
  },
  {
    name: "capacities before and after reconditioning, as two short words say",
    text: `Date,Battery,Pre %,Post %,Pass
2026-10-01,B1,88,91,Y
2026-10-02,B2,70,74,N
`,
    rows: {
      runtime_tests: [
        { serial: "B1", percent: 91, result: "pass" },
        { serial: "B2", percent: 74, result: "fail" },
      ],
    },
    unread: ["Pre %"],
  },
  {
    name: "what a battery delivered, which was not bought then",
    text: `Battery,Rated Wh,Wh delivered,Date
B1,63,57.3,2026-10-05
B2,63,47.2,2026-10-05
`,
    rows: {
      runtime_tests: [
        { serial: "B1", wh: 57.3, date: "2026-10-05" },
        { serial: "B2", wh: 47.2 },
      ],
    },
  },
  {
    name: "what remains in a battery beside what it holds when full",
    text: `Battery,Remaining capacity,Full charge capacity,Design capacity,Read on
B1,4100,5200,5700,2026-10-05
B2,3900,4300,5700,2026-10-05
`,
    rows: {
      runtime_tests: [
        { serial: "B1", ah: 5.2 },
        { serial: "B2", ah: 4.3 },
      ],
    },
    unread: ["Remaining capacity"],
  },
  {
    name: "two lists of tests side by side under the same names",
    text: `Pack,Cap %,Date,Pack,Cap %,Date
B1,91,2026-10-05,B2,75,2026-10-05
B3,88,2026-10-06,B4,95,2026-10-06
`,
    rows: {
      runtime_tests: [
        { serial: "B1", percent: 91, date: "2026-10-05" },
        { serial: "B3", percent: 88, date: "2026-10-06" },
        { serial: "B2", percent: 75, date: "2026-10-05" },
        { serial: "B4", percent: 95, date: "2026-10-06" },
      ],
    },
  },
  {
    name: "what was charged and for how long, which is neither capacity nor a count of charges",
    text: `Pack,Date,Chg mAh,Chg min,Discharge mAh,P/F
B1,2026-10-05,5400,190,5200,P
B2,2026-10-05,4500,175,4300,F
`,
    rows: {
      runtime_tests: [
        { serial: "B1", ah: 5.2, cycles: null, result: "pass" },
        { serial: "B2", ah: 4.3, cycles: null, result: "fail" },
      ],
    },
    unread: ["Chg mAh", "Chg min"],
  },
  {
    name: "a pack and its type in one line above its tests",
    text: `Pack: B1 Type: PK-6
Cycle,Date,Capacity mAh,%
1,2024-10-05,5400,95
2,2025-10-13,5200,91
`,
    rows: {
      runtime_tests: [
        { serial: "B1", cycles: 1, percent: 95 },
        { serial: "B1", cycles: 2, percent: 91 },
      ],
    },
  },
];
