import { isBoxWord, isUnitWord } from "../values/units.ts";
import { foldAccents } from "./fold.ts";
import { headerWords } from "./header-words.ts";
import { lookUp } from "./look-up.ts";
import { DATED_THINGS, THINGS, VOCABULARY } from "./vocabulary.ts";

/** What a header says, once its words are looked up. */
export interface HeaderMeaning {
  /** The header as plain words. */
  words: string;
  /** Concepts it names without things, variants and fillers, sorted and joined by blanks. */
  says: string;
  /** The things it names, sorted and joined by blanks. */
  things: string;
  /** adult, child, spare, primary, charging; empty where none. */
  variant: string;
  /** The number of a repeated group ("Pad 2 exp"); null where none. */
  index: number | null;
  /** The unit in brackets or at the end, lower case; empty where none. */
  unit: string;
  /** Share of its letters whose meaning is known, less for typing errors; 0 to 1. */
  coverage: number;
  /** The header without the words that say an attribute: "Adult pads" of "Adult pads exp". */
  subject: string;
}

const VARIANTS = new Set(["adult", "child", "spare", "primary", "charging"]);
const THING_SET: ReadonlySet<string> = new Set(THINGS);
/** Units in brackets that tell what is measured. */
const UNIT_CONCEPTS: Record<string, string> = {
  min: "minutes",
  mins: "minutes",
  minutes: "minutes",
  wh: "wh",
  ah: "ah",
  mah: "ah",
  "h mm": "minutes",
  w: "load",
  watts: "load",
  percent: "capacity",
  year: "made",
  jahr: "made",
  annee: "made",
};
/** Words so weak that they are dropped where any of the others stands. */
const WEAKER: [string, string[]][] = [
  [
    "id",
    ["serial", "lot", "order", "gtin", "cycles", "label", "quantity", "place", "site", "item", "supplier", "unit"],
  ],
  ["name", ["serial", "site", "supplier", "task", "item", "place", "key", "type", "cycles", "minutes", "uses"]],
  ["date", ["expiry", "made", "install", "opened", "retired", "arrives"]],
  ["quantity", ["cycles", "box", "minorder", "minutes", "uses", "peryear", "wh", "ah", "outstanding"]],
  ["cycles", ["minutes", "wh", "ah"]],
  ["install", ["minutes", "wh", "ah"]],
  ["reason", ["held"]],
  ["result", ["expiry"]],
  ["next", ["expiry", "arrives"]],
  ["unit", ["priceper", "serial", "box"]],
];
/** What is said of one battery or pads, wherever it is. */
const OF_ONE_UNIT = ["serial", "expiry", "lot"];
/** What a box word in brackets is the unit of. */
const COUNTS = ["quantity", "outstanding", "minorder", "least"];
/** What a test measures, and words for the least of it that passes: no test measured "Required runtime" or "Min. capacity". "Spec (min)" may be what the device needs. */
const MEASURES = ["capacity", "minutes", "wh", "ah"];
const LEAST_THAT_PASSES =
  /^min [a-z]|\bmin (cap|runt|soh)|\bminim|\bmindest|\brequ(ir|is|er)|\berforderl|\bgefordert|\bvereist|\btarget|\bthreshold|\blimit|\bgrenz|\bseuil|\bumbral|\bziel|\b(spec|soll)[a-z ]* (min|runt|laufz)/;
/** Words for where a thing was, and is no more, or for how many each place should have: "Old location", "Per kit". */
const WAS = /^(per |pro |par |por |je |old|prev|former|alter|bisher|ancien|anterior|vorige|oude)/;
/** What is not meant by a concept's words: amperes are no watts, joules no watt hours, and what should be there is not what is. */
const OTHERS: [string, RegExp][] = [
  ["site", WAS],
  ["place", WAS],
  // what wakes the cabinet, not the device
  ["battery", /alarm/],
  ["load", /\bm?a(mps?)?$/],
  ["price", /\b(ct|cents?|pence)$/],
  ["temperature", /\bm(in|ax)/],
  ["wh", /\bj(oules?)?$/],
  ["quantity", /\b(requ(ir|ise|er)|need|std|standard|target)/],
];
/** What went into a battery is not what it gave, nor is how full it was: "Chg mAh", "Charge time", "End %". */
const CHARGED =
  /^((re)?(chg|charg|lade|carga)[a-z]* (.* )?(min|time|m?[aw]h|dauer|zeit)\b|(start|end|anfang|ende|debut|fin) percent$)|\b(chg|charged?|ladung|carga) percent\b/;
/** A day of purchase stands for that of putting in service where no better one does. */
const BOUGHT_WORTH = 0.95;
const MAX_HEADER = 120;
const MAX_INDEX = 24;

const memo = new Map<string, HeaderMeaning>();

/** Looks up what a header says. Texts too long for a header say nothing. */
export function parseHeader(header: string): HeaderMeaning {
  const known = memo.get(header);
  if (known) return known;
  const meaning = header.length > MAX_HEADER ? nothing : parse(header);
  if (memo.size > 20_000) memo.clear();
  memo.set(header, meaning);
  return meaning;
}

/** True for a header that says how things stand ("Status", "Battery condition"), and nothing else of them. */
export function tellsStatus({ says }: HeaderMeaning): boolean {
  return says === "status";
}

/** True for what a fleet's sheets hold besides, from which a table's kind cannot be told. */
export function isAside(meaning: HeaderMeaning): boolean {
  return /^aside$|next/.test(meaning.says) || tellsStatus(meaning);
}

const nothing: HeaderMeaning = {
  words: "",
  says: "",
  things: "",
  variant: "",
  index: null,
  unit: "",
  coverage: 0,
  subject: "",
};

/** How dates are to be written, in brackets: "(YYYYMM)", "(tt.mm.jjjj)". */
const DATE_FORM = /[([]\s*(?:(?:d{1,2}|t{1,2}|g{1,2}|m{1,3}|ww|[yja]{2,4})[-/. ]?){2,3}[)\]]/i;
/** The same of weeks: "(YYWW)", "(WW/YY)". */
const IN_WEEKS = /[([]\s*(yy[-/. ]?ww|ww[-/. ]?yy)\s*[)\]]/i;
/** The same anywhere: three runs of letters for the day, the month and the year. */
const ORDER_FORM = /(?<![a-z])(?:([dtgjmyar])\1{0,3}[-/. ]?){3}(?![a-z])/i;
const ORDERS = ["dmy", "mdy", "ymd"] as const;

/** The order in which a header says that its dates are written: "Expiry (DD/MM/YYYY)", "Verfall TT.MM.JJJJ"; null where it says none. */
export function dateOrderIn(header: string): (typeof ORDERS)[number] | null {
  const letters = (ORDER_FORM.exec(header)?.[0] ?? "").toLowerCase().replace(/[^a-z]/g, "");
  // a French day and a German year start alike
  const plain = letters.replace(/[tg]/g, "d").replace(/j+/, /[ay]/.test(letters) ? "d" : "y");
  const order = plain.replace(/[ar]/g, "y").replace(/(.)\1+/g, "$1");
  return letters.length < 4 ? null : (ORDERS.find((each) => each === order) ?? null);
}

/** The day on which a column was read, in brackets: "(as of 30 Sept. 2026)". */
const READ_ON = /[([](?:as (?:of|at)|stand|per|au|al|op|am) [^)\]]*\d[^)\]]*[)\]]/i;

function parse(whole: string): HeaderMeaning {
  const header = whole.replace(DATE_FORM, " ").replace(READ_ON, " ");
  const bracketed = /[([{]\s*([^()[\]{}]{1,14})\s*[)\]}]/.exec(header)?.[1] ?? "";
  const unit = headerWords(bracketed);
  const written = IN_WEEKS.exec(whole)?.[1] ?? bracketed;
  const words = headerWords(header.replace(/#|\bn\.?[°º]/gi, " no "));
  const tokens = words
    .split(" ")
    .flatMap((word) => (VOCABULARY.has(word) ? [word] : word.split(/(?<=[a-z])(?=\d)|(?<=\d)(?=[a-z])/)));
  const { found, index, coverage, ofSubject } = readThrough(tokens, abbreviated(header), unit);
  const all = [...settled(found, words, unit, /[/&+]/.test(header))].sort();
  return {
    words,
    says: all.filter((concept) => !VARIANTS.has(concept) && !THING_SET.has(concept)).join(" "),
    things: all.filter((concept) => THING_SET.has(concept)).join(" "),
    variant: all.filter((concept) => VARIANTS.has(concept)).join(" "),
    index,
    unit:
      written !== ""
        ? written.toLowerCase().trim()
        : tokens.length > 1 || words === "mah"
          ? (tokens.at(-1) as string)
          : "",
    coverage,
    subject: subjectOf(header, ofSubject),
  };
}

/** What a header's words name, one phrase after the other, with the words that name its thing. */
function readThrough(tokens: readonly string[], cutShort: ReadonlySet<string>, unit: string) {
  const found: string[] = [];
  const ofSubject: string[] = [];
  let index: number | null = null;
  let knownLetters = 0;
  let letters = 0;
  for (let at = 0; at < tokens.length; ) {
    // "(4 yr)" says how long, and not which
    const counts: boolean = index !== null || unit.startsWith(`${tokens[at]} `);
    const ordinal: number | null = counts ? null : ordinalOf(tokens, at, found);
    if (ordinal !== null) {
      index = ordinal;
      at++;
      continue;
    }
    const [named, taken, sure] = lookUp(tokens, at, cutShort, found);
    const concepts = named.map((concept) => (concept === "bought" ? "install" : concept));
    const worth = named.includes("bought") ? sure * BOUGHT_WORTH : sure;
    const own = tokens.slice(at, at + taken);
    const text = own.join("");
    at += taken;
    if (/^\d+$/.test(text)) continue;
    // A unit in brackets is understood, though it names nothing.
    if (concepts.length === 0 && text === unit && isUnitWord(unit)) continue;
    letters += text.length;
    knownLetters += concepts.length > 0 ? text.length * worth : 0;
    found.push(...concepts);
    if (concepts.length === 0 || concepts.some((concept) => THING_SET.has(concept) || VARIANTS.has(concept)))
      ofSubject.push(...own);
  }
  return { found, index, coverage: letters === 0 ? 0 : knownLetters / letters, ofSubject };
}

/** The concepts of a header, where one bears on another: what is measured, what is only the least, what drops out. */
function settled(found: readonly string[], words: string, unit: string, saysBoth: boolean): ReadonlySet<string> {
  const set = new Set(found.filter((concept) => concept !== "filler"));
  const measured = UNIT_CONCEPTS[unit];
  if (measured !== undefined) set.add(measured);
  // beside what should be there
  if (words === "actual") set.add("quantity");
  if (OTHERS.some(([concept, said]) => set.has(concept) && said.test(words))) set.add("aside");
  if (CHARGED.test(words)) set.add("aside");
  if (MEASURES.some((concept) => set.has(concept)) && LEAST_THAT_PASSES.test(words)) set.add("least");
  // "Qty (boxes)" counts boxes; it does not say how many units one holds.
  if (isBoxWord(unit) && COUNTS.some((concept) => set.has(concept))) set.delete("box");
  // the day of charging is none that a list of batteries asks for
  if (set.has("charging") && set.has("date")) set.add("aside");
  // "Installed battery S/N" is of the battery that is in, and "Install / expiry" of two days
  if (
    !saysBoth &&
    found.some((concept) => DATED_THINGS.has(concept)) &&
    OF_ONE_UNIT.some((concept) => set.has(concept))
  )
    for (const where of ["install", "holder", "unit"]) set.delete(where);
  for (const [weak, strong] of WEAKER) if (strong.some((concept) => set.has(concept))) set.delete(weak);
  return set;
}

/** Words of the header that end in a point, as words cut short do. */
function abbreviated(header: string): ReadonlySet<string> {
  return new Set([...foldAccents(header).matchAll(/(\p{L}{2,20})\./gu)].map(([, word]) => word!.toLowerCase()));
}

/** The number of a repeated group: "Pad 2", or a letter behind a thing's name as in "Battery B". */
function ordinalOf(tokens: readonly string[], at: number, found: readonly string[]): number | null {
  const token = tokens[at] as string;
  if (/^\d+$/.test(token)) return Number(token) <= MAX_INDEX ? Number(token) : null;
  // the other of a pair
  if (/^(right|rechts|droite|derecha)$/.test(token)) return 2;
  const before = found.at(-1) ?? "";
  const isLast = at === tokens.length - 1 && /lot|expiry|quantity/.test(before);
  if (!/^[a-dlr]$/.test(token) || !(isLast || THING_SET.has(before))) return null;
  // the letter may begin a phrase instead ("Pads à changer avant")
  const isWord = [2, 3].some(
    (taken) => at + taken <= tokens.length && VOCABULARY.has(tokens.slice(at, at + taken).join(" ")),
  );
  return isWord ? null : token.charCodeAt(0) - 96;
}

/** The words of the header that name its thing, as written. */
function subjectOf(header: string, words: readonly string[]): string {
  if (words.length === 0) return "";
  const wanted = new Set(words);
  return header
    .split(/[\s_/.,;:()[\]-]+|(?<=\p{Ll})(?=\p{Lu})/u)
    .filter(
      (part) =>
        wanted.has(headerWords(part).replace(/ /g, "")) ||
        wanted.has(headerWords(part.replace(/\d+$/, "")).replace(/ /g, "")),
    )
    .map((part) => part.replace(/[?!*]+$|\d+$|^\d(st|nd|rd|th)$/g, ""))
    .filter((part, at, all) => part !== "" && all.indexOf(part) === at)
    .join(" ");
}
