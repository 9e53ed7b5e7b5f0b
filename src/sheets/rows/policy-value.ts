import { isoFromDay } from "../../calendar/day.ts";
import type { Unit } from "../../fleet/columns.ts";
import { mayPartThousands } from "../../fleet/policy-keys.ts";
import { readYesNo } from "../values/choice-words.ts";
import { readDateText } from "../values/date-text.ts";
import { decimalMarkProof, readNumber } from "../values/number-text.ts";
import { unitFactor } from "../values/units.ts";
import { headerWords } from "../words/header-words.ts";

const DATE_KEYS = new Set(["as_of", "use_log_from"]);
/** What beside an amount names its currency, and does not multiply it. */
const OF_MONEY = /^(?!mi[lo]|m[lr][nd]|t[sy][ds])([€£$¥]|us\$|euros?|kr|[a-z]{3})?$/;
const WORD_KEYS = new Set(["currency", "date_order"]);

/** A policy row's key and value as the policy's own words: "As of", "1 Nov 2026" is as_of, 2026-11-01. */
export function policyChoice(key: string, value: string): { key: string; value: string } {
  const name = headerWords(key).replaceAll(" ", "_");
  return { key: name, value: policyValue(name, value.trim()) };
}

function policyValue(key: string, value: string): string {
  if (WORD_KEYS.has(key)) return key === "date_order" ? value.toLowerCase() : value;
  if (DATE_KEYS.has(key)) {
    const written = readDateText(value);
    return written?.kind === "span" && written.first === written.last ? isoFromDay(written.first) : value;
  }
  // an amount that is open is refused as it stands
  if (key === "budget_per_fiscal_year" && mayPartThousands(value)) return value;
  if (key === "buy_lacking") {
    const isYes = readYesNo(value);
    return isYes === true ? "yes" : isYes === false ? "no" : value;
  }
  const number = readNumber(value, decimalMarkProof(value) ?? ".");
  if (number === null || (key === "budget_per_fiscal_year" && !OF_MONEY.test(number.word))) return value;
  const unit = /_(days|months)$/.exec(key)?.[1] as Unit | undefined;
  if (unit) {
    const amount = number.value * (unitFactor(number.word, unit) ?? Number.NaN);
    // "six weeks" are no whole number of months, and "as the swap margin" is none at all
    return Number.isInteger(amount) ? String(amount) : value;
  }
  const share = number.word === "%" && (key === "service_level" || key.endsWith("_per_year"));
  return String(share ? Number((number.value / 100).toPrecision(12)) : number.value);
}
