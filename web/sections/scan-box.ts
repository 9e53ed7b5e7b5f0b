import { guardText } from "../../src/index.ts";
import { nowAtHand } from "../at-hand.ts";
import { csvRow } from "../csv-row.ts";
import { button, make } from "../dom.ts";
import { ask } from "../engine/engine.ts";
import type { Scanned } from "../engine/messages.ts";
import { dayWords, numberWords } from "../format.ts";
import type { NamedBytes } from "../intake/intake.ts";
import { keepChoice, keptChoice } from "../kept-choices.ts";
import { dayText, todayHere } from "../months.ts";
import { saveFile } from "../save-file.ts";
import { say } from "../strings.ts";
import { table } from "../table.ts";
import { addFiles } from "../take-sheets.ts";

const FILE = "scanned.csv";
const SCANS = "scans";

interface Scan {
  label: string;
  place: string;
}

/**
 * A box into which a hand-held scanner types a label and Enter. What was scanned stands below, newest first, is taken
 * back with Escape, can be saved as a sheet and be added to the plan. Made once, so that it outlives a new plan; kept in
 * the browser, so that a reload loses no scan and a scan of tomorrow joins those that the plan has.
 */
export function scanBox(): HTMLElement {
  const words = say.sheets.scan;
  const scans: Scan[] = JSON.parse(keptChoice(SCANS) ?? "[]");
  const label = make("input", { type: "text", id: "scan", autocomplete: "off", spellcheck: "false" });
  const place = make("input", { type: "text", id: "scan-place", autocomplete: "off", spellcheck: "false" });
  const rows = make("div", { id: "scanned", role: "status" });
  const form = make(
    "form",
    { class: "choices", submit: scanned },
    make("span", {}, make("label", { for: "scan" }, words.label), label),
    make("span", {}, make("label", { for: "scan-place" }, words.place), place),
    make("button", { type: "submit" }, words.go),
  );
  label.addEventListener("keydown", ({ key }) => {
    if (key !== "Escape") return;
    if (label.value === "") takeBack();
    label.value = "";
  });
  show();
  return make(
    "div",
    { class: "answer", id: "scan-box" },
    make("h3", {}, words.heading),
    make("p", {}, words.lead),
    form,
    rows,
  );

  function scanned(event: Event): void {
    event.preventDefault();
    if (label.value.trim() === "") return;
    scans.push({ label: label.value.trim(), place: place.value.trim() });
    label.value = "";
    label.focus();
    changed();
  }

  function takeBack(): void {
    scans.pop();
    label.focus();
    changed();
  }

  function changed(): void {
    keepChoice(SCANS, JSON.stringify(scans));
    show();
  }

  async function show(): Promise<void> {
    const read = scans.length === 0 ? [] : await ask("scan", { scans: sheetOf(scans), today: todayHere() });
    // what is in the plan and was taken back goes with the next sheet that is added, however empty
    const isInPlan = nowAtHand().files.some(({ name }) => name === FILE);
    if (scans.length === 0 && !isInPlan) return rows.replaceChildren();
    rows.replaceChildren(
      scansTable(scans, read),
      make(
        "p",
        { class: "buttons" },
        button(words.undo, takeBack, { id: "undo-scan" }),
        button(words.save, () => saveFile(new TextDecoder().decode(sheetOf(scans).bytes), FILE)),
        button(words.add, () => addFiles([sheetOf(scans)]), { id: "add-scans" }),
      ),
    );
  }
}

/** The scans as a sheet, in the order of scanning. */
function sheetOf(scans: readonly Scan[]): NamedBytes {
  // a HIBC label begins with a plus
  const cells = scans.map(({ label, place }) => [guardText(label), guardText(place)]);
  const lines = [["label", "place"], ...cells].map((row) => csvRow(row));
  return { name: FILE, bytes: new TextEncoder().encode(`${lines.join("\n")}\n`), fromFolder: false };
}

/** What the engine read in the scans, the newest first. */
function scansTable(scans: readonly Scan[], read: Scanned[]): HTMLElement {
  const { heading, heads } = say.sheets.scan;
  const byLine = new Map(read.map((row) => [row.line, row]));
  // Line 1 is the header.
  const found = scans.map((scan, index) => ({ scan, row: byLine.get(index + 2) ?? null })).reverse();
  return table({
    caption: heading,
    rows: found,
    sortable: false,
    columns: [
      {
        title: heads[0]!,
        value: ({ row }) => row?.item ?? null,
        show: ({ row }) => itemOrProblem(row),
        wide: true,
      },
      { title: heads[1]!, value: ({ row }) => row?.lot ?? row?.serial ?? null },
      { title: heads[2]!, value: ({ row }) => (row?.expiry ? dayWords(dayText(row.expiry)) : null) },
      { title: heads[3]!, value: ({ row }) => (row?.quantity ? numberWords(row.quantity) : null), figures: true },
      { title: heads[4]!, value: ({ scan }) => scan.place || null },
      { title: heads[5]!, value: ({ scan }) => scan.label, show: ({ scan }) => make("code", {}, scan.label) },
    ],
  });
}

function itemOrProblem(row: Scanned | null): string | Node {
  if (row?.problem == null) return row?.item ?? say.none;
  return make("span", {}, make("em", { class: "act" }, say.sheets.scan.notRead), make("small", {}, row.problem));
}
