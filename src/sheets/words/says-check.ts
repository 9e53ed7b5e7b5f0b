import type { HeaderMeaning } from "./parse-header.ts";

/** Words for looking at a thing, for when all were looked at in turn or for when a form was sent, folded, in the languages of the vocabulary. */
const CHECK =
  /^(month|monat|mois|mes|maand|week|woche|semaine|semana)\b|check|inspe[ck]|control|kontrol|pruf|verif|revisi|audit|^(timestamp|submi|completion|zeitst|horodat|marca temp)/;

/** True where a header says when a line's things were looked at: a day and nothing more, or a check that is not to come. */
export function saysCheck({ says, things, words }: HeaderMeaning): boolean {
  return (says === "date" && things === "") || (CHECK.test(words) && !/next|arrives/.test(says));
}
