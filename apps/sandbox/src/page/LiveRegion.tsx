import { sayPage } from "@secondline/words/page/page";
import { outcomeOf, type ShownRun, sentenceBelowWord } from "@secondline/workbench";
import { useSandbox } from "../state/useSandbox.ts";
import { words } from "../words.ts";

/** Says results aloud as they arrive, in the words that stand on the page. */
export function LiveRegion() {
  const fall = useSandbox(({ run, assessment }) => (run.shown?.key === assessment.key ? run.shown : undefined));
  // "Nothing found yet", said again and again while it is counted, would only be in the way.
  const outcome = useSandbox((state) => {
    const now = outcomeOf(state);
    return now?.verdict === "open" && state.run.study.kind === "busy" ? undefined : now;
  });
  const rig = useSandbox((state) => state.assessment.assessed.rig);
  const said = useSandbox((state) => state.session.announcement);
  const word = outcome && words.verdictWord(outcome);
  return (
    <div className="visually-hidden">
      <p role="status">{fall && fallWords(fall)}</p>
      <p role="status">
        {outcome &&
          word &&
          sayPage(outcome.search.complete ? "liveRegion.verdict" : "liveRegion.verdictSoFar", {
            word,
            sentence: sentenceBelowWord(rig, outcome),
          })}
      </p>
      <p role="status">{said}</p>
    </div>
  );
}

function fallWords({ assessed: { rig }, outcome }: ShownRun): string {
  return `${words.eventTitle(rig, outcome.whatIf)}. ${words.story(rig, outcome).join(" ")}`;
}
