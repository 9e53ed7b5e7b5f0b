import { describe, expect, it } from "vitest";
import { goneSince, standingOf } from "../../../src/sheets/values/status-words.ts";
import { day } from "../../fleet/make-rows.ts";

describe("words of status", () => {
  // words as workshops write them: common practice, no source
  it.each([
    ["In service", "serves"],
    ["ACTIVE", "serves"],
    ["einsatzbereit", "serves"],
    ["En service", "serves"],
    ["Spare - new", "serves"],
    ["Returned from workshop, ready", "serves"],
    ["Out of service", "held"],
    ["Out for repair", "held"],
    ["Quarantäne", "held"],
    ["Hors service", "held"],
    ["nicht einsatzbereit", "held"],
    ["Fuera de servicio", "held"],
    ["Failed", "held"],
    ["Dead", "held"],
    ["End of life", "held"],
    ["EXPIRED", "held"],
    ["To be replaced", "held"],
    ["Not expired, in use", "serves"],
    ["Retired", "gone"],
    ["Réformé 12/03/2025", "gone"],
    ["ausgemustert", "gone"],
    ["Replaced 2025-01", "gone"],
    ["Replaced by B-17", "gone"],
    ["Missing since March", "gone"],
    ["dado de baja", "gone"],
    ["Afgevoerd", "gone"],
    ["failed - replaced 3/25", "gone"],
    ["défaillant, remplacé 03/2025", "gone"],
    ["swollen; replaced on 4 May 2025", "gone"],
    ["defekt (ersetzt 12/24)", "gone"],
    ["défaillant", "held"],
    ["failed, cells to be replaced", "held"],
    ["faulty - new pads fitted", "held"],
  ])("%s: %s", (text, standing) => {
    expect(standingOf(text)).toBe(standing);
  });

  it("says nothing of words that are not known, and does not take new cells for a new pack", () => {
    expect(standingOf("amber")).toBeNull();
    expect(standingOf("cells replaced, in service")).toBe("serves");
    // of a device that is there: its parts are not
    expect(standingOf("Missing pads")).toBeNull();
    expect(standingOf("Batería baja")).toBeNull();
    expect(standingOf("Replaced battery 2025-01")).toBeNull();
  });
});

describe("the day behind a word for gone", () => {
  it.each([
    ["Scrapped 2025-06-13", "2025-06-13"],
    ["Disposed of (13/06/2025)", "2025-06-13"],
    ["Retired, 3 May 2024", "2024-05-03"],
    ["retired 06/2025", "2025-06-30"],
    ["failed - replaced 3/25", "2025-03-31"],
    ["défaillant, remplacé 03/2025", "2025-03-31"],
  ])("%s", (text, iso) => {
    expect(goneSince(text, null).since).toBe(day(iso));
  });

  it("is none where two orders give two days and none was given", () => {
    expect(goneSince("Retired 05/06/2025", null).since).toBeNull();
    expect(goneSince("Retired 05/06/2025", "dmy").since).toBe(day("2025-06-05"));
    expect(goneSince("Retired 05/06/2025", "mdy").since).toBe(day("2025-05-06"));
    expect(goneSince("Retired", "dmy").since).toBeNull();
  });
});
