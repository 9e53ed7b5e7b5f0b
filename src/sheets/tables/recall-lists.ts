import { foldAccents } from "../words/fold.ts";
import type { Output, Unclear } from "./table.ts";

/** Words above a list by which it tells what a notice calls back. */
const RECALLS =
  /recall|safety (notice|alert)|affected (lot|batch|serial|unit|product)|ruckruf|sicherheits(hinweis|info|mitteil)|betroffene|rappel|lots? concerne|retirada|lotes? afectado|alerta sanitaria|terugroep|richiam|recolha|aterkall|tilba[gk]ekal/;
/** Fields of what the fleet has, and of no notice. */
const OF_THE_FLEET: ReadonlySet<string> = new Set([
  "place",
  "site",
  "device",
  "quantity",
  "opened",
  "inService",
  "cycles",
]);

/**
 * Why a list of lots or serials below such words is not read: it names what a notice calls back, wherever that lies, not
 * what the fleet has. Null for other lists, and where a column says where things are or how many.
 *
 * @param above  the lines above the table and the name of its tab
 */
export function recalledElsewhere(outputs: readonly Output[], above: readonly string[]): Unclear | null {
  if (!outputs.some(({ sheet: { kind } }) => kind === "dated_stock" || kind === "packs")) return null;
  if (outputs.some(({ fields }) => fields.some(({ spec }) => OF_THE_FLEET.has(spec.field)))) return null;
  if (!above.some((text) => RECALLS.test(foldAccents(text).toLowerCase()))) return null;
  return {
    message:
      "The list stands under the words of a recall and says neither where things are nor how many: it is no stock.",
    fix: "Trace what it names through the fleet's sheets; if it is the fleet's own stock, give it a column of places.",
  };
}
