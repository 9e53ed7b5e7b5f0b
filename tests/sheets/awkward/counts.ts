import type { AwkwardSheet } from "./awkward-sheet.ts";

/** Lists that count devices, batteries or pads at places: a count is no device's name. */
export const COUNTS: AwkwardSheet[] = [
  {
    name: "devices and pads counted at each station",
    text: "Site,Devices,Pads\nStation 4,3,6\nStation 5,2,4\n",
    rows: { devices: [], dated_stock: [] },
    aside: [
      [2, "unknown-table"],
      [3, "unknown-table"],
    ],
    unread: ["Site", "Devices", "Pads"],
  },
  {
    name: "counts with their words, and no header at all",
    text: "Station 4 | 3 devices | 6 pads\nStation 5 | 2 devices | 4 pads\n",
    rows: { devices: [], dated_stock: [] },
    findings: ["no-table"],
  },
  {
    name: "counts of devices and batteries beside counted pads with an expiry",
    text: `Station,Monitors,AEDs,Spare batteries,Adult pads,Adult pads exp
Station 4,3,1,4,6,2027-03-31
Station 5,2,2,3,4,2027-05-31
`,
    rows: {
      devices: [],
      packs: [],
      dated_stock: [
        { item: "Adult pads", quantity: 6, expiry: "2027-03-31", place: "Station 4" },
        { item: "Adult pads", quantity: 4, expiry: "2027-05-31", place: "Station 5" },
      ],
    },
    findings: ["devices-counted"],
    unread: ["Monitors", "AEDs", "Spare batteries"],
  },
  {
    name: "numbers of devices by their words",
    text: "Site,No. of AEDs,Pads expiry\nTown hall,2,2027-03-31\nLibrary,1,2027-04-30\n",
    rows: { devices: [], dated_stock: [{ place: "Town hall" }, { place: "Library" }] },
    findings: ["devices-counted"],
    unread: ["No. of AEDs"],
  },
  {
    name: "numbers of devices, batteries and pads by a sign before their names",
    text: `Site,# AEDs,# Batteries,Battery exp,No. of adult pads,Adult pads exp,# Spare pads,Spare exp
North,3,3,2028-06-30,6,2027-03-31,1,2028-03-31
South,2,2,2028-07-31,4,2027-04-30,0,
`,
    rows: {
      devices: [],
      packs: [],
      dated_stock: [
        { item: "Batteries", quantity: 3, expiry: "2028-06-30", place: "North" },
        { item: "adult pads", quantity: 6, expiry: "2027-03-31", place: "North" },
        { item: "Spare pads", quantity: 1, expiry: "2028-03-31", place: "North" },
        { item: "Batteries", quantity: 2, expiry: "2028-07-31", place: "South" },
        { item: "adult pads", quantity: 4, expiry: "2027-04-30", place: "South" },
      ],
    },
    findings: ["devices-counted"],
    unread: ["# AEDs"],
  },
  {
    name: "how many batteries of one expiry a device has",
    text: "Gerät;Elektroden MHD;Menge;Akku MHD;Akku Menge\nAED-1;03/2027;2;05/2028;1\nAED-2;04/2027;1;06/2028;2\n",
    rows: {
      devices: [{ device: "AED-1" }, { device: "AED-2" }],
      dated_stock: [
        { item: "Elektroden", quantity: 2, place: "AED-1" },
        { item: "Akku", quantity: 1, place: "AED-1" },
        { item: "Elektroden", quantity: 1, place: "AED-2" },
        { item: "Akku", quantity: 2, place: "AED-2" },
      ],
    },
  },
  {
    name: "a quantity of devices of a model, the first line no header",
    text: "Abteilung;Gerät;Anzahl;Baujahr\nKardiologie;Monitor-Defi;4;2019\nInnere;Monitor-Defi;2;2020\n",
    rows: { devices: [] },
    aside: [
      [2, "unknown-table"],
      [3, "unknown-table"],
    ],
    unread: ["Abteilung", "Gerät", "Anzahl", "Baujahr"],
  },
  {
    name: "devices that are named by numbers",
    text: "AED,Site,Pads,Pads exp\n1,Town hall,1,2027-03-31\n2,Library,2,2027-04-30\n3,Pool,1,2027-05-31\n",
    rows: {
      devices: [
        { device: "1", site: "Town hall" },
        { device: "2", site: "Library" },
        { device: "3", site: "Pool" },
      ],
      dated_stock: [
        { item: "Pads", quantity: 1, place: "1" },
        { item: "Pads", quantity: 2, place: "2" },
        { item: "Pads", quantity: 1, place: "3" },
      ],
    },
  },
  {
    name: "batteries several to a line, by their first and last serial or, as is said, as one",
    text: "Item,Serials,Qty,In service\nP,B-001 to B-003,3,2023-01-13\nP,B-010 and others,4,2023-01-14\n",
    rows: {
      packs: [
        { serial: "B-001", in_service: "2023-01-13" },
        { serial: "B-002", in_service: "2023-01-13" },
        { serial: "B-003", in_service: "2023-01-13" },
        { in_service: "2023-01-14" },
      ],
    },
    findings: ["count-unread"],
    unread: ["Qty"],
  },
  {
    name: "how many monitors each numbered station has",
    text: `Station,Medic units,Monitors,AEDs
1,2,2,1
2,1,1,2
`,
    rows: { devices: [] },
    aside: [
      [2, "unknown-table"],
      [3, "unknown-table"],
    ],
    unread: ["Station", "Medic units", "Monitors", "AEDs"],
  },
];
