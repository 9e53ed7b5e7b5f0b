import { isUnitWord, packIn } from "../values/units.ts";
import { headerWords } from "../words/header-words.ts";
import { VOCABULARY } from "../words/vocabulary.ts";

/** What a column's different texts name, each as a share of them. */
export interface ThingsNamed {
  devices: number;
  batteries: number;
  /** Places such as a vehicle. */
  places: number;
  /** Units of measure, such as "pcs" or "box". */
  measures: number;
}

/** Texts looked at for what they name. */
const NAMES = 20;

/** What different texts name, going by some of them. */
export function thingsNamed(different: ReadonlySet<string>): ThingsNamed {
  const some = [...different].slice(0, NAMES);
  return {
    devices: shareNaming("device", some),
    batteries: shareNaming("battery", some),
    places: shareNaming("place", some),
    measures:
      some.filter((text) => isUnitWord(text.toLowerCase()) || packIn(text) !== null).length / Math.max(1, some.length),
  };
}

/** The share of texts one of whose words names a thing. */
function shareNaming(thing: string, texts: readonly string[]): number {
  const some = texts.filter((text) => text.length < 60 && /[a-z]{3}/i.test(text));
  const naming = some.filter((text) =>
    headerWords(text)
      .split(" ")
      .some((word) => VOCABULARY.get(word) === thing),
  );
  return naming.length / Math.max(1, some.length);
}
