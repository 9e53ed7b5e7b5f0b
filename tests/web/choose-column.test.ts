import { describe, expect, it } from "vitest";
import type { ColumnsFile } from "../../src/sheets/mapping/columns-file.ts";
import { chooseColumn, withUnfinished } from "../../web/choose-column.ts";

const place = { file: "a.csv", sheet: null, table: 1 };
const columns = {
  format: "wanecast.columns/1" as const,
  tables: [
    { ...place, rows: [{ kind: "packs" as const, columns: { serial: "Batt S/N", item: "Type" } }], unread: ["Note"] },
  ],
};

describe("chooseColumn: one column of a columns file by hand", () => {
  it("gives an unread column to a field", () => {
    const [table] = chooseColumn(columns, place, "Note", null, { kind: "packs", name: "site" }).tables;
    expect(table).toMatchObject({
      rows: [{ kind: "packs", columns: { serial: "Batt S/N", item: "Type", site: "Note" } }],
      unread: [],
    });
  });

  it("sets the column free that held the field before", () => {
    const [table] = chooseColumn(columns, place, "Note", null, { kind: "packs", name: "item" }).tables;
    expect(table).toMatchObject({ rows: [{ columns: { serial: "Batt S/N", item: "Note" } }], unread: ["Type"] });
  });

  it("lets a column go unread, and drops a kind that holds none", () => {
    const once = chooseColumn(columns, place, "Type", { kind: "packs", name: "item" }, null);
    const [table] = chooseColumn(once, place, "Batt S/N", { kind: "packs", name: "serial" }, null).tables;
    expect(table?.rows).toEqual([]);
    expect(table?.unread.sort()).toEqual(["Batt S/N", "Note", "Type"]);
  });

  it("leaves other tables and what it was given as they are", () => {
    const before = JSON.stringify(columns);
    expect(chooseColumn(columns, { ...place, table: 2 }, "Type", { kind: "packs", name: "item" }, null)).toEqual(
      columns,
    );
    expect(JSON.stringify(columns)).toBe(before);
  });

  it("takes along which pack a row is about, where its kind is new to the table", () => {
    const needed = ["serial", "date"];
    const percent = { kind: "runtime_tests", name: "percent" };
    const once = chooseColumn(columns, place, "Note", null, percent, needed);
    expect(once.tables[0]?.rows).toEqual([
      columns.tables[0]!.rows[0],
      { kind: "runtime_tests", columns: { serial: "Batt S/N", percent: "Note" } },
    ]);
    // What was taken along goes with what it was taken along for, and leaves the packs their serial.
    expect(chooseColumn(once, place, "Note", percent, null).tables).toEqual(columns.tables);
  });

  it("changes one use of a column and leaves its other", () => {
    const twice: ColumnsFile = structuredClone(columns);
    twice.tables[0]!.rows.push({ kind: "devices", columns: { device: "Type" } });
    const [table] = chooseColumn(twice, place, "Type", { kind: "devices", name: "device" }, null).tables;
    expect(table?.rows).toEqual(columns.tables[0]!.rows);
    expect(table?.unread).toEqual(["Note"]);
  });
});

describe("withUnfinished: what was chosen and cannot be read yet", () => {
  it("stands beside what is read, no longer as unread", () => {
    const chosen = chooseColumn(columns, place, "Note", null, { kind: "use_log", name: "quantity" });
    const [table] = withUnfinished(columns, chosen).tables;
    expect(table?.rows.at(-1)).toEqual({ kind: "use_log", columns: { quantity: "Note" } });
    expect(table?.unread).toEqual([]);
  });

  it("gives way to what is read of its kind, and is nothing without a choice", () => {
    const chosen = chooseColumn(columns, place, "Note", null, { kind: "packs", name: "site" });
    expect(withUnfinished(columns, chosen)).toEqual(columns);
    expect(withUnfinished(columns, null)).toEqual(columns);
  });
});
