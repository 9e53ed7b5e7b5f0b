import { firstDayOfMonth, type Month } from "../calendar/month.ts";
import type { Item } from "../fleet/item-book.ts";
import { nameKey } from "../fleet/name-key.ts";
import type { WhoTakes } from "../fleet/who-takes.ts";
import type { LifeForecast, PackLife } from "../life/types.ts";
import { heldLives, needsOfFewPacks } from "./few-packs.ts";
import { needsOfManyPacks } from "./many-packs.ts";
import type { SlotStream } from "./slot-stream.ts";
import type { SpanNeeds } from "./span-needs.ts";
import type { DemandCause } from "./types.ts";

/** Numbers (slots * draws * months) up to which an item's slots are all held: some 50 MB for their three tables. */
const HELD_AT_ONCE = 2_200_000;
/** More slots than this are taken as a normal sum in any case. */
const MOST_SLOTS_HELD = 200;

/** A pack in service, by index into the forecast's packs, or a new device's pack that enters in a month. */
type Slot = { index: number; pack: PackLife } | EnteringPack;

/**
 * A new device's pack, or a spare that will have been fitted when it is due itself: the month in which it is needed, with
 * what chance and why, and the month from which it needs nothing any more.
 */
export interface EnteringPack {
  enters: number;
  chance: number;
  cause: "growth" | "limit";
  end: number;
}

/** The packs of one item that bring needs. */
export interface NeedingPacks {
  /** Indices into the forecast's packs, in an order that does not hang on the order of rows. */
  inService: readonly number[];
  entering: readonly EnteringPack[];
}

/** Random needs of an item's packs with their expected values by month and cause. */
export interface PackNeeds {
  needs: SpanNeeds;
  causes: Partial<Record<DemandCause, Float64Array>>;
}

/**
 * Needs of one item's packs: first replacements of the packs in service, growth, and the renewals of both. Packs whose
 * device has left service or leaves it inside the horizon need nothing from then on.
 */
export function packNeeds(
  item: Item,
  life: LifeForecast,
  { inService, entering }: NeedingPacks,
  takes: WhoTakes,
  firstMonth: Month,
): PackNeeds {
  const { draws, months } = life;
  const newDue = new Float64Array(draws * (months + 1));
  life.newPackDueByDraw(item.name, newDue);
  const slots: Slot[] = [...inService.map((index) => ({ index, pack: life.packs[index]! })), ...entering];
  const ends = Int32Array.from(slots, (slot) =>
    "pack" in slot ? endOfPack(slot.pack, takes, firstMonth, months) : slot.end,
  );
  const stream: SlotStream = {
    slots: slots.length,
    draws,
    months,
    newDue,
    endOf: (slot) => ends[slot]!,
    addDueOf(some, into, everyDraw) {
      const packs: number[] = [];
      for (const slot of some) {
        const one = slots[slot]!;
        if ("pack" in one) packs.push(one.index);
        else for (let i = 0; i < into.length; i++) if (i % months >= one.enters) into[i] = into[i]! + one.chance;
      }
      life.addDueByDraw(packs, into, everyDraw);
    },
  };
  const { needs, density } = needsOfSlots(stream);
  const expected = new Float64Array(months);
  for (let i = 0; i < density.length; i++) expected[i % months] = expected[i % months]! + density[i]! / draws;
  return { needs, causes: shareAmongCauses(expected, slots, ends, months) };
}

/** Random needs of slots, with the needs expected at draw * months + month, of one slot after the other or of all. */
function needsOfSlots(stream: SlotStream): { needs: SpanNeeds; density: Float64Array } {
  const { slots, draws, months } = stream;
  if (slots <= MOST_SLOTS_HELD && slots * draws * months <= HELD_AT_ONCE) {
    const lives = heldLives(stream);
    return { needs: needsOfFewPacks(lives), density: lives.density };
  }
  const needs = needsOfManyPacks(stream);
  return { needs, density: needs.density };
}

function endOfPack(pack: PackLife, takes: WhoTakes, firstMonth: Month, months: number): number {
  const device = takes.devices.get(nameKey(pack.pack.device ?? ""));
  return endMonth(device?.retired ?? null, firstMonth, months);
}

/** First month index whose first day (when its needs fall) is on or after the day of retirement, which is after as-of. */
export function endMonth(retired: number | null, firstMonth: Month, months: number): number {
  if (retired === null) return months;
  let month = 0;
  while (month < months && firstDayOfMonth(firstMonth + month) < retired) month++;
  return month;
}

/**
 * Splits the expected needs by cause: first needs of packs in the proportions of their forecasts, first needs of new
 * devices as growth, renewals in the proportions that the item's first needs show over the horizon.
 */
function shareAmongCauses(
  expected: Float64Array,
  slots: readonly Slot[],
  ends: Int32Array,
  months: number,
): PackNeeds["causes"] {
  const names = ["fade", "limit", "failure"] as const;
  const first = { fade: new Float64Array(months), limit: new Float64Array(months), failure: new Float64Array(months) };
  const growth = new Float64Array(months);
  slots.forEach((slot, i) => {
    if (!("pack" in slot)) {
      if (slot.enters < ends[i]!) {
        const into = slot.cause === "growth" ? growth : first.limit;
        into[slot.enters]! += slot.chance;
      }
      return;
    }
    for (const name of names) {
      for (let m = 0; m < ends[i]!; m++) first[name][m] = first[name][m]! + slot.pack.causes[name][m]!;
    }
  });
  const totals = names.map((name) => first[name].reduce((a, b) => a + b, 0));
  const all = totals.reduce((a, b) => a + b, 0);
  const overall = totals.map((total, i) => (all > 0 ? total / all : i === 0 ? 1 : 0));
  for (let m = 0; m < months; m++) {
    const firsts = names.reduce((sum, name) => sum + first[name][m]!, 0);
    const rest = Math.max(0, expected[m]! - growth[m]!);
    // rounding apart, expected needs are never below the first ones
    const scale = firsts > rest ? rest / firsts : 1;
    const renewals = rest - firsts * scale;
    names.forEach((name, i) => {
      first[name][m] = first[name][m]! * scale + renewals * overall[i]!;
    });
  }
  return { ...first, growth };
}
