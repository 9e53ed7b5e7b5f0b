import { describe, expect, it } from "vitest";
import { defaultPolicy } from "../../src/fleet/policy.ts";
import { emptyFleet, type Fleet } from "../../src/fleet/rows.ts";
import { traceIds } from "../../src/supplies/trace.ts";
import { catalogued, day, device, ordered, pack, runtimeTest, stock } from "../fleet/make-rows.ts";

const AS_OF = day("2026-11-30");
const policy = defaultPolicy(AS_OF);
const items = (fleet: Partial<Fleet>, ...ids: string[]) => traceIds({ ...emptyFleet(), ...fleet }, policy, ids).items;

describe("what it takes to do without what is traced", () => {
  // By hand: P1 is in a device; P2, tested, is in its site's pool, P3 on the shelf, since no cell and no test is of it
  const packs = [
    pack("P1", { item: "Cell", device: "D1" }),
    pack("P2", { item: "CELL ", site: "North" }),
    pack("P3", { item: "cell", site: "North" }),
  ];
  const tested = {
    packs,
    devices: [device("D1")],
    runtimeTests: [runtimeTest(" p2", day("2026-05-01"), { percent: 88 })],
  };

  it("counts no pack of a site's pool, which the plan has in service, as a spare", () => {
    expect(items(tested, "P1")).toMatchObject([{ inUse: 1, onShelves: 0, usableElsewhere: 1, lacking: 0 }]);
    expect(items(tested, "P1", "P2")).toMatchObject([{ inUse: 2, onShelves: 0, usableElsewhere: 1, lacking: 1 }]);
    expect(items(tested, "P3")).toMatchObject([{ inUse: 0, onShelves: 1, usableElsewhere: 0, lacking: 0 }]);
  });

  // By hand: a unit is swapped 14 days before its expiry, and not fitted on that day: on 30 November that is one of 15
  // December, and not of the 14th.
  // P4 leaves the fleet today, P5 tomorrow: on a shelf it is there yet
  it("takes a spare for one to the last day on which it may be fitted, and a pack to the day on which it leaves", () => {
    const devices = [device("D1")];
    const at = (expiry: string) => [stock("Pads", "2027-06-30", "D1", { lot: "A" }), stock("pads", expiry, "Store")];
    expect(items({ devices, datedStock: at("2026-12-15") }, "A")[0]!.usableElsewhere).toBe(1);
    expect(items({ devices, datedStock: at("2026-12-14") }, "A")[0]!.usableElsewhere).toBe(0);
    const leaving = (retired: number) => [...packs.slice(0, 1), pack("P4", { item: "Cell", retired })];
    expect(items({ devices, packs: leaving(AS_OF) }, "P1")[0]!.usableElsewhere).toBe(0);
    expect(items({ devices, packs: leaving(AS_OF + 1) }, "P1")[0]!.usableElsewhere).toBe(1);
  });

  // By hand: made on 30 November 2022, a cell of 48 months of shelf life is good to this day, and one made the day before is not
  it("takes no pack for a spare that has passed its shelf life, or the age at which packs are replaced", () => {
    const catalogue = [catalogued("Cell", "pack", { shelfMonths: 48 })];
    const spare = (iso: string) => [packs[0]!, pack("P4", { item: "Cell", made: day(iso) })];
    const usable = (iso: string, packMaxAgeMonths: number | null = null) =>
      traceIds({ ...emptyFleet(), catalogue, packs: spare(iso) }, { ...policy, packMaxAgeMonths }, ["P1"]).items[0]!
        .usableElsewhere;
    expect(usable("2022-11-30")).toBe(1);
    expect(usable("2022-11-29")).toBe(0);
    expect(usable("2022-11-30", 47)).toBe(0);
  });

  // By hand: 3 lack. 2 come on 10 December and 2, in another's spelling, on the 20th: the third is there on the 20th. Of what
  // is traced itself, 9 of order X, nothing covers anything
  it("covers what lacks by the orders that are not touched themselves", () => {
    const found = items(
      {
        devices: [device("D1")],
        catalogue: [catalogued("Pads", "pads")],
        datedStock: [stock("Pads", "2027-06-30", "D1", { lot: "A", quantity: 3 })],
        onOrder: [
          ordered("Pads", 9, { order: "X", arrives: day("2026-12-02") }),
          ordered("PADS", 2, { arrives: day("2026-12-10") }),
          ordered("pads ", 2, { arrives: day("2026-12-20") }),
        ],
      },
      "A",
      "x",
    );
    expect(found).toEqual([
      {
        item: "Pads",
        inUse: 3,
        onShelves: 0,
        onOrder: 9,
        usableElsewhere: 0,
        lacking: 3,
        coveredOn: day("2026-12-20"),
      },
    ]);
  });
});
