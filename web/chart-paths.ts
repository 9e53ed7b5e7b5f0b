import { block, found, withoutBodies } from "./code-cuts.ts";

/*
 * Ways through the chart library's functions that no chart of the page takes (chart.js 4.6.1): steps run along the
 * bottom and values along the left, lines are filled to the line before them and nothing else, data are handed over as
 * numbers or as x and y, and the page hears the pointer itself.
 */

const FUNCTIONS: [string, string][] = [
  // fills that reach to an edge, to a value, to what is stacked below or to a shape
  ["_getTarget", "getLineByIndex(source.chart, source.fill)"],
  // labels that no list names, or that it names twice
  ["findOrAddLabel", "null"],
  // axes by other names than x and y, with titles
  ["determineAxis", "id"],
  ["retrieveAxisFromDatasets", "undefined"],
  ["getTitleHeight", "0"],
  // charts beside a page, and events of the pointer
  ["_detectPlatform", "DomPlatform"],
  ["createProxyAndListen", "undefined"],
  ["removeListener", "undefined"],
  // motion, and data that come and go
  ["onAnimationProgress", "undefined"],
  ["moveNumericKeys", "undefined"],
  ["clearStacks", "undefined"],
  // bars that float, and axes that stand on each other
  ["isFloatBar", "false"],
  ["buildStacks", "{}"],
  // lines that change their look on the way
  ["strokePathDirect", "undefined"],
  ["_getInterpolationMethod", "_pointInLine"],
  // some of many ticks
  ["sample", "arr"],
];

/**
 * Methods that answer what nobody asks: of data that change in place, of charts and parts that are hidden, styled or taken
 * away again, of what is under the pointer and a box of words beside it, and of axes.
 */
const UNASKED = (
  "_onDataPush|_onDataPop|_onDataShift|_onDataSplice|_onDataUnshift|setDatasetVisibility|toggleDataVisibility|hide|" +
  "_updateVisibility|_setStyle|setHoverStyle|removeHoverStyle|updateHoverStyle|_setDatasetHoverStyle|" +
  "_removeDatasetHoverStyle|removeControllers|removeElements|removePlugins|removeScales|_resetElements|_destroy|" +
  "_destroyDatasetMeta|getElementsAtEventForMode|getActiveElements|setActiveElements|_getActiveElements|_handleEvent|" +
  "isPointInArea|getLabelAndValue|inRange|inXRange|inYRange|getCenterPoint|tooltipPosition|toBase64Image|" +
  "getDecimalForPixel|_tickSize|getTicks|get registry|set type|" +
  "parseArrayData|getStyle|getDataElement|_sync|getRange|getValueForPixel|getLabelForValue|datasetAnimationScopeKeys|" +
  "isFullSize|isPluginEnabled|addControllers|addPlugins|addScales|getVisibleDatasetCount|first|last|hasValue"
)
  .split("|")
  .map((name) => new RegExp(`^ +(?:static )?${name}\\([^)]*\\) \\{(?:|[\\s\\S]*?\\n {4})\\}`, "gm"));

/** What is called before and after each step of laying an axis out, but where its ticks are built: nothing else asks for it. */
const STEPS =
  "(?:beforeUpdate|beforeBuildTicks|(?:before|after)(?:SetDimensions|DataLimits|TickToLabelConversion|CalculateLabelRotation|Fit))";
const UNHEARD = [
  new RegExp(String.raw`^ {4}${STEPS}\(\) \{[\s\S]*?\n {4}\}`, "gm"),
  new RegExp(String.raw`^ +this\.(?:${STEPS}|afterUpdate)\(\);$`, "gm"),
  / {4}afterUpdate\(\) \{[\s\S]*?\n {4}\}/,
];

/** What plugins are told: the page's, and the one that fills, hear of none of these. */
const UNTOLD = [
  /^ +if \(this\.notifyPlugins\('before(?:Update|Layout|DatasetsUpdate|DatasetUpdate|Render)'[\s\S]*?\) === false\) \{\s+return;\s+\}/gm,
  /^ +(?:this|chart)\.notifyPlugins\('(?:resize|reset|beforeElementsUpdate|beforeDestroy|after(?:Render|Init|Update|DatasetUpdate|Draw|DatasetDraw))'[\s\S]*?\);$/gm,
];

/** What is done where something is asked for that no chart asks for. */
const BRANCHES = [
  // curves, labels that come and go, ticks left out, sizes that wait for motion, and charts drawn into the plot
  block(
    " {8}",
    String.raw`if \((?:\(options\.tension .*!this\._pointsUpdated|added\.length|this\._resizeBeforeDraw|tickOpts\.display && .*)\)`,
  ),
  block(" {8}", String.raw`if \(samplingEnabled\)`),
  /samplingEnabled \? sample\(this\.ticks, sampleSize\) : /,
  // bars that keep no place for values that lack
  /^ {8}const skipNull = [\s\S]*?\n {8}\};/m,
  block(" {12}", String.raw`if \(dataIndex !== undefined.*\)`),
  // what the pointer was on before
  /^ {8}const \{ _active , _lastEvent {2}\} = this;[\s\S]*?(?=\n {8}this\.render\(\);)/m,
  /^ {8}each\(boxes\.chartArea, [\s\S]*?\n {8}\}\);/m,
  /^ {4}draw\(chartArea\) \{\s+if \(!this\._isVisible\(\)[\s\S]*?\n {4}\}/m,
  / else \{\s+y1 = _alignPixel[\s\S]*?\n {8}\}/,
  / parseObjectData\([^)]*\) \{(?=[^}]*\} = meta;[^}]*\} = this\._parsing;\s+const iAxisKey)[\s\S]*?\n {4}\}/,
  /^ {4}beforeDatasetsDraw \(chart[\s\S]*?\n {4}\},/m,
  block(" {8}", String.raw`if \(existingChart\)`),
  /^ {8}item\._layers = [\s\S]*?\n {8}\};/m,
  / else if \(position === 'right'\) \{[\s\S]*?\n {8}\}(?=\n)/g,
  /^( +)if \(position === 'top'\) \{[\s\S]*?\n\1\} else (?=if \(position === 'bottom'\)|\{)/gm,
  block(" {8}", String.raw`if \(axis === 'y'\)`),
  block(" {12}", String.raw`if \((?:optsAtIndex\.showLabelBackdrop|sampleSize < ticks\.length)\)`),
  block(" {16}", String.raw`if \((?:mirror|textAlign === 'inner'|rotation !== 0 && .*)\)`),
  block(" {4}", String.raw`if \((?:below !== above|edge === true|edge === 'middle' && stack)\)`),
  // lines that go round, ticks that stick out or are counted, more than a thousand of them, and charts without a canvas
  / else if \(countDefined\) \{[\s\S]*?\n {4}\}/,
  block(" {4}", String.raw`if \(loop\)`),
  block(" {16}", String.raw`if \(grid\.drawTicks\)`),
  block(" {12}", String.raw`if \((?:maxTicks > 1000|_data|meta\.type && meta\.type !== type)\)`),
  // boxes across the whole chart, bars that lie, axes that run backwards, data that are parsed already, and bars of which
  // each has a place of its own
  /^( +)if \((?:box\.fullSize|bar\.horizontal|properties\.horizontal|opts\.reverse|this\._parsing === false)\) \{[\s\S]*?\n\1\} else (?=\{)/gm,
  / else \{\s+center = scale\.getPixelForValue\(this\.getParsed[\s\S]*?\n {8}\}/,
  block(
    " {8}",
    String.raw`if \((?:numMeta > numData|meta\.stack !== dataset\.stack|stackChanged .*|!animsDisabled|!this\._isVisible\(\) \|\| this\.draw !== .*)\)`,
  ),
  /^ getMaximumSize\(element[\s\S]*?\n {4}\}/m,
  block(" {8}", String.raw`if \((?:!context \|\| !canvas|floating|Math\.abs\(size\) < minBarLength)\)`),
  /^ {12}if \(isRotated\) \{[\s\S]*?\} else (?=if \(align !== 'inner'\))/m,
  /^ {12}if \(align === 'start'\) \{\s+paddingTop[\s\S]*?\n {12}\}(?=\n)/m,
  /^ {12}if \(mirror\) \{[\s\S]*?\n {12}\} else (?=\{)/m,
  / else if \(crossAlign === 'center'\) \{[\s\S]*?\n( +)\} else \{[\s\S]*?\n\1\}/g,
  /^ {8}if \(ticks\.align === 'start'\) \{[\s\S]*?\n {8}\}(?=\n)/m,
];

/** What it says of axes, fills and fonts that are given wrongly, and of options that ask for themselves: the page's are right. */
const WARNINGS = [
  block(" {8}", String.raw`if \((?:!isObject\(scaleConf\)|scaleConf\._proxy|this\.options\.fill && .*)\)`),
];
const TOOL_WARNINGS = [block(" {4}", String.raw`if \((?:style && !.*|_stack\.has\(prop\))\)`)];

/** The same among the library's tools. */
const TOOLS: [string, string][] = [
  ["getHoverColor", "undefined"],
  ["_steppedInterpolation", "undefined"],
  // a chart fills its place, which has neither margin, border nor room within
  [
    "getMaximumSize",
    "(({ width, height }) => ({ width: round1(bbWidth ?? width), height: round1(bbHeight ?? height) }))(" +
      "canvas.parentNode.getBoundingClientRect())",
  ],
];
const TOOL_BRANCHES = [
  block(" {8}", String.raw`if \(stroke\)`),
  block(
    " {4}",
    String.raw`if \((?:loop|loop && !spanGaps|property === 'angle'|style && typeof style === 'object'|w)\)`,
  ),
  // options that are taken away again, or asked what they descend from
  /\b(?:deleteProperty|getPrototypeOf) \([^)]*\) \{[\s\S]*?\n {8}\},/g,
  /^ logarithmic \([^)]*\) \{[\s\S]*?\n {4}\}/gm,
];

const without = (code: string, functions: [string, string][], parts: RegExp[]) =>
  parts.reduce((text, part) => found(text, part, ""), withoutBodies(code, functions));

/** The chart library's code without the ways that no chart of the page takes. */
export const withoutChartPaths = (code: string): string =>
  without(code, FUNCTIONS, [...UNASKED, ...UNHEARD, ...UNTOLD, ...BRANCHES, ...WARNINGS]);

/** Its tools' code without them. */
export const withoutToolPaths = (code: string): string => without(code, TOOLS, [...TOOL_BRANCHES, ...TOOL_WARNINGS]);
