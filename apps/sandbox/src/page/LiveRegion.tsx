import { answerWords } from "../question/answerWords.ts";
import { useSandbox } from "../state/useSandbox.ts";

/** Says results aloud as they arrive. */
export function LiveRegion() {
  const shown = useSandbox((state) => state.run.shown);
  const verdict = useSandbox((state) => state.run.verdict);
  const said = useSandbox((state) => state.session.announcement);
  return (
    <div className="visually-hidden">
      <p role="status">{shown && `${shown.outcome.title}. ${answerWords(shown.outcome, shown.rig)}`}</p>
      <p role="status">{verdict && `Verdict: ${verdict.outcome.verdict}. ${verdict.outcome.sentence}`}</p>
      <p role="status">{said}</p>
    </div>
  );
}
