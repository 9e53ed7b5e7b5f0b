import { withoutChartParts } from "./chart-parts.ts";
import { block, found, withoutBodies } from "./code-cuts.ts";
import { withFoldedLists } from "./front-coding.ts";
import { withoutSchemaParts } from "./schema-parts.ts";

/** What a module exports in place of its own: each answer is one that its callers expect for "nothing there". */
const NOTHING: [RegExp, string][] = [
  // The workbook reader's parsers for drawings, pivot tables, comments and passwords (hucre 1.0.0).
  [/hucre\/dist\/xlsx\/chart-reader\.mjs$/, "export const parseChart = () => undefined;"],
  [
    /hucre\/dist\/xlsx\/pivot-reader\.mjs$/,
    "export const parsePivotCacheDefinition = () => undefined; export const parsePivotTable = () => undefined; " +
      "export const attachPivotCacheFields = () => undefined;",
  ],
  [
    /hucre\/dist\/xlsx\/slicer-reader\.mjs$/,
    "export const parseSlicers = () => []; export const parseSlicerCache = () => undefined; " +
      "export const parseTimelines = () => []; export const parseTimelineCache = () => undefined;",
  ],
  [
    /hucre\/dist\/xlsx\/threaded-comments-reader\.mjs$/,
    "export const parsePersons = () => []; export const parseThreadedComments = () => [];",
  ],
  [
    /hucre\/dist\/xlsx\/cell-images-reader\.mjs$/,
    "export const REL_CELL_IMAGES = 'none'; export const parseCellImages = () => []; " +
      "export const assembleCellImages = () => [];",
  ],
  [/hucre\/dist\/xlsx\/comments-reader\.mjs$/, "export const parseComments = () => new Map();"],
  [
    /hucre\/dist\/xlsx\/doc-props-reader\.mjs$/,
    "const none = () => ({}); export { none as parseCoreProperties, none as parseAppProperties, none as parseCustomProperties };",
  ],
  [
    /hucre\/dist\/xlsx\/external-link-reader\.mjs$/,
    "export const parseExternalLink = () => ({}); export const REL_EXTERNAL_LINK_PATH_TYPES = [];",
  ],
  // Colours are mixed only for hovering and motion, and the charts have neither (chart.js 4.6.1).
  [
    /@kurkle\/color\/dist\/color\.esm\.js$/,
    "export class Color { constructor(value) { this.value = value; this.valid = false; } saturate() { return this; } " +
      "darken() { return this; } alpha() { return this; } mix() { return this; } hexString() { return this.value; } " +
      "rgbString() { return this.value; } }",
  ],
  // Colours of themes; no colour is read (hucre 1.0.0).
  [
    /hucre\/dist\/xlsx\/theme\.mjs$/,
    "export const parseThemeColors = () => []; export const resolveThemeColor = () => '';",
  ],
  // Parts are found by their relations, and what is opened is bytes that were looked at before (hucre 1.0.0).
  [/hucre\/dist\/xlsx\/content-types\.mjs$/, "export const parseContentTypes = () => undefined;"],
  [
    /hucre\/dist\/_input\.mjs$/,
    "export const isOle2Container = () => false; export const readInputToUint8Array = async (bytes) => bytes;",
  ],
  // A protected workbook is refused before it is opened: there is never a password.
  [
    /hucre\/dist\/xlsx\/crypto\/agile\.mjs$/,
    "const never = async () => { throw new Error('no password'); }; export { never as decryptAgile, never as encryptAgile };",
  ],
];

/**
 * Functions of the workbook reader for what no cell holds, and of the CSV reader for what is fetched, streamed or parsed
 * in a worker of its own, each with what it gives instead (hucre 1.0.0, papaparse 5.7.1).
 */
const EMPTY_FUNCTIONS: [RegExp, [name: string, gives: string][]][] = [
  [
    /papaparse\/papaparse\.js$/,
    [
      "NetworkStreamer",
      "FileStreamer",
      "ReadableStreamStreamer",
      "DuplexStreamStreamer",
      "getWorkerBlob",
      "newWorker",
      "mainThreadReceivedMessage",
      "workerThreadReceivedMessage",
      // The sheets' own reader asks the parser itself, which is told all that these would find out.
      "CsvToJson",
      "ChunkStreamer",
      "StringStreamer",
      "ParserHandle",
      "copy",
    ]
      .map((name): [string, string] => [name, "undefined"])
      // The writer is told the end of a line and nothing else.
      .concat([["unpackConfig", "_newline = _config.newline"]]),
  ],
  [
    /hucre\/dist\/xlsx\/reader\.mjs$/,
    [
      ["extractSheetDrawing", "{ images: [], textBoxes: [], chartRefs: [] }"],
      ["parseTableXml", "undefined"],
      ["applyPrintDefinedNames", "[]"],
      ["filterSheets", "allSheets"],
    ],
  ],
  [
    /hucre\/dist\/xlsx\/worksheet\.mjs$/,
    [
      ["buildDataValidation", "undefined"],
      ["buildConditionalRule", "undefined"],
      ["applyFontProp", "undefined"],
      ["parseSheetProtectionAttrs", "undefined"],
      ["parsePageSetupAttrs", "{}"],
      ["parsePageMarginsAttrs", "undefined"],
      ["applyPrintOptionsAttrs", "existing"],
      ["parseColorAttrs", "undefined"],
      ["isDynamicArrayCm", "false"],
    ],
  ],
  // Faces of runs of text, and which formulas spill: the page reads words and values.
  [/hucre\/dist\/xlsx\/shared-strings\.mjs$/, [["parseRunProperties", "undefined"]]],
  [/hucre\/dist\/xlsx\/metadata\.mjs$/, [["parseDynamicArrayCellMetadata", "undefined"]]],
  [/hucre\/dist\/xml\/parser\.mjs$/, [["error", "(() => { throw new XmlError(); })()"]]],
  // Every browser that the page runs in unpacks by itself; what it cannot unpack is broken.
  [/hucre\/dist\/zip\/deflate\.mjs$/, [["inflate", "((why) => { throw new Error(why); })('broken data')"]]],
  [
    /hucre\/dist\/xlsx\/styles\.mjs$/,
    ["parseFonts", "parseFills", "parseBorders", "parseDxfs"]
      .map((name): [string, string] => [name, "undefined"])
      // of a cell's format only that of its number is read
      .concat([
        ["parseCellXf", '{ numFmtId: Number(el.attrs["numFmtId"] ?? "0") }'],
        [
          "resolveStyle",
          "((id) => (id ? { numFmt: styles.numFmts.get(id) ?? BUILTIN_NUM_FMTS[id] } : {}))(styles.cellXfs[styleIndex]?.numFmtId)",
        ],
      ]),
  ],
];

/** What a worksheet says besides its cells, rows, columns and merges, by the elements that say it (hucre 1.0.0). */
const NOT_OF_CELLS = (
  "f|sheetPr|outlinePr|pageSetUpPr|tabColor|sheetView|pane|sheetProtection|autoFilter|filterColumn|filter|" +
  "conditionalFormatting|cfRule|colorScale|cfvo|dataBar|iconSet|color|formula|dataValidations|dataValidation|" +
  "formula1|formula2|pageMargins|pageSetup|printOptions|headerFooter|oddHeader|oddFooter|evenHeader|evenFooter|" +
  "firstHeader|firstFooter|hyperlinks|hyperlink|rowBreaks|colBreaks|brk|sparklineGroups|sparklineGroup|colorSeries|sparkline"
)
  .split("|")
  .map((element) => new RegExp(`^\\t{4}case "${element}":[\\s\\S]*?\\n(?=\\t{4}(?:case|default))`, "gm"));

/**
 * The same by what is done for it: links, heights of rows and widths of columns, formulas and which cells they fill, kinds
 * of values.
 */
const NOT_OF_VALUES = [
  block("\\t", String.raw`if \(ctx\.(?:worksheetRels|range)\)`),
  block("\\t", String.raw`for \(const hl of rawHyperlinks\)`),
  block("\\t", String.raw`if \((?:dataValidations|conditionalRules|rowBreaks|colBreaks|sparklines)\.length > 0\)`),
  block("\\t{6}", String.raw`if \(attrs\["(?:ht|outlineLevel|collapsed)"\].*\)`),
  block("\\t{7}", String.raw`if \(outlineLevel !== undefined.*\)`),
  /^\t{7}if \((?:width !== undefined.*|collapsed)\) def\..*;$/gm,
  /^\t{3}if \(formulaType === "shared"\) \{[\s\S]*?\n\t{3}\}(?= else) else if [\s\S]*?\n\t{3}\}/gm,
  block("\\t{3}", String.raw`if \(formulaCm\)`),
  block("\\t\\t", String.raw`if \((?:isCheckbox|richText)\)`),
  /^\tif \(formulaText\) \{[\s\S]*?\n\t\}$/gm,
  /^\t+(?:cellType|richText) = (?!attrs).*;$/gm,
  /(?<=^\tconst hasDetails = )[\s\S]*? \|\| (?=ctx\.readStyles)|(?<=^\tconst hasDetails =.*styleIndex >= 0) \|\| .*(?=;$)/gm,
];

/** Parts of a workbook of which, as their parsers are left out, nothing would come (hucre 1.0.0). */
const EMPTY_PARTS = [
  ...[
    String.raw`if \(zip\.has\(themePath\)\)`,
    String.raw`if \((?:persons|cellImages|metadata)Rel\)`,
    String.raw`for \(const rel of (?:externalLink|slicerCache|timelineCache)Rels\)`,
    String.raw`for \(const ref of pivotCacheRefs\)`,
    String.raw`if \(zip\.has\("docProps/\w+\.xml"\)\)`,
    String.raw`if \((?:properties|themeColors|workbookProtection|activeSheet !== undefined)\)`,
    String.raw`if \((?:baseFont|persons|externalLinks|cellImages|pivotCaches|slicerCaches|timelineCaches)\b.*`,
  ].map((begins) => block("\\t", begins)),
  block("\\t\\t", String.raw`if \(local === "(?:workbookProtection|bookViews|pivotCaches|definedNames)"\)`),
  /^\tconst \w+Rels?\w* = workbookRels\.(?:find|filter)\(\(r\) => (?:r\.type ===|matchesRelType\(r\.type, "(?:person|externalLink|slicerCache|timelineCache|sheetMetadata)").*/gm,
  block("\\t\\t", String.raw`if \(worksheetRels\)`),
];

/** Ways of unpacking in a stream or all at once; a workbook's parts are asked for one by one (hucre 1.0.0). */
const STREAMED = ["extractStream", "extractAll", "extractEntryStream"].map(
  (name) => new RegExp(`^\\t(?:async )?${name}\\([^)]*\\) \\{[\\s\\S]*?\\n\\t\\}`, "m"),
);

/** Classifiers and a table that simple-statistics fills on loading, and several quantiles at once: none is asked for (7.12.1). */
const STATISTICS = [
  /^ {4}if \(Array\.isArray\(p\)\) \{[\s\S]*?\n {4}\} else /m,
  /^(BayesianClassifier|PerceptronModel)\.prototype\.\w+ = function[\s\S]*?\n\};/gm,
  /^for \(var z = 0; z <= 3\.09; z \+= 0\.01\) \{[\s\S]*?\n\}/m,
];

const QUOTED = /"(?:[^"\\\n]|\\.)*"|'(?:[^'\\\n]|\\.)*'/.source;
/** What a finding's code means, and its example: for those who read the source. The page shows message and fix. */
const CODE_WORDS = new RegExp(`(code\\(\\s*"(?:info|warning|error)",)\\s*(?:${QUOTED}),\\s*(?:${QUOTED}),`, "g");

/** The same where codes are written as objects. */
const OBJECT_WORDS = new RegExp(`(\\b(?:means|example):)\\s*(?:${QUOTED})`, "g");

/**
 * What the CSV reader and writer have for workers, steps, pauses, comments, names of columns and rows as objects: sheets
 * are read at once as rows of text, and written so (papaparse 5.7.1).
 */
const OTHER_CSV = [
  String.raw`else if \(typeof _input === 'object'\)`,
  String.raw`if \(skipEmptyLines === 'greedy' && hasHeader\)`,
  String.raw`this\.(?:pause|resume|abort) = `,
  String.raw`if \(comments && row\.length === 0`,
  String.raw`if \(config\.header && !baseIndex`,
  // a text without quotes is parted before it comes to the parser
  String.raw`if \(fastMode \|\|`,
  String.raw`if \(stepIsFunction\)`,
]
  .map((begins) => new RegExp(`^(\\t+)${begins}[^\\n]*\\s*\\{[\\s\\S]*?\\n\\1\\}`, "gm"))
  .concat(/^\t+(?:Papa\.)?\w+Streamer(?:\.prototype(?:\.constructor)?)? = .*$/gm);

/** What libraries say of what is wrong: a workbook that they cannot read is called damaged, and nobody sees the rest. */
const WHY = new RegExp(String.raw`\bthrow new (\w*Error)\((?:${QUOTED}|\`[^\`]*\`|[^;"'\`\n])*\);`, "g");

/** Build plug-in: keeps out of the page some 100 KB of libraries of which a planning sheet has no use. */
export function leaveOut() {
  const plain = (id: string) => id.replaceAll("\\", "/");
  return {
    name: "leave-out",
    load(id: string): string | null {
      return NOTHING.find(([module]) => module.test(plain(id)))?.[1] ?? null;
    },
    transform(whole: string, id: string): string | null {
      const code = plain(id).includes("/node_modules/") ? whole.replace(WHY, "throw new $1();") : whole;
      const empty = EMPTY_FUNCTIONS.find(([module]) => module.test(plain(id)))?.[1];
      const parts = /hucre\/dist\/xlsx\/reader\.mjs$/.test(plain(id))
        ? EMPTY_PARTS
        : /hucre\/dist\/xlsx\/worksheet\.mjs$/.test(plain(id))
          ? [...NOT_OF_CELLS, ...NOT_OF_VALUES]
          : plain(id).endsWith("papaparse.js")
            ? OTHER_CSV
            : [];
      if (empty)
        return withoutBodies(
          parts.reduce((text, part) => found(text, part, ""), code),
          empty,
        );
      if (/src\/sheets\/(words\/vocabulary|values\/(choice-words|cell-text))\.ts$/.test(plain(id)))
        return withFoldedLists(code);
      if (/src\/sheets\/finding-codes\.ts$/.test(plain(id))) return code.replace(CODE_WORDS, '$1 "", "",');
      if (/src\/(supplies|life)\/finding-codes\.ts$/.test(plain(id))) return code.replace(OBJECT_WORDS, '$1 ""');
      if (/chart\.js\/dist\//.test(plain(id))) return withoutChartParts(code, plain(id));
      if (plain(id).endsWith("simple-statistics.mjs"))
        return STATISTICS.reduce((text, pattern) => found(text, pattern, ""), code);
      // what is drawn is drawn in turn, and never far ahead (pure-rand 8.4.2)
      if (plain(id).endsWith("pure-rand/lib/esm/generator/xoroshiro128plus.js"))
        return found(code, block("\\t", "(?:clone|jump|getState)\\(\\)"), "");
      // sizes of paper, turned round on loading
      if (plain(id).endsWith("hucre/dist/xlsx/worksheet-writer.mjs"))
        return found(code, block("", "for .*PAPER_SIZE_MAP.*"), "");
      if (plain(id).endsWith("hucre/dist/zip/reader.mjs"))
        return STREAMED.reduce((text, pattern) => found(text, pattern, ""), code);
      if (/\/zod\/v4\//.test(plain(id))) return withoutSchemaParts(code, plain(id));
      return code === whole ? null : code;
    },
  };
}
