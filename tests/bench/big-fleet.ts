import { isoFromDay } from "../../src/calendar/day.ts";
import { seededRandom } from "../../src/maths/random.ts";
import type { SheetFile } from "../../src/sheets/reading.ts";

/** 2026-11-01, the day from which invented fleets are planned. */
export const BIG_FLEET_AS_OF = 20_758;
const DAYS_PER_YEAR = 365;
const SITES = 200;

/** How large an invented fleet is. */
export interface BigFleet {
  devices: number;
  packs: number;
  /** Kinds of pack, and of pads, gel, paper and sensors. */
  packItems: number;
  suppliesItems: number;
  testsPerPack: number;
  uses: number;
  horizonMonths: number;
}

/** The fleet that the time of `plan` is held to. */
export const LARGEST_FLEET: BigFleet = {
  devices: 10_000,
  packs: 25_000,
  packItems: 12,
  suppliesItems: 28,
  testsPerPack: 6,
  uses: 60_000,
  horizonMonths: 60,
};

/** An invented fleet's sheets: every device takes one item of packs and three or four of dated supplies. */
export function bigFleet(size: BigFleet): SheetFile[] {
  const { uniform } = seededRandom(25_000);
  const between = (low: number, high: number) => low + (high - low) * uniform();
  const whole = (below: number) => Math.floor(uniform() * below);
  const iso = (day: number) => isoFromDay(Math.round(day));
  const typeOf = (device: number) => device % size.packItems;
  const suppliesOf = (type: number) =>
    Array.from({ length: size.suppliesItems }, (_, item) => item).filter((item) => {
      return item % size.packItems === type || (item + 5) % size.packItems === type;
    });
  const devices = Array.from({ length: size.devices }, (_, n) => {
    return `D${n},type-${typeOf(n)},Site ${n % SITES},duty-${n % 3},${iso(BIG_FLEET_AS_OF - between(400, 4000))}`;
  });
  const packs: string[] = [];
  const tests: string[] = [];
  for (let n = 0; n < size.packs; n++) {
    const device = n % size.devices;
    const made = BIG_FLEET_AS_OF - between(120, 2400);
    const fadePerYear = between(2, 5);
    packs.push(`P${n},pack-${typeOf(device)},D${device},${iso(made)},${iso(made + between(10, 90))}`);
    for (let test = 1; test <= size.testsPerPack; test++) {
      const age = ((BIG_FLEET_AS_OF - made) * test) / (size.testsPerPack + 1);
      const percent = 101 - (fadePerYear * age) / DAYS_PER_YEAR + between(-1.5, 1.5);
      tests.push(`P${n},${iso(made + age)},${percent.toFixed(1)},21,${Math.round(age / 4)},pass`);
    }
  }
  const stock = Array.from({ length: size.devices }, (_, n) => {
    return suppliesOf(typeOf(n)).map((item) => {
      return `item-${item},L${item}-${whole(60)},${iso(BIG_FLEET_AS_OF + between(-10, 900))},${1 + whole(2)},D${n}`;
    });
  }).flat();
  for (let item = 0; item < size.suppliesItems; item++) {
    stock.push(`item-${item},L${item}-S,${iso(BIG_FLEET_AS_OF + between(100, 700))},${20 + whole(200)},store`);
  }
  const uses = Array.from({ length: size.uses }, (_, n) => {
    const device = whole(size.devices);
    const taken = suppliesOf(typeOf(device));
    return `${iso(BIG_FLEET_AS_OF - 730 + (730 * n) / size.uses)},item-${taken[whole(taken.length)]},${whole(9) === 0 ? 2 : 1},D${device}`;
  });
  const kinds = ["pads", "gel", "paper", "sensor"];
  const catalogue = [
    ...Array.from({ length: size.packItems }, (_, type) => {
      return `pack-${type},pack,Supplier ${type % 3},${between(120, 420).toFixed(2)},EUR,,,,${21 + whole(40)},,,type-${type}`;
    }),
    ...Array.from({ length: size.suppliesItems }, (_, item) => {
      const types = Array.from({ length: size.packItems }, (_, type) => type).filter((type) => {
        return suppliesOf(type).includes(item);
      });
      const breaks = item % 3 === 0 ? "200:9.20; 1000:8.40" : "";
      const fits = types.map((type) => `type-${type}`).join("; ");
      return `item-${item},${kinds[item % 4]},Supplier ${3 + (item % 4)},10.00,EUR,${[1, 5, 10, 20][item % 4]},20,${breaks},${10 + whole(25)},,${18 + whole(18)},${fits}`;
    }),
  ];
  const suppliers = Array.from({ length: 7 }, (_, n) => `Supplier ${n},${20 + 10 * n}.00,${500 * (n + 1)}.00,,EUR`);
  return [
    sheet("devices.csv", "device,type,site,duty,in_service", devices),
    sheet("packs.csv", "serial,item,device,made,in_service", packs),
    sheet("runtime_tests.csv", "serial,date,percent,temperature_c,cycles,result", tests),
    sheet("dated_stock.csv", "item,lot,expiry,quantity,place", stock),
    sheet("use_log.csv", "date,item,quantity,place", uses),
    sheet(
      "catalogue.csv",
      "item,kind,supplier,price,currency,units_per_box,minimum_order,price_breaks,lead_days,lead_sd_days,arrives_with_months,fits",
      catalogue,
    ),
    sheet("suppliers.csv", "supplier,order_fee,free_over,order_every_months,currency", suppliers),
    sheet("policy.csv", "key,value", [
      `as_of,${isoFromDay(BIG_FLEET_AS_OF)}`,
      `horizon_months,${size.horizonMonths}`,
      "currency,EUR",
    ]),
  ];
}

function sheet(name: string, header: string, rows: readonly string[]): SheetFile {
  return { name, bytes: new TextEncoder().encode(`${header}\n${rows.join("\n")}\n`) };
}
