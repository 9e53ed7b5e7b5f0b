import { DAYS_PER_MONTH } from "../calendar/mean-year.ts";
import { counted } from "../fleet/count-text.ts";
import type { SiblingFacts } from "./sibling-facts.ts";

/** "11 of 14 siblings that passed 84 % came to 80 % 7 to 12 months later", to stand within a sentence. */
export function siblingWords({ percent, passed, ended, days }: SiblingFacts, threshold: string): string {
  const who = ended === passed ? `${ended}` : `${ended} of ${passed}`;
  const months = (count: number) => Math.round(count / DAYS_PER_MONTH);
  const [from, to] = [months(days.from), months(days.to)];
  const when =
    to < 1
      ? "within a month"
      : from === to
        ? `about ${counted(to, "month")} later`
        : from < 1
          ? `up to ${counted(to, "month")} later`
          : `${from} to ${to} months later`;
  return `${who} siblings that passed ${percent} % came to ${threshold}${days.ofMost ? ", most of them" : ""} ${when}`;
}
