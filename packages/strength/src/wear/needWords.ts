/** Reasons for an inspection as facts, and doubts that somebody wrote down as an own judgement. */
import type { FactValue, OwnJudgement } from "@secondline/rig";
import { UNKNOWN_VALUE } from "../derating/make.ts";
import { type NoteFact, noteFact } from "../noteFacts.ts";
import type { InspectionDoubt, OpenNeed } from "./openNeed.ts";

interface Named {
  readonly name: FactValue;
  readonly needs: readonly OpenNeed[];
}

/** One fact for every open reason on a webbing or part. */
export function needFacts({ name, needs }: Named): NoteFact[] {
  return needs.map((need) => {
    if ("unfit" in need) return noteFact("need.unfit", { name, reason: need.unfit });
    const { since, until, from, to, note } = need;
    const what = { name, what: noteFact(`need.${need.what}`, {}), since: { day: `${since}` } };
    const placed = from === undefined || to === undefined ? undefined : { from: { length: from }, to: { length: to } };
    if (until === undefined) {
      if (placed === undefined)
        return note === undefined ? noteFact("need.on", what) : noteFact("need.onNoted", { ...what, note });
      const at = { ...what, ...placed };
      return note === undefined ? noteFact("need.onPlace", at) : noteFact("need.onPlaceNoted", { ...at, note });
    }
    const over = { ...what, until: { day: `${until}` } };
    if (placed === undefined)
      return note === undefined ? noteFact("need.over", over) : noteFact("need.overNoted", { ...over, note });
    const at = { ...over, ...placed };
    return note === undefined ? noteFact("need.overPlace", at) : noteFact("need.overPlaceNoted", { ...at, note });
  });
}

/** Doubts of the record together with the judgement of the rig document, as one judgement; undefined if there is none. */
export function ownOf(doubts: readonly InspectionDoubt[], written: OwnJudgement | undefined): OwnJudgement | undefined {
  const all: OwnJudgement[] = [...(written === undefined ? [] : [written]), ...doubts];
  if (all.length <= 1) return all[0] && withoutPlace(all[0]);
  const factor = all.reduce((product, one) => product * (one.factor ?? UNKNOWN_VALUE), 1);
  return {
    factor,
    reason: noteFact("judged.several", { list: { list: all.map(({ reason }) => reason), joined: "semicolon" } }),
  };
}

function withoutPlace({ factor, reason }: OwnJudgement): OwnJudgement {
  return { ...(factor === undefined ? {} : { factor }), reason };
}
