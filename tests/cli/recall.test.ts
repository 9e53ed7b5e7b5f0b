import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { folderWith } from "../folders.ts";
import { CAUTIONS, SAMPLE, wanecast } from "./run-wanecast.ts";
import { SMALL_FLEET } from "./small-fleet.ts";

describe("trace", () => {
  it("finds every place of a lot, with the units that the sheet gives it", () => {
    const { stdout, code } = wanecast(["trace", "w2708", SAMPLE, "--json"]);
    expect(code).toBe(0);
    const traced = JSON.parse(stdout) as {
      format: string;
      ids: unknown;
      datedStock: { quantity: number }[];
      items: unknown;
    };
    expect(traced.format).toBe("wanecast.trace/1");
    expect(traced.ids).toEqual([{ id: "w2708", as: ["lot"] }]);
    const lines = readFileSync(join(SAMPLE, "dated_stock.csv"), "utf8").split(/\r?\n/);
    const bearing = lines.filter((line) => /(^|,)W2708(,|$)/.test(line));
    expect(traced.datedStock).toHaveLength(bearing.length);
    expect(bearing.length).toBeGreaterThan(5);
  });

  it("takes a recall notice's list, and says what is in no sheet", () => {
    const list = join(folderWith({ "lots.txt": "W2708\n\nNO-SUCH-LOT\n" }), "lots.txt");
    const { stdout, code } = wanecast(["trace", "--ids", list, SAMPLE]);
    expect(code).toBe(0);
    expect(stdout).toContain("W2708 is a lot in these sheets.");
    expect(stdout).toContain("Not in these sheets: NO-SUCH-LOT.");
    expect(stdout).toContain("planning aid");
  });

  // By hand: of lot P2 two units are in MD-2 and one lies in the store, all to be swapped a fortnight before their
  // expiry; the fleet's only other pads are in MD-1, so that nothing on a shelf can stand in, and pads ordered on
  // 1 November take 45 days, to 16 December
  it("tells what a lot is, where it lies and what is lacking without it", () => {
    const { code, stdout, stderr } = wanecast(["trace", "p2", folderWith(SMALL_FLEET)]);
    expect([code, stderr]).toEqual([0, ""]);
    expect(stdout).toBe(`Traced as of 2026-11-01: p2

p2 is a lot in these sheets.

What it takes to do without
item  in use  on shelves  on order  usable elsewhere  lacking  covered on
----  ------  ----------  --------  ----------------  -------  ----------
pads       2           1         0                 0        2  2026-12-16

Units lacking can be there on the day in the last column: from what is on order,
or from an order that leaves today.

Where it lies
place  is a           units  packs
-----  -------------  -----  -----
MD-2   device             2      0
Store  store or site      1      0

Dated stock
place  item  lot  units  expiry      swap by     stands in
-----  ----  ---  -----  ----------  ----------  -----------------------
MD-2   pads  P2       2  2027-09-30  2027-09-16  dated_stock.csv, line 3
Store  pads  P2       1  2027-09-30  2027-09-16  dated_stock.csv, line 4

${CAUTIONS}`);
  });

  it("--out writes what it touches as a sheet, a line a row", () => {
    const sheets = folderWith({
      ...SMALL_FLEET,
      "on_order.csv": "order,item,quantity,arrives\nP2,pads,8,2026-12-01\n",
    });
    const out = folderWith();
    const { code, stderr } = wanecast(["trace", "--ids", "-", sheets, "--out", out], { input: "P2, A3" });
    expect([code, stderr]).toEqual([0, `Written to ${out}: trace.json, trace.csv.\n`]);
    expect(readFileSync(join(out, "trace.csv"), "utf8").split("\r\n")).toEqual([
      "what,place,device,item,lot,serial,quantity,expiry,swap_by,held,order,arrives,file,line,sheet",
      "dated stock,MD-2,yes,pads,P2,,2,2027-09-30,2027-09-16,,,,dated_stock.csv,3,",
      "dated stock,Store,no,pads,P2,,1,2027-09-30,2027-09-16,,,,dated_stock.csv,4,",
      "pack,,no,pack,,A3,1,,,,,,packs.csv,4,",
      "on order,,no,pads,,,8,,,,P2,2026-12-01,on_order.csv,2,",
      "",
    ]);
    expect(JSON.parse(readFileSync(join(out, "trace.json"), "utf8")).format).toBe("wanecast.trace/1");
  });

  it("takes the start of serials, and a list that a spreadsheet wrote, with what it repeats", () => {
    const sheets = folderWith(SMALL_FLEET);
    const start = wanecast(["trace", "A*", sheets]).stdout;
    expect(start).toContain("A* is the start of a serial in these sheets.");
    expect(start).toMatch(/^A1 +pack +MD-1/m);
    const list = '\uFEFF"P1";"P2"\r\nP2\r\nA1\r\nX1\r\nX2\r\nX3\r\n';
    const { stdout } = wanecast(["trace", "--ids", "-", sheets], { input: list });
    expect(stdout.split("\n").slice(0, 5)).toEqual([
      "Traced as of 2026-11-01: 6 identifiers",
      "",
      "Lots: P1, P2.",
      "A1 is a serial in these sheets.",
      "Not in these sheets: X1, X2, X3. Check the spelling; the start of a lot or",
    ]);
  });

  it.each([
    ["the sheets are not given", ["W2708"], "wanecast trace ID INPUT..."],
    ["the ID is blank", [" ", SAMPLE], '"" names nothing: give a lot'],
    ["the ID is everything", ["*", SAMPLE], '"*" names nothing: give a lot'],
    ["list and sheets are both standard input", ["--ids", "-", "-"], "Standard input (-) can be read once only"],
    ["the list is empty", ["--ids", "-", SAMPLE], "The list - names nothing"],
    ["there is no such list", ["--ids", "no-such-list", SAMPLE], "The list no-such-list cannot be read"],
  ])("exits with 2 where %s", (_, args, message) => {
    const { code, stdout, stderr } = wanecast(["trace", ...args], { input: "" });
    expect([code, stdout]).toEqual([2, ""]);
    expect(stderr).toContain(message);
  });
});

describe("scan", () => {
  // Source: GS1 General Specifications, element strings: (17) with day 00 is the month's last day, a lot may hold
  // digits that look like an identifier, and a separator ends it; the check digit of 0109506000134353 should be 2.
  it("turns scans into rows, and names the line of one that it cannot read", () => {
    const scans = "0109506000134352172606001021A\u001d21X17\n0109506000134353\n";
    const { stdout, stderr, code } = wanecast(["scan", "--as-of", "2026-11-01"], { input: scans });
    expect(code).toBe(0);
    expect(stdout.split("\n")[1]).toContain("09506000134352,2026-06-30,21A,X17,1,");
    expect(stderr).toContain("standard input, line 2: The label");
    const json = wanecast(["scan", "--as-of", "2026-11-01", "--json", "--fail-on", "set-aside"], { input: scans });
    expect(json.code).toBe(4);
    const check = JSON.parse(json.stdout) as { format: string; inputs: object[] };
    expect(check.format).toBe("wanecast.check/1");
    expect(check.inputs).toMatchObject([{ file: "-", rows: 2, used: 1, setAside: 1 }]);
  });

  it("writes a sheet on stdout, under the catalogue's names, and says on stderr what it left out", () => {
    const folder = folderWith({ "catalogue.csv": "item,kind,gtin\npads-adult,pads,09506000134352\n" });
    const out = join(folder, "out");
    const scans = "(01)09506000134352(17)280131(10)AB12(30)4\r\n\r\nnot a label\r\n";
    const args = ["scan", join(folder, "catalogue.csv"), "--as-of", "2026-11-01", "--out", out];
    const { code, stdout, stderr } = wanecast(args, { input: scans });
    expect(code).toBe(0);
    expect(stdout).toBe(
      "item,expiry,lot,serial,quantity,place,made,opened,label,held\r\n" +
        "pads-adult,2028-01-31,AB12,,4,,,,(01)09506000134352(17)280131(10)AB12(30)4,\r\n",
    );
    expect(stderr).toBe(`Written to ${out}: dated_stock.csv, set-aside.csv.
2 scans: 1 used, 1 set aside.

Scans set aside
standard input, line 3: The label "not a label" is neither GS1 nor HIBC.
  [label-unreadable]
  Fix: Scan the label again, or type item and expiry.
`);
    expect(readFileSync(join(out, "dated_stock.csv"), "utf8")).toBe(stdout);
    const { rows } = JSON.parse(wanecast(["check", out, "--json", "--as-of", "2026-11-01"]).stdout).inputs[0];
    expect(rows).toBe(1);
  });

  it("gives a sheet of no rows where nothing was scanned", () => {
    expect(wanecast(["scan", "--as-of", "2026-11-01"], { input: "\n" })).toEqual({
      code: 0,
      stdout: "item,expiry,lot,serial,quantity,place,made,opened,label,held\r\n",
      stderr: "No scan came on standard input.\n",
    });
  });

  it("refuses a catalogue that is not there, and scans for a catalogue", () => {
    const gone = wanecast(["scan", "gone.csv", "--as-of", "2026-11-01"], { input: "" });
    expect([gone.code, gone.stdout]).toEqual([3, ""]);
    expect(gone.stderr).toBe("Refused:\ngone.csv: There is no such file or folder. [not-found]\n");
    expect(wanecast(["scan", "-"], { input: "" }).code).toBe(2);
  });
});

describe("columns files and clean sheets", () => {
  it("give back the same fleet", () => {
    const folder = folderWith();
    const columns = join(folder, "columns.json");
    const clean = join(folder, "clean");
    const first = wanecast(["check", SAMPLE, "--json", "--write-columns", columns, "--write-clean", clean]);
    expect(first.code).toBe(0);
    const again = wanecast(["check", SAMPLE, "--json", "--columns", columns]);
    expect((JSON.parse(again.stdout) as { fleet: unknown }).fleet).toEqual(
      (JSON.parse(first.stdout) as { fleet: unknown }).fleet,
    );
    const cleaned = wanecast(["check", join(clean, "fleet.xlsx"), "--json"]);
    const counts = (text: string) =>
      Object.values((JSON.parse(text) as { fleet: Record<string, unknown[]> }).fleet).map((rows) => rows.length);
    expect(counts(cleaned.stdout)).toEqual(counts(first.stdout));
  });

  it("are written as an edited columns file has them read", () => {
    const folder = folderWith({ "packs.csv": "serial,kind of thing\nA,pack-md\n" });
    const [first, edited, again] = ["first.json", "edited.json", "again.json"].map((name) => join(folder, name));
    wanecast(["check", join(folder, "packs.csv"), "--write-columns", first!]);
    const file = JSON.parse(readFileSync(first!, "utf8"));
    file.tables[0].rows[0].columns = { serial: "serial", item: "kind of thing" };
    file.tables[0].unread = [];
    writeFileSync(edited!, JSON.stringify(file));
    wanecast(["check", join(folder, "packs.csv"), "--columns", edited!, "--write-columns", again!]);
    expect(JSON.parse(readFileSync(again!, "utf8"))).toEqual(file);
  });

  it("refuse a columns file that is none", () => {
    const { stderr, code } = wanecast(["check", SAMPLE, "--columns", "package.json"]);
    expect(code).toBe(2);
    expect(stderr).toContain("--columns package.json");
    expect(stderr).toContain("Correct it; wanecast check INPUT... --write-columns FILE writes one.");
  });
});
