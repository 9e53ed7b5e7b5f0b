import type { Day } from "../calendar/day.ts";
import { groupBy } from "../fleet/group-by.ts";
import { nameKey } from "../fleet/name-key.ts";
import type { CatalogueRow } from "../fleet/rows.ts";
import { BadLabel, type Label } from "../sheets/labels/label.ts";
import { looksLikeLabel, readLabel } from "../sheets/labels/read-label.ts";

/** What an identifier matches. */
export interface Matcher {
  /** Lots, serials and order numbers, as keys. */
  match: (key: string) => boolean;
  /** The product all of which it names, as 14 digits; null for none. */
  gtin: string | null;
  /** The product to which its lot and serial are confined; null for any. */
  onlyOf: string | null;
  /** Why a label that it seems to be cannot be trusted; null where it is none, or a good one. */
  wrong: string | null;
}

/** What a lot, serial, order number, GTIN, prefix or scanned label matches. */
export function matcherOf(id: string, asOf: Day): Matcher {
  const label = readLabel(id, asOf);
  if (label instanceof BadLabel) return plainMatcher(id, looksLikeLabel(id) ? label.because : null);
  return labelMatcher(label);
}

function plainMatcher(id: string, wrong: string | null): Matcher {
  const key = nameKey(id);
  const prefix = key.slice(0, -1);
  const match = key.endsWith("*")
    ? (other: string) => prefix !== "" && other.startsWith(prefix)
    : (other: string) => other === key;
  return { match, gtin: gtinKey(id), onlyOf: null, wrong };
}

function labelMatcher(label: Label): Matcher {
  const keys = [label.lot, label.serial].filter((text) => text !== null).map(nameKey);
  const product = label.product === null ? null : gtinKey(label.product);
  if (keys.length === 0) return { match: () => false, gtin: product, onlyOf: null, wrong: null };
  return { match: (other) => keys.includes(other), gtin: null, onlyOf: product, wrong: null };
}

/** What an item has to do with the product that an identifier names. */
export interface OfProduct {
  /** The identifier names all of it. */
  all: boolean;
  /** Its lots and serials may be meant: it is not known to be another product. */
  named: boolean;
}

/** Tells of an item what it has to do with the product that an identifier names, as far as the catalogue knows. */
export function productsIn(
  catalogue: readonly CatalogueRow[],
): (item: string | null) => (of: Pick<Matcher, "gtin" | "onlyOf">) => OfProduct {
  const gtinsOf = groupBy(
    catalogue.filter((row) => row.gtin !== null),
    (row) => nameKey(row.item),
  );
  return (item) => {
    const gtins = item === null ? [] : (gtinsOf.get(nameKey(item)) ?? []);
    const bears = (gtin: string) => gtins.some((row) => gtinKey(row.gtin!) === gtin);
    return ({ gtin, onlyOf }) => ({
      all: gtin !== null && bears(gtin),
      named: onlyOf === null || gtins.length === 0 || bears(onlyOf),
    });
  };
}

/** The 14 digits of a GTIN of 8, 12, 13 or 14; null for anything else. */
function gtinKey(text: string): string | null {
  const digits = text.trim();
  return /^(\d{8}|\d{12,14})$/.test(digits) ? digits.padStart(14, "0") : null;
}
