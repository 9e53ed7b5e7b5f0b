import type { Plan, Reading } from "../../src/index.ts";
import { make } from "../dom.ts";
import { dayWords, numberWords, percentWords } from "../format.ts";
import { dayText } from "../months.ts";
import { nameKey } from "../name-key.ts";
import { say } from "../strings.ts";
import { placeAndSite } from "../where.ts";

/** What the sheets say of one pack and when it is due, at a glance; what is not known is left out. */
export function packFacts(pack: Plan["packs"][number], reading: Reading): HTMLElement {
  const { facts, between, fromTo } = say.batteries.fade;
  const { because: causes, basis, kinds } = say.batteries.table;
  const row = reading.fleet.packs.find(({ serial }) => nameKey(serial) === nameKey(pack.serial));
  const { kind, p10, p50, p90, because } = pack.replaceBy;
  const now = pack.capacityNow;
  const day = (value: number | null | undefined) => (value == null ? null : dayWords(dayText(value)));
  const known: [string, string | null][] = [
    [facts.item, pack.item],
    [facts.where, placeAndSite(pack.device, pack.site)],
    [facts.made, day(row?.made)],
    [facts.inService, day(row?.inService)],
    [facts.cycles, row?.cycles == null ? null : numberWords(row.cycles)],
    [facts.now, now && between(percentWords(now.p50), percentWords(now.p10), percentWords(now.p90))],
    [facts.likely, kind === "already-due" || p50 === null ? kinds[kind] || null : dayWords(p50)],
    [facts.range, p10 === null || p90 === null ? null : fromTo(dayWords(p10), dayWords(p90))],
    [facts.because, because && causes[because]],
    [facts.basis, basis[pack.basis]],
  ];
  return make(
    "dl",
    { class: "about" },
    known.map(([name, value]) => value !== null && make("div", {}, make("dt", {}, name), make("dd", {}, value))),
  );
}
