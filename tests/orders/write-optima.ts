// Writes tests/orders/optima.json: the optimum of every random case, by a mixed integer programme (HiGHS).
//   npx esbuild tests/orders/write-optima.ts --bundle --platform=node --external:highs --outfile=out/write-optima.cjs
//   node out/write-optima.cjs > tests/orders/optima.json
import loadHighs from "highs";
import { solveCase } from "./milp.ts";
import { randomCases } from "./random-cases.ts";

async function writeOptima(): Promise<void> {
  const highs = await loadHighs();
  const optima = randomCases(300, 1958).map((one) => {
    const solved = solveCase(highs, one, 240);
    const cost = solved === null ? null : Math.round(solved * 1e4) / 1e4;
    process.stderr.write(`${one.name} ${cost}\n`);
    return cost;
  });
  process.stdout.write(`${JSON.stringify(optima, null, 1)}\n`);
}

void writeOptima();
