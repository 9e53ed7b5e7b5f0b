import { expect, it } from "vitest";

it("runs under the time zone that its project names", () => {
  const offsets: Record<string, number> = { UTC: 0, "Pacific/Auckland": -780, "America/St_Johns": 210 };
  // 1 January: summer time in Auckland, winter time in St John's (facts of the IANA time zone database)
  expect(new Date(2026, 0, 1).getTimezoneOffset()).toBe(offsets[process.env.TZ ?? ""]);
});
