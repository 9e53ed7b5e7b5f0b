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
  {
    name: "devices that are in repair or wait for parts by their status, and one that is in use",
    text: `Device,Location,Status,Adult pads exp
AED 1,Town Hall,In repair,31/03/2027
AED 2,Library,Awaiting parts,31/03/2027
AED 3,Pool,In use,31/03/2027
`,
    rows: { devices: [{ retired: null }, { retired: null }, { retired: null }] },
    findings: ["fault-unread"],
  },
  {
    name: "a weekly check of what should be there and what was found",
    text: `Truck 12 - weekly consumables check 25/10/2026
Item,Should be,Found,Earliest expiry
Adult pads,2,2,03/27
ECG dots (bag),4,3,05/28
`,
    rows: {
      dated_stock: [
        { item: "Adult pads", expiry: "2027-03-31", quantity: 2, place: "Truck 12" },
        { item: "ECG dots (bag)", expiry: "2028-05-31", quantity: 3, place: "Truck 12" },
      ],
    },
    unread: ["Should be"],
  },
  {
    name: "German capacities of two batteries a device, one of them a word",
    text: `Geräteübersicht
Gerät;Wache;Akku 1 Nr.;Akku 1 Kapazität;Akku 2 Nr.;Akku 2 Kapazität;Messdatum
EKG 1;Nord;A-01;91 %;A-02;88 %;14.09.2026
EKG 2;Nord;A-03;95 %;A-04;defekt;14.09.2026
`,
    rows: {
      runtime_tests: [
        { serial: "A-01", date: "2026-09-14", percent: 91 },
        { serial: "A-02", date: "2026-09-14", percent: 88 },
        { serial: "A-03", date: "2026-09-14", percent: 95 },
        { serial: "A-04", date: "2026-09-14", percent: null, result: "fail" },
      ],
    },
    findings: ["nothing-left"],
  },
  {
    name: "a ward's devices below a title that begins otherwise",
    text: `Defibrillators on Ward 5
Asset no,Battery serial,Fitted,Pads expiry
LP-1,B771,2023-04-02,2027-03
LP-2,B772,2024-04-02,2027-03
`,
    rows: {
      devices: [
        { device: "LP-1", site: "Ward 5" },
        { device: "LP-2", site: "Ward 5" },
      ],
    },
    findings: ["from-heading"],
  },
  {
    name: "batteries at stations, beside the vehicles that they are assigned to",
    text: `Battery #,Assigned to,Station,In service
41,Medic 7,Stn 1,3/14/2023
44,Engine 4,Stn 2,6/30/2021
`,
    rows: {
      packs: [
        { serial: "41", site: "Stn 1, Medic 7", in_service: "2023-03-14" },
        { serial: "44", site: "Stn 2, Engine 4", in_service: "2021-06-30" },
      ],
    },
  },
  {
    name: "batteries at stations, beside the persons that they are assigned to",
    text: "Battery #,Assigned to,Station,In service\n41,A. Miller,Stn 1,3/14/2023\n44,B. Jones,Stn 2,6/30/2021\n",
    rows: { packs: [{ site: "Stn 1" }, { site: "Stn 2" }] },
    unread: ["Assigned to"],
  },
  {
    name: "units that hold several devices with serial numbers of their own",
    text: `Unit,Serial,Type,Battery SN,Battery fitted
Medic 4,DF-1001,Defibrillator,BT-501,03/2024
Medic 4,PM-1002,Monitor,BT-502,04/2024
Medic 5,DF-1003,Defibrillator,BT-503,05/2024
`,
    rows: {
      devices: [
        { device: "DF-1001", type: "Defibrillator", site: "Medic 4" },
        { device: "PM-1002", type: "Monitor", site: "Medic 4" },
        { device: "DF-1003", type: "Defibrillator", site: "Medic 5" },
      ],
      packs: [{ device: "DF-1001" }, { device: "PM-1002" }, { device: "DF-1003", site: "Medic 5" }],
    },
  },
  {
    name: "a register with a device in each column, their names above",
    text: `,Monitor 1,Monitor 2
Serial number,M-1001,M-1002
Location,Ward 1,Ward 2
Battery serial,B-01,B-02
Battery installed,12/02/2024,13/02/2024
Pads expiry,05/2027,06/2027
`,
    rows: {
      devices: [
        { device: "Monitor 1", site: "Ward 1" },
        { device: "Monitor 2", site: "Ward 2" },
      ],
      packs: [
        { serial: "B-01", device: "Monitor 1", in_service: "2024-02-12" },
        { serial: "B-02", device: "Monitor 2", in_service: "2024-02-13" },
      ],
      dated_stock: [
        { place: "Monitor 1", expiry: "2027-05-31" },
        { place: "Monitor 2", expiry: "2027-06-30" },
      ],
    },
    findings: ["told-as-list"],
    unread: ["Serial number"],
  },
  {
    name: "a form with a line for each monthly check, of which the last tells what is there",
    text: `Check date,AED,Location,Status light,Pads expiry,Battery expiry,Checked by
2026-08-03,AED-1,Lobby,green,2027-03-31,2028-05-31,AB
2026-08-03,AED-2,Gym,green,2027-06-30,2028-05-31,AB
2026-09-02,AED-1,Lobby,green,2027-03-31,2028-05-31,CD
2026-09-02,AED-2,Gym,green,,2028-05-31,CD
2026-10-05,AED-1,Lobby,green,2028-10-31,2028-05-31,AB
`,
    // AED-2's pads were looked at last in August, its battery in September
    rows: {
      devices: [{ device: "AED-1" }, { device: "AED-2" }],
      dated_stock: [
        { item: "Pads", place: "AED-2", expiry: "2027-06-30" },
        { item: "Battery", place: "AED-2", expiry: "2028-05-31" },
        { item: "Pads", place: "AED-1", expiry: "2028-10-31" },
        { item: "Battery", place: "AED-1", expiry: "2028-05-31" },
      ],
    },
    aside: [[4, "repeat"]],
    findings: ["earlier-check"],
    unread: ["Check date", "Location", "Status light", "Checked by"],
  },
  {
    name: "a ward's own list with a line for each check, of which the last tells what is there",
    text: `Ward: 4B
Date,Self-test OK,Pads expiry,Initials
01/10/2026,Y,31/03/2027,AB
02/10/2026,Y,31/03/2027,CD
13/10/2026,Y,30/09/2028,AB
`,
    rows: { dated_stock: [{ item: "Pads", expiry: "2028-09-30", place: "4B" }] },
    aside: [
      [3, "earlier-check"],
      [4, "earlier-check"],
    ],
    unread: ["Date", "Self-test OK", "Initials"],
  },
  {
    name: "a daily check with the charge of each battery, which is no number of one",
    text: `Ambulance,Date,Monitor battery 1,Monitor battery 2,Spare battery,Adult pads exp
M1,10/28/2026,98,95,100,3/31/2027
M1,10/29/2026,97,96,100,3/31/2027
M2,10/29/2026,88,91,100,4/30/2027
`,
    rows: {
      packs: [],
      dated_stock: [
        { item: "Adult pads", expiry: "2027-03-31", place: "M1" },
        { item: "Adult pads", expiry: "2027-04-30", place: "M2" },
      ],
    },
    aside: [[2, "earlier-check"]],
    unread: ["Date", "Monitor battery 1", "Monitor battery 2", "Spare battery"],
  },
  {
    name: "a log of tests whose lines give the pads' expiry each time",
    text: `Geprüft von;Prüfdatum;Gerät;Akku %;Elektroden Verfall;Ergebnis
AB;13.08.2026;DEF-1;96;31.03.2027;ok
AB;13.08.2026;DEF-2;92;30.06.2027;ok
CD;05.10.2026;DEF-1;95;31.10.2028;ok
CD;05.10.2026;DEF-2;90;30.06.2027;ok
`,
    rows: {
      runtime_tests: [{ percent: 96 }, { percent: 92 }, { percent: 95 }, { percent: 90 }],
      dated_stock: [
        { place: "DEF-1", expiry: "2028-10-31" },
        { place: "DEF-2", expiry: "2027-06-30" },
      ],
    },
    findings: ["earlier-check"],
    unread: ["Geprüft von"],
  },
  {
    name: "bags of one ambulance that were looked at on different days, and are both there",
    text: `Ambulance,Bag,Date checked,Adult pads expiry
Medic 1,red,2026-10-01,2027-03-31
Medic 1,blue,2026-10-02,2027-05-31
`,
    rows: { dated_stock: [{ expiry: "2027-03-31" }, { expiry: "2027-05-31" }] },
    unread: ["Bag", "Date checked"],
  },
  {
    name: "a list of lots that were each looked at on another day, and are all there",
    text: `Item,Lot,Expiry,Qty,Cupboard,Last checked
Adult pads,L1,2027-03-31,6,North,2026-08-03
Adult pads,L2,2027-09-30,2,North,2026-10-05
`,
    rows: {
      dated_stock: [
        { item: "Adult pads", lot: "L1", quantity: 6 },
        { item: "Adult pads", lot: "L2", quantity: 2 },
      ],
    },
    unread: ["Last checked"],
  },
];
