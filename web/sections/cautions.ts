import { make } from "../dom.ts";
import { say } from "../strings.ts";
import { unbroken } from "../unbroken.ts";

/** Cautions stand wherever a forecast is: the standing ones in full, then what this plan says of itself. */
export function cautions(standing: readonly string[], ofThePlan: readonly string[]): HTMLElement {
  const own = ofThePlan.filter((caution) => !standing.includes(caution));
  return make(
    "aside",
    { class: "cautions", "aria-labelledby": "cautions-heading" },
    make("h2", { id: "cautions-heading" }, say.cautions.heading),
    make("p", {}, standing.join(" ")),
    own.length > 0 && make("h3", {}, say.cautions.more),
    own.length > 0 &&
      make(
        "ul",
        {},
        own.map((caution) => make("li", {}, unbroken(caution))),
      ),
  );
}
