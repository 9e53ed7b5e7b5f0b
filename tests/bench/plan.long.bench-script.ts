// How long `plan` takes beside the bare read of its sheets, stage by stage: npm run bench -- plan
// SCALE=0.1 npm run bench -- plan takes a tenth of the fleet
import { Readable } from "node:stream";
import Papa from "papaparse";
import { monthOfDay } from "../../src/calendar/month.ts";
import { forecastDemand } from "../../src/demand/forecast-demand.ts";
import { resolvePolicy } from "../../src/fleet/resolve-policy.ts";
import { forecastPacks } from "../../src/life/forecast-packs.ts";
import { scheduleOrders } from "../../src/orders/schedule-orders.ts";
import { assemblePlan } from "../../src/out/assemble-plan.ts";
import { packRows } from "../../src/out/plan-packs.ts";
import { writePlanJson } from "../../src/out/write-plan-json.ts";
import { policyChoicesIn } from "../../src/sheets/policy-choices.ts";
import { readSheets } from "../../src/sheets/read-sheets.ts";
import type { SheetFile } from "../../src/sheets/reading.ts";
import { deferOrders } from "../../src/short/defer-orders.ts";
import { forecastShort } from "../../src/short/forecast-short.ts";
import { forecastDatedStock } from "../../src/supplies/forecast-dated-stock.ts";
import { usableLots } from "../../src/supplies/usable-lots.ts";
import { BIG_FLEET_AS_OF, bigFleet, LARGEST_FLEET } from "./big-fleet.ts";
import { lineOf, msOf } from "./report.ts";

/** Times the bare read that the whole of `plan` may take. */
const BAR = 6;
/** Bare reads of which the quickest counts: it is short, and the machine has other work. */
const READS = 4;
const PIECE_BYTES = 1 << 16;

void run(Number(process.env.SCALE ?? "1"));

async function run(scale: number): Promise<void> {
  const { devices, packs, uses } = LARGEST_FLEET;
  const size = { ...LARGEST_FLEET, devices: devices * scale, packs: packs * scale, uses: uses * scale };
  const files = bigFleet(size);
  let bare = Number.POSITIVE_INFINITY;
  for (let turn = 0; turn < READS; turn++) bare = Math.min(bare, await msOf(() => bareRead(files)));
  let total = 0;
  const lap = <T>(stage: string, work: () => T): T => {
    const from = performance.now();
    const done = work();
    const ms = performance.now() - from;
    total += ms;
    console.log(
      `${stage.padEnd(8)} ${ms.toFixed(0).padStart(7)} ms  ${(ms / bare).toFixed(2).padStart(7)} times the bare read`,
    );
    return done;
  };
  console.log(`${size.devices} devices, ${size.packs} packs; bare read ${bare.toFixed(0)} ms`);
  const { policy } = resolvePolicy(policyChoicesIn(files), BIG_FLEET_AS_OF);
  const reading = lap("sheets", () => readSheets(files, { asOf: policy.asOf, dateOrder: null }));
  const { fleet } = reading;
  const life = lap("life", () => forecastPacks(fleet, policy));
  const dated = lap("dated", () => forecastDatedStock(fleet, policy));
  const demand = lap("demand", () => forecastDemand(policy, life, dated));
  const lots = usableLots(fleet, policy, life.stock);
  const schedule = lap("orders", () => scheduleOrders(fleet, policy, demand, lots, life.packs));
  const short = lap("short", () => forecastShort(fleet, policy, life, dated, demand, lots, schedule));
  const capped = lap("defer", () => deferOrders(fleet, policy, life, dated, demand, lots, schedule));
  const from = monthOfDay(policy.asOf);
  const plan = lap("out", () =>
    assemblePlan({ reading, policy, life, packs: packRows(life, from), dated, demand, schedule, short, capped }),
  );
  const characters = lap("write", () => [...writePlanJson(plan)].reduce((sum, { length }) => sum + length, 0));
  console.log(
    `plan.json ${(characters / 1e6).toFixed(1)} MB; peak memory ${Math.round(process.resourceUsage().maxRSS / 1024)} MB`,
  );
  console.log(lineOf({ what: "plan / bare read", figure: total / bare, unit: "times", bar: BAR }));
  if (total / bare > BAR) process.exitCode = 1;
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
