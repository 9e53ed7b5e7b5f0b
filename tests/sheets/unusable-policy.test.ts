import { expect, it } from "vitest";
import { read } from "./sheet-file.ts";

it("readSheets: a policy row that cannot be used is a finding with its line, its choices and its default", () => {
  const { findings } = read({ "policy.csv": "key,value\nhorizon_months,soon\nhorizon,24\nservice_level,95 %\n" });
  expect(findings).toMatchObject([
    { code: "policy-unusable", severity: "error", file: "policy.csv", line: 2, value: "soon" },
    { code: "policy-unusable", severity: "error", file: "policy.csv", line: 3, value: "24" },
  ]);
  expect(findings[0]?.message).toBe(
    '"soon" cannot be used for horizon_months: a whole number from 1 to 360 was expected. It changes nothing.',
  );
  expect(findings[0]?.fix).toBe("Write, for example, 36 (months); the default is 36.");
  expect(findings[1]?.message).toBe('"horizon" is no policy key. It changes nothing.');
});
