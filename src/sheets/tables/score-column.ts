import type { ColumnSpec, SheetSpec } from "../../fleet/columns.ts";
import { headerWords } from "../words/header-words.ts";
import { HEADER_POINTS, POINTS, type Points } from "../words/meanings.ts";
import type { HeaderMeaning } from "../words/parse-header.ts";
import type { Profile } from "./profile.ts";

/** A header below this share of known letters names nothing. */
const MIN_COVERAGE = 0.55;

/** A header that names a thing and nothing of it must be understood to this share. */
const SURE_COVERAGE = 0.84;

/** The share of cells that are label scans from which a column is one of labels whatever it is called. */
const LABEL_SHARE = 0.6;
const LABEL_POINTS = 5;

/** Points taken where most of a column's cells cannot be of the type that its header suggests. */
const WRONG_CONTENTS = 3;

/** The least points from which a column is read. */
export const MIN_POINTS = 2.5;

/** What a column's header says together with its group's, and what its cells look like. */
export interface ColumnView {
  column: number;
  meaning: HeaderMeaning;
  /** Things of the header, or of its group where it names none, sorted and joined by blanks. */
  things: string;
  /** The battery, pads or the like that the columns just before it are about; empty where none. */
  after: string;
  /** adult, child and the like, of the header or its group; empty where none. */
  variant: string;
  /** The number of a repeated group, of the header or its group. */
  index: number | null;
  /** What the group's header names, as written; empty where none. */
  groupSubject: string;
  /** Header and group read as one text; null where there is no group. */
  joined: HeaderMeaning | null;
  profile: Profile;
}

/** Points of a column as one field of a sheet: by its words, less where its cells speak against them; 0 for none. */
export function pointsFor(view: ColumnView, sheet: SheetSpec, spec: ColumnSpec): number {
  const { meaning, things, joined, profile } = view;
  if (meaning.words === headerWords(spec.name) && things === meaning.things) return POINTS.canonical;
  if (spec.name === "label" && sheet.kind === "dated_stock" && profile.filled > 0 && profile.labels >= LABEL_SHARE)
    return LABEL_POINTS;
  const table = HEADER_POINTS[sheet.kind][spec.name] as Points;
  // A thing alone names a column only where nothing else stands beside it that is not understood.
  if (meaning.says === "" && meaning.coverage < SURE_COVERAGE && !joined) return 0;
  const own =
    meaning.coverage < MIN_COVERAGE ? 0 : (table.get(conceptKey(things, meaning.says)) ?? 0) * meaning.coverage;
  const together =
    joined && joined.coverage >= MIN_COVERAGE
      ? (table.get(conceptKey(joined.things, joined.says)) ?? 0) * joined.coverage
      : 0;
  const points = Math.max(own, together);
  return points === 0 ? 0 : points - (contentsFit(spec, profile) ? 0 : WRONG_CONTENTS);
}

/** Things and attributes as the key of the points table. */
function conceptKey(things: string, says: string): string {
  return `${things} ${says}`
    .split(" ")
    .filter((word) => word !== "")
    .sort()
    .join(" ");
}

function contentsFit({ type, unit }: ColumnSpec, { filled, dates, numbers }: Profile): boolean {
  if (filled < 2) return true;
  if (type === "date") return dates + numbers > 0.4 && (dates > 0.2 || numbers > 0.6);
  if (type === "text") return dates < 0.6;
  if (type === "choice") return dates < 0.5 && numbers < 0.5;
  if (type === "list" || type === "breaks" || type === "yes-no") return dates < 0.5;
  return numbers > 0.3 || unit === "per year";
}
