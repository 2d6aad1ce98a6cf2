/** A quick look at a rig, as text: bundled and run in every JavaScript engine. */
import { readRig } from "@secondline/rig";
import { assessRig, study } from "@secondline/scenarios";

/** Loads and drops of every what-if, to the last bit. */
export function quickLook(document: unknown): string {
  const reading = readRig(document);
  if (!reading.ok) throw new Error(reading.issues.map(({ message }) => message).join(" "));
  const work = study(assessRig(reading.rig), { accuracy: "quick", size: "quick" });
  let step = work.next();
  while (!step.done) step = work.next();
  return JSON.stringify(step.value.outcome.whatIfs.map(({ key, peaks, drop }) => [key, peaks, drop]));
}
