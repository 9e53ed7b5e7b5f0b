import type { AwkwardSheet } from "./awkward-sheet.ts";

/** Lists of all sorts: a column says of each line whether it is a device, a battery or supplies. */
export const SORTS: AwkwardSheet[] = [
  {
    name: "devices, batteries and pads of two rooms, with a store and something unknown",
    text: `Item type,Model,Serial No,Lot,Expiry,Location
AED,Defib A,A-1001,,,Reception
Battery,Bat 9,B-2001,,2028-05-31,Reception
Adult pads,Pad A,,L123,2027-03-31,Reception
Child pads,Pad C,,L124,2027-04-30,Reception
AED,Defib A,A-1002,,,Gym
Battery,Bat 9,B-2002,,2028-06-30,Gym
Adult pads,Pad A,,L125,2027-05-31,Gym
Gel,Gel 250,,G1,2026-12-31,Store
Fire extinguisher,FE2,F-1,,2027-01-01,Gym
`,
    rows: {
      devices: [
        { device: "A-1001", type: "Defib A", site: "Reception" },
        { device: "A-1002", type: "Defib A", site: "Gym" },
      ],
      packs: [
        { item: "Bat 9", serial: "B-2001", device: "A-1001" },
        { item: "Bat 9", serial: "B-2002", device: "A-1002" },
      ],
      dated_stock: [
        { item: "Bat 9", serial: "B-2001", expiry: "2028-05-31", place: "A-1001" },
        { item: "Pad A", lot: "L123", expiry: "2027-03-31", place: "A-1001" },
        { item: "Pad C", lot: "L124", expiry: "2027-04-30", place: "A-1001" },
        { item: "Bat 9", serial: "B-2002", expiry: "2028-06-30", place: "A-1002" },
        { item: "Pad A", lot: "L125", expiry: "2027-05-31", place: "A-1002" },
        { item: "Gel 250", lot: "G1", expiry: "2026-12-31", place: "Store" },
      ],
    },
    aside: [[10, "thing-unknown"]],
    findings: ["things-by-row", "holder-presumed"],
  },
  {
    name: "a German list of rechargeable batteries without expiry",
    text: `Art;Seriennummer;Charge;Ablaufdatum;Standort;Bemerkung
Defibrillator;D-100;;;Wache 1;
Akku;AK-1;;;Wache 1;
Elektroden;;4711;31.03.2027;Wache 1;
Papier;;P1;31.12.2028;Wache 2;
`,
    rows: {
      devices: [{ device: "D-100", type: "Defibrillator", site: "Wache 1" }],
      packs: [{ serial: "AK-1", item: "Akku", device: "D-100", site: "Wache 1" }],
      dated_stock: [
        { item: "Elektroden", lot: "4711", expiry: "2027-03-31", place: "D-100" },
        { item: "Papier", lot: "P1", expiry: "2028-12-31", place: "Wache 2" },
      ],
    },
    unread: ["Bemerkung"],
  },
  {
    name: "one column for serials and lots, and a description beside the sort",
    text: `Category,Description,Serial/Lot,Qty,Expiry date,Station,Date in service
Device,Monitor-defibrillator,MD-01,1,,Station 1,2021-04-01
Battery,Li-ion pack,BP-01,1,,Station 1,2023-04-01
Pads,Adult multifunction,LOT88,3,05/2027,Station 1,
Consumable,Paper roll,P55,4,12/2028,Station 1,
`,
    rows: {
      devices: [{ device: "MD-01", type: "Monitor-defibrillator", site: "Station 1", in_service: "2021-04-01" }],
      packs: [{ serial: "BP-01", item: "Li-ion pack", device: "MD-01", in_service: "2023-04-01" }],
      dated_stock: [
        { item: "Adult multifunction", lot: "LOT88", quantity: 3, expiry: "2027-05-31", place: "MD-01" },
        { item: "Paper roll", lot: "P55", quantity: 4, expiry: "2028-12-31", place: "MD-01" },
      ],
      use_log: [],
    },
  },
  {
    name: "batteries with an expiry, one by its serial and a carton by its lot",
    text: `Category,Description,Serial/Lot,Qty,Expiry date,Station
Device,Defib A,D-01,1,,Station 1
Battery,Lithium pack,BP-01,1,05/2028,Station 1
Battery,Lithium pack,,1,06/2028,Station 1
Battery,Lithium pack,LOT5,3,05/2029,Store
`,
    rows: {
      devices: [{ device: "D-01" }],
      packs: [{ serial: "BP-01", item: "Lithium pack", device: "D-01" }],
      dated_stock: [
        { item: "Lithium pack", serial: "BP-01", quantity: 1, expiry: "2028-05-31", place: "D-01" },
        { item: "Lithium pack", serial: null, quantity: 1, expiry: "2028-06-30", place: "D-01" },
        { item: "Lithium pack", serial: "LOT5", quantity: 3, expiry: "2029-05-31", place: "Store" },
      ],
    },
    findings: ["things-by-row", "holder-presumed"],
  },
  {
    name: "asset numbers that are each thing's own",
    text: `Asset type,Asset ID,Site,Installed,Expires
AED,AED-1,School A,2020-01-01,
AED,AED-2,School B,2020-01-01,
Battery,BAT-1,School A,2023-01-01,2027-01-01
Pads,PAD-1,School A,2024-01-01,2026-12-31
Pads,PAD-2,School B,2024-01-01,2026-12-31
`,
    rows: {
      devices: [
        { device: "AED-1", type: "AED", site: "School A", in_service: "2020-01-01" },
        { device: "AED-2", type: "AED", site: "School B" },
      ],
      dated_stock: [
        { item: "Battery", serial: "BAT-1", expiry: "2027-01-01", place: "AED-1" },
        { item: "Pads", serial: "PAD-1", expiry: "2026-12-31", place: "AED-1" },
        { item: "Pads", serial: "PAD-2", expiry: "2026-12-31", place: "AED-2" },
      ],
    },
  },
  {
    name: "a French list that names the device of each part, and a charger",
    text: `Catégorie;Désignation;N° de série;N° de lot;Péremption;Appareil;Implantation
Moniteur-défibrillateur;Type M;MD-01;;;;Ambulance 1
Batterie;Li-ion;BA-11;;;MD-01;Ambulance 1
Batterie;Li-ion;BA-12;;;MD-01;Ambulance 1
Électrodes adulte;;;E-77;31/03/2027;MD-01;Ambulance 1
Chargeur de batterie;;CH-1;;;;Ambulance 1
Moniteur-défibrillateur;Type M;MD-02;;;;Ambulance 2
Batterie;Li-ion;BA-13;;;MD-02;Ambulance 2
`,
    rows: {
      devices: [
        { device: "MD-01", site: "Ambulance 1" },
        { device: "MD-02", site: "Ambulance 2" },
      ],
      packs: [
        { serial: "BA-11", item: "Li-ion", device: "MD-01" },
        { serial: "BA-12", item: "Li-ion", device: "MD-01" },
        { serial: "BA-13", item: "Li-ion", device: "MD-02" },
      ],
      dated_stock: [{ item: "Électrodes adulte", lot: "E-77", expiry: "2027-03-31", place: "MD-01" }],
    },
    aside: [[6, "thing-unknown"]],
  },
  {
    name: "a Spanish list sorted by kind, with two devices in one place",
    text: `Tipo,N.º serie,Lote,Caducidad,Ubicación
Desfibrilador,D1,,,Planta 1
Desfibrilador,D2,,,Planta 1
Batería,B1,,30/09/2027,Planta 1
Batería,B2,,31/10/2027,Planta 1
Parches,,L1,31/03/2027,Planta 1
`,
    rows: {
      devices: [{ device: "D1" }, { device: "D2" }],
      dated_stock: [
        { item: "Batería", serial: "B1", place: "Planta 1" },
        { item: "Batería", serial: "B2", place: "Planta 1" },
        { item: "Parches", lot: "L1", place: "Planta 1" },
      ],
    },
    findings: ["holder-presumed"],
  },
  {
    name: "a Swedish list with what belongs to a device right below it",
    text: `Objekt,Serienummer,Utgångsdatum,Plats
Hjärtstartare,H1,,Entré
Batteri,B1,2027-05-01,Entré
Elektroder vuxna,,2027-03-01,Entré
Hjärtstartare,H2,,Entré
Batteri,B2,2027-06-01,Entré
Elektroder vuxna,,2027-04-01,Entré
`,
    rows: {
      devices: [{ device: "H1" }, { device: "H2" }],
      dated_stock: [
        { item: "Batteri", serial: "B1", place: "H1" },
        { item: "Elektroder vuxna", expiry: "2027-03-01", place: "H1" },
        { item: "Batteri", serial: "B2", place: "H2" },
        { item: "Elektroder vuxna", expiry: "2027-04-01", place: "H2" },
      ],
    },
    findings: ["holder-presumed"],
  },
  {
    name: "a line that lacks what its sort needs, and one that says nothing of its sort",
    text: `Station,Equipment,ID,Qty,Exp
Station 1,Monitor/Defibrillator,M-1,1,
Station 1,Monitor battery,,1,
Station 1,Adult defib pads,,2,05/27
Station 1,Thermal paper,,3,
Station 1,,X-9,1,
`,
    rows: {
      devices: [{ device: "M-1", type: "Monitor/Defibrillator", site: "Station 1" }],
      packs: [],
      dated_stock: [{ item: "Adult defib pads", quantity: 2, expiry: "2027-05-31", place: "M-1" }],
    },
    aside: [
      [3, "missing-required"],
      [5, "missing-required"],
      [6, "thing-unknown"],
    ],
  },
  {
    name: "orders of devices, batteries and pads, which are no list of what there is",
    text: `PO,Item,Qty,Supplier,Due
1,AED,1,S,2026-12-01
1,AED battery,2,S,2026-12-01
2,Adult pads,4,S,2026-12-15
`,
    rows: { devices: [], on_order: [{ item: "AED" }, { item: "AED battery" }, { item: "Adult pads" }] },
  },
];
