import type { ItemDemand } from "../demand/types.ts";
import type { Policy } from "../fleet/policy.ts";
import type { LifeForecast } from "../life/types.ts";
import type { OrderSchedule } from "../orders/types.ts";
import type { Reading } from "../sheets/reading.ts";
import type { CappedSchedule, ShortMonth } from "../short/types.ts";
import type { DatedStockForecast } from "../supplies/forecast-dated-stock.ts";
import { STANDING_CAUTIONS } from "./cautions.ts";
import { crowdedRows, datedRows, moveRows, swapRows } from "./plan-dated.ts";
import { demandRows } from "./plan-demand.ts";
import { failureRows } from "./plan-failures.ts";
import { planHead } from "./plan-head.ts";
import { budgetRows, deferralRows, orderRows, shortRows } from "./plan-orders.ts";
import { fadeGroupRows } from "./plan-packs.ts";
import type { Plan } from "./plan-schema.ts";
import { signRows } from "./plan-signs.ts";

/** What the stages made, in the order of the pipeline. */
export interface PlanParts {
  reading: Reading;
  policy: Policy;
  life: LifeForecast;
  /** Of `life`, by `packRows`. */
  packs: Plan["packs"];
  dated: DatedStockForecast;
  demand: readonly ItemDemand[];
  schedule: OrderSchedule;
  short: readonly ShortMonth[];
  /** null where the policy sets no budget. */
  capped: CappedSchedule | null;
}

/**
 * The plan as it stands in plan.json: ISO dates, stated digits, rows in the order of stable keys, so that
 * the same sheets give the same bytes whatever the order of their rows and whichever engine runs.
 */
export function assemblePlan(parts: PlanParts): Plan {
  const { reading, policy, life, packs, dated, demand, schedule, short, capped } = parts;
  return {
    ...planHead(reading, policy, [...life.findings, ...dated.findings]),
    fadeGroups: fadeGroupRows(life),
    packs,
    suddenFailures: failureRows(life),
    earlySigns: signRows(life),
    datedStock: datedRows(dated.needing.stock),
    crowdedMonths: crowdedRows(dated.crowdedMonths),
    swapCalendar: swapRows(dated.swapCalendar),
    moves: moveRows(dated.moves),
    demand: demandRows(demand),
    orders: orderRows(schedule),
    budget: budgetRows(schedule),
    deferrals: deferralRows(capped),
    short: shortRows(short, capped),
    cautions: [
      ...new Set([
        ...STANDING_CAUTIONS,
        ...life.cautions,
        ...dated.cautions,
        ...schedule.cautions,
        ...(capped?.cautions ?? []),
      ]),
    ],
  };
}
