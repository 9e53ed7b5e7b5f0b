import { xoroshiro128plus } from "pure-rand/generator/xoroshiro128plus";

const SEED = 20261101;
let generator = xoroshiro128plus(SEED);

/** Begins the sequence from its start. */
export function startAnew(): void {
  generator = xoroshiro128plus(SEED);
}

/** Uniform in [0, 1): always the same sequence. */
export function uniform(): number {
  return (generator.next() >>> 0) / 2 ** 32;
}

/** About standard normal: twelve uniforms less six, which needs no logarithm and so is alike on every machine. */
export function normal(): number {
  let sum = -6;
  for (let i = 0; i < 12; i++) sum += uniform();
  return sum;
}

/** A whole number from least to most, both included. */
export function whole(least: number, most: number): number {
  return least + Math.floor(uniform() * (most - least + 1));
}

/** True with a chance. */
export function chance(of: number): boolean {
  return uniform() < of;
}

/** How often something happens whose mean is given (Poisson, by products of uniforms). */
export function poisson(mean: number): number {
  const limit = Math.exp(-mean);
  let count = 0;
  for (let product = uniform(); product > limit; product *= uniform()) count++;
  return count;
}
