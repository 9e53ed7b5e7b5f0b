/** What a module exports in place of its own: each answer is one that its callers expect for "nothing there". */
const NOTHING: [RegExp, string][] = [
  // The workbook reader's parsers for drawings, pivot tables, comments and passwords (hucre 1.0.0).
  [/hucre\/dist\/xlsx\/chart-reader\.mjs$/, "export const parseChart = () => undefined;"],
  [
    /hucre\/dist\/xlsx\/pivot-reader\.mjs$/,
    "export const parsePivotCacheDefinition = () => undefined; export const parsePivotTable = () => undefined; " +
      "export const attachPivotCacheFields = () => undefined;",
  ],
  [
    /hucre\/dist\/xlsx\/slicer-reader\.mjs$/,
    "export const parseSlicers = () => []; export const parseSlicerCache = () => undefined; " +
      "export const parseTimelines = () => []; export const parseTimelineCache = () => undefined;",
  ],
  [
    /hucre\/dist\/xlsx\/threaded-comments-reader\.mjs$/,
    "export const parsePersons = () => []; export const parseThreadedComments = () => [];",
  ],
  [
    /hucre\/dist\/xlsx\/cell-images-reader\.mjs$/,
    "export const REL_CELL_IMAGES = 'none'; export const parseCellImages = () => []; " +
      "export const assembleCellImages = () => [];",
  ],
  // A protected workbook is refused before it is opened: there is never a password.
  [
    /hucre\/dist\/xlsx\/crypto\/agile\.mjs$/,
    "const never = async () => { throw new Error('no password'); }; export { never as decryptAgile, never as encryptAgile };",
  ],
];

/** Build plug-in: keeps out of the page some 70 KB of libraries of which a planning sheet has no use. */
export function leaveOut() {
  return {
    name: "leave-out",
    load(id: string): string | null {
      const path = id.replaceAll("\\", "/");
      return NOTHING.find(([module]) => module.test(path))?.[1] ?? null;
    },
  };
}
