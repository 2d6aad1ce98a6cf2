import { type Chances, chanceText, LIKELY_FIRST_BASIS, type Outcome, ownCautions } from "@secondline/scenarios";
import { useId } from "react";
import { Button } from "../design/Button.tsx";
import { Choice } from "../design/Choice.tsx";
import { Disclosure } from "../design/Disclosure.tsx";
import { Meter } from "../design/Meter.tsx";
import { BasisNote } from "../verdict/BasisNote.tsx";
import { PartBars, ShareBars } from "./ChanceBars.tsx";
import styles from "./chances.module.css";
import { RUNS } from "./chancesDesk.ts";
import { SpreadFields } from "./SpreadFields.tsx";
import { type ChancesInHand, useChances } from "./useChances.ts";

/** How likely each part is to go first: at a glance over all what-ifs, and worked out for one on request. */
export function ChancesSection({ outcome }: { outcome: Outcome }) {
  const heading = useId();
  const hand = useChances(outcome);
  const { found, stale, work, nothing, rig, whatIf, desk } = hand;
  return (
    <section className={styles.section} aria-labelledby={heading}>
      <h3 id={heading} className={styles.heading}>
        Chances
      </h3>
      <AtAGlance outcome={outcome} />
      {nothing !== undefined && <p className={styles.note}>{nothing}</p>}
      {nothing === undefined && <Ask {...hand} />}
      {work.kind === "busy" && <Meter done={work.progress.done} doing={work.progress.doing} />}
      {work.kind === "stopped" && <p className={styles.note}>The chances were not worked out to the end.</p>}
      {work.kind === "failed" && (
        <p className={styles.note} role="alert">
          The chances were not worked out: {work.message}
        </p>
      )}
      {found && <Found chances={found} stale={stale} />}
      {nothing === undefined && <SpreadFields desk={desk} rig={rig} whatIf={whatIf} />}
    </section>
  );
}

const AT_A_GLANCE = 3;

/** The quick statement over all what-ifs, which every verdict has. */
function AtAGlance({ outcome }: { outcome: Outcome }) {
  const likeliest = outcome.likelyFirst.slice(0, AT_A_GLANCE);
  if (likeliest.length === 0) return null;
  return (
    <p className={styles.note}>
      Likeliest to go first, at a glance:{" "}
      {likeliest.map(({ name, first }) => `${name} (${Math.round(100 * first.value)} %)`).join(", ")}.{" "}
      <BasisNote basis={LIKELY_FIRST_BASIS} />: {LIKELY_FIRST_BASIS.note}.
    </p>
  );
}

const RUNS_TO_CHOOSE = RUNS.map((runs) => ({ value: String(runs), label: `${runs} runs` }));

/** One button starts and stops, so that whoever pressed it stays on it. */
function Ask({ options, chosen, runs, desk, workOut, faulty, work }: ChancesInHand) {
  const busy = work.kind === "busy";
  return (
    <div className={styles.ask}>
      <Choice label="What if" compact value={chosen} options={options} onChange={desk.choose} />
      <div className={styles.buttons}>
        <Button
          label={busy ? "Stop working out the chances" : "Work out the chances"}
          onClick={() => (busy ? desk.stop() : workOut())}
          disabled={faulty && !busy}
        />
        <Choice
          label="Runs"
          compact
          value={String(runs)}
          options={RUNS_TO_CHOOSE}
          onChange={(text) => desk.chooseRuns(Number(text))}
        />
      </div>
      {!busy && (
        <p className={styles.note}>
          {faulty
            ? "A spread below needs putting right first."
            : "Runs with everything uncertain scattered, and some on a finer mesh. You can stop them."}
        </p>
      )}
    </div>
  );
}

function Found({ chances, stale }: { chances: Chances; stale: boolean }) {
  return (
    <div className={styles.found} data-stale={stale || undefined}>
      <h4 className={styles.title}>
        {chances.title}
        {stale && <span className={styles.stale}> before your last change</span>}
      </h4>
      <p className={styles.sentence}>{chances.sentence}</p>
      <ul className={styles.cautions}>
        {ownCautions(chances).map((caution) => (
          <li key={caution}>{caution}</li>
        ))}
      </ul>
      <h4 className={styles.heading}>Who goes first</h4>
      <PartBars chances={chances} />
      <ShareBars chances={chances} />
      <Disclosure title="How often each part fails" level={4}>
        <FailsTable chances={chances} />
      </Disclosure>
      <Disclosure title="What the chances rest on" level={4}>
        <ul className={styles.cautions}>
          {chances.restsOn.map((ground) => (
            <li key={ground}>{ground}</li>
          ))}
        </ul>
      </Disclosure>
    </div>
  );
}

function FailsTable({ chances }: { chances: Chances }) {
  return (
    <table className={styles.table}>
      <caption className={styles.note}>
        Carries more than it holds, before anything else has failed. {chances.title}.
      </caption>
      <thead className="visually-hidden">
        <tr>
          <th scope="col">Part</th>
          <th scope="col">Chance to fail</th>
        </tr>
      </thead>
      <tbody>
        {chances.parts.map((part) => (
          <tr key={part.id}>
            <th scope="row">{part.name}</th>
            <td>{chanceText(part.fails)}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
