import type { AwkwardSheet } from "./awkward-sheet.ts";

/** Sheets of those who keep accounts: grids of ticks, orders of which nothing is to come. */
export const BOOKKEEPING: AwkwardSheet[] = [
  {
    name: "a grid of ticks by month beside expiries",
    text: `AED #,Site,Jan,Feb,Mar,Pads exp
1,Lobby,✓,✓,✓,03/2027
2,Gym,✓,x,✓,04/2027
`,
    rows: {
      devices: [
        { device: "1", site: "Lobby" },
        { device: "2", site: "Gym" },
      ],
      dated_stock: [
        { place: "1", expiry: "2027-03-31" },
        { place: "2", expiry: "2027-04-30" },
      ],
    },
    unread: ["Jan", "Feb", "Mar"],
  },
  {
    name: "orders of which nothing is outstanding",
    text: `PO,Material,Ordered,Open,Promised
4500,Adult pads,10,6,2026-12-15
4501,Gel,24,0,2026-10-15
`,
    rows: { on_order: [{ item: "Adult pads", quantity: 6, arrives: "2026-12-15" }] },
    aside: [[3, "order-settled"]],
    unread: ["Ordered"],
  },
];
