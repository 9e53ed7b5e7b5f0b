import type { AwkwardSheet } from "./awkward-sheet.ts";

/** Sheets of several lists below each other, and what stands below lists that is none of their rows. */
export const BLOCKS: AwkwardSheet[] = [
  {
    name: "lists below each other, of which titles alone name the supplies",
    text: `Batteries
Serial,Device,Fitted
K1,A1,2024-03-01
K2,A2,2024-04-01

Pads
Lot,Place,Qty,Exp
L1,A1,1,2027-03-31
L2,Store,6,2027-09-30

Gel
Lot,Place,Qty,Exp
G1,Store,12,2027-06-30
`,
    rows: {
      packs: [
        { serial: "K1", device: "A1" },
        { serial: "K2", device: "A2" },
      ],
      dated_stock: [
        { item: "Pads", lot: "L1", quantity: 1, place: "A1", expiry: "2027-03-31" },
        { item: "Pads", lot: "L2", quantity: 6, place: "Store", expiry: "2027-09-30" },
        { item: "Gel", lot: "G1", quantity: 12, place: "Store", expiry: "2027-06-30" },
      ],
    },
  },
  {
    name: "the same pads for adults and for children below each other",
    text: `Adult pads
Lot,Qty,Exp
A1,4,2027-03-31

Child pads
Lot,Qty,Exp
C1,2,2027-05-31
`,
    rows: {
      dated_stock: [
        { item: "Adult pads", lot: "A1", quantity: 4 },
        { item: "Child pads", lot: "C1", quantity: 2 },
      ],
    },
  },
  {
    name: "a list in parts by station, each below its header",
    text: `Station North
Item,Qty,Exp
Adult pads,4,2027-03-31
Station South
Item,Qty,Exp
Adult pads,2,2027-05-31
`,
    rows: { dated_stock: [{ quantity: 4 }, { quantity: 2 }] },
    aside: [
      [4, "section-line"],
      [5, "repeated-header"],
    ],
  },
  {
    name: "figures of all the batteries below them",
    text: `Battery,Device,Fitted,Capacity (%),Tested
B1,MD-1,2023-01-05,91,2026-04-04
B2,MD-2,2022-01-05,77,2026-04-15
Average,,,84,
Std dev,,,9.9,
Minimum,,,77,
Max.,,,91,
n,,,2,
`,
    rows: {
      packs: [{ serial: "B1" }, { serial: "B2" }],
      runtime_tests: [
        { serial: "B1", percent: 91 },
        { serial: "B2", percent: 77 },
      ],
    },
    aside: [4, 5, 6, 7, 8].map((line) => [line, "total-row"]),
  },
  {
    name: "a battery called Max",
    text: "Battery,Device,Fitted,Cycles\nMax,MD-1,2023-01-15,12\nMoritz,MD-2,2023-02-15,14\n",
    rows: { packs: [{ serial: "Max" }, { serial: "Moritz" }] },
  },
  {
    name: "room for signatures below a handover",
    text: `Veh.;Defib;Batt 1 no.;Batt 2 no.;Pads exp.
41;D41;118;119;03/27
42;D42;120;121;04/27
Handed over: ............;;Taken over: ............;;
Signed;_________;;Date;_______
`,
    rows: {
      devices: [{ device: "D41" }, { device: "D42" }],
      packs: [{ serial: "118" }, { serial: "119" }, { serial: "120" }, { serial: "121" }],
    },
    aside: [
      [4, "note-row"],
      [5, "note-row"],
    ],
  },
  {
    name: "lines of words alone below the names of stations",
    text: "Serial,Item,Site,Status\nNorth\nB1,Battery,Station,OK\nB2,Battery,Store,OK\nSouth\nB3,Battery,Station,OK\n",
    rows: { packs: [{ serial: "B1", site: "Station" }, { serial: "B2" }, { serial: "B3" }] },
    aside: [
      [2, "section-line"],
      [5, "section-line"],
    ],
  },
  {
    name: "lists below the names of the devices that they are of",
    text: `AED-1 - Main hall,,
Item,Lot,Expiry
Pads adult,A1,2027-03-31
Battery,B1,2028-06-30

AED-2 (Pool),,
Item,Lot,Expiry
Pads adult,A2,2027-04-30
`,
    rows: {
      dated_stock: [
        { item: "Pads adult", lot: "A1", place: "AED-1" },
        { item: "Battery", lot: "B1", place: "AED-1" },
        { item: "Pads adult", lot: "A2", place: "AED-2" },
      ],
    },
    findings: ["from-heading"],
  },
  {
    name: "a year behind the word for devices, which names none of them",
    text: "AED 2026\nItem,Lot,Expiry\nPads adult,A1,2027-03-31\n",
    rows: { dated_stock: [{ item: "Pads adult", place: null }] },
  },
  {
    name: "lists by station of what is good until when",
    text: `Rescue station 1
Article,Qty,Valid
Adult pads,4,ok until 05/27
Rescue station 2
Article,Qty,Valid
Adult pads,2,ok until 03/27
`,
    rows: {
      dated_stock: [
        { quantity: 4, expiry: "2027-05-31", place: "Rescue station 1" },
        { quantity: 2, expiry: "2027-03-31", place: "Rescue station 2" },
      ],
    },
    aside: [
      [4, "section-line"],
      [5, "repeated-header"],
    ],
  },
];
