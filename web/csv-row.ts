/** One record of a separated text, quoted where it must be. */
export function csvRow(cells: readonly (string | number | boolean | null)[], separator = ","): string {
  return cells
    .map((cell) => {
      const text = cell === null ? "" : String(cell);
      return text.includes(separator) || /["\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
    })
    .join(separator);
}
