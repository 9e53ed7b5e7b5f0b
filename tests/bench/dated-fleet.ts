import { isoFromDay } from "../../src/calendar/day.ts";
import { seededRandom } from "../../src/maths/random.ts";

const ITEMS = ["Pads adult", "Pads child", "Gel", "Sensor"];

/**
 * An invented fleet with much dated stock, as the text of its sheets: a row a unit, two years of use.
 *
 * @param asOf  the day of the plan; nothing is logged after it and nothing expires before it
 */
export function datedFleet(places: number, units: number, asOf: number): { name: string; text: string }[] {
  const random = seededRandom(5);
  const below = (end: number) => Math.floor(random.uniform() * end);
  const place = (index: number) => `Van ${index + 1}`;
  const each = <Row>(count: number, row: (index: number) => Row) => Array.from({ length: count }, (_, n) => row(n));
  const catalogue = ITEMS.map((item, n) => `${item},${["pads", "pads", "gel", "sensor"][n]},van,${10 + n},EUR`);
  const devices = each(places, (n) => `${place(n)},van,Station ${n % 200},${n % 3 === 0 ? "busy" : "quiet"}`);
  const stock = each(units, (n) => {
    const lot = below(400);
    return `${ITEMS[Math.floor(n / places) % ITEMS.length]},L${lot},${isoFromDay(asOf + 20 + lot * 2 + below(20))},1,${place(n % places)}`;
  });
  // a third of the places use an item four times as often as the others
  const used = each(places * 6, (n) => {
    const at = n % 2 === 0 ? 3 * below(places / 3) : below(places);
    return `${isoFromDay(asOf - 1 - below(730))},${ITEMS[below(ITEMS.length)]},1,${place(at)}`;
  });
  const sheet = (name: string, head: string, rows: string[]) => ({ name, text: `${[head, ...rows].join("\n")}\n` });
  return [
    sheet("catalogue.csv", "item,kind,fits,price,currency", catalogue),
    sheet("devices.csv", "device,type,site,duty", devices),
    sheet("dated_stock.csv", "item,lot,expiry,quantity,place", stock),
    sheet("use_log.csv", "date,item,quantity,place", used),
  ];
}
