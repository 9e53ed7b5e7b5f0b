import { foldAccents } from "../words/fold.ts";
import { readYesNo } from "./choice-words.ts";

/** Stems in the languages of headers, without accents, by which people note that a thing should not be relied on. */
const FAULT =
  /swollen|swell|bulg|bloated|leak|crack|defe[ck]t|faulty|\bfault\b|broken|damaged|\bdead\b|\bfail|recall|do not use|unserviceable|unusable|\bhs\b|needs? replac|replace(?!d|ment|able)|(out of|from) service|out of order|low batt|batter(y|ies) (is |are |very )?(low|flat)|(akku|batterie) (ist )?(leer|schwach)|(batterie|pile) (faible|vide)|won'?t (charge|hold)|not (charging|holding|working|serviceable|usable)|blaht|lauft aus|ausgelaufen|kaputt|beschadig|ausfall|ausgefallen|ruckruf|tauschen|ersetzen|erneuern|ladt nicht|halt nicht|nicht (einsatz|verwend|benutz|in ordnung|ok)|gonf[il]|fuite|fissur|endommag|casse|panne|rappel du lot|a remplacer|a changer|hors service|ne (charge|tient) (pas|plus)|fuga|averia|danad|rott?[ao]\b|retirada de lote|reemplazar|cambiar|no (carga|funciona)|gezwollen|lek\b|kapot|terugroep|vervangen\b|laadt niet|houdt niet|perdita|guast|danneggiat|da sostituire|richiam|inchad|avari|estragad|substituir|spuchniet|uszkodz|wymienic|svall|trasig|skadad|byt ut|aterkall|oppsvulm|odelagt|bytte|skiftes|tilbakekall|tilbagekald/;

/** Words that take a fault back, or put it in the past. */
const NOT_NOW =
  /\b(no|not|nil|none|never|nicht|kein\w*|ohne|nie|pas|aucun\w*|sans|sin|ningun\w*|geen|niet|zonder|nessun\w*|senza|non|nao|sem|nenhum\w*|bez|brak|inga?|ingen|uten|uden|utan|ikke|inte)\b[^.;]*(swollen|swell|bulg|leak|crack|defe[ck]t|fault|broken|damage|fail|recall|beschadig|ausfall|ruckruf|geblaht|gonfl|fuite|fissur|endommag|panne|hinchad|fuga|averia|danad|gezwollen|lek|kapot|terugroep|guast|rott|dannegg|avari|uszkodz|skad|trasig)|\b(was|were|repaired|repariert|repare|reparad[ao]|gerepareerd|riparat[ao]|cleared|resolved|behoben|erledigt|retest(ed)? ok|since ok|now ok)\b/;

/** True for a remark that speaks of a fault that stands, as far as words alone can tell. */
export function speaksOfFault(text: string): boolean {
  const words = foldAccents(text)
    .toLowerCase()
    .replace(/[\s_-]+/g, " ");
  return FAULT.test(words) && !NOT_NOW.test(words);
}

/** True for a word in place of an expiry by which the unit may not be used, or is not there: "expired", "missing". */
export function saysPastUse(text: string): boolean {
  return speaksOfFault(text) || PAST_USE.test(foldAccents(text).toLowerCase());
}

const PAST_USE =
  /expired|out of date|\bood\b|missing|abgelaufen|fehl(t|en)|perime|manqu|caducad|vencid|falta|verlopen|ontbreek|scadut|manca/;

const READY =
  /ready|\bacti[fv]|\baktiv|\battiv|indi[ck]ator|status l|operational|functional|serviceable|working|\bok\b|in ordnung|einsatzbereit|betriebsbereit|funktionsfah|\bpret\b|operationnel|fonctionn|operativ|funciona|gereed|inzetbaar|bruikbaar|pronto|funzionant|operacional|\bklar\b|driftsklar|sprawn/;

/** True for a header that asks whether a thing can be relied on: "Ready?". */
export function asksWhetherReady(header: string): boolean {
  return READY.test(foldAccents(header).toLowerCase());
}

/** True for an answer to that which begins with no ("no - beeping"), or a red light. */
export function saysNotReady(text: string): boolean {
  return /^r(ed|o[jot]|ouge)/i.test(text) || readYesNo(text.trim().split(/[\s,;:–—-]/)[0]!) === false;
}
