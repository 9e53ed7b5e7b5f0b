import { describe, expect, it } from "vitest";
import { read } from "./sheet-file.ts";

/** What makes a careless pattern try every split of a cell: runs of what dates, numbers, breaks and labels are made of. */
const RUNS = ["1", " ", "-", ".", "1,", "a ", "1-", "10:3;", "(01)", "\t"];
const HEADER = "item,expiry,quantity,kind,price,price_breaks,gtin,label,serial,minutes,percent";
/** So long that a pattern which goes back over the run takes tens of thousands of millions of steps: the test never ends. */
const CHARACTERS = 200_000;

describe("readSheets: long cells", () => {
  it.each(["a", "a ", "A1 ", "  ", "A: ", ", "])(
    "comes to the end of a note of %j over and over behind a name",
    (run) => {
      const note = `"AED-01: pads ${run.repeat(CHARACTERS / run.length)}!"`;
      const { setAside, refused, inputs } = read({ "hostile.csv": `${note}\n${note},x\n${HEADER}\n${note},${note}\n` });
      expect(inputs.length + setAside.length + refused.length).toBeGreaterThan(0);
    },
  );

  it.each(RUNS)("comes to the end of a sheet whose every cell is a run of %j and a mark that fits nothing", (run) => {
    const cell = `"${run.repeat(CHARACTERS / run.length)}!"`;
    const row = HEADER.replace(/\w+/g, cell);
    const { inputs, setAside, refused } = read({ "hostile.csv": `${cell},${HEADER}\n${cell},${row}\n` });
    const rows = inputs.reduce((sum, table) => sum + table.used + table.setAside, 0);
    expect(rows).toBe(inputs.reduce((sum, table) => sum + table.rows, 0));
    expect(inputs.length + setAside.length + refused.length).toBeGreaterThan(0);
  });
});
