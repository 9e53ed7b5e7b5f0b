import { transform } from "esbuild";
import { bytesOfText, textOfBytes } from "./bytes-as-text.ts";
import { learnedChances } from "./learned-chances.ts";
import { pack } from "./pack.ts";
import { unpack } from "./unpack.ts";
import { withCodedWords, withWords } from "./word-codes.ts";

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
/**
 * What the bundler adds to it: for colours that are told for light and dark at once, of which there are none, for browsers
 * that are too old for the page anyway (Firefox 93), and for itself.
 */
const ADDED_STYLE = /--lightningcss-\w+:[^;]*;|width:-moz-fit-content;|\s*\/\*\$vite\$:\d+\*\//g;
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
    `(${runUnpacked})(${size},(packed,size)=>(${withWords})(new TextDecoder().decode(` +
      `(${unpack})((${bytesOfText})(packed),size,${learnedChances}))),"PACKED")`,
    { minify: true, target: "es2022" },
  );
  return code.trim().replace("PACKED", () => textOfBytes(packed));
}

/**
 * The page with its script, the worker's text inside it, its words coded, packed as by LZMA: deflate,
 * which looks back 32 KB only, leaves a sixth more. What unpacks it comes along, for browsers have only deflate.
 */
export async function packedPage(html: string): Promise<string> {
  const [, open, code, close] = SCRIPT.exec(html) ?? [];
  if (code === undefined) throw new Error("no script in the page");
  // the stylesheet packs better beside the script than by itself; without the script there is nothing to style
  const style = JSON.stringify(STYLE.exec(html)?.[1]?.replace(ADDED_STYLE, ""));
  const whole = `document.head.append(Object.assign(document.createElement("style"),{textContent:${style}}));${code}`;
  const coded = Buffer.from(withCodedWords(whole.replace(MARKS, "")));
  const script = await unpacked(await pack(coded), coded.length);
  // last of all: with text on both sides of what is packed deflate leaves a hundred bytes more
  const text = html.replace(STYLE, "").replace(SCRIPT, "").replace(BREAKS, "\n").replace(ENDS, "");
  return `${text}${open}>${script}${close}\n`;
}
