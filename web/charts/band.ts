import { hatch } from "./hatch.ts";
import type { Palette } from "./palette.ts";

/** The two edges of a band of uncertainty as datasets in their order, with the hatch between them. */
export function bandEdges<Point>(colours: Palette, first: Point[], second: Point[]) {
  const edge = { borderColor: colours.soft, borderWidth: 0.75, pointRadius: 0 };
  // A fill of -1 reaches to the dataset before.
  return [
    { data: first, ...edge },
    { data: second, ...edge, fill: "-1", backgroundColor: hatch(colours.soft) },
  ] as const;
}
