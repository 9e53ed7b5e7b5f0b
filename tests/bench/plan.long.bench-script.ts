// How long `plan` takes beside the bare read of its sheets, stage by stage: npm run bench -- plan
// SCALE=0.1 npm run bench -- plan takes a tenth of the fleet
import { bigFleet, LARGEST_FLEET } from "./big-fleet.ts";
import { planByStages } from "./plan-stages.ts";
import { lineOf } from "./report.ts";

/** Times the bare read that the whole of `plan` may take. */
const BAR = 6;

void run(Number(process.env.SCALE ?? "1"));

async function run(scale: number): Promise<void> {
  const { devices, packs, uses } = LARGEST_FLEET;
  const size = { ...LARGEST_FLEET, devices: devices * scale, packs: packs * scale, uses: uses * scale };
  console.log(`${size.devices} devices, ${size.packs} packs`);
  const { bareMs, stages, planMb } = await planByStages(bigFleet(size), (stage, ms, bare) => {
    const times = `${(ms / bare).toFixed(2).padStart(7)} times the bare read`;
    console.log(`${stage.padEnd(8)} ${ms.toFixed(0).padStart(7)} ms  ${times}`);
  });
  // `plan` without --out makes no page
  const total = [...stages].reduce((sum, [stage, ms]) => sum + (stage === "page" ? 0 : ms), 0);
  const peak = Math.round(process.resourceUsage().maxRSS / 1024);
  console.log(`bare read ${bareMs.toFixed(0)} ms; plan.json ${planMb.toFixed(1)} MB; peak memory ${peak} MB`);
  console.log(lineOf({ what: "plan / bare read", figure: total / bareMs, unit: "times", bar: BAR }));
  if (total / bareMs > BAR) process.exitCode = 1;
}
