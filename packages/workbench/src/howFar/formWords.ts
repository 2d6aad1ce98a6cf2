/** What the form of a sweep offers and tells. */
import type { Rig } from "@secondline/rig";
import { englishWords as common } from "@secondline/words";
import { howFarWords as words } from "@secondline/words/howFar";
import { LETTERS } from "../layouts/layouts.ts";
import type { HowFarDesk } from "./howFarDesk.ts";
import type { SweepNumber } from "./numbers.ts";
import type { HowFarPlace, HowFarReading } from "./question.ts";

const { say } = words;
type Option = { readonly value: string; readonly label: string };

/** What is wrong at a place of the form; of a range at one of its ends. What is wrong with the whole of it stands at the first. */
export function faultsAt(reading: HowFarReading, place: HowFarPlace, end?: "from" | "to"): readonly string[] {
  if (reading.ok) return [];
  const here = reading.faults.filter(
    (one) => one.place === place && (end === undefined || ("end" in one.fault ? one.fault.end : "from") === end),
  );
  return here.map(({ fault }) => words.fault(fault));
}

export const numberOptions = (rig: Rig, numbers: readonly SweepNumber[]): readonly Option[] =>
  numbers.map(({ name, kind }) => ({ value: name, label: words.number(rig, { kind, name }) }));

/** The open rig and the layouts beside it, by their names. */
export const subjectOptions = (names: readonly string[]): readonly Option[] =>
  names.map((name, i) => ({
    value: String(i),
    label: i === 0 ? say("of.inHand", { name }) : say("of.layout", { letter: LETTERS[i]!, name }),
  }));

type Work = ReturnType<HowFarDesk["store"]["getState"]>["work"];

/** What a running sweep computes, and how much is done. */
export function sweepDoing(
  rig: Rig,
  { made = 0, expected, doing }: Extract<Work, { kind: "busy" }>["progress"],
): string {
  if (expected === undefined) return say("preparing");
  return [say("working", { made, expected }), ...(doing ? [common.eventTitle(rig, doing)] : [])].join(". ");
}
