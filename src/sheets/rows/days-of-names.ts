import { nameKey } from "../../fleet/name-key.ts";
import type { Entry } from "./entry.ts";

/** The entries of one name, by day: a list as long as it is short, since most packs have a few tests. */
interface OfName {
  days: number[];
  entries: (Entry | Entry[])[];
  /** Places in the list by day, once it is long. */
  at: Map<number, number> | null;
}

const LONG_LIST = 48;

/** Groups entries by a name, without case, and a day: the commonest key, and the one of the longest sheets. */
export class DaysOfNames {
  readonly #names = new Map<string, OfName>();
  #lastName = "";
  #last: OfName | null = null;

  add(name: string, day: number, entry: Entry): void {
    const of = this.#ofName(name);
    const at = placeOf(day, of);
    if (at === -1) {
      of.at?.set(day, of.days.length);
      of.days.push(day);
      of.entries.push(entry);
      if (of.at === null && of.days.length > LONG_LIST) of.at = new Map(of.days.map((each, place) => [each, place]));
      return;
    }
    const before = of.entries[at] as Entry | Entry[];
    if (Array.isArray(before)) before.push(entry);
    else of.entries[at] = [before, entry];
  }

  /** The entries of a name and a day. */
  of(name: string, day: number): Entry[] {
    const of = this.#ofName(name);
    return [of.entries[placeOf(day, of)] ?? []].flat();
  }

  /** Every group of two entries or more. */
  *groups(): Iterable<Entry[]> {
    for (const { entries } of this.#names.values()) for (const each of entries) if (Array.isArray(each)) yield each;
  }

  #ofName(name: string): OfName {
    // Rows of one pack mostly stand together.
    if (this.#last !== null && name === this.#lastName) return this.#last;
    const key = nameKey(name);
    let of = this.#names.get(key);
    if (of === undefined) {
      of = { days: [], entries: [], at: null };
      this.#names.set(key, of);
    }
    this.#lastName = name;
    this.#last = of;
    return of;
  }
}

function placeOf(day: number, { days, at }: OfName): number {
  return at === null ? days.indexOf(day) : (at.get(day) ?? -1);
}
