import { describe, expect, it } from "vitest";
import { type Column, type ColumnsNow, heldColumns, type Input } from "../../web/held-columns.ts";

const place = { file: "a.csv", sheet: null, table: 1 };
const column = (number: number, kind: string | null, field: string | null) =>
  ({ column: number, kind, field }) as Column;
const [serial, percent, note] = [column(1, "packs", "serial"), column(2, null, null), column(3, null, null)];
const input = { ...place, columns: [serial, percent, note] } as unknown as Input;
const sheets = [
  {
    kind: "runtime_tests",
    columns: [
      { name: "serial", required: true },
      { name: "date", required: true },
      { name: "percent", required: false },
    ],
  },
];
// the second column was chosen to hold tests' percent, and the table tells no date of a test
const now = {
  file: {
    format: "wanecast.columns/1",
    tables: [
      { ...place, table: 2, rows: [], unread: [] },
      {
        ...place,
        rows: [
          { kind: "packs", columns: { serial: "Batt S/N" } },
          { kind: "runtime_tests", columns: { serial: "Batt S/N", percent: "%" } },
        ],
        unread: ["Note"],
      },
    ],
  },
  tables: [
    {
      ...place,
      columns: [
        {
          column: 1,
          key: "Batt S/N",
          examples: ["P1"],
          recognised: [{ kind: "packs", field: "serial", by: "header" }],
        },
        { column: 2, key: "%", examples: ["91"], recognised: [] },
        { column: 3, key: "Note", examples: [], recognised: [] },
      ],
    },
  ],
} as ColumnsNow;

describe("heldColumns", () => {
  const { at, heldBy, lacking, by } = heldColumns(input, sheets, now);

  it("tells what a column holds as it is read, and what it was chosen for", () => {
    expect(heldBy(serial!)).toEqual({ kind: "packs", name: "serial" });
    expect(heldBy(percent!)).toEqual({ kind: "runtime_tests", name: "percent" });
    expect(heldBy(note!)).toBeNull();
    expect(at(percent!)?.examples).toEqual(["91"]);
  });

  it("tells what the kind of a chosen column lacks", () => {
    expect(lacking(percent!)).toEqual({ kind: "runtime_tests", missing: ["date"] });
    expect(lacking(serial!)).toBeNull();
    expect(lacking(note!)).toBeNull();
  });

  it("tells what holds something else than it was recognised as from what the columns file leaves as it was", () => {
    const mapped = (number: number, kind: string, field: string) =>
      ({ ...column(number, kind, field), by: "mapping" }) as Column;
    expect(by(mapped(1, "packs", "serial"))).toBe("header");
    expect(by(mapped(1, "packs", "device"))).toBe("mapping");
    expect(by(mapped(1, "runtime_tests", "serial"))).toBe("mapping");
    expect(by(mapped(2, "runtime_tests", "percent"))).toBe("mapping");
    expect(by({ ...serial!, by: "contents" })).toBe("contents");
  });

  it("knows only what was read where no sheets are at hand", () => {
    const alone = heldColumns(input, sheets, null);
    expect(alone.heldBy(serial!)).toEqual({ kind: "packs", name: "serial" });
    expect([alone.at(serial!), alone.heldBy(percent!), alone.lacking(percent!)]).toEqual([undefined, null, null]);
  });
});
