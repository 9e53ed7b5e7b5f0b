/** Paper speed of a printed trace: 25 mm/s, the usual one (common in physiology texts; 50 mm/s exists). */
const METRES_PER_SECOND = 0.025;
/** Length of a printed check strip in seconds (common practice, no source). */
const CHECK_STRIP_SECONDS = 10;

/** Minutes of trace on a roll: 30 m at 25 mm/s are 20 minutes. */
export function rollMinutes(lengthM: number): number {
  return lengthM / METRES_PER_SECOND / 60;
}

/** Share of a roll that one check strip takes: 0.25 m of 30 m is 1/120. */
export function rollsPerStrip(lengthM: number): number {
  return (CHECK_STRIP_SECONDS * METRES_PER_SECOND) / lengthM;
}
