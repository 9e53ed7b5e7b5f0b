import { describe, expect, it } from "vitest";
import { readSheets } from "../../src/sheets/read-sheets.ts";

/** What makes a careless pattern try every split of a cell: runs of what dates, numbers, breaks and labels are made of. */
const RUNS = ["1", " ", "-", ".", "1,", "a ", "1-", "10:3;", "(01)", "\t"];
const HEADER = "item,expiry,quantity,kind,price,price_breaks,gtin,label,serial,minutes,percent";

/** Milliseconds to read a sheet whose header and every cell end a long run in a mark that fits nothing. */
function millisecondsToRead(run: string, length: number): number {
  const cell = `"${run.repeat(length / run.length)}!"`;
  const row = HEADER.replace(/\w+/g, cell);
  const text = `${cell},${HEADER}\n${cell},${row}\n`;
  const files = [{ name: "hostile.csv", bytes: new TextEncoder().encode(text) }];
  const start = performance.now();
  readSheets(files, { asOf: 20_000, dateOrder: null });
  return performance.now() - start;
}

describe("readSheets: long cells", () => {
  it.each(RUNS)("takes no more than its share of time for a run of %j", (run) => {
    millisecondsToRead(run, 1000);
    const short = Math.min(...[1, 2, 3].map(() => millisecondsToRead(run, 2000)));
    const long = millisecondsToRead(run, 40_000);
    // Twenty times the text: 20 times the time if linear, 400 times if some pattern goes back over the run
    expect(long).toBeLessThan(100 * short + 200);
  });
});
