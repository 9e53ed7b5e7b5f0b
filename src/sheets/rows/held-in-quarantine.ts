/** A place where things lie that may not be used: "Quarantine shelf", "Sperrlager", and no ward. */
const QUARANTINE = /^(quarant|cuarenten|sperr)\S*( (store|stock|shelf|area|bin|cage|box|zone))?$/i;

/** Holds what may be held and lies in quarantine, where nothing else is said of it. */
export function holdInQuarantine(values: Record<string, unknown>): null {
  const where = values.place ?? values.site;
  if (values.held === null && typeof where === "string" && QUARANTINE.test(where)) values.held = where;
  return null;
}
