export type Attribute = string | number | boolean | null | ((event: Event) => void);
type Child = Node | string | null | undefined | false;

/**
 * Makes an element. Text becomes text nodes, never markup: nothing that stands in a sheet can turn into HTML.
 *
 * @param attributes  functions become listeners (`click`, `change`); true sets a bare attribute; false and null none
 */
export function make<Tag extends keyof HTMLElementTagNameMap>(
  tag: Tag,
  attributes: Record<string, Attribute> = {},
  ...children: (Child | Child[])[]
): HTMLElementTagNameMap[Tag] {
  const element = document.createElement(tag);
  setAttributes(element, attributes);
  for (const child of children.flat())
    if (child !== null && child !== undefined && child !== false) element.append(child);
  return element;
}

/** Makes a button that does something when pressed. */
export function button(
  text: string,
  click: (event: Event) => void,
  attributes: Record<string, Attribute> = {},
): HTMLButtonElement {
  return make("button", { type: "button", ...attributes, click }, text);
}

/** Makes an SVG element, for the small samples in a chart's key. */
export function makeSvg(tag: string, attributes: Record<string, Attribute>, ...children: Node[]): SVGElement {
  const element = document.createElementNS("http://www.w3.org/2000/svg", tag);
  setAttributes(element, attributes);
  element.append(...children);
  return element;
}

function setAttributes(element: Element, attributes: Record<string, Attribute>): void {
  for (const [name, value] of Object.entries(attributes)) {
    if (typeof value === "function") element.addEventListener(name, value);
    else if (value === true) element.setAttribute(name, "");
    else if (value !== false && value !== null) element.setAttribute(name, String(value));
  }
}
