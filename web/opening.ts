import { type Attribute, make } from "./dom.ts";

/** A title that opens on what is made when it is first opened: most readers open few. */
export function opening(
  title: string,
  fill: () => Node | Promise<Node>,
  attributes: Record<string, Attribute> = {},
): HTMLDetailsElement {
  const details = make("details", attributes, make("summary", {}, title));
  details.addEventListener("toggle", async () => {
    if (details.open && details.children.length === 1) details.append(await fill());
  });
  return details;
}
