import type { Day } from "../calendar/day.ts";
import { emptyFleet, type Fleet } from "../fleet/rows.ts";
import { findDatesOutOfOrder, findImpossibleTests } from "./checks/impossible-histories.ts";
import { dropOverRated } from "./checks/over-rated.ts";
import { findUnknownNames } from "./checks/unknown-names.ts";
import { findUnusablePolicy } from "./checks/unusable-policy.ts";
import type { FindingLog } from "./finding-log.ts";
import { nameProducts } from "./labels/name-products.ts";
import type { Reading } from "./reading.ts";
import { resolveBoxes } from "./rows/boxes.ts";
import type { BuiltTable } from "./rows/build-entries.ts";
import { withCatalogueBeside } from "./rows/catalogue-beside.ts";
import { withoutEarlierMonths } from "./rows/earlier-months.ts";
import type { Entry } from "./rows/entry.ts";
import { fleetRow } from "./rows/fleet-row.ts";
import { lastFormChecks } from "./rows/last-checks.ts";
import { withoutPacksToldTwice } from "./rows/packs-by-device.ts";
import { packsOfTests } from "./rows/packs-of-tests.ts";
import { withoutRepeats } from "./rows/repeats.ts";
import { describeTable, setAsideRows } from "./rows/table-report.ts";
import { giveTestsToPacks } from "./rows/tests-by-device.ts";
import { settleVehicleNames } from "./rows/vehicle-names.ts";

/** What came of the tables of all files together: the fleet, how each table was read, and every row not used. */
export function readingOf(built: readonly BuiltTable[], asOf: Day, log: FindingLog): Omit<Reading, "refused"> {
  const fleet = fleetOf(keptEntries(built, asOf, log));
  return {
    fleet,
    inputs: built.map(describeTable),
    findings: log.all(),
    setAside: built.flatMap(({ state }) => setAsideRows(state)),
  };
}

/** The entries that stay once boxes, labels, repeats and ratings are settled across all sheets. */
function keptEntries(built: readonly BuiltTable[], asOf: Day, log: FindingLog): Map<string, Entry[]> {
  const byKind = new Map<string, Entry[]>();
  const checked = lastFormChecks(built, log);
  for (const table of built) {
    const { state } = table;
    const entries = checked.get(table) ?? table.entries;
    // A table of one kind, the commonest, is taken as it is.
    const [only, ...others] = state.table.outputs.filter(({ beside }) => !beside);
    if (only && others.length === 0 && !byKind.has(only.sheet.kind)) {
      byKind.set(only.sheet.kind, entries);
      continue;
    }
    for (const entry of entries) {
      const list = byKind.get(entry.sheet.kind);
      if (list) list.push(entry);
      else byKind.set(entry.sheet.kind, [entry]);
    }
  }
  settleVehicleNames(byKind, built);
  nameProducts(
    built.flatMap(({ state }) => state.labelled),
    byKind.get("catalogue") ?? [],
  );
  if (built.some(({ mayHoldBoxes }) => mayHoldBoxes)) resolveBoxes(byKind, log);
  const dated = byKind.get("dated_stock");
  if (dated) byKind.set("dated_stock", withoutEarlierMonths(dated, asOf, log));
  for (const [kind, entries] of byKind) byKind.set(kind, withoutRepeats(entries, log));
  const packs = byKind.get("packs");
  if (packs) byKind.set("packs", withoutPacksToldTwice(packs));
  giveTestsToPacks(byKind.get("runtime_tests") ?? [], byKind.get("packs") ?? []);
  const catalogue = withCatalogueBeside(
    byKind.get("catalogue") ?? [],
    built.flatMap(({ beside }) => beside),
    log,
  );
  if (byKind.has("runtime_tests"))
    byKind.set("runtime_tests", dropOverRated(new Map(byKind).set("catalogue", catalogue), log));
  findUnknownNames(byKind, log);
  findDatesOutOfOrder(byKind, log);
  findImpossibleTests(byKind, log);
  findUnusablePolicy(byKind, log);
  // names are held against catalogues proper only: a list of stock need not name all there is
  if (catalogue.length > 0) byKind.set("catalogue", catalogue);
  const tests = byKind.get("runtime_tests") ?? [];
  if ((byKind.get("packs") ?? []).length === 0 && tests.length > 0)
    byKind.set("packs", packsOfTests(tests, byKind.get("devices") ?? [], log));
  return byKind;
}

function fleetOf(byKind: ReadonlyMap<string, readonly Entry[]>): Fleet {
  const fleet = emptyFleet();
  for (const entries of byKind.values()) {
    const [first] = entries;
    if (first)
      Object.assign(fleet, { [first.sheet.list]: entries.map(({ sheet, values }) => fleetRow(sheet.kind, values)) });
  }
  return fleet;
}
