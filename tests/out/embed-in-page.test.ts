import { describe, expect, it } from "vitest";
import { emptyFleet } from "../../src/fleet/rows.ts";
import { embedInPage, PAGE_DATA_PLACEHOLDER } from "../../src/out/embed-in-page.ts";
import { aPlan } from "./a-plan.ts";

const reading = { fleet: emptyFleet(), inputs: [], findings: [], setAside: [], refused: [] };
const page = `<!doctype html><body>${PAGE_DATA_PLACEHOLDER}<p>$& stays</p></body>`;

describe("embedInPage", () => {
  it("puts plan and reading where the placeholder stood, and nothing else changes", () => {
    const html = embedInPage(page, aPlan(), reading);
    const match =
      /^<!doctype html><body><script type="application\/json" id="wanecast-data">(.*)<\/script><p>\$& stays<\/p><\/body>$/s;
    expect(JSON.parse(match.exec(html)?.[1] ?? "null")).toEqual({ plan: aPlan(), reading });
  });
  it("lets no text of a sheet end the script or start another", () => {
    const hostile = "</script><script>alert(1)</script><!--";
    const html = embedInPage(page, aPlan({ cautions: [hostile, "$&"] }), reading);
    expect(html.match(/<\/script>/g)).toHaveLength(1);
    expect(html).not.toContain("<!--");
    const json = html.slice(html.indexOf("{"), html.indexOf("</script>"));
    expect(JSON.parse(json).plan.cautions).toEqual([hostile, "$&"]);
  });
  it("refuses a page without the placeholder", () => {
    expect(() => embedInPage("<p></p>", aPlan(), reading)).toThrow(RangeError);
  });
});
