import { describe, expect, it } from "vitest";
import { defaultPolicy } from "../../src/fleet/policy.ts";
import { emptyFleet } from "../../src/fleet/rows.ts";
import { datesCsv } from "../../src/out/dates-csv.ts";
import { datesText } from "../../src/out/dates-text.ts";
import { makeDates } from "../../src/plan.ts";
import { catalogued, day, device, stock } from "../fleet/make-rows.ts";

/*
 * As of 29 February 2028, over twelve months, so to 31 January 2029. Swaps are 14 days before expiry; gel is good for 30 days once
 * opened: opened on 30 January to 29 February, which is today, and on 29 January to the day before.
 */
const fleet = {
  ...emptyFleet(),
  devices: [device("D1"), device("D2", { retired: day("2028-02-29") }), device("D3")],
  catalogue: [catalogued("gel", "gel", { openedDays: 30 }), catalogued("pads", "pads")],
  datedStock: [
    stock("gel", "2029-12-31", "D1", { opened: day("2028-01-30") }),
    stock("gel", "2029-12-31", "D3", { opened: day("2028-01-29") }),
    stock("pads", "2028-02-29", "D1", { quantity: 2 }),
    stock("pads", "2028-02-28", "D3"),
    stock("pads", "2028-02-28", "D3", { quantity: 0 }),
    // to be swapped on 31 January and 1 February 2029
    stock("pads", "2029-02-14", "store", { quantity: 4 }),
    stock("pads", "2029-02-15", "store", { quantity: 5 }),
    stock("pads", "2030-01-31", "D3", { held: "swollen foil" }),
    stock("pads", "2030-01-31", "store", { quantity: 7, held: "recall" }),
    stock("pads", "2030-01-31", null),
    stock("pads", "2028-02-01", "D2"),
  ],
};
const reading = { inputs: [], setAside: [], findings: [], refused: [], fleet };
const report = () => makeDates(reading, { ...defaultPolicy(day("2028-02-29")), horizonMonths: 12 });
/** The lines below a heading, up to the next blank one. */
const below = (heading: string, of = report()) =>
  datesText(of, { width: 100 }).split(`\n${heading}\n`)[1]!.split("\n\n")[0]!.split("\n");

describe("dates on a leap day, by hand", () => {
  // D1's two pads are good to the end of today and overdue for their swap; D2 left today, and what lies in it is past expiry
  it("tells what is out now and what is held", () => {
    expect(below("Out now")).toEqual([
      "- 2 dated units are past expiry: pads at D2 (2028-02-01), pads at D3 (2028-02-28).",
      "- 1 opened unit is past the days after opening: gel at D3 (swap by 2028-02-28).",
    ]);
    expect(below("Held")).toEqual([
      "- 1 held unit in devices, each counted as a gap: pads at D3 (swollen foil).",
      "- 7 held units in no device in service, serving nothing: pads at store (recall).",
    ]);
  });

  // Overdue are D3's gel and pads, D1's pads and D2's; later come the store's five and the one without a place
  it.each(["at once", "after its rows were asked for"])("counts units by month, %s", (when) => {
    const of = report();
    if (when !== "at once") expect(datesCsv(of).trim().split("\r\n")).toHaveLength(12);
    expect(datesText(of, { width: 100 })).toContain("\n24 dated units in 11 rows. ");
    expect(below("Units to swap by month", of)).toEqual([
      "overdue      5: gel 1, pads 4",
      "2028-02      1: gel 1",
      "2029-01      4: pads 4",
      "later        6: pads 6",
    ]);
  });

  // D1: two overdue and the gel of today; D3: the gel and the pads; D2 has left, and nobody is sent there
  it("sends to the places with units to swap within the year, the busiest first", () => {
    expect(
      below("Places with most to swap")
        .slice(2)
        .map((row) => row.split(/ +/)),
    ).toEqual([
      ["D1", "2", "1", "3"],
      ["D3", "2", "0", "2"],
      ["store", "0", "0", "4"],
    ]);
  });

  // The four of the store are used at once: two in D1 and two in D3, of which one is held and one past expiry; opened gel is not
  it("expects what the shelf serves to be used, and the rest of what falls due to lapse", () => {
    expect(
      below("What lapses if nothing is done")
        .slice(2)
        .map((row) => row.split(/ +/)),
    ).toEqual([
      ["gel", "1", "0.0", "1.0"],
      ["pads", "4", "4.0", "0.0"],
    ]);
  });
});
