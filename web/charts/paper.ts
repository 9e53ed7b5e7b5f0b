import { make } from "../dom.ts";
import { nextTask } from "../next-task.ts";
import { Chart } from "./chart-kit.ts";
import type { FigureSpec } from "./figure-spec.ts";
import { palette } from "./palette.ts";
import { plot } from "./plot.ts";

// Twice as fine as the screen: lines and words are sharp on paper, and a picture is made in a twentieth of a second.
const SIZE = { width: 660, height: 260, fineness: 2 };
// Who changes one assumption after the other is not held up by pictures that the next change throws away.
const QUIET_MS = 1000;

/** Where a chart stands on paper: in ink on white and finer than the screen, as a picture made ahead. */
interface Sheet {
  holder: HTMLElement;
  spec: FigureSpec;
}

const sheets = new Set<Sheet>();
let waiting = 0;

/** A place for the chart as it is printed, which the screen does not show. */
export function onPaper(spec: FigureSpec): HTMLElement {
  const holder = make("div", { class: "paper" });
  sheets.add({ holder, spec });
  return holder;
}

export function forgetSheets(within: Element): void {
  for (const sheet of sheets) {
    if (!within.contains(sheet.holder)) continue;
    const canvas = sheet.holder.querySelector("canvas");
    if (canvas) Chart.getChart(canvas)?.destroy();
    sheets.delete(sheet);
  }
}

/** Makes the pictures that are lacking, each when the page has nothing else to do. */
export function prepareForPaper(): void {
  clearTimeout(waiting);
  waiting = window.setTimeout(async () => {
    for (const sheet of lacking()) {
      const mine = waiting;
      await idle();
      if (mine !== waiting) return;
      await takePicture(sheet);
    }
  }, QUIET_MS);
}

/** Has charts stand on paper also where the reader prints before their pictures are made. */
export function keepChartsPrintable(): void {
  window.addEventListener("beforeprint", () => {
    for (const sheet of lacking()) sheet.holder.replaceChildren(drawn(sheet));
  });
}

/** Prints the page once every part is there and every chart has its picture, made one a task so that the page answers in between. */
export async function printPage(): Promise<void> {
  while (document.getElementById("plan")?.dataset.unfinished) await nextTask();
  for (const sheet of lacking()) await takePicture(sheet);
  window.print();
}

function lacking(): Sheet[] {
  return [...sheets].filter(({ holder }) => holder.isConnected && holder.childElementCount === 0);
}

function drawn({ spec, holder }: Sheet): HTMLCanvasElement {
  return plot(spec, palette(holder), SIZE);
}

async function takePicture(sheet: Sheet): Promise<void> {
  const canvas = drawn(sheet);
  await nextTask();
  const blob = await new Promise<Blob | null>((done) => canvas.toBlob(done));
  Chart.getChart(canvas)?.destroy();
  if (!blob || !lacking().includes(sheet)) return;
  const address = URL.createObjectURL(blob);
  const image = make("img", { alt: `${sheet.spec.question} ${sheet.spec.caption}`, src: address });
  await image.decode().catch(() => undefined);
  URL.revokeObjectURL(address);
  sheet.holder.replaceChildren(image);
}

function idle(): Promise<void> {
  return new Promise((done) => {
    // Safari has none
    if ("requestIdleCallback" in window) requestIdleCallback(() => done());
    else setTimeout(done);
  });
}
