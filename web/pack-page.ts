import { readFileSync } from "node:fs";
import { build, type Plugin, transform } from "esbuild";
import { compress } from "lzma1";
import { bytesOfText, textOfBytes } from "./bytes-as-text.ts";
import { found } from "./code-cuts.ts";
import { withCodedWords, withWords } from "./word-codes.ts";

/** The hardest that the packer looks. */
const HOW_HARD = 9;

/** What unpacks it: the packer's other half without the packer, which its front door would bring along. */
const LZMA = new URL("../node_modules/lzma1/lib/", import.meta.url).pathname;
const UNPACKER = `
  import { Decoder } from "${LZMA}decoder.js";
  import { InputBuffer, OutputBuffer } from "${LZMA}streams.js";
  unpack = (bytes, size) => {
    const text = new OutputBuffer(size);
    new Decoder().decompress(new InputBuffer(bytes), text);
    return new TextDecoder().decode(text.toArray());
  };
`;
/** What the decoder does without: a window's own ways, as it turns it itself, and tables of the packer's (lzma1 0.3.0). */
const unpackerOnly: Plugin = {
  name: "unpacker-only",
  setup({ onLoad }) {
    onLoad({ filter: /lz-window\.js$/ }, () => ({ contents: "export class LzOutWindow {}" }));
    onLoad({ filter: /utils\.js$/ }, ({ path }) => ({
      contents: found(readFileSync(path, "utf8"), PACKERS_TABLES, ""),
    }));
  },
};
const PACKERS_TABLES = /export const \w+ = create\w+\(\);/g;
/** Names that the language has; all others are the unpacker's own. */
const NOT_ITS_OWN = /^(max|min|floor|length|set|subarray|slice|decode)$/;

/**
 * Has the packer look at a byte's place among four no more, which tells something of machine code and nothing of a text:
 * a thousandth less. The packed bytes say so, and any unpacker heeds it. What a length or a distance costs it reckons
 * once, before it has met any, and a bit's cost by straight lines between powers of two (lzma1 0.3.0): reckoned anew each
 * time, and as the logarithm it is, it finds the shorter way more often, six thousandths less.
 */
async function packAsText(): Promise<void> {
  const [{ Encoder }, { PROB_PRICES }, { RangeBitTreeCoder }] = await Promise.all(
    ["encoder", "utils", "range-bit-tree-coder"].map((part) => import(`${LZMA}${part}.js`)),
  );
  const { configure, encodeLength } = Encoder.prototype;
  Encoder.prototype.configure = function (mode: unknown) {
    configure.call(this, mode);
    this._posStateBits = 0;
    this._posStateMask = 0;
    this._numLiteralContextBits = LITERAL_BITS;
    this._numFastBytes = LONG_ENOUGH;
  };
  Encoder.prototype.encodeLength = function (of: { updateTables: (places: number) => void }, ...length: unknown[]) {
    encodeLength.call(this, of, ...length);
    of.updateTables(1);
    this._matchPriceCount = this._alignPriceCount = Infinity;
  };
  Encoder.prototype.getEncoderBitTreePrice = (of: object, symbol: number) =>
    RangeBitTreeCoder.prototype.getPrice.call(of, symbol);
  // a price for each 512th of a chance, in 64ths of a bit
  for (const chance of PROB_PRICES.keys()) PROB_PRICES[chance] = -64 * Math.log2((chance + 0.5) / 512);
}

/** Bits of the byte before by which a byte is told: of a text this long more than the packer's three pay. */
const LITERAL_BITS = 5;
/** A stretch found again that is so long is taken at once. */
const LONG_ENOUGH = 64;

/** The worker's text as vite first writes it into the module that would start it (vite 8). */
const WORKER_TEXT = /const jsContent = ("(?:[^"\\]|\\.)*");/;

/** Build plug-in: what is imported from `...?worker&inline&text` is the worker's text. */
export function workerText() {
  return {
    name: "worker-text",
    enforce: "pre" as const,
    transform(code: string, id: string): string | null {
      if (!id.endsWith("?worker&inline&text")) return null;
      const text = WORKER_TEXT.exec(code)?.[1];
      if (text === undefined) throw new Error(`no text of a worker in ${id}`);
      return `export default ${text};`;
    },
  };
}

/** What the bundler notes for itself of calls that do nothing but give a value. */
const MARKS = /\/\* @__PURE__ \*\//g;

const STYLE = /<style rel[^>]*>([\s\S]+?)<\/style>/;
/** Line ends with what is indented behind them, and the end tags that a page may leave out. */
const BREAKS = /\n\s*/g;
const ENDS = /<\/body>\s*<\/html>\s*$/;
const SCRIPT = /(<script type="module")[^>]*>([\s\S]+?)(<\/script>)/;

/**
 * Has the page's script unpacked and run, as one more script in the page: what the page's own policy allows. A worker
 * unpacks it, since that takes longer than a page should be held up, or the page where no worker starts. The stream
 * named first is one that the page needs later; a browser without it is too old. The page carries this function by its
 * text, shortened, so it asks for nothing outside itself.
 */
function runUnpacked(size: number, unpack: (packed: string, size: number) => string, packed: string): void {
  const page = document.getElementById("page")!;
  const run = (text: string) => {
    const script = document.createElement("script");
    script.type = "module";
    script.textContent = text;
    document.head.append(script);
  };
  const tooOld = () => {
    page.textContent = page.dataset.tooOld!;
  };
  const here = () => {
    try {
      run(unpack(packed, size));
    } catch {
      tooOld();
    }
  };
  if (typeof DecompressionStream !== "function") tooOld();
  else {
    try {
      const text = `onmessage=({data})=>postMessage((${unpack})(...data))`;
      const worker = new Worker(URL.createObjectURL(new Blob([text])));
      worker.onmessage = ({ data }) => {
        worker.terminate();
        run(data);
      };
      worker.onerror = here;
      worker.postMessage([packed, size]);
    } catch {
      here();
    }
  }
}

/** The page's packed script, with what has it unpacked and run. */
async function unpacked(packed: Uint8Array, size: number): Promise<string> {
  const { code } = await transform(
    `(${runUnpacked})(${size},(packed,size)=>{let unpack;${await unpackerScript()};` +
      `return(${withWords})(unpack((${bytesOfText})(packed),size))},"PACKED")`,
    { minify: true, target: "es2022" },
  );
  return code.trim().replace("PACKED", () => textOfBytes(packed));
}

/** The script of the unpacker, which leaves its function in `unpack`. */
async function unpackerScript(): Promise<string> {
  const { outputFiles } = await build({
    stdin: { contents: UNPACKER, resolveDir: LZMA },
    plugins: [unpackerOnly],
    mangleProps: /./,
    reserveProps: NOT_ITS_OWN,
    bundle: true,
    minify: true,
    write: false,
    format: "iife",
    target: "es2022",
  });
  return outputFiles[0]!.text;
}

/** The notice that the unpacker goes under, as a section of the page's list of licences. */
export function unpackerLicence(): string {
  const [version, licence] = ["package.json", "LICENSE"].map((file) => readFileSync(`${LZMA}../${file}`, "utf8"));
  return `## lzma1 - ${JSON.parse(version!).version} (MIT)\n\n${licence}`;
}

/**
 * The page with its script, the worker's text inside it, its words coded, packed by LZMA: deflate, which
 * looks back 32 KB only, leaves a tenth more. What unpacks it comes along, for browsers have no LZMA of their own.
 */
export async function packedPage(html: string): Promise<string> {
  const [, open, code, close] = SCRIPT.exec(html) ?? [];
  if (code === undefined) throw new Error("no script in the page");
  await packAsText();
  // the stylesheet packs better beside the script than by itself; without the script there is nothing to style
  const style = JSON.stringify(STYLE.exec(html)?.[1]);
  const whole = `document.head.append(Object.assign(document.createElement("style"),{textContent:${style}}));${code}`;
  const coded = Buffer.from(withCodedWords(whole.replace(MARKS, "")));
  const script = await unpacked(compress(coded, HOW_HARD), coded.length);
  // last of all: with text on both sides of what is packed deflate leaves a hundred bytes more
  const text = html.replace(STYLE, "").replace(SCRIPT, "").replace(BREAKS, "\n").replace(ENDS, "");
  return `${text}${open}>${script}${close}\n`;
}
