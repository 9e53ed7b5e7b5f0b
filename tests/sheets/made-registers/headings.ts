/** A made-up line of a register, by what its cells are about. */
export type Line = Record<string, string>;

/** What a column of a register is about: how people head it, which cell of a line it holds, and as what it may be read. */
export interface About {
  headings: string[];
  cell: string;
  /** Fields as which it is read, `kind.field`; empty for what is not read at all. */
  fields: string[];
  /** True where it may also be left unread. */
  spare?: true;
}

// Common practice, no source: headings as registers of devices carry them.
const say = (headings: string) => headings.split(" | ");
const SERIALS = ["packs.serial", "runtime_tests.serial", "dated_stock.serial"];
const DEVICE = ["devices.device", "packs.device", "dated_stock.place"];
const EXPIRY = ["dated_stock.expiry"];

export const ABOUT = {
  device: {
    headings: say(
      "Asset No | Asset number | Asset | Asset ID | Equipment ID | Equipment no. | Device | Device ID | Device no | AED ID | AED | AED no. | Defib | Defib no | Defibrillator | Inventory no | Asset tag | Tag no | ID | Monitor | Equip # | Asset # | BME No | Biomed no | Equipment number | Device name",
    ),
    cell: "device",
    fields: DEVICE,
  },
  unit: { headings: say("Unit | Unit no | Unit ID"), cell: "device", fields: DEVICE },
  type: {
    headings: say(
      "Description | Equipment type | Type | Device type | Category | Equipment | Device model | Model | Equipment description | Asset type",
    ),
    cell: "type",
    fields: ["devices.type"],
    spare: true,
  },
  site: {
    headings: say(
      "Location | Site | Department | Dept | Dept. | Ward | Station | Building | Area | Base | Facility | Current location | Location / Dept | Unit / Ward | Room | Site name",
    ),
    cell: "site",
    fields: ["devices.site", "packs.site", "dated_stock.place"],
  },
  deviceSerial: {
    headings: say(
      "Serial number | S/N | Serial No | Serial | Device serial | Device S/N | Equipment serial no | Unit S/N | Serial #",
    ),
    cell: "deviceSerial",
    fields: DEVICE,
    spare: true,
  },
  deviceSince: {
    headings: say(
      "Purchased | In service | Commissioned | Acquired | Purchase date | In service date | Date in service | Acceptance date | Date purchased | Device installed",
    ),
    cell: "since",
    fields: ["devices.in_service"],
    spare: true,
  },
  batterySerial: {
    headings: say(
      "Battery S/N | Battery serial | Battery SN | Batt serial no | Batt S/N | Battery ID | Battery no | Battery | Pack serial | Pack S/N | Battery serial number | Batt. ser. | Battery # | Batt ID | Pack ID | Battery pack S/N",
    ),
    cell: "batterySerial",
    fields: SERIALS,
  },
  batteryType: {
    headings: say("Battery type | Battery model | Batt type | Battery part no | Battery P/N | Batt model | Pack type"),
    cell: "batteryType",
    fields: ["packs.item", "dated_stock.item"],
    spare: true,
  },
  fitted: {
    headings: say(
      "Battery fitted | Battery installed | Batt install date | Battery install date | Battery in service | Battery date | Date battery fitted | Battery since | Date battery installed | Batt fitted | Battery commissioned | Battery in use since | Install date (battery) | Battery purchase date | Battery changed | Battery last changed | Last battery change | Battery replaced | Battery replaced on",
    ),
    cell: "fitted",
    fields: ["packs.in_service"],
  },
  batteryExpiry: {
    headings: say(
      "Battery expiry | Battery exp | Batt use by | Battery expires | Battery exp date | Battery expiry date | Batt exp. | Battery use-by | Battery expiration | Expiry battery",
    ),
    cell: "batteryExpiry",
    fields: EXPIRY,
  },
  cycles: {
    headings: say(
      "Cycles | Battery cycles | Charge cycles | Cycle count | Batt cycles | Battery cycle count | No. of cycles | # cycles | Charge count | Cycles (battery)",
    ),
    cell: "cycles",
    fields: ["packs.cycles", "runtime_tests.cycles"],
  },
  tested: {
    headings: say(
      "Last battery test | Battery test date | Last test | Test date | Tested on | Date tested | Last capacity test | Batt test | Battery last tested | Date of test | Battery test | Last tested | Battery tested | Capacity test date | Date of last test | Last test date | Batt. test date | Runtime test date | Tested | Last battery test date | Battery check date",
    ),
    cell: "tested",
    fields: ["runtime_tests.date"],
  },
  percent: {
    headings: say(
      "Capacity % | Battery capacity % | Result % | Test result (%) | Batt % | Battery test % | Capacity | Battery health % | SOH % | % capacity | Last capacity (%) | Battery capacity | Capacity (%) | Batt cap % | Cap % | Remaining capacity % | Capacity left % | SoH | Battery % | Measured capacity (%) | Test % | Last capacity | Health",
    ),
    cell: "percent",
    fields: ["runtime_tests.percent"],
  },
  minutes: {
    headings: say(
      "Runtime (min) | Run time min | Minutes | Test minutes | Battery runtime (min) | Runtime | Runtime minutes | Run time (minutes) | Battery runtime | Duration (min) | Discharge time (min) | Battery run time",
    ),
    cell: "minutes",
    fields: ["runtime_tests.minutes"],
  },
  milliampHours: {
    headings: say(
      "Capacity mAh | Capacity (mAh) | mAh | Measured mAh | Battery mAh | Test mAh | Battery capacity (mAh) | Actual mAh | Result (mAh)",
    ),
    cell: "milliampHours",
    fields: ["runtime_tests.ah"],
  },
  result: {
    headings: say(
      "Result | Test result | Pass/Fail | Battery test result | P/F | Outcome | Battery result | Last test result | Test outcome | Battery OK? | Pass / fail | Passed? | Status of test",
    ),
    cell: "result",
    fields: ["runtime_tests.result"],
  },
  pads: {
    headings: say(
      "Pads exp | Pad expiry | Pads expiry date | Electrode expiry | Pads | Pads expire | Pads exp date | Electrodes exp | Pad exp. | Expiry pads | Pads use by | Pads expiration date | Defib pads expiry | Electrode pads exp | Pads date",
    ),
    cell: "pads",
    fields: EXPIRY,
  },
  adultPads: {
    headings: say(
      "Adult pads exp | Pads exp adult | Adult pad expiry | Adult pads | Pads (adult) expiry | Pads adult exp date | Adult electrodes expiry | Pads - adult | Adult pads use by | Exp. adult pads | Adult exp | Adult pads expiry date | Pads adult",
    ),
    cell: "pads",
    fields: EXPIRY,
  },
  childPads: {
    headings: say(
      "Paeds pads | Child pads exp | Pads exp child | Paediatric pads expiry | Infant/child pads exp | Child pad expiry | Pedi pads exp | Pediatric pads expiration | Pads (child) expiry | Child exp | Peds pads | Pads child",
    ),
    cell: "otherPads",
    fields: EXPIRY,
  },
  lot: {
    headings: say("Pads lot | Pad lot no | Pads lot number | Electrode lot | Pads LOT"),
    cell: "lot",
    fields: ["dated_stock.lot"],
  },
  gel: {
    headings: say("Gel exp | Gel expiry | Gel expiry date | Gel | Gel use by"),
    cell: "otherPads",
    fields: EXPIRY,
  },
  comment: { headings: say("Comment | Comments | Remarks | Notes | Note"), cell: "comment", fields: [] },
  due: {
    headings: say(
      "PM due | Next service | Service due | Next PM | Next check | Next maintenance | Calibration due | Next inspection | Inspection due",
    ),
    cell: "due",
    fields: [],
  },
  serviced: {
    headings: say(
      "Last PM | Last service | Last checked | Last inspection | Serviced | Date checked | Last maintenance | PM date",
    ),
    cell: "serviced",
    fields: [],
  },
  keeper: {
    headings: say("Owner | Contact | Responsible | Contact person | Checked by"),
    cell: "keeper",
    fields: [],
  },
  status: {
    headings: say("Status | State | Condition | Asset status"),
    cell: "status",
    fields: ["devices.retired", "packs.held", "packs.retired"],
    spare: true,
  },
} satisfies Record<string, About>;

export type Topic = keyof typeof ABOUT;
