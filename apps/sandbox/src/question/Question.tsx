import type { Rig } from "@secondline/rig";
import { asItsKeySays, type WhatIf } from "@secondline/scenarios";
import { lowered } from "@secondline/words";
import { sayPage } from "@secondline/words/page/page";
import { Choice } from "../design/Choice.tsx";
import { useActions, useSandbox } from "../state/useSandbox.ts";
import { words } from "../words.ts";
import { PlaceChoice } from "./PlaceChoice.tsx";
import styles from "./Question.module.css";

const KINDS = [
  { value: "leashFall", label: sayPage("question.leashFall") },
  { value: "mainFails", label: sayPage("question.mainLineFails") },
  { value: "legFails", label: sayPage("question.legFails") },
] as const;
const RESCUE = { value: "rescue", label: sayPage("question.rescue") } as const;
const WALKERS = [
  { value: "hanging", label: sayPage("question.hangsLeash") },
  { value: "standing", label: sayPage("question.stands") },
  { value: "caught", label: sayPage("question.beingCaught") },
] as const;

/** A leg that fails either while nothing happens or at the worst of a catch. */
const WALKERS_AT_A_LEG = WALKERS.filter(({ value }) => value !== "standing");

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

/** The kinds to choose from; what follows when a part gives way is found by the search, and stands here while it is looked at. */
function kindsFor(whatIf: WhatIf, rig: Rig): readonly { readonly value: WhatIf["kind"]; readonly label: string }[] {
  const all = legsOf(rig).length > 0 || whatIf.kind === "legFails" ? KINDS : KINDS.slice(0, 2);
  const kinds = rig.walker.rescuer !== undefined || whatIf.kind === "rescue" ? [...all, RESCUE] : all;
  if (whatIf.kind !== "givesWay") return kinds;
  return [
    ...kinds,
    { value: "givesWay", label: sayPage("question.givesWay", { partName: lowered(words.partName(rig, whatIf.part)) }) },
  ];
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
      <span>{sayPage("question.walkerDoesShort")}</span>
      <Choice
        inline
        label={sayPage("question.walkerDoes")}
        value={whatIf.walker}
        options={WALKERS}
        onChange={(walker) => chooseWhatIf({ ...whatIf, walker })}
      />
      <span>{sayPage("question.at")}</span>
      <WalkersPlace {...{ whatIf, rig }} />
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
        options={legsOf(rig)}
        onChange={(leg) => chooseWhatIf({ ...whatIf, ...readLeg(leg) })}
      />
      <span>{sayPage("question.walkerDoesShort")}</span>
      <Choice
        inline
        label={sayPage("question.walkerDoes")}
        value={whatIf.walker}
        options={WALKERS_AT_A_LEG}
        onChange={(walker) => chooseWhatIf({ ...whatIf, walker: walker === "hanging" ? "hanging" : "caught" })}
      />
      <span>{sayPage("question.at")}</span>
      <WalkersPlace {...{ whatIf, rig }} />
    </>
  );
}

/** The same place, in another kind of event. */
function ofKind(kind: WhatIf["kind"], now: WhatIf, rig: Rig): WhatIf {
  if (kind === now.kind) return now;
  switch (kind) {
    case "leashFall":
      return { kind, at: now.at };
    case "mainFails":
      return { kind, at: now.at, cutAt: 0, walker: "hanging" };
    case "legFails":
      return { kind, at: now.at, ...readLeg(legsOf(rig)[0]?.value ?? "A0"), walker: "caught" };
    case "rescue":
      return { kind, at: now.at };
    case "givesWay":
      return now;
  }
}

/** Legs that can fail: those of anchors with several points, as choices. */
function legsOf(rig: Rig): readonly { readonly value: string; readonly label: string }[] {
  return (["A", "B"] as const).flatMap((name) => {
    const { points } = name === "A" ? rig.anchorA : rig.anchorB;
    if (points.length < 2) return [];
    return points.map((point, leg) => ({
      value: `${name}${leg}`,
      label: sayPage("question.legAt", { name: point.name, anchor: name }),
    }));
  });
}

function readLeg(value: string): { readonly anchor: "A" | "B"; readonly leg: number } {
  return { anchor: value.startsWith("B") ? "B" : "A", leg: Number(value.slice(1)) };
}
