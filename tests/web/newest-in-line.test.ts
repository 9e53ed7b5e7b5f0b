import { describe, expect, it } from "vitest";
import { newestInLine } from "../../web/newest-in-line.ts";

describe("newestInLine", () => {
  it("does one piece at a time and of those that wait only the newest", async () => {
    const inLine = newestInLine();
    const done: string[] = [];
    const work = (name: string) => async () => {
      done.push(`${name} begins`);
      await Promise.resolve();
      done.push(`${name} ends`);
      return true;
    };
    const first = inLine(work("first"));
    await Promise.resolve();
    expect(await Promise.all([first, inLine(work("second")), inLine(work("third"))])).toEqual([true, false, true]);
    expect(done).toEqual(["first begins", "first ends", "third begins", "third ends"]);
  });

  it("tells a piece whether newer work waits by the time it asks", async () => {
    const inLine = newestInLine();
    const told: boolean[] = [];
    let end = () => {};
    const first = inLine(async (isNewest) => {
      told.push(isNewest());
      await new Promise<void>((done) => {
        end = done;
      });
      told.push(isNewest());
      return false;
    });
    await Promise.resolve();
    const second = inLine(async (isNewest) => isNewest());
    end();
    expect([await first, await second]).toEqual([false, true]);
    expect(told).toEqual([true, false]);
  });
});
