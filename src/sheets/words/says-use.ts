import { foldAccents } from "./fold.ts";

/** Words that say of numbers that units were used up. */
const SAYS_USE =
  /consum|usage|used|taken\b|issued|uses\b|verbrauch|entnahme|consom|utilis|utiliz|gebrui|verbrui|forbru|zuzyc/;

/** True where a text says that numbers are units used up. */
export function saysUse(text: string): boolean {
  return SAYS_USE.test(foldAccents(text).toLowerCase());
}
