import type { Rig } from "@secondline/rig";
import type { WhatIf } from "@secondline/scenarios";
import { Choice } from "../design/Choice.tsx";
import { useActions, useSandbox } from "../state/useSandbox.ts";
import { PlaceChoice } from "./PlaceChoice.tsx";
import styles from "./Question.module.css";

const KINDS = [
  { value: "leashFall", label: "the walker falls into the leash" },
  { value: "mainFails", label: "the main line fails" },
  { value: "legFails", label: "an anchor loses its leg" },
] as const;
const WALKERS = [
  { value: "hanging", label: "hangs in the leash" },
  { value: "standing", label: "stands" },
  { value: "caught", label: "is being caught" },
] as const;

/** A leg that fails either while nothing happens or at the worst of a catch. */
const WALKERS_AT_A_LEG = WALKERS.filter(({ value }) => value !== "standing");

/** The question the sandbox answers, as a sentence whose blanks are filled in. */
export function Question() {
  const whatIf = useSandbox((state) => state.session.whatIf);
  const rig = useSandbox((state) => state.document.rig);
  const { span } = rig;
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
        options={legsOf(rig).length > 0 || whatIf.kind === "legFails" ? KINDS : KINDS.slice(0, 2)}
        onChange={(kind) => chooseWhatIf(ofKind(kind, whatIf, rig))}
      />
      {whatIf.kind === "leashFall" && (
        <>
          <span>at</span>
          {place}
        </>
      )}
      {whatIf.kind === "mainFails" && (
        <>
          <span>at</span>
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
      {whatIf.kind === "legFails" && (
        <>
          <span>to</span>
          <Choice
            inline
            label="Which leg fails"
            value={`${whatIf.anchor}${whatIf.leg}`}
            options={legsOf(rig)}
            onChange={(leg) => chooseWhatIf({ ...whatIf, ...readLeg(leg) })}
          />
          <span>while the walker</span>
          <Choice
            inline
            label="What the walker does"
            value={whatIf.walker}
            options={WALKERS_AT_A_LEG}
            onChange={(walker) => chooseWhatIf({ ...whatIf, walker: walker === "hanging" ? "hanging" : "caught" })}
          />
          <span>at</span>
          {place}
        </>
      )}
      <span className={styles.mark}>?</span>
    </section>
  );
}

function ofKind(kind: WhatIf["kind"], now: WhatIf, rig: Rig): WhatIf {
  if (kind === now.kind) return now;
  if (kind === "leashFall") return { kind, at: now.at };
  if (kind === "mainFails") return { kind, at: now.at, cutAt: 0, walker: "hanging" };
  return { kind, at: now.at, ...readLeg(legsOf(rig)[0]?.value ?? "A0"), walker: "caught" };
}

/** Legs that can fail: those of anchors with several points, as choices. */
function legsOf(rig: Rig): readonly { readonly value: string; readonly label: string }[] {
  return (["A", "B"] as const).flatMap((name) => {
    const { points } = name === "A" ? rig.anchorA : rig.anchorB;
    if (points.length < 2) return [];
    return points.map((point, leg) => ({ value: `${name}${leg}`, label: `${point.name} at ${name}` }));
  });
}

function readLeg(value: string): { readonly anchor: "A" | "B"; readonly leg: number } {
  return { anchor: value.startsWith("B") ? "B" : "A", leg: Number(value.slice(1)) };
}
