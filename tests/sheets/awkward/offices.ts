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
];
