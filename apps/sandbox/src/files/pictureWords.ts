/** What is written around a picture of a run: what it shows, what came of it, what to beware of, what it was computed from. */
import { CAUTIONS, INVENTED, inputHash, VERSION } from "@secondline/scenarios";
import type { PictureWords } from "../picture/sheet.ts";
import { answerWords } from "../question/answerWords.ts";
import type { RunSlice, ShownRun } from "../state/types.ts";

const MESH = { quick: "coarse mesh", standard: "standard mesh", fine: "fine mesh" } as const;
/** Digits of the input's hash that are printed; the report bears all of them. */
const HASH_DIGITS = 16;

/** `seen`: what of the run the picture shows, such as the moment. */
export function runWords(run: RunSlice, shown: ShownRun, seen: string, date: Date): PictureWords {
  const { rig, outcome, accuracy } = shown;
  const verdict = run.verdict?.rigVersion === shown.rigVersion ? run.verdict.outcome : undefined;
  const over = verdict && `Verdict over ${verdict.whatIfs.length} what-ifs. ${verdict.sentence}`;
  return {
    title: rig.name,
    lines: [`${outcome.title}. ${seen}`, answerWords(outcome, rig), ...(over ? [over] : [])],
    cautions: verdict?.cautions ?? runCautions(shown),
    foot: footOf(rig, MESH[accuracy], date),
  };
}

/** Without a verdict: the general cautions, and what is known of this one run. */
function runCautions({ rig, accuracy }: ShownRun): readonly string[] {
  return [
    ...CAUTIONS,
    "This is one what-if; others may be worse.",
    ...(accuracy === "quick"
      ? ["Computed on a coarse mesh, for a first look: peaks may be off. Check again on the standard mesh."]
      : []),
    ...(rig.invented ? [INVENTED] : []),
  ];
}

/** `input`: what the picture was computed from. */
export function footOf(input: unknown, how: string, date: Date): string {
  const day = date.toLocaleDateString("en-GB", { dateStyle: "long" });
  return `Secondline ${VERSION}, ${how}, ${day}. Input ${inputHash(input).slice(0, HASH_DIGITS)}`;
}
