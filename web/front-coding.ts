/** Lists of words parted by bars, all in small letters, long enough to be worth it. */
const WORD_LIST = /"((?:[^"\\A-Z|\n]+\|){7,}[^"\\A-Z|\n]+)"/g;
/** A capital tells how many of the last word's letters stay: none for A, one for B. */
const NONE = "A".charCodeAt(0);
const MOST = 25;

/** Gives the list back. It goes into the page as text, and so names nothing outside itself. */
export function unfolded(list: string): string {
  let word = "";
  const words = list.split(/(?=[A-Z])/).map((part) => {
    word = word.slice(0, part.charCodeAt(0) - 65) + part.slice(1);
    return word;
  });
  return words.join("|");
}

/** A list of words in the order of the alphabet, each without the letters that it begins with as the one before does. */
export function folded(list: string): string {
  let before = "";
  return list
    .split("|")
    .sort()
    .map((word) => {
      let same = 0;
      while (same < MOST && same < word.length && word[same] === before[same]) same++;
      before = word;
      return String.fromCharCode(NONE + same) + word.slice(same);
    })
    .join("");
}

/** A module's text with its long lists of words folded, which packs them by some tenth more. */
export function withFoldedLists(code: string): string {
  const text = code.replace(WORD_LIST, (_, list: string) => `unfolded("${folded(list)}")`);
  return text === code ? code : `${text}\n${unfolded.toString()}`;
}
