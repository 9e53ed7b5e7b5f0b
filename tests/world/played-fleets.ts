import { type Buyer, type Played, playOrders } from "./order-world.ts";
import { WORLDS } from "./order-worlds.ts";

const MONTHS = 24;
export const BUYERS: readonly Buyer[] = ["replanned", "once", "calendar", "oracle"];

/** What became of some items over two years. Money in cents, a mean of an item. */
export interface Figures {
  monthsWithout: number;
  fill: number;
  cost: number;
  lapsed: number;
  held: number;
}

/** Some fleets played by every buyer: each buys one item of each kind; fleet n meets the same needs whoever buys. */
export class PlayedFleets {
  private readonly played = new Map<string, Played[]>();

  constructor(fleets: number) {
    for (const buyer of BUYERS) {
      for (const [kind, world] of WORLDS) {
        const ofKind = Array.from({ length: fleets }, (_, fleet) => playOrders(world, fleet + 1, buyer));
        this.played.set(`${buyer} ${kind}`, ofKind);
      }
    }
  }

  ofKind(buyer: Buyer, kind: string): Figures {
    return figures(this.played.get(`${buyer} ${kind}`)!);
  }

  ofFleets(buyer: Buyer): Figures {
    return figures(WORLDS.flatMap(([kind]) => this.played.get(`${buyer} ${kind}`)!));
  }

  /** A line for every buyer and kind. */
  table(): string {
    const rows = BUYERS.flatMap((buyer) => [
      ...WORLDS.map(([kind]) => row(kind, buyer, this.ofKind(buyer, kind), this.ofKind("oracle", kind))),
      row("all", buyer, this.ofFleets(buyer), this.ofFleets("oracle")),
    ]);
    return `months without shortage, fill, cost / oracle's, units lapsed, EUR held\n${rows.join("\n")}`;
  }
}

function figures(all: readonly Played[]): Figures {
  const sum = (of: (one: Played) => number) => all.reduce((total, one) => total + of(one), 0);
  return {
    monthsWithout: 1 - sum((one) => one.monthsShort) / (MONTHS * all.length),
    fill: sum((one) => one.servedAtOnce) / sum((one) => one.needed),
    cost: sum((one) => one.cost) / all.length,
    lapsed: sum((one) => one.lapsed) / all.length,
    held: sum((one) => one.held) / all.length,
  };
}

function row(name: string, buyer: Buyer, of: Figures, oracle: Figures): string {
  return [
    name.padEnd(31),
    buyer.padEnd(10),
    of.monthsWithout.toFixed(4),
    of.fill.toFixed(4),
    (of.cost / oracle.cost).toFixed(4),
    of.lapsed.toFixed(2).padStart(6),
    (of.held / 100).toFixed(0).padStart(6),
  ].join("  ");
}
