import { dayFromIso } from "../calendar/day.ts";
import { monthNamed } from "../calendar/month-words.ts";
import { camelCase } from "./camel-case.ts";
import { currencyCode } from "./currency.ts";
import { expectedOf } from "./expected-cell.ts";
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

/** How a value's text is read: null where it is not what was expected. */
interface Reader {
  expected: string;
  read: (text: string) => unknown;
  /** A value to show; where absent, the default. */
  example?: string | undefined;
}

/** One policy key with how its value is read. */
interface PolicyRule extends PolicyKey, Reader {
  example: string;
}

const numbers =
  (type: "number" | "whole") =>
  (min: number, max: number, example?: string): Reader => ({
    expected: expectedOf(type, min, max),
    read: (text) => {
      const value = Number(text);
      return value >= min && value <= max && (type === "number" || Number.isInteger(value)) ? value : null;
    },
    example,
  });
const number = numbers("number");
const whole = numbers("whole");
const matching = (pattern: RegExp, expected: string, example: string): Reader => ({
  expected,
  read: (text) => (pattern.test(text) ? text : null),
  example,
});
/** A day of the years that sheets may name. */
const day = (example: string): Reader => ({
  expected: "a date as YYYY-MM-DD, 1990 to 2100,",
  read: (text) => (/^(199\d|20\d\d|2100)-/.test(text) ? dayFromIso(text) : null),
  example,
});
const month: Reader = {
  expected: "a month from 1 to 12, or its name",
  read: (text) => whole(1, 12).read(text) ?? monthNamed(text),
};

/** True for an amount such as 12.000: twelve to one reader, twelve thousand to another. */
export function mayPartThousands(amount: string): boolean {
  return /^\D*\d{1,3}\.\d{3}\D*$/.test(amount);
}

const money: Reader = {
  expected: "an amount such as 25000",
  read: (text) => (/^\d+(\.\d+)?$/.test(text) && !mayPartThousands(text) ? text : null),
  example: "25000",
};

/** A share of price a year: a larger one was meant as a percentage. */
const LARGEST_SHARE = 0.99;

/** A key of the policy sheet in camel case, as `Policy` has it. */
type Camel<Key extends string> = Key extends `${infer First}_${infer Rest}`
  ? `${First}${Capitalize<Camel<Rest>>}`
  : Key;

const rule = <Key extends string>(
  key: Key & (Camel<Key> extends keyof Policy ? unknown : never),
  unit: string,
  byDefault: string,
  explains: string,
  reader: Reader,
): PolicyRule => {
  const field = camelCase(key) as keyof Policy;
  return { key, field, unit, default: byDefault, explains, ...reader, example: reader.example ?? byDefault };
};

const POLICY_RULES: readonly PolicyRule[] = [
  rule("as_of", "date", "today", "The day from which everything is forecast.", day("2026-11-01")),
  rule("horizon_months", "months", "36", "How far ahead the plan looks; as-of's month is the first.", whole(1, 360)),
  rule("fiscal_year_starts", "month", "1", "The month (1 to 12) in which a fiscal year starts.", month),
  rule(
    "end_of_life_percent",
    "% of rated capacity",
    "80",
    "A pack below this capacity is due for replacement.",
    number(5, 100),
  ),
  rule("primary_end_percent", "% left", "10", "A non-rechargeable battery below this charge is due.", number(0, 100)),
  rule(
    "activation_energy_ev",
    "eV",
    String(FADE_ACTIVATION_EV),
    "How strongly warmth hastens fade by age; 0 where temperature should not count.",
    number(0, 1.5),
  ),
  rule(
    "pack_max_age_months",
    "months",
    "none",
    "Replace a pack at this age, whatever its capacity.",
    whole(1, 600, "60"),
  ),
  rule(
    "pack_max_cycles",
    "cycles",
    "none",
    "Replace a pack at this cycle count, whatever its capacity.",
    whole(1, 20000, "500"),
  ),
  rule(
    "service_level",
    "share",
    "0.95",
    "The chance of no shortage that every order is sized for.",
    number(0.0001, 0.9999),
  ),
  rule(
    "spares_percent",
    "% of packs in use",
    "0",
    "Good packs kept on the shelf beside those in devices.",
    number(0, 200, "10"),
  ),
  rule(
    "buy_lacking",
    "yes or no",
    "no",
    "Whether units that devices in service lack are needed now.",
    matching(/^(yes|no)$/, "yes or no", "yes"),
  ),
  rule("swap_before_expiry_days", "days", "14", "A dated unit is swapped this long before it expires.", whole(0, 3650)),
  rule(
    "min_life_days",
    "days",
    "as the swap margin",
    "A unit with less life left than this is not fitted from the shelf.",
    whole(0, 3650, "30"),
  ),
  rule(
    "swaps_per_month",
    "visits a month",
    "none",
    "How many swap visits the team can make in a month.",
    whole(1, 1_000_000, "8"),
  ),
  rule("order_before_need_days", "days", "14", "Orders arrive this long before they are needed.", whole(0, 3650)),
  rule(
    "holding_rate_per_year",
    "share of price a year",
    "0.1",
    "What a unit on the shelf costs to keep for a year.",
    number(0, LARGEST_SHARE),
  ),
  rule("price_rise_per_year", "share a year", "0", "How fast prices rise.", number(-0.5, LARGEST_SHARE, "0.03")),
  rule(
    "use_log_from",
    "date",
    "the log's first date",
    "The day on which the use log starts to be complete.",
    day("2025-05-01"),
  ),
  rule("budget_per_fiscal_year", "money", "none", "What may be spent in one fiscal year.", money),
  rule("currency", "code", "the catalogue's", "The currency of budgets and totals.", {
    expected: "a code",
    read: currencyCode,
    example: "EUR",
  }),
  rule(
    "date_order",
    "dmy, mdy or ymd",
    "none",
    "How to read dates in columns that do not settle their own order.",
    matching(/^(dmy|mdy|ymd)$/, "dmy, mdy or ymd", "dmy"),
  ),
];

/** Every policy key in the order in which help, the page and the sheet show them. */
export const POLICY_KEYS: readonly PolicyKey[] = POLICY_RULES;

/**
 * Reads the text of a value under its key's rule.
 *
 * @returns the value; null where there is no such key; or what was expected instead, with an example
 */
export function readPolicyValue(
  key: string,
  text: string,
): { key: PolicyKey; value: unknown } | { key: PolicyKey; expected: string; example: string } | null {
  const rule = POLICY_RULES.find((candidate) => candidate.key === key);
  if (rule === undefined) return null;
  const value = rule.read(text.trim());
  const { expected, example } = rule;
  return value === null ? { key: rule, expected, example } : { key: rule, value };
}
