import type { AwkwardSheet } from "./awkward-sheet.ts";

/** Lists that name a station and a vehicle of it. */
export const VEHICLES: AwkwardSheet[] = [
  {
    name: "stock by station and vehicle",
    text: `Site,Vehicle,Item,Expiry,Qty
North,Ambulance 7,adult pads,2027-03-31,2
South,Ambulance 7,adult pads,2027-04-30,1
North,,gel,2027-04-30,1
,Ambulance 9,gel,2027-05-31,1
`,
    rows: {
      dated_stock: [
        { item: "adult pads", quantity: 2, place: "North, Ambulance 7" },
        { item: "adult pads", quantity: 1, place: "South, Ambulance 7" },
        { item: "gel", expiry: "2027-04-30", place: "North" },
        { item: "gel", expiry: "2027-05-31", place: "Ambulance 9" },
      ],
    },
  },
  {
    name: "a register by station and vehicle, German",
    text: `Wache;Fahrzeug;Gerät;Akku SN;Akku Einbau
Nord;RTW 1;MD-1;B-1;01.05.2024
Süd;RTW 1;MD-2;B-2;13.05.2024
`,
    rows: {
      devices: [
        { device: "MD-1", site: "Nord, RTW 1" },
        { device: "MD-2", site: "Süd, RTW 1" },
      ],
      packs: [
        { serial: "B-1", device: "MD-1", site: "Nord, RTW 1" },
        { serial: "B-2", device: "MD-2", site: "Süd, RTW 1" },
      ],
    },
  },
  {
    name: "a station and a shelf, which goes nowhere",
    text: "Station,Shelf,Item,Expiry\nNorth,3,adult pads,2027-03-31\n",
    rows: { dated_stock: [{ item: "adult pads", place: "North" }] },
    unread: ["Shelf"],
  },
];
