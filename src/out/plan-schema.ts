import * as z from "zod";

const isoDay = z.string().regex(/^\d{4}-\d{2}-\d{2}$/);
const isoMonth = z.string().regex(/^\d{4}-\d{2}$/);
const chance = z.number().min(0).max(1);
const minorUnits = z.number().int();
const amount = z.number().nonnegative();
const kind = z.enum(["already-due", "within-horizon", "beyond-horizon", "no-forecast"]);
const basis = z.enum(["measured", "pooled", "typical"]);
const band = z.object({ p10: z.number(), p50: z.number(), p90: z.number() });
const months = z.object({ from: isoMonth, to: isoMonth });
const dates = { p10: isoDay.nullable(), p50: isoDay.nullable(), p90: isoDay.nullable() };

export const findingSchema = z.object({
  code: z.string(),
  severity: z.enum(["info", "warning", "error"]),
  file: z.string().nullable(),
  sheet: z.string().nullable(),
  line: z.number().int().nullable(),
  lines: z.array(z.number().int()),
  column: z.number().int().nullable(),
  value: z.string().nullable(),
  message: z.string(),
  fix: z.string(),
});

export const inputSchema = z.object({
  file: z.string(),
  sheet: z.string().nullable(),
  table: z.number().int(),
  kinds: z.array(z.string()),
  headerLines: z.array(z.number().int()),
  rows: z.number().int(),
  used: z.number().int(),
  setAside: z.number().int(),
  sha256: z.string(),
});

const packSchema = z.object({
  serial: z.string(),
  item: z.string(),
  device: z.string().nullable(),
  site: z.string().nullable(),
  basis,
  readings: z.number().int(),
  capacityNow: band.nullable(),
  /** Fractions of rated capacity at each month's end. */
  path: z.object({ from: isoMonth, p10: z.array(z.number()), p50: z.array(z.number()), p90: z.array(z.number()) }),
  belowBy: z.object({ kind, ...dates }),
  replaceBy: z.object({
    kind,
    ...dates,
    because: z.enum(["fade", "failed-test", "held", "failure", "age", "cycles", "use-by", "service-life"]).nullable(),
    note: z.string().nullable(),
  }),
  dueBy: z.object({ from: isoMonth, chance: z.array(chance) }),
  says: z.string(),
});

/** An item's record of sudden failures, as seen (Kaplan-Meier) and as planned (Weibull). */
const failureSchema = z.object({
  item: z.string(),
  lives: z.number().int(),
  failures: z.number().int(),
  packYears: amount,
  shape: amount,
  scaleYears: amount,
  /** The youngest age that was watched: shares are of packs that reached it. */
  watchedFromYears: amount,
  survival: z.array(
    z.object({
      years: z.number().int(),
      atRisk: z.number().int(),
      seen: chance,
      standardError: amount,
      planned: chance,
    }),
  ),
});

/** What wears faster than its like for the same age, cycles and temperature; groups before packs, the fastest first. */
const signSchema = z.object({
  kind: z.enum(["pack", "site", "duty", "batch"]),
  item: z.string(),
  /** Serial, site, duty or month made (`YYYY-MM`). */
  name: z.string(),
  /** Packs whose readings speak, retired ones among them. */
  packs: z.number().int(),
  /** A pack as the middling one of its item, a group as the item's other packs. */
  timesAsFast: band,
  atLeast: z.number(),
  /** That it wears at least `atLeast` times as fast. */
  chance,
  inService: z.number().int(),
  dueWithinYear: amount,
  says: z.string(),
});

const datedSchema = z.object({
  item: z.string(),
  lot: z.string().nullable(),
  serial: z.string().nullable(),
  expiry: isoDay,
  quantity: z.number().int(),
  place: z.string().nullable(),
  swapBy: isoDay,
  chanceUsed: chance,
});

const crowdedSchema = z.object({
  item: z.string(),
  month: isoMonth,
  units: z.number().int(),
  evenShare: amount,
  pValue: chance,
  span: months,
  lots: z.array(z.string()),
  places: z.number().int(),
  says: z.string(),
});

const visitSchema = z.object({
  month: isoMonth,
  place: z.string(),
  item: z.string(),
  lot: z.string().nullable(),
  quantity: z.number().int(),
  swapBy: isoDay,
  daysGivenUp: z.number().int(),
});

const moveSchema = z.object({
  from: z.string(),
  to: z.string(),
  item: z.string(),
  lot: z.string().nullable(),
  quantity: z.number().int(),
  by: isoDay,
  unitsSaved: amount,
});

const demandSchema = z.object({
  item: z.string(),
  from: isoMonth,
  mean: z.array(amount),
  p50: z.array(amount),
  p90: z.array(amount),
  cumulative: z.object({ mean: z.array(amount), p50: z.array(amount), p80: z.array(amount), p95: z.array(amount) }),
  causes: z.object({
    fade: z.array(amount),
    limit: z.array(amount),
    failure: z.array(amount),
    expiry: z.array(amount),
    use: z.array(amount),
    routine: z.array(amount),
    growth: z.array(amount),
  }),
});

const orderSchema = z.object({
  id: z.string(),
  order: z.string(),
  orderBy: isoDay,
  arriveBy: isoDay,
  late: z.boolean(),
  uncoveredUntil: isoDay.nullable(),
  supplier: z.string(),
  item: z.string(),
  /** The supplier's trade item number, as the catalogue has it; plans saved before it was told lack it. */
  gtin: z.string().nullable().default(null),
  quantity: z.number().int(),
  boxes: z.number().int(),
  unitPrice: z.string(),
  lineCost: minorUnits,
  feeShare: minorUnits,
  currency: z.string(),
  covers: months,
  reason: z.string(),
  expectedWaste: amount,
});

/** An order line that the year's budget has no room for, put off; in the order in which to defer. */
const deferralSchema = z.object({
  fiscalYear: z.string(),
  currency: z.string(),
  /** Id of the order line. */
  line: z.string(),
  supplier: z.string(),
  item: z.string(),
  quantity: z.number().int(),
  orderBy: isoDay,
  deferredTo: isoDay,
  saves: minorUnits,
  /** Device-months short that this brings, expected over the plan's months. */
  deviceMonthsShort: z.number(),
});

const spend = { planned: minorUnits, p50: minorUnits, p80: minorUnits, p95: minorUnits };
const shortage = z.object({ expected: amount, anyChance: chance });

/** Plan format `wanecast.plan/1`. Unknown is null; money is whole minor units; months `YYYY-MM`, dates `YYYY-MM-DD`. */
export const planSchema = z.object({
  format: z.literal("wanecast.plan/1"),
  engine: z.string(),
  asOf: isoDay,
  horizon: months,
  policy: z.record(z.string(), z.union([z.string(), z.number(), z.null()])),
  inputs: z.array(inputSchema),
  findings: z.array(findingSchema),
  fadeGroups: z.array(
    z.object({
      item: z.string(),
      packs: z.number().int(),
      readings: z.number().int(),
      completedLives: z.number().int(),
      parameters: z.record(z.string(), z.number()),
      basis,
    }),
  ),
  packs: z.array(packSchema),
  suddenFailures: z.array(failureSchema).default([]),
  earlySigns: z.array(signSchema).default([]),
  datedStock: z.array(datedSchema),
  crowdedMonths: z.array(crowdedSchema),
  swapCalendar: z.array(visitSchema),
  moves: z.array(moveSchema),
  demand: z.array(demandSchema),
  orders: z.array(orderSchema),
  budget: z.array(
    z.object({
      fiscalYear: z.string(),
      currency: z.string(),
      ...spend,
      byItem: z.array(z.object({ item: z.string(), ...spend })),
    }),
  ),
  /** What to put off where budget_per_fiscal_year is less than planned; empty without a budget. */
  deferrals: z.array(deferralSchema),
  short: z.array(
    z.object({
      month: isoMonth,
      devices: z.number().int(),
      withoutBuying: shortage,
      withSchedule: shortage,
      /** With the schedule less what is deferred; null without a budget. */
      withinBudget: shortage.nullable(),
    }),
  ),
  cautions: z.array(z.string()),
});

/** A plan as it stands in plan.json. */
export type Plan = z.infer<typeof planSchema>;
