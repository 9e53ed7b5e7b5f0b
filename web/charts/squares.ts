interface Point {
  x: number;
  y: number;
}

/** Where squares are drawn: from scale values to CSS pixels, and the part of the chart that shows them. */
export interface Place {
  x: (value: number) => number;
  y: (value: number) => number;
  area: { left: number; top: number; width: number; height: number };
  /** Dots of the screen a CSS pixel each way. */
  fineness: number;
}

// In any order of its four bytes.
const OPAQUE = 0xffffffff;

/** What was drawn on last: to be given so much memory anew takes longer than to use it again. */
let last: Sheet | null = null;

interface Sheet {
  canvas: HTMLCanvasElement;
  under: CanvasRenderingContext2D | null;
  picture: ImageData | undefined;
}

function sheetOf(width: number, height: number): Sheet {
  if (last?.canvas.width === width && last.canvas.height === height) return last;
  const canvas = document.createElement("canvas");
  Object.assign(canvas, { width, height });
  const under = canvas.getContext("2d", { willReadFrequently: true });
  last = { canvas, under, picture: under?.createImageData(width, height) };
  return last;
}

/**
 * Very many small dots as squares of whole dots of the screen, set in memory one by one: dense as they lie they look the
 * same as round ones, and for the browser to draw each would hold up the page.
 *
 * @param radius  half a square's side, in CSS pixels
 */
export function drawSquares(
  pen: CanvasRenderingContext2D,
  dots: readonly Point[],
  { x, y, area, fineness }: Place,
  radius: number,
): void {
  // on a fine screen and on paper half as fine will do
  const fine = fineness < 2 ? fineness : fineness / 2;
  const [left, top] = [Math.floor(area.left * fine), Math.floor(area.top * fine)];
  const width = Math.ceil((area.left + area.width) * fine) - left;
  const height = Math.ceil((area.top + area.height) * fine) - top;
  if (width <= 0 || height <= 0) return;
  const { canvas, under, picture } = sheetOf(width, height);
  if (!under || !picture) return;
  const set = new Uint32Array(picture.data.buffer).fill(0);
  const side = Math.round(2 * radius * fine);
  for (const dot of dots) {
    const across = Math.round((x(dot.x) - radius) * fine) - left;
    const down = Math.round((y(dot.y) - radius) * fine) - top;
    const [right, bottom] = [Math.min(width, across + side), Math.min(height, down + side)];
    for (let row = Math.max(0, down); row < bottom; row += 1)
      for (let column = Math.max(0, across); column < right; column += 1) set[row * width + column] = OPAQUE;
  }
  under.putImageData(picture, 0, 0);
  under.globalCompositeOperation = "source-in";
  under.fillStyle = pen.fillStyle;
  under.fillRect(0, 0, width, height);
  pen.imageSmoothingEnabled = false;
  pen.drawImage(canvas, left / fine, top / fine, width / fine, height / fine);
}
