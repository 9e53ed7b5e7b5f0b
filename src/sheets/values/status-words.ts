import type { Day } from "../../calendar/day.ts";
import { foldAccents } from "../words/fold.ts";
import { type DateOrder, readDateText } from "./date-text.ts";

/** What a word of status says of a thing: it serves, it may not be used for now, or the fleet has it no more. */
export type Standing = "serves" | "held" | "gone";

/** A thing that its status says is gone, with the day where the cell names one. */
export class Gone {
  constructor(
    readonly text: string,
    readonly since: Day | null,
  ) {}
}

/** Stems in the languages of headers, without accents. What a cell says first to last: gone, then held, then serving. */
const STEMS: readonly [Standing, RegExp][] = [
  [
    "gone",
    /retired|scrap|dispos(ed|al)|discard|decommission|condemn|withdrawn|writ(e|ten) ?off|destroyed|recycled|\bsold\b|stolen|returned to (supplier|vendor|manufacturer|maker)|^(lost|missing|removed|entfernt|ausgebaut|replaced|exchanged|ersetzt|(aus)?getauscht|remplacee?|reemplazad[ao]|vervangen|s[uo]b?stitui[dt][ao])(?=$|\W*\d| (on|in|by|since|am|seit|durch|le|par|el|por|op|door|il|da|em)\b)|ausgemustert|ausgesondert|ausgeschieden|entsorgt|verschrottet|stillgelegt|abgeschrieben|verkauft|verloren|gestohlen|reforme|rebut|jete|vend(u|id)|perd(u|id)|vole\b|\bde baja\b|^baja(?=$|\W*\d| el\b)|retiree? (du|le)\b|desechad|retirad|robad|afgevoerd|afgeschreven|verwijderd|verkocht|kwijt|dismess|rottamat|smaltit|smarrit|abatid|descartad|wycofan|zutylizowan|zgubion|kasser|utrangerad|skrot[ae]|saald|solgt|ta[bp]t\b/,
  ],
  [
    "held",
    /quarant|cuarenten|block|sperr|bloqu|blokk|bloccat|on hold|\bheld\b|do not use|repair|repara[cdt]|riparaz|naprawa|defe[ck]t|defaill|faulty|\bfault\b|broken|kaputt|kapot|damaged|beschadig|endommag|danad|danneggiat|uszkodz|swollen|recall|\bfail|panne|averi|guast|fallo\b|out of (service|order|use)|\boos\b|hors service|\bhs\b|ausser betrieb|nicht (einsatz|verwend|in ordnung)|fuera de servicio|buiten (dienst|gebruik)|fuori servizio|fora de servico|ur drift|ude af drift|ute av drift|unserviceable|unusable|not (ready|serviceable|usable|in service|ok)|suspended|awaiting|pending|\bdead\b|(?<!not |un)expired|end of life|\beol\b|(to be|needs?) replac/,
  ],
  [
    "serves",
    /in service|in use|\bloan|\blent\b|verliehen|prestad|en us[oa]|\bactive|\baktiv|\bactif|\bactiv[ao]|\battiv[ao]|actief|czynn|operati|operac|operaz|\bok\b|\bgood\b|\bfair\b|\bpoor\b|\bnew\b|\bneu\b|\bneuf|nuev[ao]|nieuw|nuov[ao]|\bnov[ao]\b|\bnow[yae]\b|spare|reserv|ersatz|backup|available|verfugbar|dispon|beschikbaar|ready|bereit|betrieb|einsatz|en service|en servicio|in dienst|in gebruik|in uso|em servico|i drift|i bruk|i brug|serviceable|functional|funktion|fonction|working|deployed|issued|installed|fitted|assigned|pass|bestanden|\bgut\b|\bbon\b|buen[ao]|\bgoed\b|buon[ao]|\bbom\b|\bboa\b|dobr[ya]|\bbra\b|excellent|normal|charg|stock|shelf|stored|\blager|current|\blive\b|\bused\b|gebraucht|worn|degraded|green/,
  ],
];

/** What a cell of a status column says; null where it holds no known word. */
export function standingOf(text: string): Standing | null {
  return goneAfterFault(text) ? "gone" : standingIn(text);
}

/** True of a cell that tells first what was wrong and then, in words of its own, that the thing was replaced. */
export function goneAfterFault(text: string): boolean {
  const [first = "", ...later] = text.split(/[,;:(]|\s[-–—]+\s/);
  return standingIn(first) === "held" && later.some((words) => standingIn(words) === "gone");
}

function standingIn(text: string): Standing | null {
  const words = foldAccents(text)
    .toLowerCase()
    .replace(/[\s_-]+/g, " ")
    .trim();
  return STEMS.find(([, stem]) => stem.test(words))?.[0] ?? null;
}

/**
 * A cell that says that a thing is gone, with the day that follows its words ("Scrapped 2025-06-13").
 *
 * @param order  the order of day, month and year, where it was given
 */
export function goneSince(text: string, order: DateOrder | null): Gone {
  for (const { index } of text.matchAll(/\s/g)) {
    const written = readDateText(text.slice(index + 1).replace(/^[\s(]+|[\s).]+$/g, ""));
    if (written === null || written.kind === "bad") continue;
    if (written.kind === "span") return new Gone(text, written.last);
    if (order !== null && written.days[order] !== null) return new Gone(text, written.days[order]);
    // else a day that can be read in two orders is none: nothing in the cell tells which
    const readings = new Set(Object.values(written.days).filter((day) => day !== null));
    const [only = null] = readings.size === 1 ? readings : [];
    return new Gone(text, only);
  }
  return new Gone(text, null);
}
