import type { AwkwardSheet } from "./awkward-sheet.ts";

/** Sheets whose place stands above the table. */
export const TITLED_PLACES: AwkwardSheet[] = [
  {
    name: "a station in the title",
    text: "Station North - defib stock\nItem,Lot,Expiry,Qty\nadult pads,L1,2027-03-31,2\ngel,L2,2027-05-31,3\n",
    rows: {
      dated_stock: [
        { item: "adult pads", place: "Station North" },
        { item: "gel", place: "Station North" },
      ],
    },
    findings: ["from-heading"],
  },
  {
    name: "a vehicle above each part of a list",
    text: `Ambulance 7,,,
Item,Lot,Expiry,Qty
adult pads,L1,2027-03-31,2
Ambulance 8 stock,,,
adult pads,L2,2027-05-31,2

Station South,,,
Item,Lot,Expiry,Qty
gel,L9,2027-03-31,2
`,
    rows: {
      dated_stock: [
        { lot: "L1", place: "Ambulance 7" },
        { lot: "L2", place: "Ambulance 8" },
        { lot: "L9", place: "Station South" },
      ],
    },
    aside: [
      [4, "section-line"],
      [7, "section-line"],
      [8, "repeated-header"],
    ],
  },
  {
    name: "a list below a form that names the device it is in, and where that is",
    text: `Check,,,
Station:,North,Device:,AED 3
Item,Lot,Expiry,OK
Adult pads,L1,2027-03-31,yes
Child pads,L2,2027-05-31,yes
`,
    rows: {
      dated_stock: [
        { item: "Adult pads", lot: "L1", place: "AED 3" },
        { item: "Child pads", lot: "L2", place: "AED 3" },
      ],
    },
    findings: ["from-heading"],
    unread: ["OK"],
  },
  {
    name: "a place behind its label, in a cell of its own and in one",
    text: `Stock list,,,
Station:,North,Counted on:,2026-05-01
Item,Lot,Expiry,Qty
adult pads,L1,2027-03-31,2

Vehicle: 12,,,
Item,Expiry,Lot,Qty
gel,2027-03-31,L2,2
`,
    rows: {
      dated_stock: [
        { lot: "L1", place: "North" },
        { lot: "L2", place: "Vehicle 12" },
      ],
    },
  },
  {
    name: "titles that name a list, not a place",
    text: `Station Overview 2026,,,
Vehicle stock list,,,
Item,Lot,Expiry,Qty
adult pads,L1,2027-03-31,2
`,
    rows: { dated_stock: [{ lot: "L1", place: null }] },
  },
  {
    name: "a place of a register's devices in its title, German",
    text: `Rettungswache Nord: Geräteliste;;
Gerät;Seriennummer;Pads Verfall
AED 1;A-77;31.05.2027
`,
    rows: {
      devices: [{ device: "AED 1", site: "Rettungswache Nord" }],
      dated_stock: [{ expiry: "2027-05-31", place: "AED 1" }],
    },
    unread: ["Seriennummer"],
  },
  {
    name: "a column of places, which a title does not outdo",
    text: "Station North - stock\nItem,Place,Expiry\nadult pads,Ambulance 7,2027-03-31\ngel,,2027-05-31\n",
    rows: {
      dated_stock: [
        { item: "adult pads", place: "Ambulance 7" },
        { item: "gel", place: null },
      ],
    },
  },
  {
    name: "vehicles above the list of each, with the day of the count between",
    text: `Vehicle: Medic 7
Checked: 2026-10-05

Item,Par,Actual,Expires
Adult pads,2,2,2027-03-31
Gel,1,1,2028-01-31

Vehicle: Medic 8
Checked: 2026-10-06

Item,Par,Actual,Expires
Adult pads,3,2,2027-05-31
Gel,1,1,2028-02-29
`,
    rows: {
      dated_stock: [
        { item: "Adult pads", expiry: "2027-03-31", quantity: 2, place: "Medic 7" },
        { item: "Gel", expiry: "2028-01-31", quantity: 1, place: "Medic 7" },
        { item: "Adult pads", expiry: "2027-05-31", quantity: 2, place: "Medic 8" },
        { item: "Gel", expiry: "2028-02-29", quantity: 1, place: "Medic 8" },
      ],
    },
    // each below its own day is a list of its own
    unread: ["Par", "Par"],
  },
  {
    name: "store rooms told by a letter, above the header and in the list",
    text: `Store room A - pads and gel
Item,Lot,Expiry,Count
Adult pads,L1,2027-03-31,6
Store room B - pads and gel
Gel,G1,2028-01-31,3
`,
    rows: {
      dated_stock: [
        { item: "Adult pads", place: "Store room A" },
        { item: "Gel", place: "Store room B" },
      ],
    },
    aside: [[4, "section-line"]],
  },
];
