/** What the last change of the rig did, in words. */
import type { Outcome, Rig } from "@secondline/scenarios";
import { listed, lowered, quantity, englishWords as words } from "@secondline/words";
import { sayVerdict } from "@secondline/words/page/verdict";
import type { ShownRun } from "../inHand/state.ts";

/** Another state and the same what-if. */
export const isChange = (shown: ShownRun | undefined, previous: ShownRun | undefined): boolean =>
  shown !== undefined && previous !== undefined && shown.key !== previous.key && shown.whatIf === previous.whatIf;

/** What the last change did to the fall in sight, against the same fall before the change. */
export function changeOfFall(shown: ShownRun | undefined, previous: ShownRun | undefined): string | undefined {
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
export function changeOfVerdict(rig: Rig, before: Outcome, now: Outcome): string {
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
