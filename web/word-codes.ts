/*
 * A packer pays two to three bytes for each word that it finds again. A list of the words that come most often, each then
 * written as one or two characters, takes four hundredths more off the page's script.
 */

/** Characters that the script holds nowhere: each of the first stands for a word, the others with a character after them. */
// biome-ignore lint/suspicious/noControlCharactersInRegex: no other characters are free and one byte long.
const TAKEN = /[\x01-\x08\x0e-\x1c]/;
const SINGLE = 8;
const LEADS = 15;
const FOLLOWERS = 90;
const FIRST_LEAD = 14;
const FIRST_FOLLOWER = 35;

/** Whether a byte begins a code of two, of which the second could be taken for a character of its own. */
export const isLead = (byte: number) => byte >= FIRST_LEAD && byte < FIRST_LEAD + LEADS;

/** A word; shorter ones are as short as their code. */
const WORD = /[A-Za-z_$][\w$]{2,}/g;
/** A word must come so often that the list's entry pays. */
const OFTEN = 4;
/**
 * Groups of words begin here in the order of how often they come: those with codes of one character, those under the
 * first lead, under the second, and the others. Each is put in the order of the alphabet, since words that begin alike
 * make a list that packs well, while the commonest share as few leads as can be.
 */
const GROUPS = [0, SINGLE, SINGLE + FOLLOWERS, SINGLE + 2 * FOLLOWERS];

/** The text with its commonest words coded, behind a line that lists them. */
export function withCodedWords(text: string): string {
  if (TAKEN.test(text)) throw new Error("the text holds a control character that stands for a word");
  const counts = new Map<string, number>();
  for (const [word] of text.matchAll(WORD)) counts.set(word, (counts.get(word) ?? 0) + 1);
  const common = [...counts]
    .filter(([, count]) => count >= OFTEN)
    .sort(([a, many], [b, more]) => more - many || (a < b ? -1 : 1))
    .slice(0, SINGLE + LEADS * FOLLOWERS)
    .map(([word]) => word);
  const words = GROUPS.flatMap((from, at) => common.slice(from, GROUPS[at + 1]).sort());
  const codes = new Map(words.map((word, at) => [word, codeOf(at)]));
  return `${words.join(" ")}\n${text.replace(WORD, (word) => codes.get(word) ?? word)}`;
}

function codeOf(at: number): string {
  if (at < SINGLE) return String.fromCharCode(at + 1);
  const [lead, follower] = [Math.floor((at - SINGLE) / FOLLOWERS), (at - SINGLE) % FOLLOWERS];
  return String.fromCharCode(FIRST_LEAD + lead, FIRST_FOLLOWER + follower);
}

/** The text again. The page carries this function as it stands, so it asks for nothing outside itself. */
export function withWords(coded: string): string {
  const end = coded.indexOf("\n");
  const words = coded.slice(0, end).split(" ");
  // biome-ignore lint/suspicious/noControlCharactersInRegex: they are the codes.
  return coded.slice(end + 1).replace(/[\x01-\x08]|[\x0e-\x1c]./g, (code) => {
    const first = code.charCodeAt(0);
    return words[code.length < 2 ? first - 1 : 8 + (first - 14) * 90 + code.charCodeAt(1) - 35]!;
  });
}
