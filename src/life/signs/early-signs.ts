import { speaks } from "../../fade/evidence.ts";
import type { FadingItem } from "../../fade/fade-items.ts";
import type { NodeTables } from "../../fade/node-tables.ts";
import { paceTeller } from "../../fade/pack-paces.ts";
import { nameKey } from "../../fleet/name-key.ts";
import type { Fleet } from "../../fleet/rows.ts";
import { evenlySpread } from "../../maths/evenly-spread.ts";
import { keptFor } from "../kept-for.ts";
import type { EarlySign, PackLife } from "../types.ts";
import { type Faster, fasterGroups, GROUP_AT_LEAST, timesAsFast } from "./faster-groups.ts";
import { fasterPackJudge, PACK_AT_LEAST } from "./faster-packs.ts";
import { groupings } from "./groups.ts";
import { hearPack, type PackGroup } from "./pack-groups.ts";
import { groupSays, packSays, whichPacks } from "./sign-words.ts";

/**
 * Packs, sites, duties and batches that wear faster than their like, fastest first within their kind; groups before
 * single packs, since a group explains its packs.
 *
 * @param lives  the forecast of packs in service, for how many of a group fall due soon
 */
export function earlySigns(
  items: readonly FadingItem[],
  fleet: Fleet,
  lives: readonly Omit<PackLife, "site">[],
): EarlySign[] {
  const months = Math.min(YEAR, lives[0]?.dueChance.length ?? YEAR);
  const dueOf = new Map(lives.map(({ pack, dueChance }) => [nameKey(pack.serial), dueChance[months - 1] ?? 0]));
  // a sign of what is due already comes too late to be early
  const dueNow = new Set(
    lives.flatMap(({ pack, replaceBy }) => (replaceBy.kind === "already-due" ? [nameKey(pack.serial)] : [])),
  );
  const signs = items.flatMap((item) => {
    const found = whatWearsFaster(item, [fleet], () => fasterIn(item, fleet));
    return found
      .filter(({ kind, name }) => kind !== "pack" || !dueNow.has(nameKey(name)))
      .map((one) => signOf(one, item, found, dueOf, months));
  });
  return signs.sort((a, b) => rank(a) - rank(b) || b.timesAsFast.p50 - a.timesAsFast.p50);
}

const rank = ({ kind }: EarlySign) => (kind === "pack" ? 1 : 0);

/** Months ahead within which packs are counted as due soon. */
const YEAR = 12;

interface Found extends Faster {
  kind: EarlySign["kind"];
}

/** What wears faster within an item, whenever it is due: paces hang on no threshold. */
const whatWearsFaster = keptFor<FadingItem, Found[]>();

function fasterIn(item: FadingItem, fleet: Fleet): Found[] {
  const curves = someCurves(item);
  const tell = paceTeller(curves);
  const judge = fasterPackJudge(item, curves);
  const found: Found[] = [];
  const sorted = groupings(fleet).map((grouping) => ({ ...grouping, groups: new Map<string, PackGroup>() }));
  item.packs.forEach((fading, index) => {
    if (!speaks(fading.evidence)) return;
    const pace = tell(fading.evidence);
    const faster = judge(index, pace);
    if (faster !== null) found.push({ kind: "pack", ...faster });
    for (const { groups, nameOf } of sorted) hearPack(groups, nameOf(fading), index, pace);
  });
  for (const { kind, groups } of sorted) {
    for (const faster of fasterGroups([...groups.values()])) found.push({ kind, ...faster });
  }
  return found;
}

/** Looks at packs' posteriors spent on an item; the more packs, the surer the curve and the fewer of its draws matter. */
const EFFORT = 30_000;
const FEWEST_CURVES = 2;
const MOST_CURVES = 40;

function someCurves({ packs, fit }: FadingItem): NodeTables[] {
  const count = Math.max(FEWEST_CURVES, Math.min(MOST_CURVES, Math.floor(EFFORT / packs.length)));
  return evenlySpread(fit.tables, count);
}

function signOf(
  one: Found,
  { item, packs }: FadingItem,
  found: readonly Found[],
  dueOf: ReadonlyMap<string, number>,
  months: number,
): EarlySign {
  const { kind, name, members, chance, distance } = one;
  const due = members.flatMap((index) => dueOf.get(nameKey(packs[index]!.pack.serial)) ?? []);
  const sign: Omit<EarlySign, "says"> = {
    kind,
    item,
    name,
    packs: members.length,
    timesAsFast: timesAsFast(distance),
    atLeast: kind === "pack" ? PACK_AT_LEAST : GROUP_AT_LEAST,
    chance,
    inService: due.length,
    dueWithinYear: due.reduce((sum, one) => sum + one, 0),
  };
  if (kind === "pack") return { ...sign, says: packSays(sign) };
  const which = ({ kind, name, members }: Found) =>
    whichPacks(kind, name, !members.some((index) => packs[index]!.pack.made === null));
  const same = found.find((other) => other !== one && liesMostlyIn(one, other));
  return { ...sign, says: groupSays(sign, which(one), months, same ? which(same) : null) };
}

/** Share of a group's packs that lie in another group, from which that other may be the cause as well. */
const MOSTLY = 0.75;

function liesMostlyIn({ members }: Found, other: Found): boolean {
  const there = new Set(other.members);
  return members.filter((index) => there.has(index)).length >= MOSTLY * members.length;
}
