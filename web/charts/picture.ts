import { footerLine } from "../print-footer.ts";
import { saveBlob } from "../save-file.ts";
import { say } from "../strings.ts";
import { Chart } from "./chart-kit.ts";
import type { FigureSpec } from "./figure-spec.ts";
import { hatch } from "./hatch.ts";
import type { KeyEntry, Mark } from "./key.ts";
import { type Palette, palette } from "./palette.ts";
import { plot } from "./plot.ts";

// 96 CSS pixels an inch on paper: three times that is as fine as most printers print.
const FINENESS = 3;
const WIDTH = 960;
const PLOT_HEIGHT = 400;
const MARGIN = 32;

/** Saves a figure as a PNG of three times the screen's fineness, with its question, unit, key and caption. */
export async function savePicture(spec: FigureSpec): Promise<void> {
  const colours = palette();
  const chart = plot(spec, colours, { width: WIDTH - 2 * MARGIN, height: PLOT_HEIGHT, fineness: FINENESS });
  const sheet = document.createElement("canvas");
  const pen = sheet.getContext("2d");
  if (!pen) return;
  // Once without a canvas to speak of, to learn how high the words stand.
  const height = drawSheet(pen, spec, chart, colours);
  sheet.width = WIDTH * FINENESS;
  sheet.height = height * FINENESS;
  pen.scale(FINENESS, FINENESS);
  pen.fillStyle = colours.paper;
  pen.fillRect(0, 0, WIDTH, height);
  drawSheet(pen, spec, chart, colours);
  Chart.getChart(chart)?.destroy();
  const blob = await new Promise<Blob | null>((done) => sheet.toBlob(done, "image/png"));
  if (blob) saveBlob(blob, `${fileName(spec)}.png`);
}

/** The question, and of which pack or item, so that the pictures of two have two names. */
function fileName({ question, unit }: FigureSpec): string {
  const [of, measure] = unit.split(": ");
  return (measure ? `${question} ${of}` : question)
    .toLowerCase()
    .replace(/[^\p{L}\d]+/gu, "-")
    .replace(/^-|-$/g, "");
}

/** Draws the picture from top to bottom and returns its height. */
function drawSheet(
  pen: CanvasRenderingContext2D,
  spec: FigureSpec,
  chart: HTMLCanvasElement,
  colours: Palette,
): number {
  const inner = WIDTH - 2 * MARGIN;
  let y = MARGIN + 22;
  const line = (text: string, font: string, colour: string, step: number) => {
    pen.font = font;
    pen.fillStyle = colour;
    for (const part of wrapped(pen, text, inner)) {
      pen.fillText(part, MARGIN, y);
      y += step;
    }
  };
  line(spec.question, `italic 24px ${colours.serif}`, colours.ink, 26);
  line(spec.unit, `14px ${colours.font}`, colours.soft, 24);
  y = drawKey(pen, spec.key, colours, y);
  pen.drawImage(chart, MARGIN, y, inner, PLOT_HEIGHT);
  y += PLOT_HEIGHT + 26;
  line(spec.caption, `16px ${colours.serif}`, colours.ink, 22);
  line(`${say.name}. ${footerLine()}`, `12px ${colours.font}`, colours.soft, 18);
  return y + MARGIN - 18;
}

function wrapped(pen: CanvasRenderingContext2D, text: string, width: number): string[] {
  const lines: string[] = [];
  let current = "";
  for (const word of text.split(" ")) {
    const longer = current === "" ? word : `${current} ${word}`;
    if (current !== "" && pen.measureText(longer).width > width) {
      lines.push(current);
      current = word;
    } else current = longer;
  }
  return [...lines, current];
}

function drawKey(pen: CanvasRenderingContext2D, key: readonly KeyEntry[], colours: Palette, top: number): number {
  let [x, y] = [MARGIN, top];
  pen.font = `14px ${colours.font}`;
  for (const { mark, label } of key) {
    const width = 36 + pen.measureText(label).width + 24;
    if (x > MARGIN && x + width > WIDTH - MARGIN) {
      x = MARGIN;
      y += 22;
    }
    drawMark(pen, mark, colours, x, y - 12);
    pen.fillStyle = colours.ink;
    pen.fillText(label, x + 36, y);
    x += width;
  }
  return y + 14;
}

/** The same samples as in the key on the page, 28 wide and 14 high. */
function drawMark(pen: CanvasRenderingContext2D, mark: Mark, colours: Palette, x: number, y: number): void {
  const accent = mark.startsWith("accent");
  const colour = accent ? colours.accent : mark === "bar" || mark === "hatch" ? colours.soft : colours.ink;
  pen.save();
  pen.translate(x, y);
  pen.strokeStyle = mark === "faint-line" ? colours.grey : colour;
  pen.fillStyle = mark === "hatch" ? hatch(colours.soft) : mark === "light-bar" ? colours.paper : colour;
  pen.lineWidth = mark === "faint-line" ? 1 : 2;
  if (mark === "dashed") pen.setLineDash([6, 4]);
  if (mark === "dotted") pen.setLineDash([2, 3]);
  pen.beginPath();
  if (mark === "dot") pen.arc(14, 7, 3.5, 0, 2 * Math.PI);
  else if (mark === "hatch") pen.rect(1, 0, 26, 14);
  else if (mark.endsWith("bar")) pen.rect(7, 1, 14, 12);
  else {
    pen.moveTo(1, 7);
    pen.lineTo(27, 7);
  }
  if (mark === "dot" || mark === "hatch" || mark.endsWith("bar")) pen.fill();
  else pen.stroke();
  if (mark === "light-bar") pen.stroke();
  pen.restore();
}
