import type { Outcome } from "@secondline/scenarios";
import { sayPage } from "@secondline/words/page/page";
import { foundOf } from "@secondline/workbench";
import { lazy } from "react";
import { Later } from "../design/Later.tsx";
import { VerdictMark, verdictColour } from "../design/VerdictMark.tsx";
import { useActions, useSandbox } from "../state/useSandbox.ts";
import { words } from "../words.ts";
import { MarginKey } from "./MarginBar.tsx";
import { PartRow } from "./PartRow.tsx";
import { PersonRow } from "./PersonRow.tsx";
import styles from "./VerdictColumn.module.css";

const WayToWorst = lazy(async () => ({ default: (await import("./FirstSight.tsx")).WayToWorst }));

/** The person, then the parts along the load's way. */
export function Parts({ outcome }: { outcome: Outcome }) {
  const selected = useSandbox((state) => state.session.selectedPart);
  const before = useSandbox((state) => (state.session.compare ? state.run.previousVerdict : undefined));
  const rig = useSandbox((state) => state.assessment.assessed.rig);
  const isWhole = useSandbox((state) => foundOf(state) !== undefined);
  const { look } = useActions();
  const run = outcome.whatIfs.filter(({ runs }) => runs > 0).length;
  return (
    <section className={styles.parts} aria-label={sayPage("parts.partsHarnessRock")}>
      <h3 className={`${styles.heading} ${styles.pinned}`}>
        <span className={styles.pin} style={{ color: verdictColour(outcome.verdict) }}>
          <VerdictMark verdict={outcome.verdict} /> {words.verdictWord(outcome)}
        </span>{" "}
        {sayPage("parts.harnessRock")}
        <Later what={sayPage("parts.wayToWorst")}>
          <WayToWorst />
        </Later>
      </h3>
      <ul>
        <PersonRow {...{ outcome, rig, isWhole }} />
        {outcome.parts.map((part) => (
          <PartRow
            key={part.id}
            {...{ part, rig, outcome, isWhole }}
            before={before?.parts.find(({ id }) => id === part.id)}
            open={selected === part.id}
            onOpenChange={(open) => look({ selectedPart: open ? part.id : undefined })}
          />
        ))}
      </ul>
      <p className={styles.scope}>
        {sayPage("parts.hardestWhatIfs", { run })} <MarginKey />
      </p>
    </section>
  );
}
