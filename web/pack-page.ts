import { deflateAsync } from "@gfx/zopfli";
import { withCodedWords, withWords } from "./word-codes.ts";

/** How hard to look for a shorter packing: more rounds save a few dozen bytes and cost seconds. */
const HOW_HARD = { numiterations: 15, blocksplittingmax: 40 };

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

const SCRIPT = /(<script type="module")[^>]*>([\s\S]+?)(<\/script>)/;

/** Unpacks the page's script and has it run, as one more script in the page: what the page's own policy allows. */
const unpacked = (packed: string) =>
  `try{const bytes=Uint8Array.from(atob("${packed}"),(one)=>one.charCodeAt(0)),script=document.createElement("script");` +
  'script.type="module";script.textContent=(' +
  withWords +
  ")(await new Response(new Blob([bytes]).stream()" +
  '.pipeThrough(new DecompressionStream("deflate-raw"))).text());document.head.append(script)}' +
  'catch{const page=document.getElementById("page");page.textContent=page.dataset.tooOld}';

/**
 * The page with its script, the worker's text inside it, its words coded, deflated (RFC 1951) and in base64, which takes half off it.
 * Every browser that the page runs in unpacks it by itself.
 */
export async function packedPage(html: string): Promise<string> {
  const [, open, code, close] = SCRIPT.exec(html) ?? [];
  if (code === undefined) throw new Error("no script in the page");
  const packed = await deflateAsync(Buffer.from(withCodedWords(code)), HOW_HARD);
  return html.replace(SCRIPT, () => `${open}>${unpacked(Buffer.from(packed).toString("base64"))}${close}`);
}
