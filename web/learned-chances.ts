/** What has been learned of many questions whose answer is 0 or 1. */
export interface LearnedChances {
  /** The chance of a 0, from 1 / 4096 to 4095 / 4096, so that either answer can be told. */
  of: Float32Array;
  /** How far the next answer moves the chance of a question: 2 / 5 at first, the less the more answers came. */
  paces: Float32Array;
  /** Moves the chance of a question towards the answer that came. */
  hear: (question: number, answer: number) => void;
}

/**
 * Chances that are at first the mean of all that came. Later they are the mean of two, of which one moves quickly and one
 * slowly, so that they follow a text whose ways change and yet know what it keeps to. The page carries this function as
 * it stands, so it asks for nothing outside itself. Single precision, since what is at hand in memory is what it takes
 * its time for.
 */
export function learnedChances(questions: number): LearnedChances {
  const of = new Float32Array(questions).fill(1 / 2);
  const quick = of.slice();
  const slow = of.slice();
  const paces = new Float32Array(questions).fill(2 / 5);
  return {
    of,
    paces,
    hear: (question, answer) => {
      const goal = (answer ? 1 : 4095) / 4096;
      const pace = paces[question]!;
      quick[question]! += (goal - quick[question]!) * Math.max(pace, 0.08);
      slow[question]! += (goal - slow[question]!) * pace;
      of[question] = (quick[question]! + slow[question]!) / 2;
      paces[question] = Math.max(pace / (1 + pace), 0.006);
    },
  };
}
