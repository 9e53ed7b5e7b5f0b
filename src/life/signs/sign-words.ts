import { dayFromIso } from "../../calendar/day.ts";
import { monthOfDayWords } from "../../calendar/month-words.ts";
import { counted } from "../../fleet/count-text.ts";
import type { EarlySign } from "../types.ts";

type Unsaid = Omit<EarlySign, "says">;

const times = (value: number) => value.toFixed(1);
const percent = (share: number) => (share > 0.99 ? "over 99 %" : `${Math.floor(share * 100)} %`);

/**
 * One plain sentence for a group.
 *
 * @param which   the group's packs in words, as `whichPacks` has them
 * @param months  how far the plan looks for what falls due: twelve, or fewer where it ends sooner
 * @param same    the same of another group in which most of them lie, and which may be the cause as well; else null
 */
export function groupSays(sign: Unsaid, which: string, months: number, same: string | null): string {
  const { item, packs, inService, dueWithinYear } = sign;
  const due =
    inService === 0
      ? ""
      : `; of these, about ${Math.round(dueWithinYear)} of the ${inService} in service will be due within ${months === 12 ? "twelve months" : counted(months, "month")}`;
  const either = same === null ? "" : `; most of them are also among those ${same}, so either may be the cause`;
  return `The ${packs} tested packs of ${item} ${which} wear ${paceOf(sign, "the others")}${due}${either}.`;
}

/** One plain sentence for a pack. */
export function packSays(sign: Unsaid): string {
  return `${sign.name} wears ${paceOf(sign, `the middling ${sign.item}`)}.`;
}

/** "1.4 times as fast as the others for the same age, cycles and temperature (80 % range 1.2 to 1.7; ...)" */
function paceOf({ timesAsFast: { p10, p50, p90 }, atLeast, chance }: Unsaid, whom: string): string {
  return `${times(p50)} times as fast as ${whom} for the same age, cycles and temperature (80 % range ${times(p10)} to ${times(p90)}; ${atLeast} or more with a chance of ${percent(chance)})`;
}

/** Which packs a group holds, to follow "the packs": "at North Depot", "made in March 2024". */
export function whichPacks(kind: EarlySign["kind"], name: string, madeKnown: boolean): string {
  if (kind === "site") return `at ${name}`;
  if (kind === "duty") return `on ${name} duty`;
  return `${madeKnown ? "made" : "put in service"} in ${monthOfDayWords(dayFromIso(`${name}-01`)!)}`;
}
