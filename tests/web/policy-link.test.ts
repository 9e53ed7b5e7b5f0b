import { describe, expect, it } from "vitest";
import { choicesInLink, policyLink } from "../../web/policy-link.ts";

const KEYS = ["as_of", "currency", "service_level"];

describe("policyLink", () => {
  it("carries the reader's values to whoever opens it", () => {
    const choices = new Map([
      ["as_of", "2027-01-01"],
      ["currency", "a&b=c #é"],
    ]);
    expect(choicesInLink(policyLink(choices), KEYS)).toEqual([...choices]);
  });

  it("takes policy keys only, with values of a policy's length", () => {
    const fragment = `#with?service_level=0.9&serial=000817&__proto__=1&currency=${"x".repeat(61)}&as_of=`;
    expect(choicesInLink(fragment, KEYS)).toEqual([["service_level", "0.9"]]);
  });

  it("leaves other fragments alone", () => {
    for (const fragment of ["", "#orders", "#without?service_level=0.9"])
      expect(choicesInLink(fragment, KEYS)).toBe(null);
  });
});
