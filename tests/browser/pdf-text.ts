import { inflateSync } from "node:zlib";

/**
 * The text of each page of a PDF as Chromium writes it: objects one after the other, streams deflated, glyphs of two
 * bytes, of one in a Type 3 font, with a map to Unicode in every font (ISO 32000-1, 7.3, 7.4.4, 9.6.5, 9.10.3). Blanks
 * are left out, since a line break may stand for one.
 */
export function pdfPages(pdf: Buffer): string[] {
  const objects = objectsOf(pdf);
  const pages = [...objects.values()].filter(({ head }) => /\/Type\s*\/Page\b/.test(head));
  return pages.map(({ head }) => {
    const number = Number(/\/Contents (\d+) 0 R/.exec(head)?.[1]);
    const text = drawnText(objects.get(number)?.stream ?? "", resourcesOf(head, objects), objects);
    return text.replace(LIGATURES, (joined) => joined.normalize("NFKC"));
  });
}

/** Letters that a font joins, as "fi": some fonts have them, and others have not. */
const LIGATURES = /[\ufb00-\ufb06]/g;

/** The text of a content stream, with that of the forms that it draws. */
function drawnText(content: string, resources: string, objects: Map<number, PdfObject>): string {
  const named = (letter: string) =>
    [...resources.matchAll(new RegExp(`/(${letter}\\d+) (\\d+) 0 R`, "g"))].map(
      ([, name, number]) => [name!, objects.get(Number(number))] as const,
    );
  const fonts = new Map(named("F").map(([name, font]) => [name, fontOf(font, objects)]));
  const forms = new Map(
    named("X").map(([name, form]) => [
      name,
      form?.head.includes("/Form") ? drawnText(form.stream, resourcesOf(form.head, objects), objects) : "",
    ]),
  );
  return textOf(content, fonts, forms);
}

interface PdfObject {
  head: string;
  stream: string;
}

function objectsOf(pdf: Buffer): Map<number, PdfObject> {
  const text = pdf.toString("latin1");
  const objects = new Map<number, PdfObject>();
  for (const found of text.matchAll(/(?:^|\n)(\d+) 0 obj\s/g)) {
    const from = found.index + found[0].length;
    const end = text.indexOf("endobj", from);
    const at = text.indexOf("stream\n", from);
    const whole = { head: text.slice(from, end), stream: "" };
    if (at > 0 && at < end) {
      whole.head = text.slice(from, at);
      const length = Number(/\/Length (\d+)/.exec(whole.head)?.[1] ?? 0);
      const bytes = pdf.subarray(at + 7, at + 7 + length);
      whole.stream = (whole.head.includes("/FlateDecode") ? inflateSync(bytes) : bytes).toString("latin1");
    }
    objects.set(Number(found[1]), whole);
  }
  return objects;
}

/** A page's resources, which stand in it or are an object of their own. */
function resourcesOf(head: string, objects: Map<number, PdfObject>): string {
  const reference = /\/Resources (\d+) 0 R/.exec(head);
  return reference ? (objects.get(Number(reference[1]))?.head ?? "") : head;
}

/** How many digits a glyph has in a text, and what each stands for. */
interface Font {
  digits: number;
  glyphs: Map<number, string>;
}

function fontOf(font: PdfObject | undefined, objects: Map<number, PdfObject>): Font {
  return { digits: font?.head.includes("/Type3") ? 2 : 4, glyphs: unicodeOf(font, objects) };
}

function unicodeOf(font: PdfObject | undefined, objects: Map<number, PdfObject>): Map<number, string> {
  const map = objects.get(Number(/\/ToUnicode (\d+) 0 R/.exec(font?.head ?? "")?.[1]))?.stream ?? "";
  const glyphs = new Map<number, string>();
  for (const [block] of map.matchAll(/beginbfchar[\s\S]*?endbfchar/g)) {
    for (const [, glyph, text] of block.matchAll(/<(\w+)> <(\w+)>/g)) glyphs.set(hex(glyph!), utf16(text!));
  }
  for (const [block] of map.matchAll(/beginbfrange[\s\S]*?endbfrange/g)) {
    for (const [, from, to, text] of block.matchAll(/<(\w+)> <(\w+)> <(\w+)>/g)) {
      for (let at = 0; at <= hex(to!) - hex(from!); at += 1) {
        glyphs.set(hex(from!) + at, String.fromCharCode(hex(text!) + at));
      }
    }
  }
  return glyphs;
}

function textOf(content: string, fonts: ReadonlyMap<string, Font>, forms: ReadonlyMap<string, string>): string {
  const none: Font = { digits: 4, glyphs: new Map() };
  let font = none;
  let text = "";
  for (const [, name, glyphs, form] of content.matchAll(/\/(F\d+) [\d.]+ Tf|<([0-9A-Fa-f]+)>|\/(X\d+) Do/g)) {
    if (form !== undefined) text += forms.get(form) ?? "";
    else if (name !== undefined) font = fonts.get(name) ?? none;
    else
      for (let at = 0; at < glyphs!.length; at += font.digits)
        text += font.glyphs.get(hex(glyphs!.slice(at, at + font.digits))) ?? "";
  }
  return text.replace(/\s/g, "");
}

const hex = (digits: string) => Number.parseInt(digits, 16);
const utf16 = (digits: string) =>
  String.fromCharCode(...[...digits.matchAll(/.{4}/g)].map(([unit]) => Number.parseInt(unit, 16)));
