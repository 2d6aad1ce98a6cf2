/** The words around a picture of a run: what it shows, of which state, the result, and the cautions. */
import type { PictureWords } from "@secondline/figures";
import { VERSION } from "@secondline/scenarios";
import { englishWords as words } from "@secondline/words";
import { longDay } from "@secondline/words/dates";
import { sayFiles } from "@secondline/words/page/files";
import type { SandboxState, ShownRun } from "../inHand/state.ts";
import { outcomeOf } from "../inHand/verdictOf.ts";

const MESH = {
  quick: sayFiles("pictureWords.coarseMesh"),
  standard: sayFiles("pictureWords.standardMesh"),
  fine: sayFiles("pictureWords.fineMesh"),
} as const;
/** Digits of the input's hash that are printed; the report prints all digits. */
const HASH_DIGITS = 16;

/** `seen`: what of the run the picture shows, such as the moment. */
export function runWords(state: SandboxState, shown: ShownRun, seen: string, date: Date): PictureWords {
  const { assessed, outcome, accuracy } = shown;
  const { rig } = assessed;
  const verdict = shown.key === state.assessment.key ? outcomeOf(state) : undefined;
  return {
    title: rig.name,
    lines: [
      `${words.eventTitle(rig, outcome.whatIf)}. ${seen}`,
      words.story(rig, outcome).join(" "),
      ...(verdict ? [words.verdict(rig, verdict)] : []),
      words.taken(rig, assessed),
    ],
    cautions: verdict ? words.cautions(rig, verdict.cautions) : runCautions(shown),
    foot: footOf(assessed.hash, MESH[accuracy], date),
  };
}

/** The cautions without a verdict: the general ones, and what is known of this one run. */
function runCautions({ assessed: { rig }, accuracy }: ShownRun): readonly string[] {
  return [
    ...words.generalCautions(),
    sayFiles("pictureWords.caution"),
    ...(accuracy === "quick" ? [words.say("caution.coarse")] : []),
    ...(rig.invented ? [words.say("caution.invented")] : []),
  ];
}

/** `hash`: fingerprint of what the picture was computed from. */
export function footOf(hash: string, how: string, date: Date): string {
  const day = longDay(date);
  return sayFiles("pictureWords.foot", { version: VERSION, how, day, hash: hash.slice(0, HASH_DIGITS) });
}
