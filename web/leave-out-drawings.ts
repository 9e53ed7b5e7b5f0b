/**
 * Build plug-in: the workbook reader brings parsers for charts, pivot tables and slicers, of which a planning sheet has
 * no use. Each is replaced by one that finds nothing, an answer that the reader expects (hucre 1.0.0). This keeps
 * about 57 KB out of the page.
 */
export function leaveOutDrawings() {
  const nothing: Record<string, string> = {
    "chart-reader": "export const parseChart = () => undefined;",
    "pivot-reader":
      "export const parsePivotCacheDefinition = () => undefined; export const parsePivotTable = () => undefined; " +
      "export const attachPivotCacheFields = () => undefined;",
    "slicer-reader":
      "export const parseSlicers = () => []; export const parseSlicerCache = () => undefined; " +
      "export const parseTimelines = () => []; export const parseTimelineCache = () => undefined;",
  };
  return {
    name: "leave-out-drawings",
    load(id: string): string | null {
      const file = /hucre\/dist\/xlsx\/([a-z-]+)\.mjs$/.exec(id.replaceAll("\\", "/"))?.[1];
      return (file && nothing[file]) || null;
    },
  };
}
