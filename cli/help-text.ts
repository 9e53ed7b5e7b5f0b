/** What each verb answers, and two examples that lead its help. */
export const VERB_HELP: Record<string, { answers: string; examples: string[] }> = {
  plan: {
    answers: "everything: a summary on stdout, the plan's files in --out",
    examples: [
      "wanecast plan sheets/ --out out",
      "wanecast plan sheets/ --as-of 2026-11-01 --policy service_level=0.98",
    ],
  },
  check: {
    answers: "how each sheet and column was read, and every finding; nothing is forecast",
    examples: ["wanecast check sheets/", "wanecast check packs.csv --json --fail-on set-aside"],
  },
  packs: {
    answers: "which batteries are due, when, why, how sure",
    examples: ["wanecast packs sheets/", "wanecast packs packs.csv tests.csv catalogue.csv --json"],
  },
  dates: {
    answers: "dated stock by month and place, what lapses, crowded months, swaps and moves",
    examples: ["wanecast dates sheets/", "wanecast dates sheets/ --policy swap_before_expiry_days=30"],
  },
  orders: {
    answers: "the procurement schedule and the budget",
    examples: ["wanecast orders sheets/", "wanecast orders sheets/ --out out --fail-on late"],
  },
  compare: {
    answers: "two saved plans, or one fleet under two policies, side by side",
    examples: [
      "wanecast compare october/plan.json january/plan.json",
      "wanecast compare sheets/ --against end_of_life_percent=70",
    ],
  },
  trace: {
    answers: "where a lot, serial, GTIN, order number or scanned label is, and what it touches",
    examples: ["wanecast trace W2708 sheets/", "wanecast trace --ids recalled-lots.txt sheets/ --json"],
  },
  scan: {
    answers: "label scans from standard input, one a line, to dated-stock rows",
    examples: ["wanecast scan catalogue.csv < scans.txt > dated_stock.csv", "wanecast scan --json < scans.txt"],
  },
  prove: {
    answers: "hides recent history, forecasts it, scores it beside a straight line and an age rule",
    examples: ["wanecast prove sheets/", "wanecast prove sheets/ --months-back 12 --months-back 36 --json"],
  },
  page: {
    answers: "the self-contained chart page with the plan inside",
    examples: ["wanecast page sheets/ --out out", "wanecast page sheets/ > page.html"],
  },
  sample: {
    answers: "the invented fleet's sheets, to try all this on",
    examples: ["wanecast sample sheets", "wanecast sample sheets && wanecast plan sheets --out out"],
  },
  completion: {
    answers: "the script that makes a shell complete verbs, options and policy keys",
    examples: ["source <(wanecast completion bash)", "wanecast completion fish | source"],
  },
};

/** Policy keys, for help without loading the engine; a test holds the list to the engine's own. */
export const POLICY_KEYS_HELP = [
  "as_of",
  "horizon_months",
  "fiscal_year_starts",
  "end_of_life_percent",
  "primary_end_percent",
  "activation_energy_ev",
  "pack_max_age_months",
  "pack_max_cycles",
  "service_level",
  "spares_percent",
  "buy_lacking",
  "swap_before_expiry_days",
  "min_life_days",
  "swaps_per_month",
  "order_before_need_days",
  "holding_rate_per_year",
  "price_rise_per_year",
  "use_log_from",
  "budget_per_fiscal_year",
  "currency",
  "date_order",
];

/** What stands under a verb's help, a paragraph each. */
export const EXIT_HELP = "Exit codes: 0 done, 1 our fault, 2 usage, 3 input refused, 4 --fail-on met.";
export const POLICY_HELP = `Policy keys (--policy KEY=VALUE, or a sheet with the columns key and value): ${POLICY_KEYS_HELP.join(", ")}.`;

/** What stands under the program's help, a paragraph each. */
export const START_HELP = "Start with: wanecast sample sheets && wanecast plan sheets --out out";
export const CAUTION_HELP = "A planning aid only: it never says that a device is safe to use.";
