// How `plan` grows from 100 devices to 10,000, stage by stage, in bare reads of the same sheets: npm run bench -- scale
// DEVICES=1000,100000 npm run bench -- scale for other sizes; each runs in a process of its own
import { spawnSync } from "node:child_process";
import { bigFleet, LARGEST_FLEET } from "./big-fleet.ts";
import { planByStages } from "./plan-stages.ts";
import { lineOf } from "./report.ts";

/** How steeply the whole may grow with the devices from one size to the next. */
const GROWTH_BAR = 1.15;
const USUAL_SIZES = "100,1000,10000";

/** What one size took. */
interface Scale {
  devices: number;
  packs: number;
  bareMs: number;
  stages: [string, number][];
  planMb: number;
  pageMb: number | null;
  /** Processor seconds of the whole process: other work on the machine hardly changes them. */
  cpuSeconds: number;
  peakMb: number;
}

const alone = process.env.ALONE;
if (alone === undefined) compareSizes((process.env.DEVICES ?? USUAL_SIZES).split(",").map(Number));
else void measure(Number(alone)).then((scale) => console.log(JSON.stringify(scale)));

async function measure(devices: number): Promise<Scale> {
  const share = devices / LARGEST_FLEET.devices;
  const packs = LARGEST_FLEET.packs * share;
  const files = bigFleet({ ...LARGEST_FLEET, devices, packs, uses: LARGEST_FLEET.uses * share });
  const { stages, ...took } = await planByStages(files, () => {});
  const { maxRSS, userCPUTime, systemCPUTime } = process.resourceUsage();
  const cpuSeconds = (userCPUTime + systemCPUTime) / 1e6;
  return { devices, packs, ...took, stages: [...stages], cpuSeconds, peakMb: maxRSS / 1024 };
}

function compareSizes(sizes: readonly number[]): void {
  const scales = sizes.map((devices) => {
    // in one process the memory of the sizes before would be counted too
    const env = { ...process.env, ALONE: String(devices) };
    const { stdout } = spawnSync(process.execPath, [__filename], {
      env,
      encoding: "utf8",
      stdio: ["ignore", "pipe", "inherit"],
    });
    const scale = JSON.parse(stdout) as Scale;
    report(scale);
    return scale;
  });
  for (const [index, scale] of scales.entries()) {
    const before = scales[index - 1];
    if (before === undefined) continue;
    const exponent = (now: number, then: number) => Math.log(now / then) / Math.log(scale.devices / before.devices);
    const by = scale.stages.map(([stage, ms], at) => `${stage} ${exponent(ms, before.stages[at]![1]).toFixed(2)}`);
    console.log(`growth from ${before.devices} to ${scale.devices} devices by stage: ${by.join(", ")}`);
    const figure = exponent(scale.cpuSeconds, before.cpuSeconds);
    const what = `growth from ${before.devices} to ${scale.devices} devices`;
    console.log(lineOf({ what, figure, unit: "exponent", bar: GROWTH_BAR }));
    if (figure > GROWTH_BAR) process.exitCode = 1;
  }
}

function report(scale: Scale): void {
  const { devices, packs, bareMs, stages, planMb, pageMb, cpuSeconds, peakMb } = scale;
  const reads = (ms: number) => (ms / bareMs).toFixed(ms < 10 * bareMs ? 1 : 0);
  console.log(
    `${devices} devices, ${packs} packs: ${cpuSeconds.toFixed(1)} s of processor time, peak memory ${peakMb.toFixed(0)} MB`,
  );
  console.log(
    `  in bare reads (${bareMs.toFixed(0)} ms): ${stages.map(([stage, ms]) => `${stage} ${reads(ms)}`).join(", ")}`,
  );
  console.log(
    `  plan.json ${planMb.toFixed(1)} MB, page data ${pageMb === null ? "too long for one text" : `${pageMb.toFixed(1)} MB`}`,
  );
}
