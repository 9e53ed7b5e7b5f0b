import { type ColumnSpec, columnOfField, sheetSpec } from "../../fleet/columns.ts";
import { foldAccents } from "../words/fold.ts";
import { parseHeader } from "../words/parse-header.ts";
import { DATED_THINGS } from "../words/vocabulary.ts";
import { Problem } from "./problem.ts";

const YES = new Set("yes y true t 1 x ✓ ✔ ja j oui o si s vrai wahr verdadero waar tak sim".split(" "));
const NO = new Set("no n false f 0 nein non nee faux falsch falso onwaar nej nei nie nao ✗ ✘".split(" "));

/** Reads a word for yes or no in the languages of headers. */
export function readYesNo(text: string): boolean | Problem {
  const word = foldAccents(text).toLowerCase().trim();
  if (YES.has(word)) return true;
  return NO.has(word) ? false : new Problem("word-unknown", "is neither yes nor no");
}

/** Words for each choice beside the choice itself, and beside what stems below tell, by column name. */
const WORDS: Record<string, Record<string, string>> = {
  result: {
    pass: "passed|yes|y|true|ja|oui|si|ok|p|good|bestanden|io|i.o.|in ordnung|reussi|conforme|apto|apta|aptos|aptas|aprobado|aprobada|bonne|bon|goed|geslaagd|goedgekeurd|positivo|positiv|pozytywny|idoneo|superato|godkand|godkendt|godkjent|sprawny|zaliczony|tak|sim|✓|✔",
    fail: "failed|no|n|false|nein|non|nee|f|bad|nok|nio|n.i.o.|durchgefallen|nicht bestanden|nicht ok|not ok|not passed|unsatisfactory|echec|non conforme|no apto|no apta|no aptos|no aptas|no aprobado|no aprobada|rechazado|rechazada|i n o|fallo|flat|empty|leer|vide|afgekeurd|gezakt|defekt|negativo|negativ|negatywny|non idoneo|non superato|no conforme|nao conforme|reprovado|underkand|ikke godkendt|ikke godkjent|niesprawny|niezaliczony|nej|nei|nie|nao|✗|✘|replace|weak|dead|faulty|defective|swollen|low|low battery|tauschen|ersetzen|schwach|faible|a remplacer|debil|reemplazar|zwak|vervangen|kapot",
  },
  retired_because: {
    faded: "end of life|eol|aged|weak",
    policy: "age|age limit|rule|scheduled|cycle limit|alter|regel|politique|politica|beleid",
    recalled: "retirada",
  },
  kind: {
    pack: "rechargeable",
    primary:
      "primary battery|non rechargeable|non-rechargeable|disposable battery|lithium primary|primarbatterie|pile|piles",
    other: "misc|accessory|accessories|consumable|sonstiges|autre|otro|overig",
  },
  price_per: {
    unit: "each|ea|piece|pc|stk|stuck|unite|unidad|stuk|per unit|pair|paire|paar|par|set|roll|rouleau|rolle|rollo|rol|tube|bottle",
    box: "pack|carton|case|boxes|per box|karton|boite|caja|doos",
  },
  reason: {
    use: "used|issue|issued|out|abgang|ausgang|entnahme|sortie|salida|uit|incident|deployment|verbrauch|utilisation|uso|gebruik|gebruikt|verbraucht|utilise|usado|event",
    routine: "kontrolle",
    lapsed: "out of date|discarded|wasted|waste",
    restock: "receipt|received|in|zugang|eingang|entree|entrada|ingang|reception|moved",
  },
};

/** The one kind that a name speaks of; null where it names none or several ("Battery for pads"). */
export function kindNamed(name: string): string | null {
  const kinds = parseHeader(name)
    .things.split(" ")
    .flatMap((thing) => (DATED_THINGS.has(thing) ? (thing === "battery" ? "pack" : thing) : []));
  return kinds.length === 1 ? (kinds[0] as string) : null;
}

const TABLES = new Map<string, Map<string, string>>();

function tableOf(spec: ColumnSpec): Map<string, string> {
  let table = TABLES.get(spec.name);
  if (!table) {
    table = new Map(spec.choices.map((choice) => [choice, choice]));
    for (const [choice, list] of Object.entries(WORDS[spec.name] ?? {})) {
      for (const word of list.split("|")) table.set(word, choice);
    }
    TABLES.set(spec.name, table);
  }
  return table;
}

/** Reads one of a column's known words, or a word of people's own for it. */
export function readChoice(text: string, spec: ColumnSpec): string | Problem {
  const word = foldAccents(text).toLowerCase().replace(/\s+/g, " ").trim();
  const table = tableOf(spec);
  const found = table.get(word) ?? table.get(word.replace(/[^a-z\d]+/g, " ").trim());
  if (found !== undefined) return found;
  return (
    leadingResult(word, spec, table) ??
    noteSpeaksOf(word, spec) ??
    reasonOf(word, spec) ??
    (spec.name === "kind" ? kindNamed(word) : null) ??
    new Problem("word-unknown", "is no known word")
  );
}

const RESULT = columnOfField(sheetSpec("runtime_tests"), "result");

/** What a word, or the first part of a remark, says of a test; null where it says neither. */
export function resultOf(text: string): string | null {
  const found = readChoice(text, RESULT);
  return found instanceof Problem ? null : found;
}

const RESULTS: ReadonlySet<string> = new Set(
  Object.entries(WORDS.result!).flatMap(([choice, list]) => [choice, ...list.split("|")]),
);

/** True for a word that says that a test was passed or failed. */
export function saysResult(text: string): boolean {
  return RESULTS.has(foldAccents(text).toLowerCase().trim());
}

/** The result that a remark follows ("FAIL - replace"), where no other part of the cell says the other. */
function leadingResult(word: string, spec: ColumnSpec, table: ReadonlyMap<string, string>): string | null {
  if (spec.name !== "result") return null;
  const parts = word.split(/\s*[-–—:;,/()]\s*/).map((part) => table.get(part));
  const said = new Set(parts.filter((part) => part !== undefined));
  return parts[0] !== undefined && said.size === 1 ? parts[0] : null;
}

/** Stems in the languages of headers that tell why something was used, the surest first. */
const REASON_STEMS: readonly [string, RegExp][] = [
  [
    "lapsed",
    /expir|perem|perim|verfall|abgelauf|ablauf|caduc|vencid|verlopen|vervallen|houdbaar|mhd|scadut|validade|utgang|udlob|utlop|przeterm/,
  ],
  [
    "routine",
    /train|test|check|contr|pruf|wart|maint|rutin|routin|ubung|exerc|ejercicio|formation|oefen|onderhoud|drill|demo|revis|inspec|formaz|forma[cg]|eserci|ovning|ovelse|szkol/,
  ],
  ["restock", /refill|auffull|reassort|repos|aanvul|bevoorra|umlager|transfer|stock/],
  [
    "use",
    /patient|paciente|interven|einsatz|service|servicio|notfall|emergen|urgen|inzet|rea\b|reanim|arrest|shock|alarm|mission|call|rescue|cpr|code blue|pazient|doente|utente|pacjent|insats|indsats|innsats|uzyci|utiliz|anvand/,
  ],
];

function reasonOf(word: string, spec: ColumnSpec): string | null {
  if (spec.name !== "reason") return null;
  return REASON_STEMS.find(([, stem]) => stem.test(word))?.[0] ?? null;
}

/** A retirement whose note speaks of capacity or runtime is a faded pack. */
function noteSpeaksOf(word: string, spec: ColumnSpec): string | null {
  if (spec.name !== "retired_because") return null;
  if (
    /capaci|(hold|keep)(s|ing)? (a |its |no )?charge|(halt|hielt) (keine |nicht )?(die )?ladung|tient (pas|plus) la charge|runtime|run time|kapazit|autonom|laufzeit|looptijd|gebruiksduur|schwach|faible|zwak|debil|verschli|versleten|usee|gastad|worn|fade|sliten|zuzyt|esaur|<\s*\d+\s*%|below \d+/.test(
      word,
    )
  )
    return "faded";
  if (/recall|ruckruf|rappel|terugroep|retirada del|richiam|aterkall|tilbakekall|tilbagekald|recolha/.test(word))
    return "recalled";
  if (
    /damage|swollen|crack|drop|beschadig|broken|defekt gehause|endommag|gonfl|casse|danad|hinchad|roto|gezwollen|geblaht|sturz|rott[ao]|cadut|partid|skada|skade|tappad|uszkodz/.test(
      word,
    )
  )
    return "damaged";
  if (
    /lost|stolen|missing|verloren|gestohlen|perdu|vol\b|perdid|robad|kwijt|vermist|pers[ao]\b|smarrit|tapt\b|tabt\b|forlora|zgubion|utracon/.test(
      word,
    )
  )
    return "lost";
  return /fail|dead|fault|defe[ck]t|ausfall|ausgefall|panne|averi|avari|kapot|storing|muert|tot\b|guast|trasig|awari/.test(
    word,
  )
    ? "failed"
    : null;
}
