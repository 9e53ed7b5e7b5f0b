import type { AwkwardSheet } from "./awkward-sheet.ts";

/** Sheets as departments, services, brigades and purchasing offices keep them. */
export const OFFICES: AwkwardSheet[] = [
  {
    name: "a biomedical register, one line a device, with columns that nobody needs",
    text: `Tag #,Unit,Model,Serial #,Location,Floor,Pads 1 Exp,Pads 2 Exp,Ped Pads Exp,Batt Install,Batt Exp,Next Check,Tech Initials,Comments
BM-10021,ED Trauma 1,Monitor/Defib,X100233,Emergency,1,03/31/2027,06/30/2027,,02/14/2024,,12/01/2026,JT,
BM-10022,ICU 4,Monitor/Defib,X100234,ICU,4,04/30/2027,04/30/2027,08/31/2027,02/14/2024,,12/01/2026,JT,crack in lid
BM-10023,Cafeteria,AED,Z55012,Main bldg,1,11/30/2026,,,,09/30/2028,12/15/2026,MK,
`,
    rows: {
      devices: [
        { device: "BM-10021", site: "Emergency", type: "Monitor/Defib" },
        { device: "BM-10022", site: "ICU", type: "Monitor/Defib" },
        { device: "BM-10023", site: "Main bldg", type: "AED" },
      ],
      dated_stock: [
        { item: "Pads", expiry: "2027-03-31", place: "BM-10021" },
        { item: "Pads", expiry: "2027-06-30", place: "BM-10021" },
        { item: "Pads", expiry: "2027-04-30", place: "BM-10022" },
        { item: "Pads", expiry: "2027-04-30", place: "BM-10022" },
        { item: "Ped Pads", expiry: "2027-08-31", place: "BM-10022" },
        { item: "Pads", expiry: "2026-11-30", place: "BM-10023" },
        { item: "Batt", expiry: "2028-09-30", place: "BM-10023" },
      ],
    },
    unread: ["Unit", "Serial #", "Floor", "Batt Install", "Next Check", "Tech Initials", "Comments"],
  },
  {
    name: "a vehicle check sheet whose unit is the vehicle",
    text: `Medic units - AED/Monitor consumables as of 10/28/2026,,,,,,
,,,,,,
Unit,Monitor S/N,Adult Pads Lot,Adult Pads Exp,Peds Pads Lot,Peds Pads Exp,Paper rolls
Medic 1,MX-0441,24K119,05/2027,24P007,02/2027,3
Medic 2,MX-0442,24K119,05/2027,23P990,12/2026,2
Medic 3,MX-0448,25A003,01/2028,,,4
`,
    rows: {
      devices: [
        { device: "MX-0441", site: "Medic 1" },
        { device: "MX-0442", site: "Medic 2" },
        { device: "MX-0448", site: "Medic 3" },
      ],
      dated_stock: [
        { item: "Adult Pads", lot: "24K119", expiry: "2027-05-31", place: "MX-0441" },
        { item: "Peds Pads", lot: "24P007", expiry: "2027-02-28", place: "MX-0441" },
        { item: "Adult Pads", lot: "24K119", expiry: "2027-05-31", place: "MX-0442" },
        { item: "Peds Pads", lot: "23P990", expiry: "2026-12-31", place: "MX-0442" },
        { item: "Adult Pads", lot: "25A003", expiry: "2028-01-31", place: "MX-0448" },
      ],
    },
    unread: ["Paper rolls"],
  },
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
    name: "capacities whose unit only the cells name",
    text: `Battery no.,Tested on,Measured capacity,Load
B-01,2026-02-03,3900 mAh,30 W
B-02,2026-02-03,3450 mAh,30 W
B-03,2026-02-04,2.9 Ah,30 W
`,
    rows: {
      runtime_tests: [
        { serial: "B-01", date: "2026-02-03", ah: 3.9, load_w: 30 },
        { serial: "B-02", date: "2026-02-03", ah: 3.45, load_w: 30 },
        { serial: "B-03", date: "2026-02-04", ah: 2.9, load_w: 30 },
      ],
    },
  },
  {
    name: "a two-row header with batteries A and B",
    text: `Device,,,Battery A,,Battery B,,Electrodes,
Asset,Dept,Model,Serial,In use since,Serial,In use since,Lot,Expires
4401,ED,MD5,BA1,2023-04-01,BA2,2023-04-01,E55,2027-08-31
4402,OR,MD5,BA3,2023-06-15,,,E56,2027-09-30
`,
    rows: {
      devices: [
        { device: "4401", site: "ED", type: "MD5" },
        { device: "4402", site: "OR", type: "MD5" },
      ],
      packs: [
        { serial: "BA1", device: "4401", site: "ED", in_service: "2023-04-01" },
        { serial: "BA2", device: "4401", site: "ED", in_service: "2023-04-01" },
        { serial: "BA3", device: "4402", site: "OR", in_service: "2023-06-15" },
      ],
      dated_stock: [
        { item: "Electrodes", lot: "E55", expiry: "2027-08-31", place: "4401" },
        { item: "Electrodes", lot: "E56", expiry: "2027-09-30", place: "4402" },
      ],
    },
  },
  {
    name: "dates of spares beside words for yes and no",
    text: `Ward;AED no.;Status OK?;Pads date;Spare pads?;Spare pads date;Battery date
A1;AED-001;Y;05/2027;Y;06/2027;03/2029
A2;AED-002;Y;06/2027;N;;04/2029
B1;AED-003;N;11/2026;Y;01/2027;05/2029
`,
    rows: {
      devices: [
        { device: "AED-001", site: "A1" },
        { device: "AED-002", site: "A2" },
        { device: "AED-003", site: "B1" },
      ],
      dated_stock: [
        { item: "Pads", expiry: "2027-05-31", place: "AED-001" },
        { item: "Spare pads", expiry: "2027-06-30", place: "AED-001" },
        { item: "Battery", expiry: "2029-03-31", place: "AED-001" },
        { item: "Pads", expiry: "2027-06-30", place: "AED-002" },
        { item: "Battery", expiry: "2029-04-30", place: "AED-002" },
        { item: "Pads", expiry: "2026-11-30", place: "AED-003" },
        { item: "Spare pads", expiry: "2027-01-31", place: "AED-003" },
        { item: "Battery", expiry: "2029-05-31", place: "AED-003" },
      ],
    },
    unread: ["Status OK?", "Spare pads?"],
  },
  {
    name: "typing errors in nearly every header",
    text: `Devcie,Loction,Battrey Serail,Instal date,Cylces,Pads Expirey,Pads Lott
D1,East,B9,2024-01-05,10,2027-02-28,Q1
D2,West,B8,2024-01-06,22,2027-03-31,Q2
`,
    rows: {
      devices: [
        { device: "D1", site: "East" },
        { device: "D2", site: "West" },
      ],
      packs: [
        { serial: "B9", device: "D1", site: "East", in_service: "2024-01-05", cycles: 10 },
        { serial: "B8", device: "D2", site: "West", in_service: "2024-01-06", cycles: 22 },
      ],
      dated_stock: [
        { item: "Pads", expiry: "2027-02-28", lot: "Q1", place: "D1" },
        { item: "Pads", expiry: "2027-03-31", lot: "Q2", place: "D2" },
      ],
    },
  },
  {
    name: "expiries written out in their cells under a thing's name",
    text: `Unit,Pads Adult,Pads Child
Engine 1,Exp: 03/2027,Exp: 01/2027
Engine 2,Exp: 04/2027,exp 12/2026
Ladder 1,exp. 05/27,none
`,
    rows: {
      dated_stock: [
        { item: "Pads Adult", expiry: "2027-03-31", place: "Engine 1" },
        { item: "Pads Child", expiry: "2027-01-31", place: "Engine 1" },
        { item: "Pads Adult", expiry: "2027-04-30", place: "Engine 2" },
        { item: "Pads Child", expiry: "2026-12-31", place: "Engine 2" },
        { item: "Pads Adult", expiry: "2027-05-31", place: "Ladder 1" },
      ],
      devices: [{ device: "Engine 1" }, { device: "Engine 2" }, { device: "Ladder 1" }],
    },
  },
  {
    name: "a price list with units of measure and a currency in its header",
    text: `Item Number,Item Description,Category,Preferred Vendor,List Price (USD),Unit of Measure,Qty per Box,MOQ,Lead Time (weeks),Shelf Life (months)
PAD-A,Adult electrode pads,Electrodes,MedCo,42.50,EA,1,5,3,30
PAD-P,Pediatric electrode pads,Electrodes,MedCo,55.00,EA,1,5,3,30
BAT-L,Rechargeable battery,Battery,PowerCo,410.00,EA,1,1,6,
GEL-2,Electrode gel,Gel,MedCo,3.25,EA,12,12,2,36
`,
    rows: {
      catalogue: [
        {
          item: "PAD-A",
          kind: "pads",
          supplier: "MedCo",
          price: "42.50",
          currency: "USD",
          price_per: "unit",
          units_per_box: 1,
          minimum_order: 5,
          lead_days: 21,
          shelf_months: 30,
        },
        {
          item: "PAD-P",
          kind: "pads",
          supplier: "MedCo",
          price: "55",
          currency: "USD",
          price_per: "unit",
          units_per_box: 1,
          minimum_order: 5,
          lead_days: 21,
          shelf_months: 30,
        },
        {
          item: "BAT-L",
          kind: "pack",
          supplier: "PowerCo",
          price: "410",
          currency: "USD",
          price_per: "unit",
          units_per_box: 1,
          minimum_order: 1,
          lead_days: 42,
        },
        {
          item: "GEL-2",
          kind: "gel",
          supplier: "MedCo",
          price: "3.25",
          currency: "USD",
          price_per: "unit",
          units_per_box: 12,
          minimum_order: 12,
          lead_days: 14,
          shelf_months: 36,
        },
      ],
    },
    unread: ["Item Description"],
  },
  {
    name: "an equipment list with a serial beside the device's number",
    text: `Equip ID,Equip Description,Manufacturer,Model No,Serial No,Dept,Room,Acq Date,Acq Cost,PM Due,Risk
DF-01,DEFIBRILLATOR,-,MD-1,S88101,ED,R12,4/15/2019,12500,1/31/2027,High
DF-02,DEFIBRILLATOR,-,MD-1,S88102,ICU,R40,4/15/2019,12500,1/31/2027,High
DF-03,DEFIBRILLATOR,-,MD-2,S90455,OR,R2,9/30/2021,13900,2/28/2027,High
`,
    rows: {
      devices: [
        { device: "DF-01", type: "MD-1", site: "ED", in_service: "2019-04-15" },
        { device: "DF-02", type: "MD-1", site: "ICU", in_service: "2019-04-15" },
        { device: "DF-03", type: "MD-2", site: "OR", in_service: "2021-09-30" },
      ],
    },
    unread: ["Equip Description", "Manufacturer", "Serial No", "Room", "Acq Cost", "PM Due", "Risk"],
  },
  {
    name: "capacities by year without a date",
    text: `Serial,Cap 2024 (%),Cap 2025 (%),Cap 2026 (%)
B1,98,93,88
B2,97,94,90
`,
    rows: {},
    aside: [
      [2, "unknown-table"],
      [3, "unknown-table"],
    ],
    findings: ["unknown-table"],
    unread: ["Serial", "Cap 2024 (%)", "Cap 2025 (%)", "Cap 2026 (%)"],
  },
  {
    name: "what was replaced and what is next due",
    text: `Ward,Defib Asset No,Batt Last Replaced,Batt Next Due,Pads Expire,Gel Expire,Paper (Y/N)
W1,DF100,15-Jan-25,15-Jan-28,31-Mar-27,30-Jun-27,Y
W2,DF101,20-Jan-25,20-Jan-28,30-Apr-27,31-Jul-27,N
`,
    rows: {
      devices: [
        { device: "DF100", site: "W1" },
        { device: "DF101", site: "W2" },
      ],
      dated_stock: [
        { item: "Batt", expiry: "2028-01-15", place: "DF100" },
        { item: "Pads", expiry: "2027-03-31", place: "DF100" },
        { item: "Gel", expiry: "2027-06-30", place: "DF100" },
        { item: "Batt", expiry: "2028-01-20", place: "DF101" },
        { item: "Pads", expiry: "2027-04-30", place: "DF101" },
        { item: "Gel", expiry: "2027-07-31", place: "DF101" },
      ],
    },
    unread: ["Batt Last Replaced", "Paper (Y/N)"],
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
    name: "weeks and a Roman quarter",
    text: `Artikel;Charge;MHD;Bestand
Pads;C1;KW 23/2027;4
Pads;C2;KW 40/2027;4
Gel;C3;III. Quartal 2027;9
`,
    rows: {
      dated_stock: [
        { item: "Pads", lot: "C1", expiry: "2027-06-13", quantity: 4 },
        { item: "Pads", lot: "C2", expiry: "2027-10-10", quantity: 4 },
        { item: "Gel", lot: "C3", expiry: "2027-09-30", quantity: 9 },
      ],
    },
  },
  {
    name: "column names run together",
    text: `serialno,partno,mfgdate,svcdate,cyc
77001,LB2,20210315,20210601,310
77002,LB2,20210315,20210601,288
`,
    rows: {
      packs: [
        { serial: "77001", item: "LB2", made: "2021-03-15", in_service: "2021-06-01", cycles: 310 },
        { serial: "77002", item: "LB2", made: "2021-03-15", in_service: "2021-06-01", cycles: 288 },
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
  {
    name: "boxes beside their size, and a unit of measure that is a box",
    text: `Product,Units/box,Stock,UOM,Exp.,Lot
Adult pads,10,2 boxes,BX,2027-08-31,Z1
Child pads,5,1,BX,2027-07-31,Z2
Gel,12,7,EA,2027-01-31,Z3
Paper,,3,BX,2028-01-31,Z4
`,
    rows: {
      dated_stock: [
        { item: "Adult pads", quantity: 20, expiry: "2027-08-31", lot: "Z1" },
        { item: "Child pads", quantity: 5, expiry: "2027-07-31", lot: "Z2" },
        { item: "Gel", quantity: 7, expiry: "2027-01-31", lot: "Z3" },
      ],
    },
    aside: [[5, "boxes-unknown"]],
    findings: ["boxes-unknown"],
    unread: ["Units/box", "UOM"],
  },
];
