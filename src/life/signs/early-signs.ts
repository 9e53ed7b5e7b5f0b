import type { FadingItem } from "../../fade/fade-items.ts";
import type { NodeTables } from "../../fade/node-tables.ts";
import { paceTeller } from "../../fade/pack-paces.ts";
import { type Fleet, nameKey } from "../../fleet/rows.ts";
import { evenlySpread } from "../../maths/evenly-spread.ts";
import { keptFor } from "../kept-for.ts";
import type { EarlySign, PackLife } from "../types.ts";
import { type FasterGroup, fasterGroups, GROUP_AT_LEAST, groupTimesAsFast } from "./faster-groups.ts";
import { type FasterPack, fasterPackJudge, PACK_AT_LEAST } from "./faster-packs.ts";
import { groupings } from "./groups.ts";
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
    const { groups, packs } = whatWearsFaster(item, [fleet], () => fasterIn(item, fleet));
    const early = packs.filter(({ index }) => !dueNow.has(nameKey(item.packs[index]!.pack.serial)));
    return [...groupSigns(item, groups, dueOf, months), ...early.map((one) => packSign(item, one, dueOf))];
  });
  return signs.sort((a, b) => rank(a) - rank(b) || b.timesAsFast.p50 - a.timesAsFast.p50);
}

/** Months ahead within which packs are counted as due soon. */
const YEAR = 12;

/** What wears faster within an item, whenever it is due. */
interface Faster {
  groups: NamedGroup[];
  packs: FasterPack[];
}

interface NamedGroup {
  kind: EarlySign["kind"];
  group: FasterGroup;
  which: string;
}

/** Paces hang on no threshold. */
const whatWearsFaster = keptFor<FadingItem, Faster>();

function fasterIn(item: FadingItem, fleet: Fleet): Faster {
  const curves = someCurves(item);
  const tell = paceTeller(curves);
  const judge = fasterPackJudge(item, curves);
  const packs: FasterPack[] = [];
  const seen = item.packs.map(({ evidence }, index) => {
    const pace = tell(evidence);
    const found = judge(index, pace);
    if (found !== null) packs.push(found);
    return pace.seen;
  });
  const groups = groupings(fleet).flatMap((grouping) =>
    fasterGroups(item, curves, seen, grouping).map((group) => {
      const madeKnown = group.members.every((index) => item.packs[index]!.pack.made !== null);
      return { kind: grouping.kind, group, which: whichPacks(grouping.kind, group.name, madeKnown) };
    }),
  );
  return { groups, packs };
}

const rank = ({ kind }: EarlySign) => (kind === "pack" ? 1 : 0);

/** Looks at packs' posteriors spent on an item; the more packs, the surer the curve and the fewer of its draws matter. */
const EFFORT = 30_000;
const FEWEST_CURVES = 2;
const MOST_CURVES = 40;

function someCurves({ packs, fit }: FadingItem): NodeTables[] {
  const count = Math.max(FEWEST_CURVES, Math.min(MOST_CURVES, Math.floor(EFFORT / packs.length)));
  return evenlySpread(fit.tables, count);
}

function groupSigns(
  item: FadingItem,
  found: readonly NamedGroup[],
  dueOf: ReadonlyMap<string, number>,
  months: number,
): EarlySign[] {
  return found.map(({ kind, group, which }) => {
    const { name, members, chance } = group;
    const due = members.flatMap((index) => dueOf.get(nameKey(item.packs[index]!.pack.serial)) ?? []);
    const sign: Omit<EarlySign, "says"> = {
      kind,
      item: item.item,
      name,
      packs: members.length,
      timesAsFast: groupTimesAsFast(group),
      atLeast: GROUP_AT_LEAST,
      chance,
      inService: due.length,
      dueWithinYear: due.reduce((sum, one) => sum + one, 0),
    };
    const same = found.find((other) => other.group !== group && liesMostlyIn(group, other.group));
    return { ...sign, says: groupSays(sign, which, months, same?.which ?? null) };
  });
}

/** Share of a group's packs that lie in another group, from which that other may be the cause as well. */
const MOSTLY = 0.75;

function liesMostlyIn(group: FasterGroup, other: FasterGroup): boolean {
  const there = new Set(other.members);
  return group.members.filter((index) => there.has(index)).length >= MOSTLY * group.members.length;
}

function packSign(
  { item, packs }: FadingItem,
  { index, chance, timesAsFast }: FasterPack,
  dueOf: ReadonlyMap<string, number>,
): EarlySign {
  const { serial } = packs[index]!.pack;
  const sign: Omit<EarlySign, "says"> = {
    kind: "pack",
    item,
    name: serial,
    packs: 1,
    timesAsFast,
    atLeast: PACK_AT_LEAST,
    chance,
    inService: 1,
    dueWithinYear: dueOf.get(nameKey(serial)) ?? 0,
  };
  return { ...sign, says: packSays(sign) };
}
