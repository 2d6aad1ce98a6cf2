import type { WhatIf } from "@secondline/scenarios";
import { Choice } from "../design/Choice.tsx";
import { useActions, useSandbox } from "../state/useSandbox.ts";
import { PlaceChoice } from "./PlaceChoice.tsx";
import styles from "./Question.module.css";

const KINDS = [
  { value: "leashFall", label: "the walker falls into the leash" },
  { value: "mainFails", label: "the main line fails" },
] as const;
const WALKERS = [
  { value: "hanging", label: "hangs in the leash" },
  { value: "standing", label: "stands" },
  { value: "caught", label: "is being caught" },
] as const;

/** The question the sandbox answers, as a sentence whose blanks are filled in. */
export function Question() {
  const whatIf = useSandbox((state) => state.session.whatIf);
  const span = useSandbox((state) => state.document.rig.span);
  const { chooseWhatIf } = useActions();
  const place = (
    <PlaceChoice
      label="The walker's place"
      at={whatIf.at}
      span={span}
      ends={false}
      onChange={(at) => chooseWhatIf({ ...whatIf, at })}
    />
  );
  return (
    <section className={styles.question} aria-label="The what-if">
      <span>What if</span>
      <Choice
        inline
        label="What happens"
        value={whatIf.kind}
        options={KINDS}
        onChange={(kind) => chooseWhatIf(ofKind(kind, whatIf))}
      />
      <span>at</span>
      {whatIf.kind === "leashFall" ? (
        place
      ) : (
        <>
          <PlaceChoice
            label="Where the main line fails"
            at={whatIf.cutAt}
            span={span}
            ends
            onChange={(cutAt) => chooseWhatIf({ ...whatIf, cutAt })}
          />
          <span>while the walker</span>
          <Choice
            inline
            label="What the walker does"
            value={whatIf.walker}
            options={WALKERS}
            onChange={(walker) => chooseWhatIf({ ...whatIf, walker })}
          />
          <span>at</span>
          {place}
        </>
      )}
      <span className={styles.mark}>?</span>
    </section>
  );
}

function ofKind(kind: WhatIf["kind"], now: WhatIf): WhatIf {
  if (kind === now.kind) return now;
  return kind === "leashFall" ? { kind, at: now.at } : { kind, at: now.at, cutAt: 0, walker: "hanging" };
}
