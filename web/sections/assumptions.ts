import { keepToCompare, letGo } from "../compared.ts";
import { differences, keyName } from "../difference.ts";
import { button, make } from "../dom.ts";
import type { PolicyWords } from "../engine/messages.ts";
import { resetChoices, setChoice } from "../own-choices.ts";
import { policyCsv } from "../policy-file.ts";
import { policyLink } from "../policy-link.ts";
import { saveFile } from "../save-file.ts";
import type { PlannedSession } from "../session.ts";
import { say } from "../strings.ts";
import { table } from "../table.ts";
import { answer, section } from "./section.ts";

// These decide how the sheets' cells are read, so they need the sheets.
const NEED_SHEETS = ["date_order"];

/** Assumptions: every policy value, editable, and what the last change brought. */
export function assumptions(session: PlannedSession): HTMLElement {
  const words = say.assumptions;
  return section(
    "assumptions",
    words.heading,
    make("p", { class: "lead act-on" }, words.lead),
    changed(session),
    problems(session),
    ...groups(session.words.policy).flatMap(({ title, keys }) => [
      make("h3", { class: "policy-group" }, title),
      make(
        "div",
        { class: "policy" },
        keys.map((key) => row(key)),
      ),
    ]),
    make(
      "p",
      { class: "buttons act-on" },
      button(session.kept ? words.letGo : words.keep, () => (session.kept ? letGo() : keepToCompare()), {
        id: "keep-plan",
      }),
      session.kept && make("span", {}, words.keptPlan),
    ),
    make(
      "p",
      { class: "buttons act-on" },
      button(words.save, () => saveFile(policyCsv(session.plan), "policy.csv"), { id: "save-policy" }),
      make("span", {}, words.saveNote),
    ),
    session.choices.size > 0 && linkLine(session.choices),
    session.choices.size > 0 &&
      make("p", { class: "act-on" }, button(words.reset, resetChoices, { id: "reset-assumptions" })),
  );

  function row(policy: PolicyWords): HTMLElement {
    const id = `policy-${policy.key}`;
    const locked = !session.hasSheets && NEED_SHEETS.includes(policy.key);
    const input = make("input", {
      id,
      type: "text",
      // a value that was refused stands there to be mended, or cleared
      value: session.choices.get(policy.key) ?? String(session.plan.policy[policy.key] ?? ""),
      autocomplete: "off",
      spellcheck: "false",
      disabled: locked,
      class: session.choices.has(policy.key) ? "chosen" : null,
      "aria-describedby": `${id}-about`,
      change: (event) => setChoice(policy.key, (event.target as HTMLInputElement).value.trim()),
    });
    return make(
      "div",
      {},
      make("label", { for: id }, keyName(policy.key), make("code", {}, policy.key)),
      make("span", { class: "value" }, input, make("span", { class: "unit" }, policy.unit)),
      make(
        "small",
        { id: `${id}-about` },
        `${policy.explains} ${words.byDefault(policy.default)}`,
        locked && ` ${words.needsSheets}`,
      ),
    );
  }
}

/** The keys by what they are about; those of no group come last. */
function groups(keys: readonly PolicyWords[]): { title: string; keys: PolicyWords[] }[] {
  const words = say.assumptions;
  const grouped = words.groups.map(({ title, keys: names }) => ({
    title,
    keys: names.flatMap((name) => keys.find(({ key }) => key === name) ?? []),
  }));
  const others = keys.filter(({ key }) => !words.groups.some((group) => group.keys.includes(key)));
  return [...grouped, { title: words.others, keys: others }].filter((group) => group.keys.length > 0);
}

/** A link that carries the reader's changes; where the browser lets nothing be copied, it stands there to be copied by hand. */
function linkLine(choices: ReadonlyMap<string, string>): HTMLElement {
  const words = say.assumptions;
  const link = new URL(policyLink(choices), location.href).href;
  const said = make("span", { role: "status" });
  const copy = async () => {
    try {
      // there is none on a page that is served without encryption
      await navigator.clipboard.writeText(link);
      said.replaceChildren(words.linkCopied);
    } catch {
      said.replaceChildren(words.linkByHand, " ", make("a", { href: link }, link));
    }
  };
  return make("p", { class: "buttons act-on" }, button(words.link, copy, { id: "copy-link" }), said);
}

function changed(session: PlannedSession): HTMLElement | null {
  const words = say.assumptions;
  if (session.before === null) return null;
  // kept over a reload, which may have brought another page
  if (session.before.engine !== session.plan.engine)
    return make("p", { id: "changed", role: "status" }, words.otherEngine(session.before.engine));
  const rows = differences(session.before, session.plan, session.words.policy);
  return make(
    "div",
    { class: "changed", id: "changed", role: "status" },
    answer(
      words.changedHeading,
      rows.length === 0
        ? make("p", {}, words.unchanged)
        : table({
            caption: words.changedHeading,
            rows,
            first: 24,
            sortable: false,
            columns: [
              { title: words.changedHeads[0]!, value: (row) => row.what },
              { title: words.changedHeads[1]!, value: (row) => row.before, figures: true },
              { title: words.changedHeads[2]!, value: (row) => row.now, figures: true },
              { title: words.changedHeads[3]!, value: (row) => row.change, figures: true },
            ],
          }),
    ),
  );
}

function problems(session: PlannedSession): HTMLElement | null {
  if (session.problems.length === 0) return null;
  return make(
    "ul",
    { class: "problems", role: "alert" },
    session.problems.map((problem) =>
      make("li", {}, say.assumptions.notUsed(problem.key, `${problem.message} ${problem.fix}`)),
    ),
  );
}
