import { describe, expect, it } from "vitest";
import { foldedLine, textValue } from "../../src/out/icalendar.ts";
import { ordersIcs } from "../../src/out/orders-ics.ts";
import { aPlan } from "./a-plan.ts";

const octets = (text: string) => new TextEncoder().encode(text).length;
const physical = (text: string) => text.split("\r\n").slice(0, -1);

/** RFC 5545 section 3.1: unfolding takes out a line break with the one blank after it. */
const unfold = (text: string) => text.replace(/\r\n[ \t]/g, "");

describe("foldedLine", () => {
  // Source: RFC 5545 section 3.1: lines of at most 75 octets; lengths counted by hand
  it("breaks after 75 octets", () => {
    expect(physical(foldedLine(`DESCRIPTION:${"x".repeat(100)}`)).map(octets)).toEqual([75, 38]);
  });

  it("never breaks inside a character", () => {
    const lines = physical(foldedLine(`SUMMARY:${"é".repeat(40)}`));
    expect(lines.map(octets)).toEqual([74, 15]);
    expect(unfold(`${lines.join("\r\n")}\r\n`)).toBe(`SUMMARY:${"é".repeat(40)}\r\n`);
  });

  it("leaves short lines alone", () => {
    expect(foldedLine("BEGIN:VEVENT")).toBe("BEGIN:VEVENT\r\n");
  });
});

describe("textValue", () => {
  // Source: RFC 5545 section 3.3.11, its example and rules
  it("escapes as the standard's example does", () => {
    expect(textValue("Project XYZ Final Review\nConference Room - 3B\nCome Prepared.")).toBe(
      "Project XYZ Final Review\\nConference Room - 3B\\nCome Prepared.",
    );
    expect(textValue("Hello, World; ")).toBe("Hello\\, World\\; ");
    expect(textValue("a\\b: c\r\nd")).toBe("a\\\\b: c\\nd");
  });
});

describe("ordersIcs", () => {
  const plan = aPlan();
  const text = ordersIcs(plan);
  const lines = unfold(text).split("\r\n");

  // Source: RFC 5545 sections 3.4, 3.6, 3.6.1: what a calendar and an event must hold, and how an all-day event is told
  it("writes one all-day event an order line", () => {
    expect(lines.slice(0, 2)).toEqual(["BEGIN:VCALENDAR", "VERSION:2.0"]);
    expect(lines.some((line) => line.startsWith("PRODID:"))).toBe(true);
    expect(lines.slice(-2)).toEqual(["END:VCALENDAR", ""]);
    for (const name of ["BEGIN:VEVENT", "END:VEVENT", "UID:", "DTSTAMP:", "DTSTART;VALUE=DATE:", "DTEND;VALUE=DATE:"]) {
      expect(lines.filter((line) => line.startsWith(name))).toHaveLength(plan.orders.length);
    }
  });

  // Source: RFC 5545 section 3.6.1: DTEND is the non-inclusive end, so that a day's event ends on the day after
  it("ends an event on the day after it, over the end of a year as well", () => {
    const [line] = plan.orders;
    const calendar = unfold(ordersIcs(aPlan({ orders: [{ ...line!, orderBy: "2026-12-31" }] })));
    expect(calendar).toContain("\r\nDTSTART;VALUE=DATE:20261231\r\nDTEND;VALUE=DATE:20270101\r\n");
  });

  // Source: RFC 5545 section 3.4: the body of a calendar has at least one component; 3.6.3: a journal's own properties
  it("says so in a note where nothing has to be ordered, as a calendar without a component is none", () => {
    const [, note] = unfold(ordersIcs(aPlan({ orders: [] }))).split("BEGIN:VJOURNAL\r\n");
    expect(note!.split("\r\n")).toEqual([
      "UID:no-order@wanecast",
      "DTSTAMP:20261101T000000Z",
      "LAST-MODIFIED:20261101T000000Z",
      expect.stringMatching(/^SEQUENCE:\d+$/),
      "DTSTART;VALUE=DATE:20261101",
      "SUMMARY:No order is planned up to 2027-10",
      expect.stringMatching(/^DESCRIPTION:Planned as of 2026-11-01\./),
      "END:VJOURNAL",
      "END:VCALENDAR",
      "",
    ]);
  });

  it("keeps every physical line within 75 octets and ends each with CRLF", () => {
    for (const line of physical(text)) expect(octets(line)).toBeLessThanOrEqual(75);
    expect(text.replaceAll("\r\n", "")).not.toMatch(/[\r\n]/);
  });

  it("keeps an event's UID when the plan is made anew", () => {
    const later = ordersIcs({ ...plan, asOf: "2027-02-01" });
    const uids = (calendar: string) => unfold(calendar).match(/^UID:.*$/gm);
    expect(uids(later)).toEqual(uids(text));
    expect(new Set(uids(text)).size).toBe(plan.orders.length);
    expect(later).toContain("DTSTAMP:20270201T000000Z");
  });

  it("tells as of when it was planned, which lines are forecasts, and no cost where no price is known", () => {
    const [line] = plan.orders;
    const unpriced = { ...line!, late: false, orderBy: "2026-12-02", lineCost: 0, currency: "XXX" };
    const said = unfold(ordersIcs({ ...plan, orders: [{ ...line!, late: false, orderBy: "2026-12-01" }, unpriced] }));
    const [, near, far] = said.split("BEGIN:VEVENT");
    expect(near).toContain("SUMMARY:Order: 12 x pack-md");
    expect(near).toContain("EUR 4\\,733.00 with its share of the order's fee.\\nPlanned as of 2026-11-01.");
    expect(far).toContain("SUMMARY:Order\\, forecast: 12 x pack-md");
    expect(far).toContain("2026-12-13.\\nForecast as of 2026-11-01: plan again before ordering.");
  });
});
