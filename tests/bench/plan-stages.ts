import { Readable } from "node:stream";
import Papa from "papaparse";
import { monthOfDay } from "../../src/calendar/month.ts";
import { forecastDemand } from "../../src/demand/forecast-demand.ts";
import { rememberStages } from "../../src/fleet/policy-reads.ts";
import { resolvePolicy } from "../../src/fleet/resolve-policy.ts";
import { forecastPacks } from "../../src/life/forecast-packs.ts";
import { scheduleOrders } from "../../src/orders/schedule-orders.ts";
import { settledOrders } from "../../src/orders/settled-orders.ts";
import { assemblePlan } from "../../src/out/assemble-plan.ts";
import { embedInPage, PAGE_DATA_PLACEHOLDER } from "../../src/out/embed-in-page.ts";
import { packRows } from "../../src/out/plan-packs.ts";
import { writePlanJson } from "../../src/out/write-plan-json.ts";
import { policyChoicesIn } from "../../src/sheets/policy-choices.ts";
import { readSheets } from "../../src/sheets/read-sheets.ts";
import type { SheetFile } from "../../src/sheets/reading.ts";
import { deferOrders } from "../../src/short/defer-orders.ts";
import { forecastShort } from "../../src/short/forecast-short.ts";
import { forecastDatedStock } from "../../src/supplies/forecast-dated-stock.ts";
import { usableLots } from "../../src/supplies/usable-lots.ts";
import { BIG_FLEET_AS_OF } from "./big-fleet.ts";
import { msOf } from "./report.ts";

/** Bare reads of which the quickest counts: it is short, and the machine has other work. */
const READS = 4;
const PIECE_BYTES = 1 << 16;

/** What `plan` took on some sheets. */
export interface StagedPlan {
  /** Milliseconds of the bare read: every sheet streamed, its rows named by the header and dropped. */
  bareMs: number;
  /** Milliseconds by stage, in their order; of those that come again, together. */
  stages: Map<string, number>;
  planMb: number;
  /** The plan and the fleet's rows as the page carries them; null where no text can be that long. */
  pageMb: number | null;
}

/** Runs `plan` stage by stage, from sheets to plan.json and the page's data, telling of each stage as it ends. */
export async function planByStages(
  files: readonly SheetFile[],
  tell: (stage: string, ms: number, bareMs: number) => void,
): Promise<StagedPlan> {
  let bareMs = Number.POSITIVE_INFINITY;
  for (let turn = 0; turn < READS; turn++) bareMs = Math.min(bareMs, await msOf(() => bareRead(files)));
  const stages = new Map<string, number>();
  const lap = <T>(stage: string, work: () => T): T => {
    const from = performance.now();
    const done = work();
    const ms = performance.now() - from;
    stages.set(stage, ms + (stages.get(stage) ?? 0));
    tell(stage, ms, bareMs);
    return done;
  };
  const { policy } = resolvePolicy(policyChoicesIn(files), BIG_FLEET_AS_OF);
  const reading = lap("sheets", () => readSheets(files, { asOf: policy.asOf, dateOrder: null }));
  const { fleet } = reading;
  const life = lap("life", () => forecastPacks(fleet, policy));
  const dated = lap("dated", () => forecastDatedStock(fleet, policy));
  const lots = usableLots(fleet, policy, life.stock);
  const remember = rememberStages();
  const { demand, schedule } = settledOrders(
    (coming) => lap("demand", () => forecastDemand(policy, life, dated, remember, coming)),
    (needs) => lap("orders", () => scheduleOrders(fleet, policy, needs, lots, life.packs)),
    fleet,
    policy,
  );
  const scheduled = { fleet, policy, life, dated, demand, lots, schedule };
  const short = lap("short", () => forecastShort(scheduled));
  const capped = lap("defer", () => deferOrders(scheduled));
  const from = monthOfDay(policy.asOf);
  const plan = lap("out", () =>
    assemblePlan({ reading, policy, life, packs: packRows(life, from), dated, demand, schedule, short, capped }),
  );
  const characters = lap("write", () => {
    let sum = 0;
    for (const { length } of writePlanJson(plan)) sum += length;
    return sum;
  });
  const pageCharacters = lap("page", () => {
    try {
      return embedInPage(PAGE_DATA_PLACEHOLDER, plan, reading).length;
    } catch (error) {
      if (error instanceof RangeError) return null;
      throw error;
    }
  });
  return { bareMs, stages, planMb: characters / 1e6, pageMb: pageCharacters === null ? null : pageCharacters / 1e6 };
}

/** Every sheet streamed, its rows named by the header and dropped. */
async function bareRead(files: readonly SheetFile[]): Promise<void> {
  for (const { bytes } of files) {
    const pieces = Array.from({ length: Math.ceil(bytes.length / PIECE_BYTES) }, (_, piece) =>
      Buffer.from(bytes.subarray(piece * PIECE_BYTES, (piece + 1) * PIECE_BYTES)),
    );
    await new Promise<void>((resolve, reject) => {
      Papa.parse<Record<string, string>>(Readable.from(pieces), {
        header: true,
        step: () => {},
        complete: () => resolve(),
        error: reject,
      });
    });
  }
}
