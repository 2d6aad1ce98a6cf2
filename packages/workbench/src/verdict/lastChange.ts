/** What the last change of the rig did, in words. */
import type { Outcome, Rig } from "@secondline/scenarios";
import { listed, lowered, quantity, englishWords as words } from "@secondline/words";
import { sayVerdict } from "@secondline/words/page/verdict";
import type { Documents } from "../documents/documents.ts";
import { documentsOf, type Step } from "../history/history.ts";
import type { SandboxState, ShownRun } from "../inHand/state.ts";
import { foundOf } from "../inHand/verdictOf.ts";

const isOfRig = (step: Step<Documents>): boolean => documentsOf(step).includes("rig");

/** What tells of the last change of the rig, as it is in one state. */
export const changeNow = ({ assessment, document: { history }, run }: SandboxState) => ({
  key: assessment.key,
  present: history.present.rig,
  steps: history.past.filter(isOfRig).length,
  label: history.past.findLast(isOfRig)?.label,
  undone: history.future.some(isOfRig),
  before: run.previousVerdict,
});

/** The same, and what led to it. */
export interface ChangeSeen extends ReturnType<typeof changeNow> {
  /** Whether the last change of the state was one of the rig's file. */
  readonly ofEdit: boolean;
  /** Changes of the rig when the verdict before came to be the one before; −1: there was none yet. */
  readonly stepsThen: number;
}

/** What is seen now, after what was seen before; the same object where nothing has changed. */
export function seeChange(seen: ChangeSeen | undefined, now: ReturnType<typeof changeNow>): ChangeSeen {
  if (!seen) return { ...now, ofEdit: false, stepsThen: -1 };
  const isSame = (Object.keys(now) as (keyof typeof now)[]).every((name) => seen[name] === now[name]);
  if (isSame) return seen;
  const ofEdit = seen.key === now.key ? seen.ofEdit : seen.present !== now.present;
  return { ...now, ofEdit, stepsThen: seen.before === now.before ? seen.stepsThen : now.steps };
}

/**
 * What the last change did, in a sentence, after every change of the rig: of the fall at once, of the verdict when both are whole.
 * Undefined after another change of the state.
 */
export function lastChangeTold(seen: ChangeSeen, state: SandboxState): string | undefined {
  const { label, undone, ofEdit, before } = seen;
  if (label === undefined || undone || !ofEdit) return undefined;
  const outcome = foundOf(state)?.outcome;
  const isWhole = outcome && before && seen.stepsThen === seen.steps && before.rigName === outcome.rigName;
  const said = isWhole
    ? changeOfVerdict(state.assessment.assessed.rig, before, outcome)
    : changeOfFall(state.run.shown, state.run.previous);
  return said === undefined ? undefined : sayVerdict("firstSight.lastChange", { label, said });
}

/** Another state and the same what-if. */
export const isChange = (shown: ShownRun | undefined, previous: ShownRun | undefined): boolean =>
  shown !== undefined && previous !== undefined && shown.key !== previous.key && shown.whatIf === previous.whatIf;

/** What the last change did to the fall in sight, against the same fall before the change. */
function changeOfFall(shown: ShownRun | undefined, previous: ShownRun | undefined): string | undefined {
  if (!shown || !previous || !isChange(shown, previous)) return undefined;
  const [now, was] = [shown.outcome, previous.outcome];
  const told = [
    ...(now.drop === undefined || was.drop === undefined || quantity.drop(now.drop) === quantity.drop(was.drop)
      ? []
      : [sayVerdict("firstSight.drop", { now: quantity.drop(now.drop), before: quantity.drop(was.drop) })]),
    ...(!now.peaks || !was.peaks || quantity.load(now.peaks.leash) === quantity.load(was.peaks.leash)
      ? []
      : [
          sayVerdict("firstSight.pull", {
            now: quantity.load(now.peaks.leash),
            before: quantity.load(was.peaks.leash),
          }),
        ]),
  ];
  const [first, second] = told;
  if (first === undefined) return sayVerdict("firstSight.same");
  return second === undefined
    ? sayVerdict("firstSight.one", { first })
    : sayVerdict("firstSight.two", { first, second });
}

/** Over all what-ifs: the verdict, the deepest drop, and the margin of the part that is nearest to what is required now. */
function changeOfVerdict(rig: Rig, before: Outcome, now: Outcome): string {
  const [isNow, was] = [now, before].map((one) => lowered(words.verdictWord(one))) as [string, string];
  const drops = [now, before].map(({ falls }) => falls.deepest && quantity.drop(falls.deepest.drop));
  const told = [
    isNow === was
      ? sayVerdict("firstSight.verdictStays", { now: isNow })
      : sayVerdict("firstSight.verdictChanged", { now: isNow, before: was }),
    ...(drops[0] === undefined || drops[1] === undefined || drops[0] === drops[1]
      ? []
      : [sayVerdict("firstSight.deepestDrop", { now: drops[0], before: drops[1] })]),
    ...changeOfLeast(rig, before, now),
  ];
  return `${listed(told, "semicolon")}.`;
}

function changeOfLeast(rig: Rig, before: Outcome, now: Outcome): readonly string[] {
  const margin = ({ parts }: Outcome) => {
    const part = parts.find(({ id }) => id === now.leastMargin);
    const least = part?.governing && part.byClass[part.governing];
    return least && quantity.margin(least.margin);
  };
  const [isNow, was] = [margin(now), margin(before)];
  if (isNow === undefined || was === undefined || now.leastMargin === undefined) return [];
  const name = words.partName(rig, now.leastMargin);
  return [
    isNow === was
      ? sayVerdict("firstSight.nearestAsBefore", { name, margin: isNow })
      : sayVerdict("firstSight.nearestInstead", { name, margin: isNow, was }),
  ];
}
