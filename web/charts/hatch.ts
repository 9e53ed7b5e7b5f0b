const TILE = 8;
// Drawn four times as large and scaled back, so that the lines stay sharp on dense screens and in print.
const FINENESS = 4;

/** The one pattern for what is uncertain: thin slanted lines. */
export function hatch(colour: string): CanvasPattern | string {
  const tile = document.createElement("canvas");
  tile.width = TILE * FINENESS;
  tile.height = TILE * FINENESS;
  const pen = tile.getContext("2d");
  if (!pen) return colour;
  pen.scale(FINENESS, FINENESS);
  pen.strokeStyle = colour;
  pen.lineWidth = 1;
  // Three strokes, so that the slant meets itself at the tile's edges.
  for (const shift of [-TILE, 0, TILE]) {
    pen.beginPath();
    pen.moveTo(shift - 1, TILE + 1);
    pen.lineTo(shift + TILE + 1, -1);
    pen.stroke();
  }
  const pattern = pen.createPattern(tile, "repeat");
  pattern?.setTransform(new DOMMatrix().scale(1 / FINENESS));
  return pattern ?? colour;
}
