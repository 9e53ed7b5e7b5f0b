import { expect, it } from "vitest";
import { dayFromIso, makeDatesBehind, makePlan, readSheets, rememberStages, resolvePolicy } from "../../src/index.ts";
import { unitsDueByMonth } from "../../web/due-months.ts";
import { textFile } from "../sheets/sheet-file.ts";

const STOCK = `item,place,expiry,lot,quantity,held
pads,AED  1,2027-01-31,a,1,
pads,aed 1,2027-02-28,b,2,
pads,Store,2027-01-31,c,4,
pads,Store,2027-01-31,d,8,recalled
pads,Store,2026-11-14,e,16,
pads,Store,2026-11-15,f,32,
gel,Store,2027-01-31,g,64,
`;

// Units leave 14 days before they expire: of 31 January on the 17th, of 28 February on the 14th, of 15 November on the 1st,
// as-of, and of the 14th on 31 October, which is overdue. A device's name may be spelled otherwise; what is held is due nowhere.
it("counts units that are not held in the month in which they are to be swapped, in devices and in stores", () => {
  const files = [textFile("devices.csv", "device,type\nAED 1,aed\n"), textFile("stock.csv", STOCK)];
  const asOf = dayFromIso("2026-11-01")!;
  const { policy } = resolvePolicy([{ key: "horizon_months", value: "4" }], asOf);
  const reading = readSheets(files, { asOf, dateOrder: null });
  const plan = makePlan(reading, policy);
  const { heldStock } = makeDatesBehind(reading, policy, rememberStages());
  const counts = (item: string | null) =>
    unitsDueByMonth(plan, reading, heldStock, item).map(({ month, fitted, stored }) => [month, fitted, stored]);
  expect(counts("pads")).toEqual([
    ["2026-11", 0, 32],
    ["2026-12", 0, 0],
    ["2027-01", 1, 4],
    ["2027-02", 2, 0],
  ]);
  expect(counts(null)[2]).toEqual(["2027-01", 1, 68]);
});
