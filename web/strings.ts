import { CAUSE_WORDS } from "../src/index.ts";
import { inCurrency, listWords, numberWords } from "./format.ts";

const plural = (count: number, one: string, many: string) => (count === 1 ? one : many);
/** "1 pack", "2 packs". */
const counted = (count: number, one: string) => `${numberWords(count)} ${plural(count, one, `${one}s`)}`;

const whyNoPlan = (found: boolean) =>
  found ? "A file could not be read and must be mended or left out" : "No table was found";

const PRIVACY = "Everything stays in this browser; the page makes no connection.";

/**
 * Every sentence and label of the page, in one place: a translation is one more file of this shape.
 * Words for policy keys, findings, reasons and causes come from the engine.
 */
export const say = {
  name: "Wanecast",
  title: {
    empty: "What will the fleet need, and by which day must it be ordered?",
    plan: "Planning sheet",
    asOf: (day: string) => `As of ${day}`,
    ofPlan: (asOf: string) => `Wanecast, as of ${asOf}`,
    looking: (from: string, to: string) => `${from} to ${to}`,
    counts: (devices: number, packs: number, dated: number) =>
      `${counted(devices, "device")} and ${counted(packs, "pack")} in service · ${counted(dated, "dated unit")}`,
    madeBy: (engine: string) => `Made with ${engine}. ${PRIVACY}`,
  },
  contents: "Contents",
  skip: "Skip to the plan",
  sections: {
    ahead: "Ahead",
    batteries: "Batteries",
    dates: "Dates",
    orders: "Orders",
    sheets: "Sheets",
    assumptions: "Assumptions",
  },
  print: "Print this report",
  unfinished: "Incomplete: print this again.",
  printFooter: (asOf: string) => `Planning aid only: it does not test, clear or condemn any device. As of ${asOf}.`,
  iso: "ISO: 2027-03-31, 12.50 EUR",
  and: "and",
  none: "–",

  empty: {
    lead: "Wanecast reads the sheets that a fleet's keepers already have: which monitor-defibrillators, AEDs and monitors stand where, which battery packs they carry, how long these ran when tested, and which pads, gel, paper and sensors expire when. From these it forecasts every pack and every dated unit, and writes the order schedule for the next three years.",
    privacy: PRIVACY,
    which: "Which sheets can it read?",
    whichLead:
      "Workbooks (.xlsx) and CSV or TSV files, of one table or several, in any mix. One sheet is enough to start with. A sheet is known by its columns, not by its name. These columns must be there; many more are used where they stand.",
    kinds: [
      ["devices", "device", "Which devices there are, and where"],
      ["packs", "serial", "Battery packs with item, device, made, in service, cycles"],
      ["runtime tests", "serial, date, and minutes, Wh, Ah, percent or a result", "What each pack still held"],
      ["dated stock", "item, expiry", "Pads, gel, paper, sensors, primary batteries: lot, quantity, place"],
      ["catalogue", "item, kind", "Supplier, price, lead time, box, minimum order, rating"],
      ["use log", "date, item, quantity", "What was used"],
      ["on order", "item, quantity", "What is already bought"],
      ["routine", "task, per year", "The test programme and what it consumes"],
      ["suppliers", "supplier", "Order fee, cadence"],
      ["policy", "key, value", "The planner's own choices"],
    ] as [string, string, string][],
    kindHeads: ["Sheet", "Must have", "What it tells"],
  },

  intake: {
    drop: "Drop sheets or a folder of sheets here",
    again: "Read other sheets",
    files: "Choose files",
    folder: "Choose a folder",
    sample: "Try the sample",
    sampleNote: "An invented fleet, to see what comes out.",
    paste: "Or paste rows from a spreadsheet",
    pasteLabel: "Rows with their header, copied from a spreadsheet",
    pasteGo: "Read these rows",
    pasteName: (n: number) => `pasted-${n}.tsv`,
    working: (files: number) => `Reading ${counted(files, "file")} and planning …`,
    replanning: "Planning anew …",
    step: (at: number, of: number, does: string) => `Step ${at} of ${of}: ${does}. `,
    steps: [
      { stage: "life", does: "how every pack fades" },
      { stage: "dated", does: "how dated stock lasts" },
      { stage: "demand", does: "needs by month, orders and what they cost" },
    ],
    beside: "Add to the sheets that are here; a sheet of the same name is replaced",
    nothing: "No file was found in what was dropped.",
    failed: (why: string) => `This did not work: ${why}`,
    noPlan: (found: boolean) => `${whyNoPlan(found)}, so nothing was planned. What was wrong stands below.`,
    noPlanAnew: (found: boolean, refused: string[]) =>
      [`${whyNoPlan(found)}, and the plan shown is the one before.`, ...refused].join(" "),
    stop: "Stop",
    stoppedFirst: "Stopped. Nothing was planned.",
    stopped: "Stopped. The plan shown is the one before.",
    kept: "These sheets, your changes and a plan to compare with are kept in this browser only, so that a reload finds them.",
    clear: "Forget them",
    cleared: "Forgotten: nothing of your work is kept in this browser.",
    elsewhere: "Another window changed what is kept here: a reload loses your work. Save what you need first.",
    restored: "Your work from last time is back.",
    taken: (n: number, from: "file" | "link") =>
      `${numberWords(n)} ${plural(n, "assumption was", "assumptions were")} taken from the ${from}.`,
    done: (day: string) => `The plan is ready, as of ${day}.`,
  },

  firstLook: {
    title: "What the sheets say so far",
    lead: "The sheets are read; the forecast is being made.",
    chart: "How do the readings lie by age?",
    caption: (readings: number, packs: number) =>
      `${counted(readings, "capacity reading")} of ${counted(packs, "pack")} of all items, by the age of the pack.`,
    at: (age: string, count: number, middle: string) =>
      `${age} years: ${counted(count, "reading")}, ${middle} in the middle`,
    heads: ["Years since made", "Readings", "In the middle"],
  },

  cautions: {
    heading: "Before you rely on this",
    more: "About this plan",
    picture: "Planning aid only: it does not test, clear or condemn any device.",
  },

  figure: {
    unitOf: (what: string, unit: string) => `${what}: ${unit}`,
    table: "The figures as a table",
    picture: "Save as a picture",
    step: "Step through this chart",
  },

  table: {
    shown: (shown: string, all: string) => `${shown} of ${all} rows`,
    printed: (shown: string, all: string, file: string | null) =>
      `The first ${shown} of ${all} rows${file === null ? "" : `; the rest is in ${file}`}.`,
    printAlone: "Print this list alone",
    any: "all",
    all: (rows: string) => `Show all ${rows} rows`,
    scroll: (caption: string) => `${caption} (scrolls sideways)`,
  },

  ahead: {
    heading: "What does the fleet need next?",
    needs: (until: string, needs: string) => `By the end of ${until} the fleet is likely to need ${needs}`,
    needsNothing: (until: string) => `By the end of ${until} the fleet is likely to need nothing new`,
    nothingKnown:
      "Nothing can be forecast: no battery pack with a date, no device with dated units and no use of supplies could be read from the sheets. That is no all-clear. What was read, and what was not, stands under Sheets.",
    firstOrder: (day: string) => `; the first order must leave by ${day}.`,
    orderToBeSafe: (day: string) => `; to be safe, the first order must leave by ${day}.`,
    lateOrders: (n: number, next: string | null) =>
      `; ${numberWords(n)}\u00a0${plural(n, "order line is", "order lines are")} already late and should leave today${next === null ? "" : `, the next by ${next}`}.`,
    noOrder: "; no order is needed.",
    packs: (n: string, one: boolean) => `${n} battery ${one ? "pack" : "packs"}`,
    /** The first says what is counted, so that the others need not. */
    units: (n: number, item: string, first: boolean) =>
      `${numberWords(n)}\u00a0${first ? `${plural(n, "unit", "units")} ` : ""}of ${item}`,
    fewer: (n: number) => `fewer of ${numberWords(n)} other items`,
    outNow: "What comes out of service now?",
    uncertain: {
      heading: "What is least certain, and why?",
      aside: (n: number, all: number) =>
        `${numberWords(n)} of ${counted(all, "row")} of the sheets ${plural(n, "was", "were")} set aside, and the plan knows nothing of what ${plural(n, "it holds", "they hold")}. The reasons stand under Sheets.`,
      undated:
        "A column's day/month order is not settled, and the plan knows nothing of what it dates. The reasons stand under Sheets.",
      noDevices: "No device is known: every place counts as a store, and what expires there is not ordered anew.",
      noUse:
        "No use is logged: beside what expires and what routine tasks take, the plan counts on no use of supplies.",
      typical: (n: number, all: number) =>
        `${numberWords(n)} of ${counted(all, "pack")} ${plural(n, "has no reading of its own: the forecast takes it", "have no reading of their own: the forecast takes them")} for typical. One capacity reading each would tell most.`,
      wide: (n: number) =>
        `${numberWords(n)} ${plural(n, "pack has", "packs have")} an early date within the plan and a late date more than a year after it.`,
      noForecast: (n: number) => `${numberWords(n)} ${plural(n, "pack has", "packs have")} no forecast at all.`,
    },
    firstHeading: "Which orders leave first?",
    short: {
      heading: "How many devices would be short?",
      unit: "devices short at the month's end (expected)",
      without: "if nothing is bought",
      with: "if the schedule is followed",
      within: "with the schedule, less what the budget defers",
      caption: (devices: number, byYear: string, year: string, byEnd: string, end: string) =>
        `A device is short when it has no good pack or lacks in-date supplies. Of ${counted(devices, "device")}, ${byYear} are expected to be short at the end of ${year} if nothing is bought${end === year ? "" : `, and ${byEnd} at the end of ${end}`}.`,
      ofThen: (short: string, devices: number) => `${short} of then ${numberWords(devices)}`,
      worst: (most: string, month: string) =>
        ` With the schedule the worst month's end is that of ${month}: ${most} are expected.`,
      never: " With the schedule less than one is expected to be short at any month's end.",
      at: (month: string, without: string, withSchedule: string, chance: string, within: string | null) =>
        `${month}: ${without} short if nothing is bought, ${withSchedule} with the schedule (chance that any is: ${chance})${within === null ? "" : `, ${within} within the budget`}`,
      heads: [
        "Month's end",
        "If nothing is bought",
        "Chance of any",
        "With the schedule",
        "Chance of any",
        "Within the budget",
      ],
    },
  },

  batteries: {
    heading: "When do the packs run out?",
    lead: (all: number, due: string[]) =>
      `${counted(all, "pack")}: ${listWords(due, "and")}, each counted at its likely date.`,
    now: (n: number) => `${numberWords(n)} due now`,
    by: (n: number, month: string) => `${numberWords(n)} by the end of ${month}`,
    none: "No battery pack in service was read.",
    due: {
      heading: "How many packs are due by when?",
      unit: "packs",
      soFar: "due so far, expected",
      range: "between the packs' late and early dates (P90 to P10)",
      quarter: "falling due in the quarter",
      caption:
        "The line counts packs due by each month's end from any cause: fade, failure, age, cycles, a failed test. The hatched band runs from the count by every pack's late date (P90) to the count by its early date (P10). Bars count what falls due in each quarter, the first also what is due already.",
      at: (month: string, expected: string, low: string, high: string, quarter: string) =>
        `${month}: ${expected} due so far (${low} to ${high}); ${quarter} in this quarter`,
      heads: ["By the end of", "Late dates (P90)", "Expected", "Early dates (P10)", "In the quarter"],
    },
    fleet: {
      heading: "How do packs of one item fade with age?",
      pick: "Item",
      unit: "capacity, % of rated, by years since made",
      reading: "a reading of any pack",
      path: "likely path of one pack from now on",
      middle: "the middle of those paths",
      band: "four in five of them",
      unread: (item: string) =>
        `No pack of ${item} has both a known age and a reading: these paths are what is usual for such packs, and any one pack may run far from its own.`,
      unknown: (item: string) => `No pack of ${item} has both a known age and a known fade.`,
      caption: (item: string, packs: number, readings: number, breaks: boolean) =>
        `${counted(packs, "pack")} of ${item} with ${counted(readings, "reading")}. Packs whose dots and lines lie low for their age fade fast.${breaks ? " Where the middle breaks off, it goes on with other packs: those of one age end, or those of another begin." : ""}`,
      at: (age: string, p50: string, p10: string, p90: string) =>
        `At ${age} years: ${p50} in the middle of the packs (four in five between ${p10} and ${p90})`,
      heads: ["Years since made", "P10 of packs", "Middle", "P90 of packs", "Packs"],
    },
    fade: {
      heading: "How is one pack fading?",
      pick: "Pack",
      unit: "capacity, % of rated",
      likely: "likely capacity (P50)",
      band: "inside four times in five (P10 to P90)",
      reading: "a reading",
      sibling: "other packs of this item",
      threshold: (percent: string) => `end of life ${percent}`,
      asOf: (day: string) => `as of ${day}`,
      facts: {
        item: "Item",
        where: "Stands in",
        made: "Made",
        inService: "In service since",
        cycles: "Cycles",
        now: "Capacity now",
        likely: "Likely due",
        range: "Early to late",
        because: "Because",
        basis: "Rests on",
      },
      between: (middle: string, low: string, high: string) => `${middle} (${low} to ${high})`,
      fromTo: (from: string, to: string) => `${from} to ${to}`,
      noPath: "There is no fade forecast for this pack.",
      at: (month: string, p50: string, p10: string, p90: string) => `End of ${month}: ${p50} (${p10} to ${p90})`,
      heads: ["Month's end", "P10", "P50", "P90"],
    },
    signs: {
      heading: "What shows early signs of fading fast?",
      lead: "These wear faster than other packs of their item for the same age, cycles and temperature. It is a hint to look, not a verdict: a wrong load or a warm room that no sheet names looks the same. The chance is that of wearing at least a quarter faster for a pack, at least a tenth for a site, duty or batch.",
      none: "No pack, site, duty or batch wears clearly faster than its like for the same age, cycles and temperature.",
      kinds: { pack: "pack", site: "packs of a site", duty: "packs of a duty", batch: "batch of" },
      heads: [
        "What",
        "Which",
        "Item",
        "Packs seen",
        "Times as fast",
        "80 % range",
        "Chance",
        "In service, due in the first year",
      ],
      range: (low: string, high: string) => `${low} to ${high}`,
      ofPacks: (due: string, packs: string) => `${due} of ${packs}`,
    },
    outlived: {
      heading: "How many packs reach each age without failing suddenly?",
      lead: "A pack that was old already when the records start counts from the age it had then.",
      heads: {
        item: "Item",
        years: "Age in years",
        watched: "Packs watched",
        seen: "Seen to reach it",
        error: "Give or take",
        planned: "Plan counts on",
      },
      percent: (value: string) => `${value}\u202f%`,
    },
    table: {
      heading: "Which packs, when and why?",
      caption: "Packs by their likely date of replacement",
      filters: { site: "Site", item: "Item", quarter: "Likely due", because: "Because" },
      quarter: (year: string, quarter: string) => `${year}, quarter ${quarter}`,
      heads: {
        serial: "Serial",
        item: "Item",
        where: "Device, site",
        now: "Capacity now",
        p50: "Likely due",
        early: "Early (P10)",
        late: "Late (P90)",
        because: "Because",
        basis: "Rests on",
      },
      kinds: {
        "already-due": "due now",
        "within-horizon": "",
        "beyond-horizon": "after the plan",
        "no-forecast": "no forecast",
      },
      because: CAUSE_WORDS,
      basis: { measured: "own readings", pooled: "few readings", typical: "typical packs" },
      note: "“Few readings” leans on the curve of the fleet’s like packs; “typical packs” has no reading of its own.",
      choose: "Choose a serial to see its chart.",
    },
  },

  dates: {
    heading: "When does the dated stock expire?",
    lead: (units: number, until: string, overdue: number, expired: number) => {
      const due = `${counted(units, "dated unit")} ${plural(units, "falls", "fall")} due by the end of ${until}.`;
      if (overdue === 0) return due;
      const past = plural(expired, "has expired", "have expired");
      const also = expired === 0 || expired === overdue ? "" : `; ${numberWords(expired)} of them ${past}`;
      return `${units === 0 ? counted(overdue, "dated unit") : `${due} ${numberWords(overdue)} more`} ${expired === overdue ? past : plural(overdue, "is overdue", "are overdue")} and should be swapped now${also}.`;
    },
    chart: "How many units fall due in each month?",
    pick: "Item",
    everything: "all items",
    unit: "units to be swapped in the month",
    fitted: "fitted in devices",
    stored: "in stores",
    crowdedWith: (month: string, items: string) => `${month} (${items})`,
    crowdedMany: (n: number) => `${numberWords(n)} months, listed below`,
    crowded: "crowded month",
    caption: (n: number, margin: number, crowded: string) =>
      `A unit falls due ${counted(margin, "day")} before it expires, or when it has been open for too long. What is overdue already is not shown. ${
        n === 0 ? "No month is crowded" : `Crowded ${plural(n, "is", "are")} ${crowded}`
      }; that takes at least five units of an item, at least twice its even share, and more deliveries than chance would bring (p < 0.01).`,
    at: (month: string, units: string, fitted: string, crowded: string) =>
      `${month}: ${units} due, ${fitted} of them in devices${crowded ? `; crowded with ${crowded}` : ""}`,
    heads: ["Month", "In devices", "In stores", "Together", "Crowded with"],
    crowdedHeading: "Which months are crowded?",
    crowdedHeads: ["Month", "Item", "Units", "Even share", "Lots", "Places"],
    swapsHeading: "What is swapped, and where?",
    swapsHeads: ["At the latest", "Place", "Item", "Lot", "Units", "Days given up", "Visit in"],
    swapsNone:
      "No swap calendar was asked for. To have one, say under Assumptions how many visits a month can be made:",
    movesHeading: "Which lots should move?",
    movesHeads: ["By", "From", "To", "Item", "Take there", "Bring back", "Units saved"],
    lotOf: (units: string, lot: string | null) => (lot === null ? `${units} of no lot` : `${units} of ${lot}`),
    lapses: {
      heading: "What lapses if nothing is done?",
      note: "Units that fall due within the plan, and how many of them are expected to be used before.",
      heads: ["Item", "Units due", "Used before", "Lapse unused", "Moves save"],
    },
    places: {
      heading: "Which places have most to swap?",
      heads: ["Place", "Overdue", "Next three months", "All of the year"],
    },
    visits: {
      question: "How many swap visits a month are enough?",
      unit: "unit-months of life given up, by visits a month",
      key: "life given up",
      caption: (smallest: number, price: string, enough: number) =>
        `A visit swaps all that falls due at one place in one month. ${smallest > 1 ? `With fewer than ${numberWords(smallest)} a month, not every expiry can be met; with` : "With"} ${numberWords(smallest)}, some units are swapped early and give up ${price} unit-months of life; with ${numberWords(enough)}, none.`,
      at: (visits: number, months: string) => `${numberWords(visits)} a month: ${months} unit-months given up`,
      heads: ["Visits a month", "Unit-months given up"],
    },
    use: {
      heading: "How often is each item used, and where?",
      note: "Low and high hold the rate nine times in ten. A shared rate is that of all places of the duty.",
      heads: ["Item", "Place", "Duty", "Uses logged", "Months watched", "Units a year", "Low", "High", "Rate"],
      basis: { own: "own", shared: "shared" },
    },
    routine: {
      heading: "What do the routine tasks use?",
      heads: ["Item", "Task", "Duty", "Devices", "Times a year", "Units a time", "Units a year"],
      all: "all",
      assumed: "* Common practice, as the sheet gives no quantity: one unit, or a strip of 10 seconds of paper.",
      roll: (item: string, minutes: string) => `A roll of ${item} lasts ${minutes} minutes of trace at 25 mm/s.`,
    },
    stockHeading: "Which units, where and until when?",
    stockHeads: ["Expiry", "Swap by", "Item", "Lot", "Place", "Units", "Chance of use in time"],
    trace: {
      heading: "Where is this lot or serial?",
      label: "Lot (W27* for all that begin so), serial, GTIN, order, device or scanned label",
      go: "Trace",
      found: (n: number, what: string) =>
        n === 0
          ? `Nothing in the sheets bears ${what}.`
          : `${numberWords(n)} ${plural(n, "row bears", "rows bear")} ${what}`,
      wrong: (what: string, why: string) => `The label ${what} ${why}. Scan it again.`,
      units: (units: number, places: number) => `${counted(units, "unit")} at ${counted(places, "place")}.`,
      without: {
        caption: "What it takes to do without",
        heads: ["Item", "In use", "On shelves", "On order", "Usable elsewhere", "Lacking", "Covered on"],
        now: "now",
        unknown: "not known",
        how: "Units lacking can be there on the day in the last column: from what is on order, or from an order that leaves today.",
      },
      kinds: {
        pack: "pack",
        "retired pack": "retired pack",
        "dated stock": "dated stock",
        "on order": "on order",
        device: "device",
        "set aside": "set aside",
      },
      heads: ["What", "Name", "Item", "Where", "Units", "Until", "Stands in"],
    },
    site: "Site or store",
    expired: "expired",
    overdue: "overdue",
    noStock: "No dated stock was read.",
  },

  orders: {
    heading: "What has to be ordered, and by which day?",
    lead: (lines: number, orders: number, costs: string, late: number) =>
      `${numberWords(lines)} order ${plural(lines, "line", "lines")} in ${counted(orders, "order")}${costs === "" ? "" : ` for ${costs} with fees`}.${late > 0 ? ` ${numberWords(late)} ${plural(late, "line is", "lines are")} late and should leave today.` : ""}`,
    none: "Nothing has to be ordered within the plan's months.",
    caption: "The schedule by order-by date",
    filters: {
      supplier: "Supplier",
      item: "Item",
      year: "Fiscal year",
      sum: (units: number, costs: string) =>
        `: ${counted(units, "unit")}${costs === "" ? "" : ` for ${costs} with fees`}`,
    },
    heads: {
      orderBy: "Order by",
      supplier: "Supplier",
      item: "Item",
      quantity: "Units",
      boxes: "Boxes",
      unitPrice: "Unit price",
      lineCost: "Line cost",
      fee: "Order fee",
      arrives: "Arrives",
    },
    bySupplier: {
      heading: "What goes to each supplier?",
      heads: ["Supplier", "First order by", "Orders", "Lines", "Cost with fees"],
      linesOf: (supplier: string, n: number) => `The ${counted(n, "line")} for ${supplier}`,
    },
    late: "late",
    forecast: "forecast",
    noPrices: "No price is known of anything to be ordered.",
    spend: {
      heading: "What will it cost, year by year?",
      unit: (currency: string) => `spend so far in the fiscal year${inCurrency(currency)}`,
      planned: "planned, by order date",
      band: "likely to safe (P50 to P95) by the year's end",
      cap: "budget",
      caption: (year: string, planned: string, p50: string, p95: string) =>
        `The stepped line adds up the schedule's orders and starts anew with each fiscal year. In ${year} the schedule spends ${planned}; over all likely futures the year takes no more than ${p50} half of the time, and no more than ${p95} nineteen times in twenty.`,
      at: (month: string, spent: string, year: string, p50: string, p95: string) =>
        `${month}: ${spent} spent so far in ${year}; by its end ${p50} likely, ${p95} safe`,
      heads: ["Fiscal year", "Planned", "Likely (P50)", "Cautious (P80)", "Safe (P95)"],
      itemHeads: ["Fiscal year", "Item", "Planned", "Likely (P50)", "Cautious (P80)", "Safe (P95)"],
      fiscal: (year: string) => `FY ${year}`,
    },
    deferrals: {
      heading: "What would be put off to stay within the budget?",
      lead: "In each year the least harmful for its cost first. Putting a line off saves its cost in that fiscal year and brings devices short, counted in months.",
      heads: ["Fiscal year", "Item", "Units", "Order by", "Put off to", "Saves", "Device-months short"],
    },
    downloads: "Take it with you",
    downloadNote: {
      "plan.json": "the whole plan, for programs and for comparing",
      "orders.csv": "the schedule, one line a row",
      "orders.xlsx": "the schedule as a workbook, a tab for each supplier",
      "orders.ics": "an all-day event on every order-by date",
      "budget.txt": "a page for the budget meeting: what each year takes, for what, and what that buys",
      "packs.csv": "every pack with its forecast",
      "set-aside.csv": "every row that was not used, with its reason",
    },
  },

  sheets: {
    heading: "What was read, and what was not?",
    lead: (rows: number, used: number, aside: number, files: number) =>
      `${counted(rows, "row")} in ${counted(files, "file")}: ${numberWords(used)} used, ${numberWords(aside)} set aside.`,
    nothing: "No table of a fleet was found in these files.",
    tablesCaption: "Tables found",
    tableHeads: ["File", "Read as", "Rows", "Used", "Set aside"],
    columnsHeading: "How was each column read?",
    columnsOf: (file: string, n: number, unused: number) =>
      `${file}: ${counted(n, "column")}${unused === 0 ? "" : `, ${numberWords(unused)} not used`}`,
    columnHeads: ["Column", "Header", "Read as", "How", "What stands in it"],
    readColumnAs: (header: string) => `Read column ${header} as`,
    takeAlong: {
      clean: "Save the sheets cleaned",
      workbook: "Save them as cleaned.xlsx",
      columns: "Save columns.json",
      note: "Cleaned sheets have canonical columns, one sheet a kind. columns.json keeps how the columns are read: drop it here, or give it to the program as --columns.",
    },
    notUsed: "not used",
    lacks: (kind: string, columns: string[]) =>
      `by your choice, once it is chosen here too which column holds ${listWords(
        columns.map((name) => `${kind}: ${name}`),
        "and",
      )}`,
    by: { header: "by its header", contents: "by what is in it", mapping: "by your choice", file: "by a columns file" },
    order: (order: string) => `, dates ${order}`,
    /** What to do, where the engine speaks of its command line. */
    fixHere: (fix: string) =>
      fix
        .replace("with --columns", "under “How was each column read?”")
        .replace("--date-order dmy, mdy or ymd", "dmy, mdy or ymd as “Day and month” under Assumptions")
        .replace("write it anew with check --write-columns", "save it anew under Sheets")
        .replace("the names that check lists", "names such as serial, date, item or expiry"),
    findingsHeading: "What was found on the way?",
    noFindings: "Nothing out of the ordinary was found.",
    severity: { error: "Not used", warning: "Please look", info: "For the record" },
    more: (n: string) => `and ${n} more like this`,
    where: (file: string, line: string) => (line ? `${file}, line ${line}` : file),
    asideHeading: "Which rows were set aside?",
    asideHeads: ["File", "Line", "Reason"],
    correctedHere:
      "Corrections to a workbook are kept in this page, not in its file: save the sheets cleaned to keep them.",
    correct: "Correct it",
    readAgain: "Read again",
    leave: "Leave it",
    uncorrect: (file: string) => `Take the last correction of ${file} back`,
    columnNumber: (n: number) => `Column ${n}`,
    scan: {
      heading: "What stands on this label?",
      lead: "Put the cursor into the box and scan a GS1 or HIBC label, or type what it says. Escape takes the last scan back.",
      label: "Label",
      place: "Place",
      go: "Read",
      undo: "Take the last one back",
      save: "Save as scanned.csv",
      add: "Add to the plan",
      notRead: "not read",
      needsSheets: "The sheets themselves are not in this page: save the scans and read them together with the sheets.",
      heads: ["Item", "Lot or serial", "Expiry", "Units", "Place", "As scanned"],
    },
    noneAside: "None: every row was used.",
    refusedHeading: "Which files could not be read?",
    refusedHeads: ["File", "Why"],
    embedded: "The rows of this fleet are embedded in this page: whoever gets the page can read them.",
  },

  assumptions: {
    heading: "What does the plan take for granted?",
    lead: "Change a value and the plan is made anew at once, here in the browser. A blank takes what the sheets say, or the default.",
    reset: "Take back all changes",
    groups: [
      { title: "The plan", keys: ["as_of", "horizon_months", "fiscal_year_starts", "service_level"] },
      {
        title: "Batteries",
        keys: [
          "end_of_life_percent",
          "primary_end_percent",
          "pack_max_age_months",
          "pack_max_cycles",
          "spares_percent",
          "activation_energy_ev",
        ],
      },
      {
        title: "Dated stock",
        keys: ["swap_before_expiry_days", "min_life_days", "swaps_per_month", "use_log_from"],
      },
      {
        title: "Orders and money",
        keys: [
          "buy_lacking",
          "order_before_need_days",
          "holding_rate_per_year",
          "price_rise_per_year",
          "budget_per_fiscal_year",
          "currency",
        ],
      },
    ],
    others: "Reading the sheets",
    /** Names of the keys; one without stands here by its key. */
    names: {
      as_of: "As of",
      horizon_months: "Looks ahead",
      fiscal_year_starts: "Fiscal year starts in",
      service_level: "Service level",
      end_of_life_percent: "End of life",
      primary_end_percent: "End of a primary battery",
      pack_max_age_months: "Oldest pack",
      pack_max_cycles: "Most cycles of a pack",
      spares_percent: "Spare packs",
      buy_lacking: "Buy what devices lack",
      activation_energy_ev: "Activation energy of fade",
      swap_before_expiry_days: "Swap before expiry",
      min_life_days: "Least life to be fitted",
      swaps_per_month: "Swap visits",
      use_log_from: "Use log complete from",
      order_before_need_days: "Order before need",
      holding_rate_per_year: "Cost of holding",
      price_rise_per_year: "Price rise",
      budget_per_fiscal_year: "Budget of a fiscal year",
      currency: "Currency",
      date_order: "Day and month",
    } as Record<string, string>,
    byDefault: (value: string) => `Default: ${value}.`,
    keep: "Keep this plan to compare with",
    keptPlan: "Changes are compared with the plan that you kept.",
    otherEngine: (engine: string) =>
      `The plan that you kept was made by ${engine}, another version, and is not compared.`,
    notStored:
      "This browser has no room for the plan, or keeps nothing: after a reload there is no plan to compare with.",
    letGo: "Compare with the last change again",
    save: "Save the assumptions as policy.csv",
    link: "Copy a link with your changes",
    linkCopied: "Copied. It carries the values that you changed, and nothing of your sheets.",
    linkByHand: "Copy it from here:",
    saveNote: "A colleague drops the file on this page, or lays it beside the sheets for the program to read.",
    changedHeading: "What did the change bring?",
    changedHeads: ["What", "Before", "Now", "Change"],
    unchanged: "The plan is the same as before.",
    notUsed: (key: string, why: string) => `${key} was not used: ${why}`,
    needsSheets: "Needs the sheets themselves: drop them on this page first.",
    measures: {
      assumption: (name: string, unit: string) => `Assumed: ${name}${unit && `, ${unit}`}`,
      lines: "Order lines",
      first: "First order leaves by",
      late: "Late order lines",
      due: "Packs likely due within the plan",
      spend: (year: string, currency: string) => `Planned spend, fiscal year ${year}${inCurrency(currency)}`,
      allSpend: (currency: string) => `Planned spend of all years${inCurrency(currency)}`,
      short: "Most devices short with the schedule",
      within: "Most devices short within the budget",
      deferred: "Order lines put off to stay within the budget",
      units: (item: string) => `Units ordered: ${item}`,
    },
  },
};
