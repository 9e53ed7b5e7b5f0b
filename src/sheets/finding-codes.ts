import type { Severity } from "../fleet/finding.ts";

/** What one finding code means. */
export interface FindingCode {
  severity: Severity;
  /** One sentence: what was found. */
  means: string;
  /** What such a sheet holds. */
  example: string;
  /** What to do, one sentence. */
  fix: string;
}

const code = (severity: Severity, means: string, example: string, fix: string): FindingCode => ({
  severity,
  means,
  example,
  fix,
});

/** Every code that a finding or a set-aside row can carry, in the order of a sheet's reading. */
export const FINDING_CODES = {
  "empty-file": code(
    "warning",
    "The file holds nothing.",
    "a file of 0 bytes",
    "Save the sheet again, or leave the file out.",
  ),
  "no-table": code(
    "info",
    "No row of the file or tab names columns that are known here.",
    "notes.csv",
    "Nothing, if it is no sheet of the fleet; else make it a table, a row for each thing, and give its columns the names that check lists.",
  ),
  "quote-open": code(
    "warning",
    "A quotation mark opens a cell and is never closed.",
    'a line that holds 12" of tape after an opening quote',
    "Double the quotation marks inside cells, or save the sheet as CSV again.",
  ),
  "hidden-read": code(
    "info",
    "Hidden rows, columns or tabs were read like the others.",
    "a hidden tab of old packs",
    "Delete what should not count.",
  ),
  "error-cell": code(
    "error",
    "A cell holds a spreadsheet's error instead of a value.",
    "#REF!",
    "Repair the formula, or type the value.",
  ),
  "serial-mangled": code(
    "error",
    "A spreadsheet turned a long serial number into a rounded power of ten.",
    "1.23457E+11",
    "Format the column as text in the original, type the serial again and save.",
  ),
  "listed-undated": code(
    "warning",
    "A cell lists supplies, and gives no expiry of one of them.",
    '"2 x adult pads exp 03/2027; 1 roll paper" below "Consumables"',
    "Write each item's expiry beside it, or give each item a line of its own.",
  ),
  "listed-unreadable": code(
    "warning",
    "A cell lists supplies, and a part of it names no item or holds several dates.",
    '"adult pads 03/2027 05/2027" below "Consumables"',
    "Part the items by semicolons, each with its number and its expiry, or give each a line of its own.",
  ),
  "column-unread": code(
    "info",
    "A column is not used.",
    "Comment",
    "Nothing, unless it should be used: then rename it or map it with --columns.",
  ),
  "fault-unread": code(
    "warning",
    "A remark in a column that is not read speaks of a fault.",
    "swollen, replace",
    "Look at the thing now; write in a column held why it may not be used, and the plan replaces it.",
  ),
  "gone-unread": code(
    "warning",
    "A remark in a column that is not read says that a pack is gone.",
    "scrapped 2025",
    "Give the day in a column retired; else the plan counts on the pack.",
  ),
  "date-presumed": code(
    "warning",
    "A column of dates does not say what happened on them; they were taken for the first day in service.",
    "Date beside Serial, and nothing else",
    "Name the column in_service, made or expiry, or map it with --columns.",
  ),
  "uses-presumed": code(
    "warning",
    "A log has a date and a column for each kind of supplies, and nothing says that its numbers are units used.",
    "Date, Station, Adult pads, Gel with numbers below them",
    'Write "used" into each header if they are; else leave the sheet out, or give what is there its expiry.',
  ),
  "packs-presumed": code(
    "warning",
    "A list of serials says neither that they are of batteries nor that they are of devices.",
    "Serial, Model, Ward",
    "Name the column Battery serial; or Device, if they are devices.",
  ),
  "no-battery": code(
    "warning",
    "A list of batteries holds something else.",
    "Type: Pads",
    "Give pads, paper and sensors a list of their own, with the expiry of each.",
  ),
  "carried-down": code(
    "info",
    "A place or device that stands once above blanks was read into them.",
    "Medic 1 above two blank cells",
    "Nothing, if they belong to it; else write into each line where it is.",
  ),
  moves: code(
    "info",
    "A list says from where to where units were carried; none of them was used up.",
    "Date, Item, Qty, From, To",
    "Nothing, if they were carried; else head the column of those who used them up Used by.",
  ),
  "battery-unnamed": code(
    "warning",
    "A list of devices says when their batteries were fitted, but no column gives the batteries' own numbers.",
    "AED, Battery installed, Pads expiry",
    "Nothing, if each device has one battery; else give each battery a serial number in a column of its own.",
  ),
  "year-alone": code(
    "warning",
    "A year stands alone, as the head of a column of readings or as a date, so the day is not known.",
    "Cap 2024 (%), Cap 2025 (%)",
    "Write the month of the tests into each header, as in Cap 2025-03 (%), or give each test a row with its date.",
  ),
  "devices-counted": code(
    "warning",
    "A column counts devices and names none; no device of it is in the fleet.",
    "AEDs: 3 beside a station",
    "List each device on a row of its own, with its name or serial number.",
  ),
  "copies-disagree": code(
    "warning",
    "Two columns of one meaning hold different values in a row.",
    "two Expiry columns",
    "Correct one of them; until then the cell counts as empty.",
  ),
  "date-order-unsettled": code(
    "error",
    "No date of the column shows whether day or month comes first.",
    "03/04/2027",
    "Give --date-order dmy, mdy or ymd, or write dates as 2027-04-03.",
  ),
  "date-order-contradicts": code(
    "error",
    "The column holds dates of both orders.",
    "25/03/2027 and 03/25/2027",
    "Write the column's dates as 2027-04-03.",
  ),
  "date-unreadable": code("error", "A date cell holds no date.", "soon", "Write the date as 2027-04-03."),
  "date-impossible": code(
    "error",
    "A date does not exist or is not complete.",
    "31.02.2027",
    "Correct the date, as 2027-04-03.",
  ),
  "date-out-of-range": code("error", "A date lies outside 1990 to 2100.", "1900-01-00", "Correct the year."),
  "date-after-as-of": code(
    "error",
    "A test or use is dated after the as-of date.",
    "a test of next year",
    "Correct the date, or set as_of to a later day.",
  ),
  "date-from-serial": code(
    "info",
    "Bare numbers in a date column were read as a spreadsheet's day numbers.",
    "46351",
    "Nothing, if the dates are right; else write them as 2026-11-25.",
  ),
  "number-unreadable": code(
    "error",
    "A number cell holds no number.",
    "many",
    "Write digits, with a point or comma for decimals.",
  ),
  "number-not-whole": code("error", "A count is no whole number.", "2.5", "Write a whole number."),
  "number-out-of-range": code(
    "error",
    "A number lies outside what its column can hold.",
    "870 %",
    "Correct the number or its unit.",
  ),
  "packs-of-tests": code(
    "info",
    "No sheet lists packs, so those that were tested are taken for the fleet's.",
    "a log of runtime tests alone",
    "List the packs: their item and dates make the forecast surer, and those that have left it go out of the plan.",
  ),
  "unit-blank": code(
    "info",
    "A line of a register has no expiry of a unit of which most lines have one.",
    "a device without a date under Pad expiry",
    "Nothing, if it carries none; else look at the unit and write its expiry down.",
  ),
  "nothing-left": code(
    "warning",
    "A test found hardly anything left and was read as failed.",
    "0 %",
    "Nothing, if the battery was empty; else correct the number, or leave the cell empty where nothing was measured.",
  ),
  "unit-unknown": code(
    "error",
    "A number carries a unit that its column does not take.",
    "12 kg",
    "Write the number in the column's own unit.",
  ),
  "word-unknown": code(
    "error",
    "A cell holds none of the words that its column knows.",
    "perhaps",
    "Use one of the words named.",
  ),
  "status-unknown": code(
    "info",
    "A cell of a status column does not tell whether the thing serves, is held or is gone; it counts as serving.",
    "Amber",
    "Nothing, if it serves; else write retired with the day, or why it may not be used.",
  ),
  "order-settled": code(
    "info",
    "An order has come, or was closed or cancelled: it brings nothing more.",
    "Qty ordered 50, Qty received 50",
    "Nothing, if what came is counted as stock.",
  ),
  "order-overdue": code(
    "warning",
    "An order was to arrive before as-of, and nothing says that it has come.",
    "arrives 2026-03-13, planned as of 2026-11-01",
    "Leave out what has come; else write the day on which it is expected now.",
  ),
  "order-part": code(
    "warning",
    "A part of an order has come, and nothing says how many.",
    "Partial",
    "Write, for example, 4 of 10 received.",
  ),
  "gone-undated": code(
    "warning",
    "A status says that the thing is gone, and no column or cell tells since when.",
    "Retired",
    "Give the day in a column named retired, or behind the word: Retired 2025-06-13. Its years of service then count too.",
  ),
  gone: code("info", "A status says that the unit is gone.", "Disposed", "Nothing: it is not counted."),
  "breaks-unreadable": code(
    "error",
    "Price breaks are not written as quantity:price.",
    "10 for 38.50",
    "Write 10:38.50; 50:35.00.",
  ),
  "from-heading": code(
    "info",
    "What no column holds was taken from above the table or from the tab's name.",
    "a tab Station 3 of stock without places",
    "Nothing, if it is right; else give it a column.",
  ),
  "item-facts-differ": code(
    "warning",
    "Two lines of a list of packs or stock say different things of one item, such as its price; neither is used.",
    "adult pads at 38.50 on one line and at 41.00 on another",
    "Say it once, in a catalogue sheet.",
  ),
  "kind-from-name": code(
    "info",
    "A catalogue row without a kind was given one by its item's name.",
    "Adult pads, taken for pads",
    "Nothing, if it is right; else fill in the kind.",
  ),
  "boxes-unknown": code(
    "error",
    "A quantity is in boxes and the catalogue does not say how many units a box holds.",
    "2 boxes",
    "Give units_per_box in the catalogue, or write units.",
  ),
  "label-unreadable": code(
    "error",
    "A label scan cannot be trusted.",
    "0109506000134353, whose check digit is wrong",
    "Scan the label again, or type item and expiry.",
  ),
  "label-disagrees": code(
    "error",
    "A cell and the label scan of its row say different things.",
    "expiry 2027-01-31 beside a label that says 2028-01-31",
    "Correct the cell, or scan the label again; until then the cell counts as empty.",
  ),
  "missing-required": code(
    "error",
    "A row lacks a value without which it says nothing.",
    "a pack without serial",
    "Fill in the cell.",
  ),
  "no-measurement": code(
    "error",
    "A runtime test measures nothing.",
    "a test with serial and date only",
    "Give minutes, wh, ah, percent or result.",
  ),
  "repeated-header": code("info", "The header stands again among the rows.", "serial,date,minutes", "Nothing."),
  "total-row": code("info", "A row sums up others.", "Total", "Nothing."),
  "section-line": code("info", "A line names a group of rows.", "Station 3", "Nothing."),
  "note-row": code("info", "A line of words stands among the rows.", "* checked by phone", "Nothing."),
  "unknown-table": code(
    "error",
    "The table's columns are not known here.",
    "a list of staff",
    "Rename its columns, or map them with --columns.",
  ),
  "things-by-row": code(
    "info",
    "A list of all sorts was read line by line: a column says what each line is about.",
    "a type column of AED, Battery and Pads",
    "Nothing, if it is right; else map the columns with --columns.",
  ),
  "thing-unknown": code(
    "warning",
    "In a list of all sorts a line is about nothing that is known here.",
    "Fire extinguisher among devices and pads",
    "Nothing, if it does not matter; else write device, battery, pads, gel, paper or sensor.",
  ),
  "holder-presumed": code(
    "warning",
    "A list of all sorts says where things are, not in which device: it was taken to be the only one there, or none.",
    "pads at Reception, where one AED is listed",
    "Nothing, if it is right; else give it a column that names the device.",
  ),
  "own-output": code(
    "warning",
    "A list that this program wrote was given as a sheet of the fleet.",
    "an orders.csv among the input files",
    "Leave it out. What was ordered belongs in a sheet of its own with item, quantity, arrives and order.",
  ),
  "kind-tied": code(
    "error",
    "The table's columns fit two kinds of sheet equally well.",
    "Serial, Model, Location, Install date",
    'Name a column by its thing, such as "Battery serial" or "Device", or map the columns with --columns.',
  ),
  "mapping-changed": code(
    "warning",
    "The sheet's columns are not those that the columns file was written for.",
    '"Batt S/N" is gone, "Battery" is new',
    "Correct the columns file, or write it anew with check --write-columns.",
  ),
  repeat: code(
    "info",
    "A row says what another row already says.",
    "the same pack twice",
    "Leave it, or remove one of them.",
  ),
  clash: code(
    "error",
    "Rows of the same key contradict each other.",
    "one serial at two sites",
    "Correct or remove all but one of them.",
  ),
  merged: code(
    "info",
    "Rows of one key fill each other's blanks and became one.",
    "a device's site in one sheet and its type in another",
    "Nothing.",
  ),
  "capacity-over-rated": code(
    "error",
    "A test gives more than 130 % of the pack's rated capacity.",
    "90 Wh from a pack rated 60 Wh",
    "Correct the test, its load or the catalogue's rating.",
  ),
  "serial-unknown": code(
    "warning",
    "A test names a pack that no packs sheet holds.",
    "a test of B-0I7 where only B-017 is listed",
    "Correct the serial, or list the pack.",
  ),
  "device-unknown": code(
    "warning",
    "A pack names a device that no devices sheet holds.",
    "a pack in D-14 where the last device is D-12",
    "Correct the device, or list it.",
  ),
  "item-unknown": code(
    "warning",
    "A row names an item that the catalogue does not hold.",
    "Pad A where the catalogue lists PAD-A",
    "Correct the item, or list it in the catalogue.",
  ),
  "dates-out-of-order": code(
    "warning",
    "Two dates of a row cannot have happened in their order.",
    "in service before it was made",
    "Correct one of the dates.",
  ),
  "test-before-made": code(
    "warning",
    "A pack was tested before it was made.",
    "made in June, tested in May",
    "Correct the date of making or of the test.",
  ),
  "test-after-retired": code(
    "warning",
    "A pack was tested after it was retired.",
    "retired in May, tested in June",
    "Correct the date of retirement or of the test.",
  ),
  "cycles-fall": code(
    "warning",
    "A pack's cycle count falls from one test to the next, or to the packs sheet.",
    "214 cycles in May, 96 in November",
    "Correct the count, or the serial if two packs are mixed up.",
  ),
  "likely-copy": code(
    "warning",
    "Two rows without a key are the same in every cell.",
    "one box entered twice",
    "Remove one, if they are the same units.",
  ),
  "earlier-check": code(
    "info",
    "A place was checked again in a later line, or in a sheet or tab named for a later month: only the last check counts.",
    "AED-1 in September and in October",
    "Nothing, if the last check tells all that is there.",
  ),
  "counted-again": code(
    "warning",
    "A lot stands at one place in two tables with different quantities.",
    "a count and its recount",
    "Give in the latest count only, if the two are of the same units.",
  ),
  "expiry-unread": code(
    "warning",
    "A column holds expiry dates, and neither it nor another says of what.",
    "a list of serials and expiries",
    "Write into the header what expires, as in Battery expiry or Pads expiry, or give each line its item.",
  ),
  "thing-unread": code(
    "warning",
    "A column names batteries one by one, or says when batteries or pads expire, and is not read.",
    '"Child pads / key (exp)"',
    "Head it as the others of its sort are headed, as in Battery 2 S/N or Child pads exp, or map it with --columns; nothing, if it tells of none that is there.",
  ),
  "capacity-undated": code(
    "warning",
    "A list of packs holds capacities, and no column says when they were measured.",
    "Health with 72 % below it, and no date of a test",
    "Give the day of the measurement a column, such as Test date.",
  ),
  "age-undated": code(
    "warning",
    "A list of packs gives their ages, and no day on which they were made or put in service.",
    "Age (months) with 14 below it",
    "Give the day on which each was made or put in service a column of its own.",
  ),
  "count-unread": code(
    "warning",
    "A list of dated stock says nothing that is understood of how many there are, or one of packs counts several in a line; each counts as one unit.",
    "12 below a column that is headed by a word of your own",
    "Head the column quantity if it counts dated units, and list each pack by itself; nothing, if it counts none.",
  ),
  "lots-counted-together": code(
    "warning",
    "A line counts several lots of an item together.",
    "Qty 5 beside Exp 1 and Exp 2",
    "Give each lot its own number, as Qty 1 and Qty 2.",
  ),
  "little-read": code(
    "warning",
    "Most of a table's columns are not understood.",
    "a price list read as a list of devices",
    "Look at what each column was read as; rename the columns or map them with --columns.",
  ),
  "policy-unusable": code(
    "error",
    "A policy row has a key that is none, or a value that cannot be used.",
    "horizon_months, soon",
    "Use a key and a value that the message names; until then the default is used.",
  ),
} as const satisfies Record<string, FindingCode>;

export type FindingCodeName = keyof typeof FINDING_CODES;
