import { isoFromDay } from "../calendar/day.ts";
import type { Policy } from "../fleet/policy.ts";
import type { Fleet } from "../fleet/rows.ts";

/** A caution where the day from which the log counts is later than every use in it: no use at all would be planned for. */
export function usesLeftOut({ useLog }: Pick<Fleet, "useLog">, { useLogFrom }: Policy): string[] {
  const uses = useLog.filter(({ reason, quantity }) => reason === "use" && quantity > 0);
  if (useLogFrom === null || uses.length === 0 || uses.some(({ date }) => date >= useLogFrom)) return [];
  return [
    `No use is planned for: use_log_from is ${isoFromDay(useLogFrom)}, and all uses in the log are earlier. Set it to the day on which the log starts to be complete.`,
  ];
}
