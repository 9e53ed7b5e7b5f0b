import { readFileSync, writeFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import packageJson from "../../package.json" with { type: "json" };
import { ENGINE } from "../../src/out/engine.ts";
import { checkJsonSchema, planJsonSchema } from "../../src/out/plan-json-schema.ts";
import { planSchema } from "../../src/out/plan-schema.ts";
import { aPlan } from "./a-plan.ts";

const place = (name: string) => new URL(`../../src/out/${name}`, import.meta.url);
const committed = (name: string) => JSON.parse(readFileSync(place(name), "utf8"));

// after a change to a zod schema: UPDATE_SCHEMAS=1 npx vitest run --config tests/vitest.config.ts tests/out, then
// npx biome check --write src/out
if (process.env.UPDATE_SCHEMAS) {
  writeFileSync(place("plan.schema.json"), JSON.stringify(planJsonSchema(), null, 2));
  writeFileSync(place("check.schema.json"), JSON.stringify(checkJsonSchema(), null, 2));
}

describe("the JSON Schemas", () => {
  it("planJsonSchema: stands in src/out/plan.schema.json", () => {
    expect(committed("plan.schema.json")).toEqual(JSON.parse(JSON.stringify(planJsonSchema())));
  });
  it("checkJsonSchema: stands in src/out/check.schema.json", () => {
    expect(committed("check.schema.json")).toEqual(JSON.parse(JSON.stringify(checkJsonSchema())));
  });
  it("names its draft and every key of the plan", () => {
    const schema = committed("plan.schema.json");
    expect(schema.$schema).toBe("https://json-schema.org/draft/2020-12/schema");
    expect(Object.keys(schema.properties)).toEqual(Object.keys(aPlan()));
  });
});

it("planSchema: takes a whole plan and refuses one with a date that is none", () => {
  expect(planSchema.safeParse(aPlan()).success).toBe(true);
  expect(planSchema.safeParse(aPlan({ asOf: "1 Nov 2026" })).success).toBe(false);
});

it("ENGINE: carries the version of package.json", () => {
  expect(ENGINE).toBe(`wanecast ${packageJson.version}`);
});
