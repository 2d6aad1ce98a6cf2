/** Drives a computation to its end; every progress it reported goes to `seen`. */
export function finish<P, T>(work: Generator<P, T, void>, seen: P[] = []): T {
  let step = work.next();
  while (!step.done) {
    seen.push(step.value);
    step = work.next();
  }
  return step.value;
}
