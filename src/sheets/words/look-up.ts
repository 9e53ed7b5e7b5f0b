import { withinOneEdit } from "../values/month-words.ts";
import { DATED_THINGS, VOCABULARY } from "./vocabulary.ts";

/** Longest phrase of the vocabulary, in words. */
const MAX_PHRASE = 5;
/** The shortest word in which one typing error is forgiven, and what such a word still counts. */
const FORGIVING_LENGTH = 5;
const FUZZY_WORTH = 0.85;
/** Single words that may be meant by one that is written otherwise: strange words are held against all of them. */
const WORDS = [...VOCABULARY].filter(([word]) => word.length > FORGIVING_LENGTH - 3 && !word.includes(" "));
/** Words of two letters that end a compound. */
const SHORT_TAILS = new Set(["no", "nr", "id", "sn", "dt"]);

/** Behind a battery or pads, words for those that a device works with, which tell them from its spares and name nothing. */
const IN_PLACE =
  /^(connected|attached|plugged in|[ei]n place|([io]n|im|dans|en) ((the|l[ae]?|el) )?(unit|monitor|machine|defib|aed|device|gerat|defi|appareil|equipo|dae|dea))$/;
/** The same for those that wait. */
const ON_SHELF = /^(on|in) (the )?(shelf|drawer|store|stock)$/;

/** Concepts of the longest known phrase at a place, how many tokens it takes and how sure that is. */
export function lookUp(
  tokens: readonly string[],
  at: number,
  cutShort: ReadonlySet<string>,
  found: readonly string[],
): [string[], number, number] {
  for (let taken = Math.min(MAX_PHRASE, tokens.length - at); taken >= 1; taken--) {
    const phrase = tokens.slice(at, at + taken).join(" ");
    const concept = VOCABULARY.get(phrase);
    // A German child, not an English kind, where it stands behind pads.
    if (concept === "category" && tokens[at] === "kind" && found.includes("pads")) return [["child"], 1, 1];
    if (IN_PLACE.test(phrase) && found.some((named) => DATED_THINGS.has(named))) return [["filler"], taken, 1];
    if (concept !== undefined) return [[concept], taken, 1];
    if (ON_SHELF.test(phrase) && found.includes("battery")) return [["spare"], taken, 1];
  }
  const token = tokens[at] as string;
  const parts = inflected(token) ?? compound(token);
  if (parts) return [parts, 1, 1];
  const near = nearWord(token) ?? cutWord(token, cutShort.has(token));
  return near === null ? [[], 1, 0] : [[near], 1, FUZZY_WORTH];
}

/** A known word with or without an ending that plurals and cases add. */
function inflected(token: string): string[] | null {
  if (token.length < 5) return null;
  // An umlaut written as two letters: Geraet.
  const plain = token.replace(/([aou])e/g, "$1");
  if (plain !== token && VOCABULARY.has(plain)) return [VOCABULARY.get(plain)!];
  const stem = /^(.{4,}?)(?:es|en|er|s|n|e)$/.exec(token)?.[1];
  const concept =
    (stem === undefined ? undefined : VOCABULARY.get(stem)) ??
    VOCABULARY.get(`${token}s`) ??
    VOCABULARY.get(`${token}e`) ??
    VOCABULARY.get(`${token}n`);
  return concept === undefined ? null : [concept];
}

/** The concept of a word cut short ("Instal.", "Capac"), where all known words that start so mean the same. */
function cutWord(token: string, marked: boolean): string | null {
  if (token.length < (marked ? 3 : FORGIVING_LENGTH + 1)) return null;
  let only: string | null = null;
  for (const [word, concept] of WORDS) {
    if (concept === "filler" || !word.startsWith(token)) continue;
    if (only !== null && only !== concept) return null;
    only = concept;
  }
  return only;
}

/** Known words written as one, as German and Dutch do, with or without a joining s, n or en. */
function compound(token: string): string[] | null {
  if (token.length < 5 || token.length > 40) return null;
  for (let cut = 3; cut <= token.length - 2; cut++) {
    const tail = token.slice(cut);
    const last = tail.length > 2 || SHORT_TAILS.has(tail) ? VOCABULARY.get(tail) : undefined;
    const rest = last === undefined ? (tail.length >= 7 ? compound(tail) : null) : [last];
    if (rest === null) continue;
    const head = token.slice(0, cut);
    const known =
      VOCABULARY.get(head) ?? VOCABULARY.get(head.replace(/(?:s|n|en|e)$/, "")) ?? VOCABULARY.get(`${head}e`);
    if (known !== undefined) return [known, ...rest];
  }
  return null;
}

function nearWord(token: string): string | null {
  if (token.length < FORGIVING_LENGTH - 1 || token.length > 20) return null;
  const near = new Set<string>();
  const first = token.charCodeAt(0);
  const last = token.charCodeAt(token.length - 1);
  for (const [word, concept] of WORDS) {
    // one typing error leaves the first letter or the last one
    if (word.charCodeAt(0) !== first && word.charCodeAt(word.length - 1) !== last) continue;
    if (!withinOneEdit(token, word)) continue;
    // In words of four letters only a swap is forgiven: one letter more or less makes another word.
    // A letter doubled or made single makes none.
    if (word.length >= FORGIVING_LENGTH && token.length >= FORGIVING_LENGTH) near.add(concept);
    else if (sortedLetters(word) === sortedLetters(token) || undoubled(word) === undoubled(token)) near.add(concept);
  }
  return near.size === 1 ? ([...near][0] as string) : null;
}

function undoubled(word: string): string {
  return word.replace(/(.)\1/g, "$1");
}

function sortedLetters(word: string): string {
  return [...word].sort().join("");
}
