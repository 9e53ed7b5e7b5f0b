import * as z from "zod/mini";
import { dayFromIso } from "../calendar/day.ts";
import { FADE_ACTIVATION_EV, type Policy } from "./policy.ts";

/** One policy key in words for people. */
export interface PolicyKey {
  key: string;
  field: keyof Policy;
  unit: string;
  /** As shown to people; "none" where there is none. */
  default: string;
  /** What a change does, one plain sentence. */
  explains: string;
}

/** One policy key with the rule that its value must meet. */
interface PolicyRule extends PolicyKey {
  /** Reads the text of a cell or an option. */
  schema: z.ZodMiniType;
}

const number = (min: number, max: number, ...more: z.core.$ZodCheck<number>[]) =>
  z.coerce
    .number({ error: "a number was expected" })
    .check(z.gte(min, `${min} or more was expected`), z.lte(max, `${max} or less was expected`), ...more);
const whole = (min: number, max: number) => number(min, max, z.multipleOf(1, { error: "a whole number was expected" }));
const text = z.string().check(z.trim(), z.minLength(1, "some text was expected"));
const day = z.pipe(
  z.string(),
  z.transform((value: string, context) => {
    const found = dayFromIso(value.trim());
    if (found !== null) return found;
    context.issues.push({ code: "custom", message: "a date as YYYY-MM-DD was expected", input: value });
    return z.NEVER;
  }),
);

const row = (
  key: string,
  field: keyof Policy,
  unit: string,
  byDefault: string,
  explains: string,
  schema: z.ZodMiniType,
): PolicyRule => ({ key, field, unit, default: byDefault, explains, schema });

const POLICY_RULES: readonly PolicyRule[] = [
  row("as_of", "asOf", "date", "today", "The day from which everything is forecast.", day),
  row(
    "horizon_months",
    "horizonMonths",
    "months",
    "36",
    "How far ahead the plan looks; as-of's month is the first.",
    whole(1, 360),
  ),
  row(
    "fiscal_year_starts",
    "fiscalYearStarts",
    "month",
    "1",
    "The month (1 to 12) in which a fiscal year starts.",
    whole(1, 12),
  ),
  row(
    "end_of_life_percent",
    "endOfLifePercent",
    "% of rated capacity",
    "80",
    "A pack below this capacity is due for replacement.",
    number(5, 100),
  ),
  row(
    "primary_end_percent",
    "primaryEndPercent",
    "% left",
    "10",
    "A non-rechargeable battery below this charge is due.",
    number(0, 100),
  ),
  row(
    "activation_energy_ev",
    "activationEnergyEv",
    "eV",
    String(FADE_ACTIVATION_EV),
    "How strongly warmth hastens fade by age; 0 where temperature should not count.",
    number(0, 1.5),
  ),
  row(
    "pack_max_age_months",
    "packMaxAgeMonths",
    "months",
    "none",
    "Replace a pack at this age, whatever its capacity.",
    whole(1, 600),
  ),
  row(
    "pack_max_cycles",
    "packMaxCycles",
    "cycles",
    "none",
    "Replace a pack at this cycle count, whatever its capacity.",
    whole(1, 20000),
  ),
  row(
    "service_level",
    "serviceLevel",
    "share",
    "0.95",
    "The chance of no shortage that every order is sized for.",
    number(0, 1, z.gt(0, "more than 0 was expected"), z.lt(1, "less than 1 was expected")),
  ),
  row(
    "spares_percent",
    "sparesPercent",
    "% of packs in use",
    "0",
    "Good packs kept on the shelf beside those in devices.",
    number(0, 200),
  ),
  row(
    "swap_before_expiry_days",
    "swapBeforeExpiryDays",
    "days",
    "14",
    "A dated unit is swapped this long before it expires.",
    whole(0, 3650),
  ),
  row(
    "min_life_days",
    "minLifeDays",
    "days",
    "as the swap margin",
    "A unit with less life left than this is not fitted from the shelf.",
    whole(0, 3650),
  ),
  row(
    "swaps_per_month",
    "swapsPerMonth",
    "visits a month",
    "none",
    "How many swap visits the team can make in a month.",
    whole(1, 1_000_000),
  ),
  row(
    "order_before_need_days",
    "orderBeforeNeedDays",
    "days",
    "14",
    "Orders arrive this long before they are needed.",
    whole(0, 3650),
  ),
  row(
    "holding_rate_per_year",
    "holdingRatePerYear",
    "share of price a year",
    "0.1",
    "What a unit on the shelf costs to keep for a year.",
    number(0, 10),
  ),
  row("price_rise_per_year", "priceRisePerYear", "share a year", "0", "How fast prices rise.", number(-0.5, 10)),
  row(
    "use_log_from",
    "useLogFrom",
    "date",
    "the log's first date",
    "The day on which the use log starts to be complete.",
    day,
  ),
  row(
    "budget_per_fiscal_year",
    "budgetPerFiscalYear",
    "money",
    "none",
    "What may be spent in one fiscal year.",
    text.check(z.regex(/^\d+(\.\d+)?$/, "an amount such as 25000 was expected")),
  ),
  row("currency", "currency", "code", "the catalogue's", "The currency of budgets and totals.", text),
  row(
    "date_order",
    "dateOrder",
    "dmy, mdy or ymd",
    "none",
    "How to read dates in columns that do not settle their own order.",
    z.enum(["dmy", "mdy", "ymd"], { error: "dmy, mdy or ymd was expected" }),
  ),
];

/** Every policy key in the order in which help, the page and the sheet show them. */
export const POLICY_KEYS: readonly PolicyKey[] = POLICY_RULES;

/**
 * Reads the text of a value under its key's rule.
 *
 * @returns the value; null where there is no such key; or what was expected instead
 */
export function readPolicyValue(
  key: string,
  text: string,
): { key: PolicyKey; value: unknown } | { key: PolicyKey; expected: string } | null {
  const rule = POLICY_RULES.find((candidate) => candidate.key === key);
  if (rule === undefined) return null;
  const read = rule.schema.safeParse(text);
  return read.success
    ? { key: rule, value: read.data }
    : { key: rule, expected: read.error.issues[0]?.message ?? "not understood" };
}
