import { type PackPace, SHIFTS } from "../../fade/pack-paces.ts";
import { nameKey } from "../../fleet/name-key.ts";

/** Packs of an item that have something in common. */
export interface PackGroup {
  /** Null of those of which the sheets tell nothing in common. */
  name: string | null;
  /** Indices of its packs that have readings. */
  members: number[];
  /** By curve, by shift: log likelihood of their readings together, as `PackPace` has it of one pack's. */
  ifFaster: Float64Array[];
}

/** Adds what a pack's readings say to its group's, by name. */
export function hearPack(groups: Map<string, PackGroup>, name: string | null, index: number, pace: PackPace): void {
  const key = nameKey(name ?? "");
  let group = groups.get(key);
  if (group === undefined) {
    group = { name, members: [], ifFaster: pace.ifFaster.map(() => new Float64Array(SHIFTS.length)) };
    groups.set(key, group);
  }
  group.members.push(index);
  group.ifFaster.forEach((logs, c) => {
    for (let k = 0; k < logs.length; k++) logs[k] = logs[k]! + pace.ifFaster[c]![k]!;
  });
}
