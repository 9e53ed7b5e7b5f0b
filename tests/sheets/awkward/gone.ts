import type { AwkwardSheet } from "./awkward-sheet.ts";

/** Batteries that have left the fleet, where no heading says since when. */
export const GONE: AwkwardSheet[] = [
  {
    name: "scrapped batteries below those in use, with the reason",
    text: `Monitor batteries ward 3
SN,Installed
B1,12/02/2024
B2,13/02/2024

Scrapped
SN,Date,Why
B9,14/03/2025,capacity 55%
B10,15/03/2025,swollen
`,
    rows: {
      packs: [
        { serial: "B1", in_service: "2024-02-12", retired: null },
        { serial: "B2", in_service: "2024-02-13", retired: null },
        { serial: "B9", in_service: null, retired: "2025-03-14", retired_because: "faded" },
        { serial: "B10", in_service: null, retired: "2025-03-15", retired_because: "damaged" },
      ],
    },
  },
  {
    name: "days in and out of service, beside how batteries were disposed of",
    text: `Battery SN,Date in service,Date out of service,Disposal method
B1,2020-02-01,2024-06-01,recycled
B2,2021-02-01,,
`,
    rows: {
      packs: [
        { serial: "B1", in_service: "2020-02-01", retired: "2024-06-01" },
        { serial: "B2", in_service: "2021-02-01", retired: null },
      ],
    },
    unread: ["Disposal method"],
  },
  {
    name: "days on which batteries were put in and taken out",
    text: `Battery,Put in,Taken out,Device,Why
B1,2022-03-01,2026-05-01,D1,weak
B2,2026-05-01,,D1,
`,
    rows: {
      packs: [
        { serial: "B1", in_service: "2022-03-01", retired: "2026-05-01", retired_because: "faded" },
        { serial: "B2", in_service: "2026-05-01", device: "D1" },
      ],
    },
  },
  {
    name: "a list of retired packs by its title, whose day is no first one",
    text: "Retired packs 2025\nSerial,Date,Device\nB9,14/03/2025,Monitor 1\n",
    rows: { packs: [{ serial: "B9", device: "Monitor 1", in_service: null, retired: "2025-03-14" }] },
  },
  {
    name: "scrapped batteries of no day, which are none in service",
    text: "Scrapped batteries\nSN,Made\nB9,01/2019\nB10,02/2019\n",
    rows: { packs: [] },
    aside: [
      [3, "unknown-table"],
      [4, "unknown-table"],
    ],
    findings: ["unknown-table"],
    unread: ["SN", "Made"],
  },
  {
    name: "batteries in use and scrapped below one title",
    text: "Batteries in use and scrapped\nSN,Installed\nB1,14/02/2024\n",
    rows: { packs: [{ serial: "B1", in_service: "2024-02-14", retired: null }] },
  },
  {
    name: "a status and the day since when it stands",
    text: `Battery,Status,Since
B1,in use,12/02/2024
B2,SCRAPPED,14/03/2025
B3,lost,15/03/2025
B4,on loan,16/03/2025
`,
    rows: {
      packs: [
        { serial: "B1", retired: null, held: null },
        { serial: "B2", retired: "2025-03-14" },
        { serial: "B3", retired: "2025-03-15", retired_because: "lost" },
        { serial: "B4", retired: null, held: null },
      ],
    },
  },
  {
    name: "batteries taken out in French, with the reason, by a word that is not known",
    text: `Numéro;Appareil;Posée le;Ôtée le;Motif
B1;DSA 1;12/03/2021;14/05/2024;capacité faible
B2;DSA 1;14/05/2024;;
`,
    rows: {
      packs: [
        { serial: "B1", in_service: "2021-03-12", retired: "2024-05-14", retired_because: "faded" },
        { serial: "B2", in_service: "2024-05-14", retired: null },
      ],
    },
  },
  {
    name: "batteries in Spanish, lent and in use",
    text: `Batería;Desfibrilador;Puesta en servicio;Retirada;Estado
B1;D1;12/03/2021;14/05/2024;De baja
B2;D1;14/05/2024;;En uso
B3;D2;15/03/2021;;Prestada
`,
    rows: {
      packs: [
        { serial: "B1", retired: "2024-05-14" },
        { serial: "B2", retired: null, held: null },
        { serial: "B3", retired: null, held: null },
      ],
    },
  },
  {
    name: "devices that are gone by a word in the place of their site, in four languages, and sites that sound so",
    text: `Device,Site,Battery SN,Battery fitted
D1,North,B1,2024-05-13
D2,ausgemustert,B2,2024-05-13
D3,réformé,B3,2024-05-13
D4,dado de baja,B4,2024-05-13
D5,scrapped 2025-06-13,B5,2024-05-13
D6,Scrap Yard,B6,2024-05-13
D7,Planta baja,B7,2024-05-13
`,
    rows: {
      devices: [
        { device: "D1", site: "North", retired: null },
        { device: "D2", site: null, retired: "2026-11-01" },
        { device: "D3", site: null, retired: "2026-11-01" },
        { device: "D4", site: null, retired: "2026-11-01" },
        { device: "D5", site: null, retired: "2025-06-13" },
        { device: "D6", site: "Scrap Yard", retired: null },
        { device: "D7", site: "Planta baja", retired: null },
      ],
      packs: [
        { serial: "B1", retired: null },
        { serial: "B5", site: null, retired: "2025-06-13" },
        { serial: "B6", site: "Scrap Yard", retired: null },
        { serial: "B7", site: "Planta baja", retired: null },
      ],
    },
    findings: ["gone-undated"],
  },
  {
    name: "stock that is gone by a word in the place of its place",
    text: `Item,Expiry,Qty,Location,Removed on
Adult pads,2027-05-31,4,discarded,
Adult pads,2027-05-31,2,Store,
Adult pads,2026-05-31,2,Store,2026-05-13
`,
    rows: { dated_stock: [{ item: "Adult pads", quantity: 2, place: "Store" }] },
    aside: [
      [2, "gone"],
      [4, "gone"],
    ],
    findings: ["gone"],
    unread: ["Removed on"],
  },
  {
    name: "units used where a word says that they were thrown away",
    text: "Date,Item,Used,Location\n2026-05-13,Adult pads,4,discarded\n2026-05-13,Gel,1,North\n",
    rows: {
      use_log: [
        { quantity: 4, place: "discarded" },
        { quantity: 1, place: "North" },
      ],
    },
  },
  {
    name: "batteries whose device is a word for gone, or is called so",
    text: `Serial,Item,In service,Device
B1,pack A,2022-05-13,MD-1
B2,pack A,2023-05-13,scrapped 2025-03-14
B3,pack A,2023-05-13,Ausgesondert
B4,pack A,2023-05-13,Lost Valley
`,
    rows: {
      packs: [
        { serial: "B1", device: "MD-1", retired: null },
        { serial: "B2", device: null, retired: "2025-03-14" },
        { serial: "B4", device: "Lost Valley", retired: null },
      ],
    },
    aside: [[4, "gone-undated"]],
  },
  {
    name: "days of replacement behind those of installation, with a reason",
    text: `Battery,Installed,Replaced on,Reason
B1,2022-01-15,2025-03-20,weak
B2,2025-03-20,,
`,
    rows: {
      packs: [
        { serial: "B1", in_service: "2022-01-15", retired: "2025-03-20", retired_because: "faded" },
        { serial: "B2", in_service: "2025-03-20", retired: null },
      ],
    },
  },
  {
    name: "parts by their serials out and in, which are all batteries",
    text: `Asset ID,Item,Replaced,Serial out,Serial in
D1,Battery,2025-03-02,B11,B41
D2,Battery,2026-01-15,B12,B42
`,
    rows: {
      devices: [],
      packs: [
        { serial: "B11", retired: "2025-03-02", device: null },
        { serial: "B41", in_service: "2025-03-02", device: "D1" },
        { serial: "B12", retired: "2026-01-15" },
        { serial: "B42", in_service: "2026-01-15", device: "D2" },
      ],
    },
  },
  {
    name: "work orders for batteries with an old and a new number",
    text: `Job,Date,Device,Part fitted,Old S/N,New S/N
1,2024-03-04,AED-7,Battery pack,B11,B41
2,2025-07-11,AED-9,Battery,B12,B42
`,
    rows: {
      packs: [
        { serial: "B11", retired: "2024-03-04" },
        { serial: "B41", in_service: "2024-03-04", device: "AED-7" },
        { serial: "B12", retired: "2025-07-11" },
        { serial: "B42", in_service: "2025-07-11", device: "AED-9" },
      ],
    },
    findings: ["date-presumed"],
    unread: ["Job", "Part fitted"],
  },
];
