import { describe, expect, it } from "vitest";
import { read } from "../sheet-file.ts";

const CATALOGUE = "item,kind,units_per_box\ngel,gel,10\n";

/** Units still to come by order number, of lines "PO,quantity,unit,received". */
function openUnits(lines: string): Record<string, number> {
  const { fleet } = read({
    "catalogue.csv": CATALOGUE,
    "po.csv": `PO,Item,Qty ordered,UOM,Qty received,Expected\n${lines}`,
  });
  return Object.fromEntries(fleet.onOrder.map(({ order, quantity }) => [order, quantity]));
}

/** True where an order of 10 with this status is still to come. */
const isOpen = (status: string) =>
  read(`PO,Item,Qty,Expected,Status\n1,gel,10,2026-12-01,"${status}"\n`).fleet.onOrder.length === 1;

describe("an order that was received in part", () => {
  it("has so many boxes to come, where it was ordered in boxes of ten: 5 - 3 = 2, and 20 units", () => {
    expect(
      openUnits(`1,gel,5,box,3,2026-12-01
2,gel,5,box of 10,3,2026-12-01
3,gel,5 boxes,,3 boxes,2026-12-01
4,gel,5,box,5,2026-12-01
5,gel,5,each,3,2026-12-01
6,gel,5,box,0,2026-12-01
`),
    ).toEqual({ 1: 20, 2: 20, 3: 20, 5: 2, 6: 50 });
  });
});

describe("the status of an order", () => {
  it("keeps it open where it tells of what will be", () => {
    for (const status of [
      "To be delivered",
      "Will be delivered 3 Dec",
      "Due to be received 12 Dec",
      "Incomplete",
      "Undelivered",
      "Wird geliefert",
      "Sera livrée",
      "Não entregue",
      "Not arrived",
      "Ordered",
      "Shipped",
      "On back order",
    ])
      expect(isOpen(status), status).toBe(true);
  });

  it("counts nothing that nobody has ordered yet, or will deliver", () => {
    for (const status of ["Draft", "Quote requested", "Not yet ordered", "To be ordered", "Rejected by supplier"])
      expect(isOpen(status), status).toBe(false);
  });

  it("ends it where it has come, or what has not come was cancelled", () => {
    for (const status of [
      "Delivered",
      "Ist geliefert",
      "Livrée",
      "Entregue",
      "Arrived",
      "Fulfilled",
      "part delivered (4), rest cancelled",
      "4 of 10 received; balance cancelled",
      "4 von 10 geliefert, Rest storniert",
    ])
      expect(isOpen(status), status).toBe(false);
  });
});
