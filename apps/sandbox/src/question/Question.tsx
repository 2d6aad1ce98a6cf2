import { sayPage } from "@secondline/words/page/page";
import { type QuestionPart, questionParts } from "@secondline/workbench";
import { Choice } from "../design/Choice.tsx";
import { useActions, useSandbox } from "../state/useSandbox.ts";
import { PlaceChoice } from "./PlaceChoice.tsx";
import styles from "./Question.module.css";

/** The question the sandbox answers, as a sentence whose blanks are filled in. */
export function Question() {
  const whatIf = useSandbox((state) => state.session.whatIf);
  const rig = useSandbox((state) => state.assessment.assessed.rig);
  return (
    <section className={styles.question} aria-label={sayPage("question.whatIf")}>
      {questionParts(whatIf, rig).map((part, place) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: a part is known by its place in the sentence, and by what it asks
        <Part key={`${place} ${part.kind === "words" ? "" : part.label}`} part={part} span={rig.span} />
      ))}
      <span className={styles.mark}>?</span>
    </section>
  );
}

/** Words, or a blank of the question. */
function Part({ part, span }: { part: QuestionPart; span: number }) {
  const { chooseWhatIf } = useActions();
  switch (part.kind) {
    case "words":
      return <span>{part.text}</span>;
    case "choice":
      return <Choice {...part} inline onChange={(value) => chooseWhatIf(part.choose(value))} />;
    case "place":
      return <PlaceChoice {...part} span={span} onChange={(at) => chooseWhatIf(part.move(at))} />;
  }
}
