/** A place where things lie that may not be used: "Quarantine shelf", "Store (recalled)", "Sperrlager", and no ward. */
const QUARANTINE =
  /(?<!\p{L})((quarant|cuarenten|(ge)?sperr)\p{L}*(?!\p{L}| (ward|wing|unit|hospital))|recall|do not use|faulty|defe[ck]t)/iu;

/** Holds what may be held and lies in quarantine, where nothing else is said of it. */
export function holdInQuarantine(values: Record<string, unknown>): null {
  const where = values.place ?? values.site;
  if (values.held === null && typeof where === "string" && QUARANTINE.test(where)) values.held = where;
  return null;
}
