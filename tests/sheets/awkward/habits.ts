import type { AwkwardSheet } from "./awkward-sheet.ts";

/** Habits of those who keep stock and tests by hand. */
export const HABITS: AwkwardSheet[] = [
  {
    name: "lots with numbers of their own beside the count of all",
    text: `Station,Item,Par,On hand,Exp 1,Qty 1,Exp 2,Qty 2
North,Adult pads,6,5,03/27,2,11/27,3
North,Child pads,2,2,06/27,2,,
`,
    rows: {
      dated_stock: [
        { item: "Adult pads", expiry: "2027-03-31", quantity: 2, place: "North" },
        { item: "Adult pads", expiry: "2027-11-30", quantity: 3, place: "North" },
        { item: "Child pads", expiry: "2027-06-30", quantity: 2, place: "North" },
      ],
    },
    unread: ["Par", "On hand"],
  },
  {
    name: "lots that only a count of all counts, most of them taken for the first to expire",
    text: "Item,On hand,Exp 1,Exp 2\nAdult pads,5,11/27,03/27\nChild pads,2,06/27,\n",
    rows: {
      dated_stock: [
        { item: "Adult pads", expiry: "2027-11-30", quantity: 1 },
        { item: "Adult pads", expiry: "2027-03-31", quantity: 4 },
        { item: "Child pads", expiry: "2027-06-30", quantity: 2 },
      ],
    },
    findings: ["lots-counted-together"],
  },
  {
    name: "none of some units, with no expiry",
    text: "Vehicle,Adult pads,Adult pads exp,Child pads,Child pads exp\nM1,2,03/27,1,05/27\nM3,1,2027-09,0,\n",
    rows: {
      dated_stock: [
        { item: "Adult pads", expiry: "2027-03-31", quantity: 2, place: "M1" },
        { item: "Child pads", expiry: "2027-05-31", quantity: 1, place: "M1" },
        { item: "Adult pads", expiry: "2027-09-30", quantity: 1, place: "M3" },
      ],
    },
  },
  {
    name: "swapped pads, of which the new ones are there",
    text: `Swap list May 2026
Device,Old pad lot,Old exp,New pad lot,New exp,Swapped on,By
AED-1,L100,31/05/2026,L200,30/11/2028,14/05/2026,jk
AED-2,L101,30/06/2026,L200,30/11/2028,15/05/2026,jk
`,
    rows: {
      devices: [
        { device: "AED-1", in_service: null },
        { device: "AED-2", in_service: null },
      ],
      dated_stock: [
        { expiry: "2028-11-30", lot: "L200", place: "AED-1" },
        { expiry: "2028-11-30", lot: "L200", place: "AED-2" },
      ],
    },
    unread: ["Old pad lot", "Old exp", "Swapped on", "By"],
  },
  {
    name: "tests whose minutes go by Min",
    text: "Batt,Test 1 date,Min,Test 2 date,Min\nA1,1/5/2024,182,1/13/2025,170\nA2,1/5/2024,179,1/13/2025,140\n",
    rows: {
      runtime_tests: [
        { serial: "A1", date: "2024-01-05", minutes: 182 },
        { serial: "A1", date: "2025-01-13", minutes: 170 },
        { serial: "A2", date: "2024-01-05", minutes: 179 },
        { serial: "A2", date: "2025-01-13", minutes: 140 },
      ],
    },
  },
  {
    name: "expiries of months in four digits",
    text: "Item,Qty,Exp\nPads,2,0327\nPads,1,1227\nGel,1,2704\nGel,1,1112\n",
    rows: {
      dated_stock: [
        { item: "Pads", expiry: "2027-03-31" },
        { item: "Pads", expiry: "2027-12-31" },
        { item: "Gel", expiry: "2027-04-30" },
      ],
    },
    aside: [[5, "date-impossible"]],
  },
  {
    name: "serials with expiries of nothing named",
    text: "SN,Exp\n88812,2027-03\n88813,2027-05\n",
    rows: { packs: [{ serial: "88812" }, { serial: "88813" }] },
    findings: ["expiry-unread"],
    unread: ["Exp"],
  },
  {
    name: "packs with a health that no day belongs to",
    text: "Battery,Install date,Cycle count,Health\nB100,2022-01-01,212,91%\nB101,2022-02-01,388,72%\n",
    rows: { packs: [{ serial: "B100" }, { serial: "B101" }], runtime_tests: [] },
    findings: ["capacity-undated"],
    unread: ["Health"],
  },
  {
    name: "what was used each month",
    text: "Consumption of supplies\nMonth,Adult pads,Gel\nJan 2026,12,4\nFeb 2026,9,5\n",
    rows: {
      use_log: [
        { date: "2026-01-31", item: "Adult pads", quantity: 12 },
        { date: "2026-01-31", item: "Gel", quantity: 4 },
        { date: "2026-02-28", item: "Adult pads", quantity: 9 },
        { date: "2026-02-28", item: "Gel", quantity: 5 },
      ],
    },
  },
  {
    name: "a ledger of what went in and out, whose balance is nothing used",
    text: `Date,Item,In,Out,Balance,Station
2026-01-05,Adult pads,,2,18,North
2026-01-12,Adult pads,10,,28,North
2026-02-03,Gel,,1,9,North
`,
    rows: {
      use_log: [
        { date: "2026-01-05", item: "Adult pads", quantity: 2, place: "North" },
        { date: "2026-02-03", item: "Gel", quantity: 1, place: "North" },
      ],
    },
    aside: [[3, "missing-required"]],
    unread: ["In", "Balance"],
  },
  {
    name: "units of measure that are no vehicles, boxes among them",
    text: "Lot;Art;MHD;Menge;Einheit;Lagerort\nA1;Pads Erw;31.03.2027;3;Karton;Zentrale\nA2;EKG-Papier;31.12.2028;1.200;Stk;Zentrale\n",
    rows: { dated_stock: [{ item: "EKG-Papier", quantity: 1200, place: "Zentrale" }] },
    aside: [[2, "boxes-unknown"]],
    unread: ["Einheit"],
  },
  {
    name: "a second lot in few lines only",
    text: "AED,Room,Pads 1 lot/exp,Pads 2 lot/exp\nAED 1,Hall,L22 / 03-2027,L23 / 11-2027\nAED 2,Gym,L22 / 03-2027,\nAED 3,Pool,L22 / 04-2027,\n",
    rows: {
      dated_stock: [
        { lot: "L22", expiry: "2027-03-31", place: "AED 1" },
        { lot: "L23", expiry: "2027-11-30", place: "AED 1" },
        { lot: "L22", expiry: "2027-03-31", place: "AED 2" },
        { lot: "L22", expiry: "2027-04-30", place: "AED 3" },
      ],
    },
  },
  {
    name: "pads half of which are words",
    text: "Device,Pads,Battery\nAED 1,03/2027,05/2029\nAED 2,04/2027,06/2029\nAED 3,expired,06/2029\nAED 4,missing,07/2029\n",
    rows: {
      dated_stock: [
        { item: "Pads", expiry: "2027-03-31", place: "AED 1" },
        { item: "Battery", expiry: "2029-05-31", place: "AED 1" },
        { item: "Pads", expiry: "2027-04-30", place: "AED 2" },
        { item: "Battery", expiry: "2029-06-30", place: "AED 2" },
        { item: "Battery", expiry: "2029-06-30", place: "AED 3" },
        { item: "Battery", expiry: "2029-07-31", place: "AED 4" },
      ],
    },
    findings: ["fault-unread"],
  },
  {
    name: "a line that counts the dates above it",
    text: "Station,AED pads expire,AED serial\nSchool,2027-05-31,A1\nPool,2027-06-30,A2\nTotal,2,2\n",
    rows: { devices: [{ device: "A1" }, { device: "A2" }] },
    aside: [[4, "total-row"]],
  },
  {
    name: "what should be there and what is, German",
    text: "Pos,Artikel,Soll,Ist,Verfall\n1,Elektroden Erwachsene,4,2,03/2027\n",
    rows: { dated_stock: [{ item: "Elektroden Erwachsene", quantity: 2 }] },
    unread: ["Pos", "Soll"],
  },
  {
    name: "devices named by where they are alone, and a remark of a low battery",
    text: "AED location,Pads expiry,Battery expiry,Comments\nMain hall,31/08/2026,31/01/2028,Pads ordered\nPool,31/08/2027,31/01/2026,BATTERY LOW\n",
    rows: {
      devices: [{ device: "Main hall" }, { device: "Pool" }],
      dated_stock: [
        { item: "Pads", expiry: "2026-08-31", place: "Main hall" },
        { item: "Battery", expiry: "2028-01-31", place: "Main hall" },
        { item: "Pads", expiry: "2027-08-31", place: "Pool" },
        { item: "Battery", expiry: "2026-01-31", place: "Pool" },
      ],
    },
    findings: ["fault-unread"],
    unread: ["Comments"],
  },
  {
    name: "a register whose devices share their model, German, with a line break and a date gone by in words",
    text: 'Standort;Gerät;S/N;Elektroden (Erw.);Batterie\n"Rathaus\nEG";M5;A-1;31.03.27;30.06.28\nBad;M5;A-2;abgelaufen;30.06.28\n',
    rows: {
      devices: [
        { device: "A-1", type: "M5" },
        { device: "A-2", type: "M5", site: "Bad" },
      ],
      dated_stock: [
        { item: "Elektroden Erw", expiry: "2027-03-31", place: "A-1" },
        { item: "Batterie", expiry: "2028-06-30", place: "A-1" },
        { item: "Batterie", expiry: "2028-06-30", place: "A-2" },
      ],
    },
    findings: ["fault-unread"],
  },
];
