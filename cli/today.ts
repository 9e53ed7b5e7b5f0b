/** Today on the clock of this machine, as YYYY-MM-DD: the only place where the program asks for the time. */
export function todayIso(now = new Date()): string {
  const pad = (number: number) => String(number).padStart(2, "0");
  return `${now.getFullYear()}-${pad(now.getMonth() + 1)}-${pad(now.getDate())}`;
}
