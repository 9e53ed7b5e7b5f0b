import type { Unit } from "../../fleet/columns.ts";

/** Days in a mean month and year, for durations in other units than the column's (365.2425 days a year). */
const DAYS_PER_YEAR = 365.2425;
const DAYS_PER_MONTH = DAYS_PER_YEAR / 12;

const words = (factor: number, list: string): [string, number][] => list.split(" ").map((word) => [word, factor]);

const MINUTES = [
  ...words(1, "min mins minute minutes m minuten minuut minuto minutos mn"),
  ...words(60, "h hr hrs hour hours std stunde stunden heure heures hora horas uur u"),
  ...words(1 / 60, "s sec secs sek second seconds"),
];

/** Factors to each unit of the fleet, by the words that people write. */
const FACTORS: Record<NonNullable<Unit>, Map<string, number>> = {
  min: new Map(MINUTES),
  Wh: new Map([...words(1, "wh watthours"), ...words(1000, "kwh"), ...words(0.001, "mwh")]),
  Ah: new Map([...words(1, "ah"), ...words(0.001, "mah")]),
  W: new Map([...words(1, "w watt watts"), ...words(1000, "kw")]),
  "°C": new Map(words(1, "°c c celsius ° ºc ℃ degc deg grad")),
  days: new Map([
    ...words(1, "d day days tag tage jour jours j día días dia dias dag dagen giorni dage dagar dni"),
    ...words(
      7,
      "w wk wks week weeks wo woche wochen semaine semaines semana semanas weken settimane veckor uger tygodni",
    ),
    ...words(DAYS_PER_MONTH, "mo mos mth mths month months monat monate mois mes meses maand maanden"),
    ...words(DAYS_PER_YEAR, "y yr yrs year years jahr jahre an ans año años jaar"),
  ]),
  months: new Map([
    ...words(1, "m mo mos mth mths month months monat monate mois mes meses maand maanden"),
    ...words(12, "y yr yrs year years jahr jahre an ans año años jaar"),
    ...words(1 / DAYS_PER_MONTH, "d day days tag tage jour jours dia dias dag dagen"),
    ...words(7 / DAYS_PER_MONTH, "w wk wks week weeks woche wochen semaine semaines semana semanas weken"),
  ]),
  m: new Map([
    ...words(1, "m metre metres meter meters mètre mètres metro metros"),
    ...words(0.01, "cm"),
    ...words(0.001, "mm"),
    ...words(0.3048, "ft feet foot"),
  ]),
  units: new Map(
    words(
      1,
      "x × pc pcs piece pieces ea each unit units u st stk stück stueck pce pces pièce pièces unité unités ud uds unidad unidades pza pzas stuk stuks off no qty set sets satz sätze jeu jeux juego juegos pr prs pair pairs roll rolls rolle rollen rouleau rouleaux rollo rollos rol tube tubes tuben bottle bottles pad pads sensor sensors pk pks pack packs bag bags beutel bolsa bolsas poche poches",
    ),
  ),
  "per year": new Map([
    ...words(
      1,
      "/y /yr /year p.a pa /a /jahr /an /jaar /año yearly annually annual jährlich annuel annuelle anual jaarlijks",
    ),
    ...words(
      2,
      "half-yearly semi-annual semi-annually semiannual semiannually six-monthly halbjährlich semestriel semestrielle semestral halfjaarlijks",
    ),
    ...words(4, "quarterly vierteljährlich quartalsweise trimestriel trimestrielle trimestral"),
    ...words(26, "fortnightly"),
    ...words(12, "/month /mo /m /monat /mois /mes /maand monthly monatlich mensuel mensuelle mensual maandelijks"),
    ...words(52, "/week /wk /w /woche /semaine /semana weekly wöchentlich hebdomadaire semanal wekelijks"),
    ...words(365, "/day /d /tag /jour /día daily täglich quotidien quotidienne diario dagelijks"),
  ]),
};

const BOX_WORDS = new Set(
  "box boxes bx case cases carton cartons ctn pkt pkts packet packets karton kartons schachtel schachteln boîte boîtes boite boites caja cajas doos dozen bxs cs krt vpe bte".split(
    " ",
  ),
);

/** Words that count packets and not single units, where how many are in one stands behind them. */
const PACKETS = /^(pks?|packs?|bags?|bg|beutel|bolsas?|poches?)$/;
const SIZED = /^(\p{L}+)\.?(?:\s?(?:[/:(x×]|of|de|à|zu)\s?|(?<=^\p{L}{2}))(\d{1,4})\b/u;

const SIZE_FIRST = /^(\d{1,4})\s?(?:\/|per|pro|par|por)\s?(\p{L}+)\.?$/u;

/** The word and the size of a pack ("BX/10", "bag of 50", "box (10 rolls)", "10/bx"), in lower case; null where both do not stand there. */
export function packIn(text: string): { word: string; size: number } | null {
  const [, first, second] = SIZED.exec(text.toLowerCase()) ?? SIZE_FIRST.exec(text.toLowerCase()) ?? [];
  const [word = "", size] = /^\d/.test(first ?? "") ? [second, first] : [first, second];
  return size !== undefined && (isBoxWord(word) || PACKETS.test(word)) ? { word, size: Number(size) } : null;
}

/** Units counted in packs of a size, with those that lie loose ("2 bags of 50 + 3"), or beside the size of one ("4 x 250 ml"); null for others. */
export function unitsInPacks(text: string): number | null {
  const [, count, rest = "", measured, loose = 0] =
    /^(\d{1,4}) ?([x×] ?\d+ ?(ml|c?m|mm|g)|\p{L}.*?)(?:\+ ?(\d+)\D*)?$/iu.exec(text) ?? [];
  if (measured !== undefined) return Number(count);
  const pack = packIn(rest);
  return pack === null ? null : Number(count) * pack.size + Number(loose);
}

/** Factor from a written unit word to a unit of the fleet; null where the word is no such unit. */
export function unitFactor(word: string, unit: Unit): number | null {
  if (word === "") return 1;
  if (unit === null) return /^(x|cycles?|cyc|zyklen|zyklus|ciclos?)$/.test(word) ? 1 : null;
  return FACTORS[unit].get(plain(word)) ?? (unit === "per year" ? perYearFactor(word) : null);
}

/** True where the word counts boxes. */
export function isBoxWord(word: string): boolean {
  return BOX_WORDS.has(plain(word));
}

/** A word without the point of "ea." and "A·h". */
function plain(word: string): string {
  return word.replace(/[·⋅∙]|\.$/g, "");
}

/** True for a word that some column of the fleet takes as a unit. */
export function isUnitWord(word: string): boolean {
  return isBoxWord(word) || packIn(word) !== null || Object.values(FACTORS).some((factors) => factors.has(word));
}

function perYearFactor(word: string): number | null {
  const spaced = word.replace(/^(x|times)\s*/, "").replace(/^(per|a|an|pro|par|por)\s+/, "/");
  return FACTORS["per year"].get(spaced) ?? null;
}
