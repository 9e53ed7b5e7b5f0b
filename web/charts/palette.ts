/** Colours and type of the page as the charts need them, read from the stylesheet so that they stand in one place. */
export interface Palette {
  paper: string;
  ink: string;
  soft: string;
  /** Rules of the grid. */
  faint: string;
  /** Lines that stand behind the one in question. */
  grey: string;
  serif: string;
  /** Of the small type on axes and rules, in pixels; it grows with the page's type on very wide screens. */
  size: number;
  accent: string;
  font: string;
}

const SMALLEST = 12;
const SHARE = 0.72;

/** As an element has them: the page, or what stands on paper. */
export function palette(element: Element = document.documentElement): Palette {
  const style = getComputedStyle(element);
  const of = (name: string) => style.getPropertyValue(name).trim();
  return {
    paper: of("--paper"),
    ink: of("--ink"),
    soft: of("--soft"),
    faint: of("--faint"),
    grey: of("--grey"),
    serif: of("--serif"),
    size: Math.max(SMALLEST, Math.round(SHARE * Number.parseFloat(style.fontSize))),
    accent: of("--accent"),
    font: of("--sans"),
  };
}
