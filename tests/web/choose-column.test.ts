import { describe, expect, it } from "vitest";
import { chooseColumn } from "../../web/choose-column.ts";

const place = { file: "a.csv", sheet: null, table: 1 };
const columns = {
  format: "wanecast.columns/1" as const,
  tables: [
    { ...place, rows: [{ kind: "packs" as const, columns: { serial: "Batt S/N", item: "Type" } }], unread: ["Note"] },
  ],
};

describe("chooseColumn: one column of a columns file by hand", () => {
  it("gives an unread column to a field", () => {
    const [table] = chooseColumn(columns, place, "Note", { kind: "packs", name: "site" }).tables;
    expect(table).toMatchObject({
      rows: [{ kind: "packs", columns: { serial: "Batt S/N", item: "Type", site: "Note" } }],
      unread: [],
    });
  });

  it("sets the column free that held the field before", () => {
    const [table] = chooseColumn(columns, place, "Note", { kind: "packs", name: "item" }).tables;
    expect(table).toMatchObject({ rows: [{ columns: { serial: "Batt S/N", item: "Note" } }], unread: ["Type"] });
  });

  it("lets a column go unread, and drops a kind that holds none", () => {
    const once = chooseColumn(columns, place, "Type", null);
    const [table] = chooseColumn(once, place, "Batt S/N", null).tables;
    expect(table?.rows).toEqual([]);
    expect(table?.unread.sort()).toEqual(["Batt S/N", "Note", "Type"]);
  });

  it("leaves other tables and what it was given as they are", () => {
    const before = JSON.stringify(columns);
    expect(chooseColumn(columns, { ...place, table: 2 }, "Type", null)).toEqual(columns);
    expect(JSON.stringify(columns)).toBe(before);
  });
});
