import { ITEMS } from "./fleet-in-service.ts";
import type { Buyer } from "./order-world.ts";
import { MONTHS, type PlayedFleet, playFleet } from "./play-fleet.ts";

const BUYERS: readonly Buyer[] = ["replanned", "once", "calendar", "oracle"];

/** What became of some fleets over two years. Money in cents, a mean of a fleet. */
export interface WholeFigures {
  /** Share of needs served at once. */
  fill: number;
  /** Share of months in which no need of an item was left waiting. */
  monthsWithout: number;
  cost: number;
  lapsed: number;
  held: number;
  needed: number;
}

/** Some fleets of packs and pads played by every buyer with the whole engine. */
export class PlayedWholeFleets {
  private readonly played: Map<Buyer, PlayedFleet[]>;

  /** @param first  seed of the first fleet; fleet n is the same whoever buys */
  constructor(fleets: number, first = 1) {
    const seeds = Array.from({ length: fleets }, (_, i) => first + i);
    this.played = new Map(BUYERS.map((buyer) => [buyer, seeds.map((seed) => playFleet(seed, buyer))]));
  }

  of(buyer: Buyer): WholeFigures {
    const all = this.played.get(buyer)!;
    const sum = (count: (one: PlayedFleet) => number) => all.reduce((total, one) => total + count(one), 0);
    const ofItems = (count: "needed" | "atOnce" | "lapsed" | "monthsWaiting") =>
      sum(({ served }) => ITEMS.reduce((total, item) => total + served[item][count], 0));
    return {
      fill: ofItems("atOnce") / ofItems("needed"),
      monthsWithout: 1 - ofItems("monthsWaiting") / (all.length * MONTHS * ITEMS.length),
      cost: sum(({ cost }) => cost) / all.length,
      lapsed: ofItems("lapsed") / all.length,
      held: sum(({ held }) => held) / all.length,
      needed: ofItems("needed") / all.length,
    };
  }

  /** A line for every buyer. */
  table(): string {
    const lines = BUYERS.map((buyer) => {
      const { fill, monthsWithout, cost, lapsed, held, needed } = this.of(buyer);
      const figures = [fill.toFixed(4), monthsWithout.toFixed(4), (cost / this.of("oracle").cost).toFixed(4)];
      const units = [needed.toFixed(1), lapsed.toFixed(2), (cost / 100).toFixed(0), (held / 100).toFixed(0)];
      return [buyer.padEnd(10), ...figures, ...units.map((text) => text.padStart(6))].join("  ");
    });
    return ["fill, months without shortage, cost / oracle's, units needed, lapsed, EUR spent, EUR held", ...lines].join(
      "\n",
    );
  }
}
