import type { AwkwardSheet } from "./awkward-sheet.ts";

/** Sheets as a fire brigade, a ski patrol, a clinic and others keep them. */
export const KEEPERS: AwkwardSheet[] = [
  {
    name: "adult's and child's pads under one group's name",
    text: `,,AED,,Pads,,Battery,
Station,Unit,Serial #,In Svc,Adult Exp,Peds Exp,Exp,Install
Sta 1,E-1,X10021,4/13/2021,05/27,08/26,exp 06/28,6/2/2023
Sta 1,L-1,X10022,4/13/2021,05/27,N/A,exp 07/28,7/15/2023
`,
    rows: {
      devices: [
        { device: "X10021", site: "Sta 1, E-1", in_service: "2021-04-13" },
        { device: "X10022", site: "Sta 1, L-1", in_service: "2021-04-13" },
      ],
      dated_stock: [
        { item: "Pads Adult", expiry: "2027-05-31", place: "X10021" },
        { item: "Pads Peds", expiry: "2026-08-31", place: "X10021" },
        { item: "Battery", expiry: "2028-06-30", place: "X10021" },
        { item: "Pads Adult", expiry: "2027-05-31", place: "X10022" },
        { item: "Battery", expiry: "2028-07-31", place: "X10022" },
      ],
    },
    unread: ["Install"],
  },
  {
    name: "huts with lots and expiries, and spare pads in a box",
    text: `Patrol hut AED log 2026/27
Hut,AED s/n,Battery lot,Battery expires,Pad lot,Pad expires
Summit,S-01,BL22,2028-11,PL7,2027-02
Base,S-03,BL25,2029-04,PL9,2027-09
Spare pads (box in base),,,,PL9,2027-09
`,
    rows: {
      devices: [
        { device: "S-01", site: "Summit" },
        { device: "S-03", site: "Base" },
      ],
      dated_stock: [
        { item: "Battery", lot: "BL22", expiry: "2028-11-30", place: "S-01" },
        { item: "Pad", lot: "PL7", expiry: "2027-02-28", place: "S-01" },
        { item: "Battery", lot: "BL25", expiry: "2029-04-30", place: "S-03" },
        { item: "Pad", lot: "PL9", expiry: "2027-09-30", place: "S-03" },
        { item: "Pad", lot: "PL9", expiry: "2027-09-30" },
      ],
    },
  },
  {
    name: "two devices of one name, told apart by their serials",
    text: `Lp.;Nazwa urządzenia;Nr seryjny;Lokalizacja;Data ważności elektrod;Data ważności baterii
1;Defibrylator AED;AB-1;Izba przyjęć;31.03.2027;30.11.2028
2;Defibrylator AED;AB-2;Blok operacyjny;30.04.2027;31.12.2028
`,
    rows: {
      devices: [
        { device: "AB-1", site: "Izba przyjęć" },
        { device: "AB-2", site: "Blok operacyjny" },
      ],
      dated_stock: [
        { expiry: "2027-03-31", place: "AB-1" },
        { expiry: "2028-11-30", place: "AB-1" },
        { expiry: "2027-04-30", place: "AB-2" },
        { expiry: "2028-12-31", place: "AB-2" },
      ],
    },
    unread: ["Lp.", "Nazwa urządzenia"],
  },
  {
    name: "Japanese headings in Latin letters",
    text: `Kanri No.,Setchi basho,Kishu,Seizo bango,Battery kigen,Pad kigen (otona),Pad kigen (shoni)
1,1F Robii,AED-X,N2001,2028/05,2027/03,2027/03
2,2F Jimushitsu,AED-X,N2002,2028/06,2027/04,
`,
    rows: {
      devices: [
        { device: "1", type: "AED-X", site: "1F Robii" },
        { device: "2", type: "AED-X", site: "2F Jimushitsu" },
      ],
      dated_stock: [
        { item: "Battery", expiry: "2028-05-31", place: "1" },
        { item: "Pad otona", expiry: "2027-03-31", place: "1" },
        { item: "Pad shoni", expiry: "2027-03-31", place: "1" },
        { item: "Battery", expiry: "2028-06-30", place: "2" },
        { item: "Pad otona", expiry: "2027-04-30", place: "2" },
      ],
    },
    unread: ["Seizo bango"],
  },
  {
    name: "orders cut short in their headings",
    text: `PO #,Vendor,Description,Qty Ord,Qty Rcvd,Promise Date
1001,Acme,Adult electrodes,20,20,10/15/2026
1002,Acme,Battery pack,4,0,12/01/2026
1003,Beta,ECG paper,10,4,11/20/2026
`,
    rows: {
      on_order: [
        { item: "Battery pack", quantity: 4, arrives: "2026-12-01", order: "1002", supplier: "Acme" },
        { item: "ECG paper", quantity: 6, arrives: "2026-11-20", order: "1003", supplier: "Beta" },
      ],
    },
    aside: [[2, "order-settled"]],
    unread: ["Qty Rcvd"],
  },
  {
    name: "how many are required at a station, before how many are there",
    text: `Station,Item,Qty required,Qty present,Exp date
St 1,Adult pads,4,4,2027-03-31
St 2,Adult pads,4,3,2027-04-30
`,
    rows: {
      dated_stock: [
        { item: "Adult pads", expiry: "2027-03-31", quantity: 4, place: "St 1" },
        { item: "Adult pads", expiry: "2027-04-30", quantity: 3, place: "St 2" },
      ],
    },
    unread: ["Qty required"],
  },
  {
    name: "how many a task requires",
    text: "Task,Frequency,Item,Required qty\nAnnual service,yearly,Adult pads,2\n",
    rows: { routine: [{ task: "Annual service", per_year: 1, item: "Adult pads", quantity: 2 }] },
  },
  {
    name: "required and present units of two vehicles",
    text: `Ambulance 7
Item,Required,Present,Expiry
Adult pads,2,2,05/2027
ECG dots,30,30,12/2026

Ambulance 8
Item,Required,Present,Expiry
Adult pads,2,1,06/2027
`,
    rows: {
      dated_stock: [
        { item: "Adult pads", quantity: 2, expiry: "2027-05-31" },
        { item: "ECG dots", quantity: 30, expiry: "2026-12-31" },
        { item: "Adult pads", quantity: 1, expiry: "2027-06-30", place: "Ambulance 8" },
      ],
    },
    aside: [
      [6, "section-line"],
      [7, "repeated-header"],
    ],
    unread: ["Required"],
  },
];
