/** Month names and abbreviations of the languages that headers are read in, without accents. */
const MONTH_WORDS: readonly string[] = [
  "jan january januar janner janvier janv enero ene januari gennaio gen janeiro styczen stycznia sty",
  "feb february februar feber fevrier fevr fev febrero februari febbraio fevereiro luty lutego lut",
  "mar march marz maerz mrz mars marzo maart mrt marco marts marzec marca",
  "apr april avril avr abril abr aprile kwiecien kwietnia kwi",
  "may mai mayo mei maggio mag maio maj maja",
  "jun june juni juin junio giugno giu junho czerwiec czerwca cze",
  "jul july juli juillet juil julio luglio lug julho lipiec lipca lip",
  "aug august aout agosto ago augustus augusti sierpien sierpnia sie",
  "sep sept september septembre septiembre setiembre settembre set setembro wrzesien wrzesnia wrz",
  "oct october oktober okt octobre octubre ottobre ott outubro out pazdziernik pazdziernika paz",
  "nov november novembre noviembre novembro listopad listopada lis",
  "dec december dezember dez decembre diciembre dic dicembre dezembro desember des grudzien grudnia gru",
];

const MONTH_BY_WORD = new Map(MONTH_WORDS.flatMap((list, index) => list.split(" ").map((word) => [word, index + 1])));

/** The shortest name in which one wrong, missing or extra letter is forgiven (Febuary, Septmber). */
const FORGIVING_LENGTH = 6;

/** Month 1 to 12 of a name without accents in lower case, one typing error forgiven in long names; else null. */
export function monthOfWord(word: string): number | null {
  const known = MONTH_BY_WORD.get(word);
  if (known !== undefined) return known as number;
  if (word.length < FORGIVING_LENGTH || word.length > 12) return null;
  const near = new Set<number>();
  for (const [name, month] of MONTH_BY_WORD) {
    if ((name as string).length >= FORGIVING_LENGTH && withinOneEdit(word, name as string)) near.add(month as number);
  }
  return near.size === 1 ? [...near][0]! : null;
}

/** True where one insertion, deletion, substitution or swap of neighbours turns one word into the other. */
export function withinOneEdit(a: string, b: string): boolean {
  if (Math.abs(a.length - b.length) > 1) return false;
  let start = 0;
  while (start < a.length && start < b.length && a[start] === b[start]) start++;
  let endA = a.length;
  let endB = b.length;
  while (endA > start && endB > start && a[endA - 1] === b[endB - 1]) {
    endA--;
    endB--;
  }
  const restA = endA - start;
  const restB = endB - start;
  if (restA <= 1 && restB <= 1) return true;
  return restA === 2 && restB === 2 && a[start] === b[start + 1] && a[start + 1] === b[start];
}
