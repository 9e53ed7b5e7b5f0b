import type { AwkwardSheet } from "./awkward-sheet.ts";

/** Wide registers: devices, packs and dated units in one line. */
export const REGISTERS: AwkwardSheet[] = [
  {
    name: "a register with a title, two pads and a total",
    text: `Fleet register, printed 01/11/2026

Asset No,Location,Model,Install Dt,Batt S/N,Batt Install,Pad 1 exp,Pad 2 exp,Comment
D-001,Station 1,MD,23/05/2019,000817,14-Mar-22,03/2027,04/2027,ok
D-002,Station 2,MD,01/06/2019,000818,14-Mar-22,05/2027,,
Total,,,,2,,,,
`,
    rows: {
      devices: [
        { device: "D-001", site: "Station 1", type: "MD", in_service: "2019-05-23" },
        { device: "D-002", site: "Station 2", type: "MD", in_service: "2019-06-01" },
      ],
      packs: [
        { serial: "000817", device: "D-001", in_service: "2022-03-14" },
        { serial: "000818", device: "D-002", in_service: "2022-03-14" },
      ],
      dated_stock: [
        { item: "Pad", expiry: "2027-03-31", place: "D-001", quantity: 1 },
        { item: "Pad", expiry: "2027-04-30", place: "D-001", quantity: 1 },
        { item: "Pad", expiry: "2027-05-31", place: "D-002", quantity: 1 },
      ],
    },
    aside: [[6, "total-row"]],
    unread: ["Comment"],
  },
  {
    name: "a two-row header with groups",
    text: `,,,Battery,,,Adult pads,,Paediatric pads,
Device,Site,Type,S/N,Installed,Cycles,Expiry,Lot,Expiry,Lot
D1,North,AED,B1,2022-01-01,12,2027-01-31,L1,2028-02-29,C7
D2,South,AED,B2,2022-02-01,40,2027-02-28,L2,,
`,
    rows: {
      devices: [
        { device: "D1", site: "North", type: "AED" },
        { device: "D2", site: "South", type: "AED" },
      ],
      packs: [
        { serial: "B1", device: "D1", in_service: "2022-01-01", cycles: 12 },
        { serial: "B2", device: "D2", in_service: "2022-02-01", cycles: 40 },
      ],
      dated_stock: [
        { item: "Adult pads", expiry: "2027-01-31", lot: "L1", place: "D1" },
        { item: "Paediatric pads", expiry: "2028-02-29", lot: "C7", place: "D1" },
        { item: "Adult pads", expiry: "2027-02-28", lot: "L2", place: "D2" },
      ],
    },
  },
  {
    name: "columns that belong to the thing on their left",
    text: `Device ID,Station,Battery serial,Install date,Cycle count,Electrodes,Use by,Batch
D1,North,B1,2022-01-13,12,EL-A,2027-01-31,L1
D1,North,B2,2023-01-13,15,EL-A,2027-01-31,L2
D2,South,B3,2023-01-14,11,EL-C,2027-03-31,L2
`,
    rows: {
      devices: [
        { device: "D1", site: "North" },
        { device: "D2", site: "South" },
      ],
      packs: [
        { serial: "B1", device: "D1", in_service: "2022-01-13", cycles: 12 },
        { serial: "B2", device: "D1", in_service: "2023-01-13", cycles: 15 },
        { serial: "B3", device: "D2", in_service: "2023-01-14", cycles: 11 },
      ],
      dated_stock: [
        { item: "EL-A", expiry: "2027-01-31", lot: "L1", place: "D1" },
        { item: "EL-A", expiry: "2027-01-31", lot: "L2", place: "D1" },
        { item: "EL-C", expiry: "2027-03-31", lot: "L2", place: "D2" },
      ],
    },
  },
  {
    name: "two batteries a device",
    text: `Defib,Base,Battery 1 SN,Battery 1 cycles,Battery 2 SN,Battery 2 cycles
M1,Harbour,A1,100,A2,90
M2,Harbour,A3,80,,
`,
    rows: {
      devices: [
        { device: "M1", site: "Harbour" },
        { device: "M2", site: "Harbour" },
      ],
      packs: [
        { serial: "A1", device: "M1", cycles: 100 },
        { serial: "A2", device: "M1", cycles: 90 },
        { serial: "A3", device: "M2", cycles: 80 },
      ],
    },
  },
  {
    name: "a German register with semicolons",
    text: `Gerätenummer;Standort;Inbetriebnahme;Akku-Seriennummer;Ladezyklen;Elektroden Verfall;Elektroden Charge;Bemerkung
G1;Wache 1;21.02.2020;0012;1.214;31.12.2026;A1;x
G2;Wache 2;01.03.2020;0013;87;28.02.2027;A2;
Summe;;;;1.301;;;
`,
    rows: {
      devices: [
        { device: "G1", site: "Wache 1", in_service: "2020-02-21" },
        { device: "G2", site: "Wache 2", in_service: "2020-03-01" },
      ],
      packs: [
        { serial: "0012", device: "G1", cycles: 1214 },
        { serial: "0013", device: "G2", cycles: 87 },
      ],
      dated_stock: [
        { item: "Elektroden", expiry: "2026-12-31", lot: "A1", place: "G1" },
        { item: "Elektroden", expiry: "2027-02-28", lot: "A2", place: "G2" },
      ],
    },
    aside: [[4, "total-row"]],
    unread: ["Bemerkung"],
  },
  {
    name: "a French register",
    text: `Appareil;Emplacement;Mise en service;N° série batterie;Date péremption électrodes;Lot électrodes
DAE 1;Mairie;13/05/2021;FB-1;31/01/2027;E1
DAE 2;Gymnase;14/05/2021;FB-2;28/02/2027;E2
`,
    rows: {
      devices: [
        { device: "DAE 1", site: "Mairie", in_service: "2021-05-13" },
        { device: "DAE 2", site: "Gymnase", in_service: "2021-05-14" },
      ],
      packs: [
        { serial: "FB-1", device: "DAE 1" },
        { serial: "FB-2", device: "DAE 2" },
      ],
      dated_stock: [
        { expiry: "2027-01-31", lot: "E1", place: "DAE 1" },
        { expiry: "2027-02-28", lot: "E2", place: "DAE 2" },
      ],
    },
  },
  {
    name: "a Spanish register",
    text: `Equipo,Ubicación,Fecha de instalación,Nº de serie batería,Caducidad parches
E1,Planta 1,2020-05-13,SB1,mar 2027
E2,Planta 2,2020-05-14,SB2,dic 2026
`,
    rows: {
      devices: [
        { device: "E1", site: "Planta 1", in_service: "2020-05-13" },
        { device: "E2", site: "Planta 2", in_service: "2020-05-14" },
      ],
      packs: [{ serial: "SB1" }, { serial: "SB2" }],
      dated_stock: [
        { expiry: "2027-03-31", place: "E1" },
        { expiry: "2026-12-31", place: "E2" },
      ],
    },
  },
  {
    name: "a Dutch register",
    text: `Toestel;Locatie;In gebruik sinds;Serienummer accu;Elektroden houdbaar tot
T1;Hal;2021-03-05;NB1;mrt 2027
T2;Kantine;2021-03-06;NB2;okt 2027
`,
    rows: {
      devices: [
        { device: "T1", site: "Hal", in_service: "2021-03-05" },
        { device: "T2", site: "Kantine", in_service: "2021-03-06" },
      ],
      packs: [{ serial: "NB1" }, { serial: "NB2" }],
      dated_stock: [{ expiry: "2027-03-31" }, { expiry: "2027-10-31" }],
    },
  },
  {
    name: "section lines and a note between the rows",
    text: `Device,Type,Site,Battery S/N,Battery expiry
Station 3,,,,
M-01,AED,Front,P1,2028-05
M-02,AED,Back,P2,2028-06
Station 4,,,,
M-03,AED,Front,P3,2028-07
* checked by phone,,,,
`,
    rows: {
      devices: [{ device: "M-01" }, { device: "M-02" }, { device: "M-03" }],
      packs: [{ serial: "P1" }, { serial: "P2" }, { serial: "P3" }],
      dated_stock: [
        { serial: "P1", expiry: "2028-05-31", place: "M-01" },
        { serial: "P2", expiry: "2028-06-30", place: "M-02" },
        { serial: "P3", expiry: "2028-07-31", place: "M-03" },
      ],
    },
    aside: [
      [2, "section-line"],
      [5, "section-line"],
      [7, "note-row"],
    ],
  },
  {
    name: "tests beside the packs, numbered",
    text: `Pack serial,Unit,Test 1 date,Test 1 %,Test 2 date,Test 2 %
B1,D1,2024-05-01,97,2025-05-02,91
B2,D2,2024-05-03,96 %,,
`,
    rows: {
      packs: [{ serial: "B1" }, { serial: "B2" }],
      runtime_tests: [
        { serial: "B1", date: "2024-05-01", percent: 97 },
        { serial: "B1", date: "2025-05-02", percent: 91 },
        { serial: "B2", date: "2024-05-03", percent: 96 },
      ],
    },
  },
  {
    name: "vehicles with lettered batteries",
    text: `Vehicle,Adult pads 1 exp,Adult pads 2 exp,Gel exp,Monitor battery A,Batt A date,Monitor battery B,Batt B date
Medic 1,2027-05,2027-11,2027-08,MB-101,2023-04-12,MB-102,2023-04-12
Medic 2,2027-05,2026-10,EXPIRED,MB-103,2021-02-01,MB-104,2021-02-01
`,
    rows: {
      packs: [
        { serial: "MB-101", device: "Medic 1", in_service: "2023-04-12" },
        { serial: "MB-102", device: "Medic 1", in_service: "2023-04-12" },
        { serial: "MB-103", device: "Medic 2", in_service: "2021-02-01" },
        { serial: "MB-104", device: "Medic 2", in_service: "2021-02-01" },
      ],
    },
    findings: ["date-presumed", "fault-unread"],
  },
  {
    name: "a register whose serials are the devices', with the test of each one's battery",
    text: `Asset,Model,Serial No,Ward,Battery health,Battery checked
A-1,Mon X,SN100,W1,92%,2026-04-01
A-2,Mon X,SN101,W2,74%,2026-04-02
`,
    rows: {
      devices: [
        { device: "A-1", type: "Mon X", site: "W1" },
        { device: "A-2", type: "Mon X", site: "W2" },
      ],
      packs: [
        { serial: "A-1", device: "A-1", item: null },
        { serial: "A-2", device: "A-2", item: null },
      ],
      runtime_tests: [
        { serial: "A-1", date: "2026-04-01", percent: 92 },
        { serial: "A-2", date: "2026-04-02", percent: 74 },
      ],
    },
    findings: ["battery-unnamed"],
    unread: ["Serial No"],
  },
  {
    name: "tests of batteries whose serials stand behind a device that comes twice",
    text: `Device,Serial,Battery capacity,Battery tested
M1,X123,84 %,2026-05-13
M1,X125,86 %,2026-05-13
M2,X124,91 %,2026-05-14
`,
    rows: {
      packs: [
        { serial: "X123", device: "M1" },
        { serial: "X125", device: "M1" },
        { serial: "X124", device: "M2" },
      ],
      runtime_tests: [
        { serial: "X123", percent: 84 },
        { serial: "X125", percent: 86 },
        { serial: "X124", percent: 91 },
      ],
    },
  },
  {
    name: "two lettered batteries of a monitor, each with its own expiry, of one item",
    text: `Vehicle,Monitor SN,Monitor battery A,A exp,Monitor battery B,B exp
M1,MN-1,B1,06/2028,B2,06/2028
M2,MN-2,B3,07/2028,B4,08/2028
`,
    rows: {
      packs: [
        { serial: "B1", item: "Monitor battery", device: "MN-1" },
        { serial: "B2", item: "Monitor battery", device: "MN-1" },
        { serial: "B3", item: "Monitor battery", device: "MN-2" },
        { serial: "B4", item: "Monitor battery", device: "MN-2" },
      ],
      dated_stock: [
        { serial: "B1", expiry: "2028-06-30" },
        { serial: "B2", expiry: "2028-06-30" },
        { serial: "B3", expiry: "2028-07-31" },
        { serial: "B4", expiry: "2028-08-31" },
      ],
    },
  },
  {
    name: "the expiry of a spare battery, which is not that of the battery with a number",
    text: `AED,Battery S/N,Battery exp,Spare battery exp
D1,B1,2028-06-30,2029-06-30
D2,B2,2028-07-31,
`,
    rows: {
      packs: [{ serial: "B1" }, { serial: "B2" }],
      dated_stock: [
        { item: "Battery", expiry: "2028-06-30", serial: "B1", place: "D1" },
        { item: "Spare battery", expiry: "2029-06-30", serial: null, place: "D1" },
        { item: "Battery", expiry: "2028-07-31", serial: "B2", place: "D2" },
      ],
    },
  },
  {
    name: "one battery with its installation and its expiry, which is no pack besides",
    text: `AED,Battery Install,Battery Expiration (4 yr),Pad Expiration
A1,2023-06-01,2027-06-01,2027-03-31
A2,2024-06-01,2028-06-01,2027-05-31
`,
    rows: {
      devices: [{ device: "A1" }, { device: "A2" }],
      packs: [],
      dated_stock: [
        { item: "Battery", expiry: "2027-06-01", place: "A1" },
        { item: "Pad", expiry: "2027-03-31", place: "A1" },
        { item: "Battery", expiry: "2028-06-01", place: "A2" },
        { item: "Pad", expiry: "2027-05-31", place: "A2" },
      ],
    },
    unread: ["Battery Install"],
  },
  {
    name: "when a battery was fitted and when it is due",
    text: `AED,Site,Battery fitted,Battery due
A1,S1,2023-06-01,2027-06-01
A2,S2,2024-06-01,2028-06-01
`,
    rows: {
      devices: [{ device: "A1" }, { device: "A2" }],
      packs: [],
      dated_stock: [{ expiry: "2027-06-01", place: "A1" }, { expiry: "2028-06-01" }],
    },
    unread: ["Battery fitted"],
  },
  {
    name: "devices whose batteries are told by type, which are devices all the same",
    text: `AED,Battery type,Battery Expiration,Pad Exp
A1,PK-6,2027-06-01,2027-03-31
A2,PK-6,2028-06-01,2027-05-31
`,
    rows: {
      devices: [{ device: "A1" }, { device: "A2" }],
      dated_stock: [
        { item: "PK-6", expiry: "2027-06-01", place: "A1" },
        { item: "Pad", expiry: "2027-03-31", place: "A1" },
        { item: "PK-6", expiry: "2028-06-01", place: "A2" },
        { item: "Pad", expiry: "2027-05-31", place: "A2" },
      ],
    },
  },
  {
    name: "batteries told by where they are: in use, spare, on the charger",
    text: `Medic unit,Monitor,Batt in use,Batt spare 1,Batt on charger,Charger slot 2
Medic 1,MON-1,P-11,P-12,P-14,P-15
Medic 2,MON-2,P-21,P-22,P-24,
`,
    rows: {
      devices: [
        { device: "MON-1", site: "Medic 1" },
        { device: "MON-2", site: "Medic 2" },
      ],
      packs: ["P-11", "P-12", "P-14", "P-15", "P-21", "P-22", "P-24"].map((serial) => ({
        serial,
        device: serial < "P-2" ? "MON-1" : "MON-2",
      })),
    },
  },
  {
    name: "the battery that is installed and its spare, and pads that are connected",
    text: `AED,Installed battery SN,Installed battery exp,Spare battery SN,Spare battery exp,Pads connected (exp)
AED-1,I-1,2028-03-31,S-1,2029-03-31,2027-02
AED-2,I-2,2028-05-31,,,2027-06
`,
    rows: {
      devices: [{ device: "AED-1" }, { device: "AED-2" }],
      packs: [
        { serial: "I-1", device: "AED-1" },
        { serial: "S-1", device: "AED-1" },
        { serial: "I-2", device: "AED-2" },
      ],
      dated_stock: [
        { serial: "I-1", expiry: "2028-03-31", place: "AED-1" },
        { serial: "S-1", expiry: "2029-03-31", place: "AED-1" },
        { item: "Pads", expiry: "2027-02-28", place: "AED-1" },
        { serial: "I-2", expiry: "2028-05-31", place: "AED-2" },
        { item: "Pads", expiry: "2027-06-30", place: "AED-2" },
      ],
    },
  },
  {
    name: "batteries by the slot that they are in",
    text: `Vehicle,Slot 1 S/N,Slot 1 Cap %,Slot 2 S/N,Slot 2 Cap %,Date tested
A12,111,92,112,88,2026-10-02
A14,113,71,114,90,2026-10-02
`,
    rows: {
      packs: [
        { serial: "111", device: "A12" },
        { serial: "112", device: "A12" },
        { serial: "113", device: "A14" },
        { serial: "114", device: "A14" },
      ],
      runtime_tests: [
        { serial: "111", date: "2026-10-02", percent: 92 },
        { serial: "112", date: "2026-10-02", percent: 88 },
        { serial: "113", date: "2026-10-02", percent: 71 },
        { serial: "114", date: "2026-10-02", percent: 90 },
      ],
    },
  },
  {
    name: "batteries in the monitor, in the charger and on the shelf",
    text: `Vehicle,Battery in monitor,Battery in charger,Battery on shelf
M1,X1,X2,X3
M2,X4,X5,X6
`,
    rows: {
      packs: ["X1", "X2", "X3", "X4", "X5", "X6"].map((serial) => ({
        serial,
        device: serial < "X4" ? "M1" : "M2",
        site: null,
      })),
    },
  },
  {
    name: "names of columns written as one, as programs export them",
    text: `EquipmentID,BatterySN,PadExpDt,PedPadExpDt
A1,B1,2027-03-31,2027-05-31
A2,B2,2027-04-30,
`,
    rows: {
      packs: [
        { serial: "B1", device: "A1" },
        { serial: "B2", device: "A2" },
      ],
      dated_stock: [
        { item: "Pad", expiry: "2027-03-31", place: "A1" },
        { item: "Ped Pad", expiry: "2027-05-31", place: "A1" },
        { item: "Pad", expiry: "2027-04-30", place: "A2" },
      ],
    },
  },
  {
    name: "names of columns cut short, as databases keep them",
    text: `SER_NO,MFG_DT,LST_TST_DT,CAP_PCT,CYC_CNT,LOC_CD,STAT_CD
B1,2022-03-01,2026-10-05,88,210,ST1,ACT
B2,2022-03-01,2026-10-05,74,340,ST1,RET
`,
    rows: {
      packs: [
        { serial: "B1", made: "2022-03-01", cycles: 210, site: "ST1" },
        { serial: "B2", made: "2022-03-01", cycles: 340, site: "ST1" },
      ],
      runtime_tests: [
        { serial: "B1", date: "2026-10-05", percent: 88 },
        { serial: "B2", date: "2026-10-05", percent: 74 },
      ],
    },
    findings: ["status-unknown"],
  },
  {
    name: "years in which batteries were fitted, which are no batteries",
    text: `AED,Site,Battery installed,Pads exp
A1,S1,FY2024,2027-03-31
A2,S2,FY2025,2027-04-30
`,
    rows: { devices: [{ device: "A1" }, { device: "A2" }], packs: [] },
    unread: ["Battery installed"],
  },
];
