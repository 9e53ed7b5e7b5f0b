import { foldAccents } from "../words/fold.ts";
import type { ColumnView } from "./score-column.ts";

/** What heads the columns of a ledger of stock: what went out, what came in, and what was left. */
const OUT =
  /^(qty |quantity |units? )?(out|issued?|issues|used|consumed|ausgang|abgang|entnahme|sorties?|salidas?|uscit[ae]|uit|uitgifte|saida)( qty)?$/;
const IN =
  /^(qty |quantity |units? )?(in|received|receipts?|added|eingang|zugang|entrees?|entradas?|entrat[ae]|inkomend)( qty)?$/;
const LEFT =
  /^(running )?(balance|closing|opening|bestand|solde|saldo|stock|in stock|on hand|remaining|left|rest|restbestand|voorraad)$/;
const MOSTLY = 0.6;

/**
 * The columns of a ledger that books on each day what went out, came in and was left: what went out was used, what was left
 * is no number used, nor stock that each line adds. Other columns as they are.
 */
export function withIssued(views: ColumnView[]): ColumnView[] {
  const heads = (words: RegExp) =>
    views.filter(
      ({ name, profile }) =>
        words.test(foldAccents(name).toLowerCase().trim().replace(/\.$/, "")) &&
        (profile.filled === 0 || profile.numbers > MOSTLY),
    );
  const [out, ...others] = heads(OUT);
  const besides = [...heads(IN), ...heads(LEFT)];
  const dated = views.some(({ meaning, things }) => things === "" && /^(date|date uses)$/.test(meaning.says));
  if (!out || others.length > 0 || besides.length === 0 || !dated) return views;
  return views.map((view) => {
    const says = view === out ? "quantity" : besides.includes(view) || view.meaning.says === "expiry" ? "aside" : null;
    return says === null
      ? view
      : { ...view, things: "", joined: null, meaning: { ...view.meaning, words: "", says, coverage: 1 } };
  });
}
