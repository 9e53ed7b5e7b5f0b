import { monthOfDay, monthText } from "../../calendar/month.ts";
import type { FadingPack } from "../../fade/items-with-evidence.ts";
import { nameKey } from "../../fleet/name-key.ts";
import type { DeviceRow, Fleet } from "../../fleet/rows.ts";
import type { EarlySign } from "../types.ts";

type GroupKind = Exclude<EarlySign["kind"], "pack">;

/** One way to group packs: what they may have in common that makes them wear faster. */
export interface Grouping {
  kind: GroupKind;
  /** The name of a pack's group, or null where the sheets tell none. */
  nameOf(pack: FadingPack): string | null;
}

/** Site, duty and batch of a pack. A batch is the month in which its packs were made, else put in service. */
export function groupings(fleet: Fleet): Grouping[] {
  const devices = new Map(fleet.devices.map((device) => [nameKey(device.device), device]));
  const deviceOf = ({ pack }: FadingPack): DeviceRow | undefined => devices.get(nameKey(pack.device ?? ""));
  return [
    { kind: "site", nameOf: (fading) => fading.pack.site ?? deviceOf(fading)?.site ?? null },
    { kind: "duty", nameOf: (fading) => deviceOf(fading)?.duty ?? null },
    {
      kind: "batch",
      nameOf({ pack: { made, inService } }) {
        const day = made ?? inService;
        return day === null ? null : monthText(monthOfDay(day));
      },
    },
  ];
}
