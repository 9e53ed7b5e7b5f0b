import type { AwkwardSheet } from "./awkward-sheet.ts";

/** Lists of other countries, in their own words and their own ways to write dates. */
export const COUNTRIES: AwkwardSheet[] = [
  {
    name: "a fire brigade's list in German, all devices called AED",
    text: `AED-Liste Freiwillige Feuerwehr;;;;;;;
Stand: 15.10.2026;;;;;;;
Lfd. Nr.;Fahrzeug;Gerät;Ser.-Nr.;Akku eingebaut am;Akku ablauf;Pads Erw. ablauf;Pads Kind ablauf
1;HLF 20;AED;00441;12.03.2024;03/2029;05/2027;11/2026
2;MTW;AED;00442;13.03.2024;03/2029;07/2027;
3;ELW 1;AED;00447;30.09.2025;09/2030;05/2027;01/2028
`,
    rows: {
      devices: [
        { device: "00441", type: "AED", site: "HLF 20" },
        { device: "00442", type: "AED", site: "MTW" },
        { device: "00447", type: "AED", site: "ELW 1" },
      ],
      dated_stock: [
        { item: "Akku", expiry: "2029-03-31", place: "00441" },
        { item: "Pads Erw", expiry: "2027-05-31", place: "00441" },
        { item: "Pads Kind", expiry: "2026-11-30", place: "00441" },
        { item: "Akku", expiry: "2029-03-31", place: "00442" },
        { item: "Pads Erw", expiry: "2027-07-31", place: "00442" },
        { item: "Akku", expiry: "2030-09-30", place: "00447" },
        { item: "Pads Erw", expiry: "2027-05-31", place: "00447" },
        { item: "Pads Kind", expiry: "2028-01-31", place: "00447" },
      ],
    },
    unread: ["Lfd. Nr.", "Akku eingebaut am"],
  },
  {
    name: "a French town's devices with what is to be changed before when",
    text: `Commune - parc DAE;;;;;;
N° DAE;Site;Adresse;Tél. référent;Pile installée le;Pile à changer avant;Électrodes adulte (péremption)
1;Mairie;Place du marché 1;02 00 00 00 01;12/01/2024;01/2029;31/03/2027
2;Stade;Rue du stade;02 00 00 00 02;15/01/2024;01/2029;30/04/2027
3;École;Rue des écoles;02 00 00 00 03;20/02/2025;02/2030;30/11/2026
`,
    rows: {
      devices: [
        { device: "1", site: "Mairie" },
        { device: "2", site: "Stade" },
        { device: "3", site: "École" },
      ],
      dated_stock: [
        { item: "Pile", expiry: "2029-01-31", place: "1" },
        { item: "Électrodes adulte", expiry: "2027-03-31", place: "1" },
        { item: "Pile", expiry: "2029-01-31", place: "2" },
        { item: "Électrodes adulte", expiry: "2027-04-30", place: "2" },
        { item: "Pile", expiry: "2030-02-28", place: "3" },
        { item: "Électrodes adulte", expiry: "2026-11-30", place: "3" },
      ],
    },
    unread: ["Adresse", "Tél. référent", "Pile installée le"],
  },
  {
    name: "a Spanish inventory with a serial of the device and one of the battery",
    text: `Servicio;Nº inventario;Equipo;Modelo;Nº serie;Fecha puesta en marcha;Batería nº serie;Fecha batería;Ciclos
Urgencias;INV-221;Desfibrilador;M1;ES00912;14/02/2020;B-0071;20/05/2023;214
UCI;INV-222;Desfibrilador;M1;ES00913;14/02/2020;B-0072;21/05/2023;187
Planta 3;INV-223;DEA;A2;ES00990;30/11/2021;;;
`,
    rows: {
      devices: [
        { device: "INV-221", type: "M1", site: "Urgencias", in_service: "2020-02-14" },
        { device: "INV-222", type: "M1", site: "UCI", in_service: "2020-02-14" },
        { device: "INV-223", type: "A2", site: "Planta 3", in_service: "2021-11-30" },
      ],
      packs: [
        { serial: "B-0071", device: "INV-221", site: "Urgencias", in_service: "2023-05-20", cycles: 214 },
        { serial: "B-0072", device: "INV-222", site: "UCI", in_service: "2023-05-21", cycles: 187 },
      ],
    },
    unread: ["Equipo", "Nº serie"],
  },
  {
    name: "Dutch weeks and quarters",
    text: `Voertuig;Apparaat;Serienr. accu;Accu in gebruik;THT elektroden;Opmerking
17-101;MON-01;A0001;2024-W05;2027-Q2;
17-102;MON-02;A0002;wk 6 2024;Q1 2027;oud
17-103;MON-03;A0003;2024-W09;1e kwartaal 2028;
`,
    rows: {
      devices: [
        { device: "MON-01", site: "17-101" },
        { device: "MON-02", site: "17-102" },
        { device: "MON-03", site: "17-103" },
      ],
      packs: [
        { serial: "A0001", device: "MON-01", site: "17-101", in_service: "2024-01-29" },
        { serial: "A0002", device: "MON-02", site: "17-102", in_service: "2024-02-05" },
        { serial: "A0003", device: "MON-03", site: "17-103", in_service: "2024-02-26" },
      ],
      dated_stock: [
        { item: "elektroden", expiry: "2027-06-30", place: "MON-01" },
        { item: "elektroden", expiry: "2027-03-31", place: "MON-02" },
        { item: "elektroden", expiry: "2028-03-31", place: "MON-03" },
      ],
    },
    unread: ["Opmerking"],
  },
  {
    name: "French packs whose reference is the same in all rows",
    text: `Réf batterie;N° de série;Appareil affecté;Date mise en service;Nb cycles;Réformée le;Motif réforme
BAT-M;20231105-01;MON-7;05-nov-23;211;;
BAT-M;20231105-02;MON-8;05-nov-23;190;;
BAT-M;20190302-11;MON-9;02-mars-19;702;31-déc-25;autonomie insuffisante
`,
    rows: {
      packs: [
        { serial: "20231105-01", item: "BAT-M", device: "MON-7", in_service: "2023-11-05", cycles: 211 },
        { serial: "20231105-02", item: "BAT-M", device: "MON-8", in_service: "2023-11-05", cycles: 190 },
        {
          serial: "20190302-11",
          item: "BAT-M",
          device: "MON-9",
          in_service: "2019-03-02",
          cycles: 702,
          retired: "2025-12-31",
          retired_because: "faded",
        },
      ],
    },
  },
  {
    name: "a German test record",
    text: `Pack;Datum;Dauer (Min.);Last (W);Voll geladen;Vorzeitig beendet;Umgebungstemp. (°C)
P1;03.02.2026;180;25;ja;nein;22
P2;03.02.2026;120;25;ja;ja;22
P3;14.02.2026;95;25;nein;nein;21
`,
    rows: {
      runtime_tests: [
        {
          serial: "P1",
          date: "2026-02-03",
          minutes: 180,
          load_w: 25,
          full_charge: "yes",
          at_least: "no",
          temperature_c: 22,
        },
        {
          serial: "P2",
          date: "2026-02-03",
          minutes: 120,
          load_w: 25,
          full_charge: "yes",
          at_least: "yes",
          temperature_c: 22,
        },
        {
          serial: "P3",
          date: "2026-02-14",
          minutes: 95,
          load_w: 25,
          full_charge: "no",
          at_least: "no",
          temperature_c: 21,
        },
      ],
    },
  },
  {
    name: "Dutch deliveries to come",
    text: `Bestelnummer;Leverancier;Artikel;Besteld;Verwachte leverdatum
NL-1;Zorgco;Elektroden;20;25-11-2026
NL-2;Zorgco;Accu LI2;4;10-12-2026
`,
    rows: {
      on_order: [
        { order: "NL-1", supplier: "Zorgco", item: "Elektroden", quantity: 20, arrives: "2026-11-25" },
        { order: "NL-2", supplier: "Zorgco", item: "Accu LI2", quantity: 4, arrives: "2026-12-10" },
      ],
    },
  },
];
