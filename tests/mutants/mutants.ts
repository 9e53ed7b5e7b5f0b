/** A line broken on purpose, and the tests of which at least one must fail for it. */
export interface Mutant {
  file: string;
  /** Text that stands once in the file, and what it becomes. */
  from: string;
  to: string;
  tests: string;
}

const broken = (file: string, tests: string, from: string, to: string): Mutant => ({
  file: `src/${file}.ts`,
  tests: `tests/${tests}`,
  from,
  to,
});

/** Lines whose signs, bounds, month ends and thresholds decide what a plan says. */
export const MUTANTS: readonly Mutant[] = [
  broken("calendar/month", "calendar", "firstDayOfMonth(month + 1) - 1", "firstDayOfMonth(month + 1)"),
  broken("calendar/month", "calendar", "number >= 1 && number <= 12", "number >= 0 && number <= 12"),
  broken("calendar/fiscal-year", "calendar", "(startsInMonth - 1)", "startsInMonth"),
  broken(
    "fade/capacity-readings",
    "fade/capacity",
    'if (test.fullCharge === false) return "not from a full charge"',
    'if (false) return "not from a full charge"',
  ),
  broken("fade/capacity-readings", "fade/capacity", "const EARLY_DAYS = 180", "const EARLY_DAYS = 240"),
  broken("fade/capacity-readings", "fade/capacity", 'below: test.result === "fail"', 'below: test.result === "pass"'),
  broken("fade/capacity-readings", "fade/capacity", "celsius >= COMPARABLE_FROM_C", "celsius > COMPARABLE_FROM_C"),
  broken("sheets/values/formula-guard", "out/csv", "(^|[;\\t\\r\\n]\\s*)('*[=+", "(^)('*[=+"),
  broken("maths/support-points", "maths/support-points", "part - distances[", "part + distances["),
  broken("fade/speaking-curves", "fade/speaking-curves", "const FIRST_TIME = 10", "const FIRST_TIME = 118"),
  broken(
    "orders/known-lots",
    "orders/known-lots",
    "if (numbers[i] !== room[i]) return false",
    "if (numbers[i] !== room[i]) break",
  ),
  broken("fade/crossing", "fade/crossing", "startRoom + rise *", "startRoom - rise *"),
  broken("fade/node-tables", "fade/node-tables", "Math.log(longer - beyond)", "Math.log(longer)"),
  broken("life/life-limits", "life/life-limits", "if (now >= most) return asOf", "if (now > most + 1) return asOf"),
  broken(
    "life/life-limits",
    "life/life-limits",
    "found.sort((a, b) => a.day - b.day)",
    "found.sort((a, b) => b.day - a.day)",
  ),
  broken("life/pack-end", "life/forecast", "asOf + ahead >= certain", "asOf + ahead >= certain + 31"),
  broken("supplies/unit-life", "supplies", "row.expiry - (isPack", "row.expiry + (isPack"),
  broken(
    "supplies/unit-life",
    "supplies tests/orders",
    "lastDayOfMonth(arrives + months)",
    "lastDayOfMonth(arrives + months - 1)",
  ),
  broken(
    "supplies/unit-life",
    "supplies",
    "Math.min(row.expiry, row.opened + item.openedDays)",
    "Math.max(row.expiry, row.opened + item.openedDays)",
  ),
  broken("supplies/crowded-months", "supplies", "const LEAST_UNITS = 5", "const LEAST_UNITS = 6"),
  broken("supplies/crowded-months", "supplies", "const SIGNIFICANT = 0.01", "const SIGNIFICANT = 0.1"),
  broken(
    "demand/pack-needs",
    "demand",
    "firstDayOfMonth(firstMonth + month) < retired",
    "firstDayOfMonth(firstMonth + month + 1) < retired",
  ),
  broken("demand/use-draws", "demand", "(share * (rate.shape + events))", "(share * (rate.shape + events + 1))"),
  broken("demand/place-futures", "demand", "Math.ceil((found.length - first) / step)", "found.length"),
  broken("demand/futures-needs", "demand", "(level - ROUNDING) * futures", "(level - 0.05) * futures"),
  broken("demand/shared-pace", "demand", "exposure: CERTAIN / pace", "exposure: CERTAIN * pace"),
  broken("orders/prices", "orders", "tier.fromUnits <= units", "tier.fromUnits < units"),
  broken("orders/prices", "orders", "total >= offer.freeOver", "total > offer.freeOver"),
  broken(
    "orders/supply-spans",
    "orders",
    "for (const span of supply) if (span.from <= through",
    "for (const span of supply) if (span.from < through",
  ),
  broken("orders/order-slots", "orders", "const missed = wished < policy.asOf", "const missed = wished <= policy.asOf"),
  broken(
    "orders/offers",
    "orders",
    "Math.ceil(normalQuantile(level) * spread)",
    "Math.floor(normalQuantile(level) * spread)",
  ),
  broken("short/unmet-needs", "short", "a.to - b.to || a.from - b.from", "b.to - a.to || a.from - b.from"),
  broken("short/short-on-paths", "short", "spared = (1 - share) ** units", "spared = share ** units"),
  broken(
    "sheets/values/date-text",
    "sheets/values",
    "year >= CENTURY_WINDOW ? 1900 : 2000",
    "year > CENTURY_WINDOW ? 1900 : 2000",
  ),
  broken("sheets/values/date-text", "sheets", "(week - 1) * 7", "week * 7"),
  broken("sheets/values/number-text", "sheets", 'return comma > point ? "," : "."', 'return comma < point ? "," : "."'),
  broken("sheets/rows/settle-nothing-left", "sheets/nothing-left", "const TOO_MANY = 0.5", "const TOO_MANY = 0.9"),
  broken(
    "sheets/tables/undated-results",
    "sheets/undated-results",
    "profile.numbers < MOSTLY_NUMBERS",
    "profile.numbers < 2",
  ),
  broken("life/life-limits", "life/life-limits", 'note(useBy, "use-by")', 'note(null, "use-by")'),
  broken("supplies/item-places", "batteries-with-expiry", "asPack[at] === 1 ? numbers.size", "false ? numbers.size"),
  broken("fleet/money", "fleet", "a.rest > b.rest ? -1 : 1", "a.rest > b.rest ? 1 : -1"),
  broken("maths/convolution", "maths/discrete", "sum >= level - ROUNDING", "sum >= level"),
  broken("maths/gamma-poisson", "maths/discrete", "SHAPE_OF_ONE_RATE = 1000", "SHAPE_OF_ONE_RATE = 30"),
  broken("maths/normal", "maths/normal", "if (x > 8) return 0", "if (x > 3) return 0"),
  broken("fade/time-grid", "fade/time-grid", "(daysAhead * Math.exp(logStretch)) / FIRST", "daysAhead / FIRST"),
  broken("life/due-by-draw", "life/due-by-draw", "STEPS_OF_ROOT = 8", "STEPS_OF_ROOT = 1"),
  broken("life/due-by-draw", "life/due-by-draw", "STEPS_BEFORE = 24", "STEPS_BEFORE = 1"),
  broken("life/chance-dates", "life/chance-dates", "onGrid[k + lowest + j]", "onGrid[k + j]"),
  broken("maths/monotone-cubic", "maths/monotone-cubic", "left * right > 0 ?", "left + right > 0 ?"),
  broken("fade/capacity-path", "fade/capacity-path", "m === between / 2 || ", ""),
  broken("demand/drawn-uses", "demand/place-futures", "Math.floor(turn + begins[use]!)", "Math.floor(begins[use]!)"),
  broken("life/swapped-packs", "life/swapped", "CAPACITY_RISES_BY = 0.06", "CAPACITY_RISES_BY = 0.01"),
  broken("supplies/moves", "supplies/propose", "row.opened === null && row.expiry", "row.expiry"),
  broken("supplies/move-list", "supplies/propose", "Math.floor((day - policy.asOf) / 2)", "day - policy.asOf"),
  broken("supplies/crowded-months", "supplies/forecast-dated", "const LEAST_MONTHS = 12", "const LEAST_MONTHS = 6"),
  broken("supplies/unit-life", "supplies/unit-life", "day > lastDayOfMonth(left) ? day", "day > 0 ? day"),
  broken("out/orders-ics", "out/orders-ics", "isoFromDay(day + 1)", "isoFromDay(day)"),
];
