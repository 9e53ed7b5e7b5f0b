/** Lets the browser answer the reader before work goes on. */
export function nextTask(): Promise<void> {
  return new Promise((done) => setTimeout(done));
}
