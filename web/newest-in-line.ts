/**
 * A line of work, one piece at a time; of those that wait only the newest is done, since it carries every change so far.
 * Each says whether it brought what was asked for; what was passed over did not.
 */
export function newestInLine(): (work: () => Promise<boolean>) => Promise<boolean> {
  let line = Promise.resolve(false);
  let newest = 0;
  return (work) => {
    const mine = ++newest;
    line = line.then(() => mine === newest && work());
    return line;
  };
}
