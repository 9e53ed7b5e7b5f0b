import { withoutChartPaths, withoutToolPaths } from "./chart-paths.ts";
import { found, withoutBodies } from "./code-cuts.ts";

/** Ways of easing a motion, of which the charts have none (chart.js 4.6.1). */
const EASINGS = /const effects = \{[\s\S]*?\n\};/;

/** What moves points from one place to the next over some frames; charts are drawn at once (chart.js 4.6.1). */
const MOTION: [RegExp, string][] = [
  [
    /^class Animator \{[\s\S]*?\n\}/m,
    "class Animator { listen() {} has() { return false; } running() { return false; } stop() {} remove() {} }",
  ],
  [
    /^class Animations \{[\s\S]*?\n\}/m,
    "class Animations { update(element, properties) { Object.assign(element, properties); } }",
  ],
];

/** Shapes of points but round and square ones (chart.js 4.6.1). */
const SHAPES = [
  /case 'triangle':[\s\S]*?(?=case 'rect':)/,
  /rad \+= QUARTER_PI;\s*\/\* falls through \*\/ case 'rectRot':[\s\S]*?(?=case false:)/,
];

/**
 * Slanted and skipped labels, titles of axes, and what is found and marked under the pointer: the charts hear no events
 * (chart.js 4.6.1).
 */
const LABELS: [string, string][] = [
  ["autoSkip", "ticks"],
  ["titleArgs", "{}"],
  ["evaluateInteractionItems", "undefined"],
  ["getIntersectItems", "[]"],
  ["getNearestItems", "[]"],
  ["getAxisItems", "[]"],
  ["inRange", "false"],
  ["inRange\\$1", "false"],
];
const METHODS: [RegExp, string][] = [
  ["calculateLabelRotation", "this.labelRotation = 0"],
  ["_resolveAnimations", "{ update: Object.assign }"],
  ["_updateHoverStyles", "undefined"],
  ["bindUserEvents", "undefined"],
  ["_eventHandler", "undefined"],
  ["resize", "this._resize(width, height)"],
  ["drawTitle", "undefined"],
  ["_checkEventBindings", "undefined"],
  ["_getUniformDataChanges", "undefined"],
  ["getProps", "this"],
].map(([name, gives]) => [new RegExp(`^ +(${name}\\([^)]*\\) \\{)[\\s\\S]*?\\n {4}\\}`, "m"), `$1 return ${gives}; }`]);

/** Parts that are taken away again, and backgrounds of axes, which the library asks for in vain (chart.js 4.6.1). */
const UNASKED = [
  "_removeElements",
  "show",
  "reset",
  "unregister",
  "_removeUnreferencedMetasets",
  "_stop",
  "drawBackground",
].map((name) => new RegExp(`^ +((?:static )?${name}\\([^)]*\\) ?\\{)[\\s\\S]*?\\n {4}\\}`, "gm"));

/** Curved lines, round corners, struck and backed text, and data that change, of which the charts have none (chart.js 4.6.1). */
const CURVED = [
  "splineCurve",
  "splineCurveMonotone",
  "monotoneAdjust",
  "monotoneCompute",
  "capBezierPoints",
  "_updateBezierControlPoints",
  "_bezierInterpolation",
  "_bezierCurveTo",
  "addRoundedRectPath",
  "decorateText",
  "drawBackdrop",
  "listenArrayEvents",
  "unlistenArrayEvents",
].map((name): [string, string] => [name, "undefined"]);

/**
 * Lines of which a part lies beyond the axis, or that change their look on the way, and defaults of motion: every point
 * is drawn, in one look, at once (chart.js 4.6.1).
 */
const PARTS_OF_LINES: [string, string][] = [
  ["_getStartAndCountOfVisiblePoints", "{ start: 0, count: points.length }"],
  ["splitByStyles", "segments"],
  ["applyAnimationsDefaults", "undefined"],
];

/** Bars that float or share out uneven steps, points given by name, and round axes (chart.js 4.6.1). */
const OTHER_DATA = [
  "computeFlexCategoryTraits",
  "parseFloatBar",
  "convertObjectDataToArray",
  "computeCircularBoundary",
].map((name): [string, string] => [name, "undefined"]);

/** Axes that no chart has: bundlers keep them, since a class that extends another may do something (chart.js 4.6.1). */
const OTHER_AXES = /^class (LogarithmicScale|RadialLinearScale|TimeScale|TimeSeriesScale) extends \w+ \{[\s\S]*?\n\}/gm;

/**
 * A module of the chart library without what no chart of the page has; null where it is left as it is.
 *
 * @param path  of the module, parted by slashes
 */
export function withoutChartParts(code: string, path: string): string | null {
  if (path.endsWith("chart.js/dist/chunks/index.js")) {
    const plain = withoutBodies(code.replace(EASINGS, "const effects = { linear: (t) => t };"), [
      ...CURVED,
      ...PARTS_OF_LINES,
    ]);
    return withoutToolPaths(SHAPES.reduce((text, shapes) => found(text, shapes, ""), plain));
  }
  if (!path.endsWith("chart.js/dist/chart.js")) return null;
  const axes = found(withoutBodies(code, [...LABELS, ...OTHER_DATA]), OTHER_AXES, "class $1 {}");
  const fewer = UNASKED.reduce((text, method) => found(text, method, "$1 }"), axes);
  return withoutChartPaths([...MOTION, ...METHODS].reduce((text, [pattern, by]) => found(text, pattern, by), fewer));
}
