/** A name in lower snake case, as sheets have it, in the camel case of fields: "lead_sd_days" is "leadSdDays". */
export function camelCase(name: string): string {
  return name.replace(/_([a-z])/g, (_, letter: string) => letter.toUpperCase());
}
