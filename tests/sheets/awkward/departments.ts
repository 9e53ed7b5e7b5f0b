import type { AwkwardSheet } from "./awkward-sheet.ts";

/** Sheets of departments: purchasing, workshops, programmes of tests. */
export const DEPARTMENTS: AwkwardSheet[] = [
  {
    name: "open orders, part of them delivered",
    text: `PO Number,PO Line,Item Description,Qty Ordered,Qty Received,Qty Outstanding,Promised Date,Vendor Name
PO-7741,1,Defib pads adult,40,10,30,11/18/2026,Harrow Medical Supply
PO-7741,2,Defib pads child,10,0,10,11/18/2026,Harrow Medical Supply
PO-7802,1,Battery pack monitor,12,0,12,12/04/2026,Cellworks
`,
    rows: {
      on_order: [
        {
          order: "PO-7741",
          item: "Defib pads adult",
          quantity: 30,
          arrives: "2026-11-18",
          supplier: "Harrow Medical Supply",
        },
        {
          order: "PO-7741",
          item: "Defib pads child",
          quantity: 10,
          arrives: "2026-11-18",
          supplier: "Harrow Medical Supply",
        },
        { order: "PO-7802", item: "Battery pack monitor", quantity: 12, arrives: "2026-12-04", supplier: "Cellworks" },
      ],
    },
    unread: ["PO Line", "Qty Ordered", "Qty Received"],
  },
  {
    name: "a price list with a minimum in boxes",
    text: `Price list valid from 1 Jan 2026,,,,,
Article,Description,Units/box,Price per box (EUR),MOQ (boxes),Lead time (weeks)
PA-100,Adult defibrillation pads,10,385.00,1,3
BP-200,Rechargeable battery pack,1,310.00,2,8
GE-300,Conductive gel 250 ml,12,38.40,1,2
`,
    rows: {
      catalogue: [
        {
          item: "PA-100",
          kind: "pads",
          units_per_box: 10,
          price: "385",
          price_per: "box",
          currency: "EUR",
          minimum_order: 10,
          lead_days: 21,
        },
        {
          item: "BP-200",
          kind: "pack",
          units_per_box: 1,
          price: "310",
          price_per: "box",
          currency: "EUR",
          minimum_order: 2,
          lead_days: 56,
        },
        {
          item: "GE-300",
          kind: "gel",
          units_per_box: 12,
          price: "38.40",
          price_per: "box",
          currency: "EUR",
          minimum_order: 12,
          lead_days: 14,
        },
      ],
    },
    unread: ["Description"],
  },
  {
    name: "results with remarks and dates in words",
    text: `serial number of battery,tested,minutes to cut-off,outcome
G-1,12th March 2026,118,pass
G-2,"March 3, 2026",97,pass
G-3,1st of April 2026,41,FAIL - replace
`,
    rows: {
      runtime_tests: [
        { serial: "G-1", date: "2026-03-12", minutes: 118, result: "pass" },
        { serial: "G-2", date: "2026-03-03", minutes: 97, result: "pass" },
        { serial: "G-3", date: "2026-04-01", minutes: 41, result: "fail" },
      ],
    },
  },
  {
    name: "Spanish use by mobile unit",
    text: `Fecha;Material;Cant.;Unidad móvil;Motivo
03/09/2026;Parches adulto;1;SVB 4;uso
14/09/2026;Parches adulto;2;SVB 7;caducado
22/09/2026;Parches pediátricos;1;SVB 4;uso
30/09/2026;Gel conductor;3;SVB 4;reposición
`,
    rows: {
      use_log: [
        { date: "2026-09-03", item: "Parches adulto", quantity: 1, place: "SVB 4", reason: "use" },
        { date: "2026-09-14", item: "Parches adulto", quantity: 2, place: "SVB 7", reason: "lapsed" },
        { date: "2026-09-22", item: "Parches pediátricos", quantity: 1, place: "SVB 4", reason: "use" },
        { date: "2026-09-30", item: "Gel conductor", quantity: 3, place: "SVB 4", reason: "restock" },
      ],
    },
  },
  {
    name: "German test programme",
    text: `Prüfung;Anzahl pro Jahr;Verbrauchsartikel;Menge je Prüfung
Monatliche Funktionsprüfung;12;ECG-Papier;0,1
Jährliche STK;1;Elektroden Erwachsene;1
Akku-Kapazitätstest;2;;
`,
    rows: {
      routine: [
        { task: "Monatliche Funktionsprüfung", per_year: 12, item: "ECG-Papier", quantity: 0.1 },
        { task: "Jährliche STK", per_year: 1, item: "Elektroden Erwachsene", quantity: 1 },
        { task: "Akku-Kapazitätstest", per_year: 2 },
      ],
    },
  },
  {
    name: "serials kept by an apostrophe",
    text: `Serial No.	Item	Date in use	Removed on	Reason removed
'000451	monitor pack	01.02.2021	15.08.2025	capacity low
'000452	monitor pack	01.02.2021		
'000453	AED pack	28.02.2022	03.03.2026	dropped, casing cracked
`,
    rows: {
      packs: [
        {
          serial: "000451",
          item: "monitor pack",
          in_service: "2021-02-01",
          retired: "2025-08-15",
          retired_because: "faded",
        },
        { serial: "000452", item: "monitor pack", in_service: "2021-02-01" },
        {
          serial: "000453",
          item: "AED pack",
          in_service: "2022-02-28",
          retired: "2026-03-03",
          retired_because: "damaged",
        },
      ],
    },
  },
  {
    name: "a German register with two batteries a device",
    text: `Geräteliste Rettungsdienst Landkreis;;;;;
Stand: 01.10.2026;;;;;
;;;;;
Funkrufname;Gerätetyp;Akku 1 SN;Akku 2 SN;Inbetriebnahme;Bemerkung
RTW 1-83-1;Defibrillator;A-0771;A-0772;15.03.2022;
RTW 1-83-2;Defibrillator;A-0773;A-0774;01.04.2022;Display zerkratzt
NEF 1-82-1;Defibrillator;A-0790;A-0791;22.11.2023;
`,
    rows: {
      devices: [
        { device: "RTW 1-83-1", type: "Defibrillator" },
        { device: "RTW 1-83-2", type: "Defibrillator" },
        { device: "NEF 1-82-1", type: "Defibrillator" },
      ],
      packs: [
        { serial: "A-0771", device: "RTW 1-83-1", site: null },
        { serial: "A-0772", device: "RTW 1-83-1", site: null },
        { serial: "A-0773", device: "RTW 1-83-2", site: null },
        { serial: "A-0774", device: "RTW 1-83-2", site: null },
        { serial: "A-0790", device: "NEF 1-82-1", site: null },
        { serial: "A-0791", device: "NEF 1-82-1", site: null },
      ],
    },
    unread: ["Bemerkung"],
  },
  {
    name: "cost centers beside places, which are none",
    text: `Asset,Location,Cost Center,Pads exp
D1,Station 1,4410,2027-03-31
D2,Station 2,4420,2027-04-30
`,
    rows: {
      devices: [
        { device: "D1", site: "Station 1" },
        { device: "D2", site: "Station 2" },
      ],
    },
    unread: ["Cost Center"],
  },
];
