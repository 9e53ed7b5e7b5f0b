import type { AwkwardSheet } from "./awkward-sheet.ts";

/** Sheets that somebody else made, whose columns are named in other ways than their cells are meant. */
export const INHERITED: AwkwardSheet[] = [
  {
    name: "devices by their kind, with a serial number each",
    text: `Device,Serial no,Department,Purchased
Defibrillator,5501,ED,2019-05-01
Defibrillator,5502,ICU,2020-05-01
Patient monitor,5503,ICU,2020-06-01
`,
    rows: {
      devices: [
        { device: "5501", type: "Defibrillator", site: "ED" },
        { device: "5502", type: "Defibrillator", site: "ICU" },
        { device: "5503", type: "Patient monitor", site: "ICU" },
      ],
    },
  },
  {
    name: "numbers of tags that devices wear",
    text: `tag_id,asset_name,asset_type,zone
E2001,MD-01,defibrillator,ED
E2002,PM-01,patient monitor,OR 2
`,
    rows: { devices: [{ device: "MD-01", site: "ED" }, { device: "PM-01" }], packs: [] },
    unread: ["tag_id"],
  },
  {
    name: "numbers of tags beside expiries",
    text: `asset_name,pads exp,tag_id
MD-01,2027-03-31,E2001
MD-02,2027-04-30,E2002
`,
    rows: {
      dated_stock: [
        { item: "pads", place: "MD-01" },
        { item: "pads", place: "MD-02" },
      ],
    },
    unread: ["tag_id"],
  },
  {
    name: "a stock card, whose references are no batteries",
    text: `Date,Ref,In,Out,Balance
13.02.2026,LS-1,20,,20
14.03.2026,M1,,2,18
`,
    rows: { packs: [] },
    aside: [
      [2, "unknown-table"],
      [3, "unknown-table"],
    ],
    findings: ["unknown-table"],
    unread: ["Date", "Ref", "In", "Out", "Balance"],
  },
  {
    name: "prices of packages",
    text: `Art.No,Description,Pack size,Price/pack,MOQ,Valid until,Lead time
Q-1,Adult pads,1,42.50,10,2026-12-31,2 weeks
Q-2,Gel 100 ml,box of 12,50.40,1,2026-12-31,5 days
`,
    rows: {
      catalogue: [
        { item: "Q-1", price: "42.50", price_per: "box", units_per_box: 1, minimum_order: 10, lead_days: 14 },
        { item: "Q-2", price: "50.40", price_per: "box", units_per_box: 12, lead_days: 5 },
      ],
      dated_stock: [],
    },
    unread: ["Description", "Valid until"],
  },
  {
    name: "counts in a store and in vehicles that go by codes",
    text: `Item,Lot,Expiry,Store,M1,RTW 2,Total
Adult pads,A1,2027-03-31,10,2,3,15
Child pads,C1,2027-05-31,4,1,1,6
`,
    rows: {
      dated_stock: [
        { item: "Adult pads", quantity: 10, place: "Store" },
        { item: "Adult pads", quantity: 2, place: "M1" },
        { item: "Adult pads", quantity: 3, place: "RTW 2" },
        { item: "Child pads", quantity: 4, place: "Store" },
        { item: "Child pads", quantity: 1, place: "M1" },
        { item: "Child pads", quantity: 1, place: "RTW 2" },
      ],
    },
    unread: ["Total"],
  },
  {
    name: "counts over a thousand",
    text: `Item;Lot;Best before;Counted;Book
ECG-Elektroden;K1;03/2027;1.200;1.250
Gel;K3;08/2027;36;40
`,
    rows: {
      dated_stock: [
        { item: "ECG-Elektroden", quantity: 1200 },
        { item: "Gel", quantity: 36 },
      ],
    },
    unread: ["Book"],
  },
  {
    name: "days as day numbers on which cycles were read",
    text: "Battery,Fitted,Cycles,Date read\nB1,2023-01-15,310,46314\nB2,2023-02-15,190,46315\n",
    rows: {
      packs: [
        { serial: "B1", cycles: 310, cycles_on: "2026-10-19" },
        { serial: "B2", cycles: 190 },
      ],
    },
  },
  {
    name: "units in brackets below the names of an analyser's columns",
    text: `SerialNumber,TestDate,Runtime,Energy,CycleCount
,,[h],[Wh],[-]
901,2026-04-02 10:11:12,2.5,71.2,88
902,2026-04-02 12:45:00,2,50.8,260
`,
    rows: {
      runtime_tests: [
        { serial: "901", date: "2026-04-02", minutes: 150, wh: 71.2, cycles: 88 },
        { serial: "902", minutes: 120, wh: 50.8, cycles: 260 },
      ],
    },
  },
  {
    name: "runtimes in minutes and seconds",
    text: "Battery,Date,Runtime (mm:ss)\nB1,2026-05-04,152:30\nB2,2026-05-15,98:45\n",
    rows: {
      runtime_tests: [
        { serial: "B1", minutes: 152.5 },
        { serial: "B2", minutes: 98.75 },
      ],
    },
  },
  {
    name: "a battery in the alarm of a cabinet",
    text: `AED,Cabinet alarm battery,AED battery exp,Pads exp
A1,2026-02,2028-06,2027-03
A2,2026-03,2029-06,2027-04
`,
    rows: {
      dated_stock: [
        { item: "AED battery", expiry: "2028-06-30", place: "A1" },
        { item: "Pads", expiry: "2027-03-31" },
        { item: "AED battery", expiry: "2029-06-30", place: "A2" },
        { item: "Pads", expiry: "2027-04-30" },
      ],
    },
    unread: ["Cabinet alarm battery"],
  },
  {
    name: "several dates, or how many of one, in a cell below pads alone",
    text: `AED;Pads
AED-1;31.03.2027 / 31.05.2027
AED-2;30.04.2027, 30.06.2027
AED-3;2x 31.07.2027
`,
    rows: {
      dated_stock: [
        { expiry: "2027-03-31", place: "AED-1" },
        { expiry: "2027-05-31", place: "AED-1" },
        { expiry: "2027-04-30", place: "AED-2" },
        { expiry: "2027-06-30", place: "AED-2" },
        { expiry: "2027-07-31", place: "AED-3", quantity: 2 },
      ],
    },
  },
  {
    name: "dates below pads that cannot be told apart",
    text: "AED;Pads\nA1;A 03/27, C 05/27\nA2;A 04/27\n",
    rows: { devices: [{ device: "A1" }, { device: "A2" }], dated_stock: [] },
    findings: ["thing-unread"],
    unread: ["Pads"],
  },
  {
    name: "the day of a battery's change beside a year",
    text: "Device,Battery replaced,Next replacement\nMD-1,2024-03-14,2028\nMD-2,2024-05-14,2028\n",
    rows: { devices: [{ device: "MD-1" }, { device: "MD-2" }] },
    findings: ["thing-unread", "date-impossible"],
    unread: ["Battery replaced"],
  },
  {
    name: "where batteries are now and since when",
    text: "Battery,Now in,Since,Cycles\nB1,MD-1,2026-10-02,120\nB2,MD-2,2026-10-19,131\n",
    rows: {
      packs: [
        { serial: "B1", in_service: null, cycles: 120 },
        { serial: "B2", in_service: null },
      ],
    },
    unread: ["Now in", "Since"],
  },
  {
    name: "a state and since when",
    text: "Battery,Device,In service,State,State since\nB1,MD-1,2023-01-05,OK,\nB3,MD-3,2021-01-17,scrapped,2026-05-04\n",
    rows: {
      packs: [
        { serial: "B1", retired: null },
        { serial: "B3", retired: "2026-05-04", in_service: "2021-01-17" },
      ],
    },
  },
  {
    name: "cells that say that they are as those above",
    text: "Device,Battery,Battery fitted\nMD-1,B1,2023-04-05\nMD-2,B2,as above\nMD-3,B3,Wie oben\nMD-4,B4,2024-05-20\n",
    rows: {
      packs: [
        { serial: "B1", in_service: "2023-04-05" },
        { serial: "B2", in_service: "2023-04-05" },
        { serial: "B3", in_service: "2023-04-05" },
        { serial: "B4", in_service: "2024-05-20" },
      ],
    },
  },
  {
    name: "batteries with days of renewal at gates",
    text: "Gate,AED tag,Battery renew by\nA12,FA-01,09/2028\nB03,FC-02,03/2029\n",
    rows: {
      devices: [
        { device: "FA-01", site: "A12" },
        { device: "FC-02", site: "B03" },
      ],
      dated_stock: [
        { item: "Battery", expiry: "2028-09-30", place: "FA-01" },
        { item: "Battery", expiry: "2029-03-31", place: "FC-02" },
      ],
    },
  },
  {
    name: "places and changes in Norwegian, days of fitting in Polish and Portuguese",
    text: `Hjertestarter;Sted;Batteri byttet
HS-01;Rådhus;14.03.2024
HS-02;Skole;25.03.2024

Urządzenie;Nr seryjny baterii;Data instalacji
AED-1;PB1;12.03.2024
AED-2;PB2;25.03.2024

Equipamento;N.º série bateria;Data de colocação
DAE-1;BB1;12/03/2024
DAE-2;BB2;25/03/2024
`,
    rows: {
      devices: [{ device: "HS-01", site: "Rådhus" }, { site: "Skole" }, {}, {}, {}, {}],
      packs: [
        { device: "HS-01", in_service: "2024-03-14" },
        { device: "HS-02", in_service: "2024-03-25" },
        { serial: "PB1", device: "AED-1", in_service: "2024-03-12" },
        { serial: "PB2", in_service: "2024-03-25" },
        { serial: "BB1", device: "DAE-1", in_service: "2024-03-12" },
        { serial: "BB2", in_service: "2024-03-25" },
      ],
    },
  },
  {
    name: "rounds in which batteries were found charged so far, which tells nothing of their capacity",
    text: "Battery,Charge % 03/26,Charge % 06/26\nB1,98,97\nB2,100,71\n",
    rows: { runtime_tests: [] },
    aside: [
      [2, "unknown-table"],
      [3, "unknown-table"],
    ],
    findings: ["unknown-table"],
    unread: ["Battery", "Charge % 03/26", "Charge % 06/26"],
  },
  {
    name: "a day, a month and a year in columns of their own",
    text: "Battery,Device,Day,Month,Year\nB1,MD-1,4,3,2024\nB2,MD-2,15,4,2024\n",
    rows: { packs: [{ serial: "B1", device: "MD-1" }, { serial: "B2" }], devices: [] },
    findings: ["little-read"],
    unread: ["Day", "Month", "Year"],
  },
  {
    name: "what was ordered and has come, in Italian",
    text: `Ordine;Articolo;Q.tà ordinata;Q.tà ricevuta;Data consegna prevista
O1;Elettrodi adulti;20;12;15/12/2026
O2;Gel;24;0;20/12/2026
`,
    rows: {
      on_order: [
        { item: "Elettrodi adulti", quantity: 8, arrives: "2026-12-15" },
        { item: "Gel", quantity: 24 },
      ],
    },
    unread: ["Q.tà ricevuta"],
  },
  {
    name: "devices without a battery of their own, and why",
    text: "Device,Battery S/N,Pads exp\nMD-1,B1,2027-03-31\nMD-2,n/a (mains),2027-04-30\n",
    rows: { packs: [{ serial: "B1" }], devices: [{ device: "MD-1" }, { device: "MD-2" }], dated_stock: [{}, {}] },
    findings: ["missing-required"],
  },
  {
    name: "counts of supplies beside the earliest of their expiries",
    text: "Vehicle,Adult pads,Gel,Earliest expiry\nM1,2,1,2027-03-31\nM2,2,2,2027-05-31\n",
    rows: { dated_stock: [{ item: "Gel" }, { item: "Gel" }] },
    findings: ["thing-unread"],
    unread: ["Adult pads"],
  },
  {
    name: "a first line of words that no Latin letter is in",
    text: "Device,Site\nДефибриллятор,Зал\nМонитор,Склад\n",
    rows: {
      devices: [
        { device: "Дефибриллятор", site: "Зал" },
        { device: "Монитор", site: "Склад" },
      ],
    },
  },
  {
    name: "what is there and what is the least of it, in Portuguese",
    text: `Material;Lote;Validade;Qtd. existente;Qtd. mínima
Pás adulto;L1;03/2027;8;6
Gel condutor;L2;06/2027;12;6
`,
    rows: {
      dated_stock: [
        { lot: "L1", quantity: 8 },
        { lot: "L2", quantity: 12 },
      ],
      catalogue: [],
    },
    unread: ["Qtd. mínima"],
  },
  {
    name: "how much of lots was delivered",
    text: "Item,Delivered,Lot,Exp\nAdult pads,20,A1,03/2028\nECG paper,24,P1,12/2029\n",
    rows: {
      dated_stock: [
        { lot: "A1", quantity: 20 },
        { lot: "P1", quantity: 24 },
      ],
    },
  },
  {
    name: "days of swaps of batteries that stand in no list of them",
    text: "Device S/N,Last battery swap,Next battery swap\n5501,2024-03-14,2027-03-14\n5502,2025-05-20,2028-05-20\n",
    rows: { devices: [{ device: "5501" }, { device: "5502" }] },
    findings: ["thing-unread"],
    unread: ["Last battery swap", "Next battery swap"],
  },
  {
    name: "batteries that are good until a day, in Polish",
    text: "AED nr;Bateria ważna do\nAED-1;30.06.2028\nAED-2;31.07.2028\n",
    rows: { dated_stock: [{ item: "Bateria", expiry: "2028-06-30", place: "AED-1" }, { expiry: "2028-07-31" }] },
  },
];
