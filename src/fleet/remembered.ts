/** A function that works out each answer once: few names and days stand in many rows. */
export function remembered<From, To>(work: (from: From) => To): (from: From) => To {
  const known = new Map<From, To>();
  return (from) => {
    let to = known.get(from);
    if (to === undefined) {
      to = work(from);
      known.set(from, to);
    }
    return to;
  };
}
