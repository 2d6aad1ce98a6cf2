import type { Rig } from "@secondline/rig";
import { asItsKeySays, type WhatIf } from "@secondline/scenarios";
import { lowered } from "@secondline/words";
import { sayPage } from "@secondline/words/page/page";
import { kindsFor, legChoices, ofKind, readLeg, WALKERS, WALKERS_AT_A_LEG } from "@secondline/workbench";
import { Choice } from "../design/Choice.tsx";
import { useActions, useSandbox } from "../state/useSandbox.ts";
import { words } from "../words.ts";
import { PlaceChoice } from "./PlaceChoice.tsx";
import styles from "./Question.module.css";

/** The question the sandbox answers, as a sentence whose blanks are filled in. */
export function Question() {
  const whatIf = useSandbox((state) => state.session.whatIf);
  const rig = useSandbox((state) => state.assessment.assessed.rig);
  const { chooseWhatIf } = useActions();
  return (
    <section className={styles.question} aria-label={sayPage("question.whatIf")}>
      <span>{sayPage("question.title")}</span>
      <Choice
        inline
        label={sayPage("question.whatHappens")}
        value={whatIf.kind}
        options={kindsFor(whatIf, rig)}
        onChange={(kind) => chooseWhatIf(ofKind(kind, whatIf, rig))}
      />
      <Blanks {...{ whatIf, rig }} />
      <span className={styles.mark}>?</span>
    </section>
  );
}

interface BlanksProps {
  whatIf: WhatIf;
  rig: Rig;
}

/** What is left to say of the kind that is chosen. */
function Blanks({ whatIf, rig }: BlanksProps) {
  switch (whatIf.kind) {
    case "leashFall":
      return <AtPlace {...{ whatIf, rig }} />;
    case "mainFails":
      return <MainFailsBlanks {...{ whatIf, rig }} />;
    case "legFails":
      return <LegFailsBlanks {...{ whatIf, rig }} />;
    case "rescue":
      if (!whatIf.during) return <AtPlace {...{ whatIf, rig }} />;
      return <span>{sayPage("question.and", { eventTitle: lowered(words.eventTitle(rig, whatIf.during)) })}</span>;
    case "givesWay":
      return <span>{sayPage("question.in", { eventTitle: lowered(words.eventTitle(rig, whatIf.during)) })}</span>;
  }
}

type Placed = Exclude<WhatIf, { kind: "givesWay" }>;

function WalkersPlace({ whatIf, rig }: { whatIf: Placed; rig: Rig }) {
  const { chooseWhatIf } = useActions();
  return (
    <PlaceChoice
      label={sayPage("question.walkersPlace")}
      at={whatIf.at}
      span={rig.span}
      ends={false}
      onChange={(at) => chooseWhatIf(asItsKeySays({ ...whatIf, at }))}
    />
  );
}

function AtPlace(props: { whatIf: Placed; rig: Rig }) {
  return (
    <>
      <span>{sayPage("question.at")}</span>
      <WalkersPlace {...props} />
    </>
  );
}

function MainFailsBlanks({ whatIf, rig }: { whatIf: Extract<WhatIf, { kind: "mainFails" }>; rig: Rig }) {
  const { chooseWhatIf } = useActions();
  return (
    <>
      <span>{sayPage("question.at")}</span>
      <PlaceChoice
        label={sayPage("question.whereMainLine")}
        at={whatIf.cutAt}
        span={rig.span}
        ends
        onChange={(cutAt) => chooseWhatIf(asItsKeySays({ ...whatIf, cutAt }))}
      />
      <WalkerDoes {...{ whatIf, rig }} options={WALKERS} onWalker={(walker) => chooseWhatIf({ ...whatIf, walker })} />
    </>
  );
}

function LegFailsBlanks({ whatIf, rig }: { whatIf: Extract<WhatIf, { kind: "legFails" }>; rig: Rig }) {
  const { chooseWhatIf } = useActions();
  return (
    <>
      <span>{sayPage("question.to")}</span>
      <Choice
        inline
        label={sayPage("question.whichLegFails")}
        value={`${whatIf.anchor}${whatIf.leg}`}
        options={legChoices(rig)}
        onChange={(leg) => chooseWhatIf({ ...whatIf, ...readLeg(leg) })}
      />
      <WalkerDoes
        {...{ whatIf, rig }}
        options={WALKERS_AT_A_LEG}
        onWalker={(walker) => chooseWhatIf({ ...whatIf, walker: walker === "hanging" ? "hanging" : "caught" })}
      />
    </>
  );
}

interface WalkerDoesProps<W extends string> {
  whatIf: Placed & { readonly walker: W };
  rig: Rig;
  options: readonly { readonly value: W; readonly label: string }[];
  onWalker: (walker: W) => void;
}

/** What the walker does meanwhile, and where. */
function WalkerDoes<W extends string>({ whatIf, rig, options, onWalker }: WalkerDoesProps<W>) {
  return (
    <>
      <span>{sayPage("question.walkerDoesShort")}</span>
      <Choice
        inline
        label={sayPage("question.walkerDoes")}
        value={whatIf.walker}
        {...{ options }}
        onChange={onWalker}
      />
      <AtPlace {...{ whatIf, rig }} />
    </>
  );
}
