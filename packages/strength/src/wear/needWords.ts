/** What asks for an inspection, and what somebody doubts, in sentences and as an own judgement. */
import { formatLength, type OwnJudgement } from "@secondline/rig";
import { UNKNOWN_VALUE } from "../derating/make.ts";
import type { Doubt, OpenNeed } from "./openNeed.ts";

interface Named {
  readonly name: string;
  readonly needs: readonly OpenNeed[];
}

/** One sentence for everything that is open on a webbing or part. */
export function needSentences({ name, needs }: Named): string[] {
  return needs.map((need) => {
    if (need.unfit === true) return `${name}: ${need.what}. It must come down.`;
    const place =
      need.from === undefined || need.to === undefined
        ? ""
        : `, ${formatLength(need.from)} to ${formatLength(need.to)} from the marked end`;
    const when = need.until === undefined ? `on ${need.since}` : `from ${need.since} to ${need.until}`;
    const note = need.note === undefined ? "" : ` (${need.note})`;
    return `${name}: ${need.what} ${when}${place}${note}. No factor is known for that: have it inspected, and write down who judged it how.`;
  });
}

/** Doubts of the record, together with what the rig document says, as one judgement; undefined when there is none. */
export function ownOf(doubts: readonly Doubt[], written: OwnJudgement | undefined): OwnJudgement | undefined {
  const all: OwnJudgement[] = [...(written === undefined ? [] : [written]), ...doubts];
  if (all.length <= 1) return all[0] && withoutPlace(all[0]);
  const factor = all.reduce((product, one) => product * (one.factor ?? UNKNOWN_VALUE), 1);
  return { factor, reason: all.map(({ reason }) => reason).join("; ") };
}

function withoutPlace({ factor, reason }: OwnJudgement): OwnJudgement {
  return { ...(factor === undefined ? {} : { factor }), reason };
}
