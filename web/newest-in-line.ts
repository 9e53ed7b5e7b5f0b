/** Whether a piece of work brought what was asked for. It may ask whether it is the newest, or others wait by now. */
type Work = (isNewest: () => boolean) => Promise<boolean>;

/**
 * A line of work, one piece at a time; of those that wait only the newest is done, since it carries every change so far.
 * Each says whether it brought what was asked for; what was passed over did not.
 */
export function newestInLine(): (work: Work) => Promise<boolean> {
  let line = Promise.resolve(false);
  let newest = 0;
  return (work) => {
    const mine = ++newest;
    const isNewest = () => mine === newest;
    line = line.then(() => isNewest() && work(isNewest));
    return line;
  };
}
