import { isHiddenName, type SheetFile } from "../../src/index.ts";
import { button, make } from "../dom.ts";
import { ask } from "../engine/engine.ts";
import { say } from "../strings.ts";
import { droppedFiles } from "./dropped-files.ts";

export interface NamedBytes extends SheetFile {
  /** Came with its folder and was not named: what is no sheet is passed over there, and refused elsewhere. */
  fromFolder: boolean;
}

let beside = false;

/** Whether the reader wants new sheets beside those at hand, not in their place: for as long as the page is open. */
export function wantedBeside(): boolean {
  return beside;
}

let pasted = 0;

function pastedRows(text: string): NamedBytes {
  pasted += 1;
  return { name: say.intake.pasteName(pasted), bytes: new TextEncoder().encode(text), fromFolder: false };
}

/**
 * The ways to hand over sheets: drop, choose files, choose a folder, paste, or the sample.
 *
 * @param others  there are sheets at hand beside which new ones can be read
 */
export function intake(take: (files: NamedBytes[]) => void, heading: string, others: boolean): HTMLElement {
  const words = say.intake;
  const chooser = (folder: boolean) => {
    const input = make("input", {
      type: "file",
      multiple: true,
      hidden: true,
      accept: folder ? null : ".csv,.tsv,.txt,.xlsx,.json",
    });
    if (folder) input.webkitdirectory = true;
    input.dataset.chooses = folder ? "folder" : "files";
    input.addEventListener("change", async () => {
      const chosen = [...(input.files ?? [])].filter((file) => !folder || isDirectlyInside(file));
      take(await Promise.all(chosen.map((file) => bytesOf(file, folder))));
      input.value = "";
    });
    return [input, button(folder ? words.folder : words.files, () => input.click())];
  };
  const rows = make("textarea", { id: "pasted-rows", rows: 5, spellcheck: "false", wrap: "off" });
  return make(
    "div",
    { class: "intake" },
    make("p", { class: "drop" }, heading),
    make("p", { class: "buttons" }, chooser(false), chooser(true)),
    others &&
      make(
        "label",
        { class: "check" },
        make("input", {
          type: "checkbox",
          id: "beside",
          checked: beside,
          change: (event) => {
            beside = (event.target as HTMLInputElement).checked;
          },
        }),
        make("span", {}, words.beside),
      ),
    make(
      "p",
      { class: "buttons" },
      button(words.sample, takeSample, { id: "try-sample" }),
      make("span", {}, words.sampleNote),
    ),
    make(
      "details",
      {},
      make("summary", {}, words.paste),
      make("label", { for: "pasted-rows" }, words.pasteLabel),
      rows,
      button(words.pasteGo, takePasted),
    ),
  );

  // Made by the script that made sample-data/, which is shorter than its sheets.
  async function takeSample(): Promise<void> {
    take(await ask("sample", {}));
  }

  function takePasted(): void {
    if (rows.value.trim() !== "") take([pastedRows(rows.value)]);
  }
}

/** Of a folder its files are read, not its folders nor what is hidden there, as on the command line. */
function isDirectlyInside({ name, webkitRelativePath }: File): boolean {
  return webkitRelativePath.split("/").length <= 2 && !(webkitRelativePath !== "" && isHiddenName(name));
}

async function bytesOf(file: File, fromFolder: boolean): Promise<NamedBytes> {
  return { name: file.name, bytes: new Uint8Array(await file.arrayBuffer()), fromFolder };
}

/** Takes rows or files pasted anywhere on the page without a plan; with one, only the box for rows takes them. */
export function listenForPastes(take: (files: NamedBytes[]) => void): void {
  document.addEventListener("paste", async ({ clipboardData, target }) => {
    if (!clipboardData || !document.querySelector(".empty") || (target as Element).closest("textarea, input")) return;
    const text = clipboardData.getData("text/plain");
    const files = [...clipboardData.files];
    if (files.length > 0) take(await Promise.all(files.map((file) => bytesOf(file, false))));
    else if (/[\t\n]/.test(text.trim())) take([pastedRows(text)]);
  });
}

/** Takes files and folders dropped anywhere on the page. */
export function listenForDrops(take: (files: NamedBytes[]) => void): void {
  const mark = (over: boolean) => document.body.classList.toggle("dropping", over);
  document.addEventListener("dragover", (event) => {
    if (!event.dataTransfer?.types.includes("Files")) return;
    event.preventDefault();
    mark(true);
  });
  document.addEventListener("dragleave", (event) => {
    if (event.relatedTarget === null) mark(false);
  });
  document.addEventListener("drop", async (event) => {
    if (!event.dataTransfer?.types.includes("Files")) return;
    event.preventDefault();
    mark(false);
    const dropped = await droppedFiles(event.dataTransfer);
    take(await Promise.all(dropped.map(({ file, fromFolder }) => bytesOf(file, fromFolder))));
  });
}
