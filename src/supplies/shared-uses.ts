import type { Day } from "../calendar/day.ts";
import type { DeviceRow } from "../fleet/rows.ts";

/** A device with the uses that are counted for it. */
interface Sharer {
  device: Pick<DeviceRow, "inService">;
  place: { events: number };
}

/**
 * Uses logged for several devices together, as those at a site: each is shared among the devices that were in service by
 * its day. They are counted by how many share them, and dealt out at the end.
 */
export class SharedUses {
  /** In the order in which they came into service. */
  readonly #sharers: readonly { start: Day; place: { events: number } }[];
  /** Uses by the number of devices that share them. */
  readonly #uses: number[];

  /** @param from  first day of the log: a device without a day of its own was in service by then */
  constructor(sharers: readonly Sharer[], from: Day) {
    this.#sharers = sharers
      .map(({ device, place }) => ({ start: device.inService ?? from, place }))
      .sort((a, b) => a.start - b.start);
    this.#uses = new Array<number>(sharers.length + 1).fill(0);
  }

  /** Counts a use of a day no earlier than the log's first; false where no device was in service by then. */
  add(day: Day): boolean {
    let sharing = this.#sharers.length;
    while (sharing > 0 && this.#sharers[sharing - 1]!.start > day) sharing--;
    this.#uses[sharing]!++;
    return sharing > 0;
  }

  /** Gives each device its share. To be called once. */
  deal(): void {
    let share = 0;
    for (let at = this.#sharers.length - 1; at >= 0; at--) {
      share += this.#uses[at + 1]! / (at + 1);
      this.#sharers[at]!.place.events += share;
    }
  }
}
