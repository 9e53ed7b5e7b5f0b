import { make } from "./dom.ts";
import { keepChoice } from "./kept-choices.ts";

/**
 * A list to choose from, with its label. What is chosen is kept under the list's id, and most often draws the list anew:
 * the keyboard stays on it.
 */
export function picker(
  id: string,
  label: string,
  options: HTMLOptionElement[],
  choose: (value: string) => void,
): HTMLElement {
  const select = make(
    "select",
    {
      id,
      change: () => {
        keepChoice(id, select.value || null);
        choose(select.value);
        document.getElementById(id)?.focus({ preventScroll: true });
      },
    },
    options,
  );
  return make("p", { class: "choices" }, make("label", { for: id }, label), select);
}
