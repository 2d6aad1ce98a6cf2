import type { Rig } from "@secondline/rig";
import { type Assessed, type Chances, LIKELY_FIRST_BASIS, type Outcome } from "@secondline/scenarios";
import { tellBasis } from "@secondline/words";
import { englishChanceWords as chanceWords } from "@secondline/words/chances";
import { sayChances } from "@secondline/words/page/chances";
import { RUN_CHOICES } from "@secondline/workbench";
import { useId } from "react";
import { BasisNote } from "../design/BasisNote.tsx";
import { Button } from "../design/Button.tsx";
import { Choice } from "../design/Choice.tsx";
import { Disclosure } from "../design/Disclosure.tsx";
import { Lines } from "../design/Lines.tsx";
import { Meter } from "../design/Meter.tsx";
import { Table } from "../design/Table.tsx";
import { words } from "../words.ts";
import { PartBars, ShareBars } from "./ChanceBars.tsx";
import styles from "./chances.module.css";
import { SpreadFields } from "./SpreadFields.tsx";
import { type ChancesView, useChances } from "./useChances.ts";

/** How likely each part is to go first: at a glance in the worst what-if, and worked out for one on request. */
export function ChancesSection({ outcome }: { outcome: Outcome }) {
  const heading = useId();
  const hand = useChances(outcome);
  const { found, stale, work, nothing, assessed, whatIf, desk } = hand;
  const { rig } = assessed;
  return (
    <section className={styles.section} aria-labelledby={heading}>
      <h3 id={heading} className={styles.heading}>
        {sayChances("chancesSection.chances")}
      </h3>
      <AtAGlance {...{ outcome, assessed }} />
      {nothing !== undefined && <p className={styles.note}>{chanceWords.noChances(rig, nothing)}</p>}
      {nothing === undefined && <Ask {...hand} />}
      {work.kind === "busy" && (
        <Meter done={work.progress.done} doing={chanceWords.chanceWorking(rig, work.progress)} />
      )}
      {work.kind === "stopped" && <p className={styles.note}>{sayChances("chancesSection.notToEnd")}</p>}
      {work.kind === "failed" && (
        <p className={styles.note} role="alert">
          {sayChances("chancesSection.notWorkedOut", { message: work.message })}
        </p>
      )}
      {found && <Found {...found} stale={stale} />}
      {nothing === undefined && <SpreadFields desk={desk} rig={rig} whatIf={whatIf} />}
    </section>
  );
}

const PARTS_AT_A_GLANCE = 3;

/** The quick statement on the worst what-if, which every verdict has. */
function AtAGlance({ outcome, assessed }: { outcome: Outcome; assessed: Assessed }) {
  const glance = chanceWords.chanceGlance(assessed.rig, outcome, PARTS_AT_A_GLANCE);
  if (glance === undefined) return null;
  return (
    <p className={styles.note}>
      {glance} <BasisNote basis={LIKELY_FIRST_BASIS} />: {tellBasis(LIKELY_FIRST_BASIS.note)}.
    </p>
  );
}

const RUNS_TO_CHOOSE = RUN_CHOICES.map((runs) => ({
  value: String(runs),
  label: sayChances("chancesSection.drawsMade", { runs }),
}));

/** One button starts and stops, so that whoever pressed it stays on it. */
function Ask({ options, chosen, runs, desk, workOut, faulty, work }: ChancesView) {
  const busy = work.kind === "busy";
  return (
    <div className={styles.ask}>
      <Choice
        label={sayChances("chancesSection.whatIf")}
        compact
        value={chosen}
        options={options}
        onChange={desk.choose}
      />
      <div className={styles.buttons}>
        <Button
          label={busy ? sayChances("chancesSection.stopWorkingOut") : sayChances("chancesSection.workOutChances")}
          onClick={() => (busy ? desk.stop() : workOut())}
          disabled={faulty && !busy}
        />
        <Choice
          label={sayChances("chancesSection.draws")}
          compact
          value={String(runs)}
          options={RUNS_TO_CHOOSE}
          onChange={(text) => desk.chooseRuns(Number(text))}
        />
      </div>
      {!busy && (
        <p className={styles.note}>
          {faulty ? sayChances("chancesSection.faultBelow") : sayChances("chancesSection.whatADrawIs")}
        </p>
      )}
    </div>
  );
}

interface FoundProps {
  chances: Chances;
  /** The state that they are of. */
  assessed: Assessed;
  stale: boolean;
}

function Found({ chances, assessed, stale }: FoundProps) {
  const { rig } = assessed;
  const title = words.eventTitle(rig, chances.whatIf);
  return (
    <div className={styles.found} data-stale={stale || undefined}>
      <h4 className={styles.title}>
        {title}
        {stale && <span className={styles.stale}> {sayChances("chancesSection.stale")}</span>}
      </h4>
      <p className={styles.sentence}>{chanceWords.chances(rig, chances)}</p>
      <Lines className={styles.cautions} of={chanceWords.ownChanceCautions(rig, chances)} />
      <h4 className={styles.heading}>{sayChances("chancesSection.whoGoesFirst")}</h4>
      <PartBars {...{ rig, chances }} />
      <ShareBars {...{ rig, chances }} />
      <Disclosure title={sayChances("chancesSection.howOftenEach")} level={4}>
        <FailsTable {...{ rig, chances, title }} />
      </Disclosure>
      <Disclosure title={sayChances("chancesSection.grounds")} level={4}>
        <Lines className={styles.cautions} of={chanceWords.chanceGrounds(rig, chances)} />
      </Disclosure>
    </div>
  );
}

function FailsTable({ rig, chances, title }: { rig: Rig; chances: Chances; title: string }) {
  return (
    <Table
      className={styles.table}
      caption={<caption className={styles.note}>{sayChances("chancesSection.howOftenNote", { title })}</caption>}
      heads={[sayChances("chancesSection.part"), sayChances("chancesSection.chanceFail")]}
      areHeadsHidden
      isNamed
      rows={chances.parts.map(({ id, fails }) => [words.partName(rig, id), chanceWords.chanceRange(fails)])}
    />
  );
}
