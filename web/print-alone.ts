/** Prints one part of the page and nothing else: a list to take along. */
export function printAlone(part: HTMLElement): void {
  const { dataset } = document.documentElement;
  const after = () => {
    delete dataset.alone;
    part.classList.remove("alone");
  };
  dataset.alone = "";
  part.classList.add("alone");
  window.addEventListener("afterprint", after, { once: true });
  window.print();
}
