/** Months as `YYYY-MM` and days as `YYYY-MM-DD`, as plan.json writes them; both sort as text. */

const MS_PER_DAY = 86_400_000;

/** The month that lies `steps` after a month. */
export function monthAfter(month: string, steps: number): string {
  const count = Number(month.slice(0, 4)) * 12 + Number(month.slice(5, 7)) - 1 + steps;
  return `${String(Math.floor(count / 12)).padStart(4, "0")}-${String((count % 12) + 1).padStart(2, "0")}`;
}

/** Every month from one to another, both included. */
export function monthsBetween(from: string, to: string): string[] {
  const months: string[] = [];
  for (let month = from; month <= to; month = monthAfter(month, 1)) months.push(month);
  return months;
}

/** Day number (days since 1970-01-01) of `YYYY-MM-DD`. */
export function dayNumber(day: string): number {
  return Date.parse(`${day}T00:00:00Z`) / MS_PER_DAY;
}

/** `YYYY-MM-DD` of a day number. */
export function dayText(day: number): string {
  return new Date(day * MS_PER_DAY).toISOString().slice(0, 10);
}

/** Day number of a month's last day. */
export function monthEnd(month: string): number {
  return dayNumber(`${monthAfter(month, 1)}-01`) - 1;
}

/** Day numbers of the last days of `count` months from one on. */
export function monthEnds(from: string, count: number): number[] {
  return Array.from({ length: count }, (_, index) => monthEnd(monthAfter(from, index)));
}

/** Today on the reader's own calendar, as a day number. The engine has no clock: this is where as-of comes from. */
export function todayHere(): number {
  const now = new Date();
  return Date.UTC(now.getFullYear(), now.getMonth(), now.getDate()) / MS_PER_DAY;
}
