import { byDanger, type Outcome, type RankedWhatIf, whatIfKey } from "@secondline/scenarios";
import { sayVerdict } from "@secondline/words/page/verdict";
import { rowNumbers } from "@secondline/workbench";
import { VerdictMark, verdictColour } from "../design/VerdictMark.tsx";
import { useActions, useSandbox } from "../state/useSandbox.ts";
import { quantity, words } from "../words.ts";
import styles from "./WhatIfList.module.css";

/** Every what-if of the verdict, the gravest first, with its key numbers and what it is the worst of; choosing one shows it in the scene. */
export function WhatIfList({ outcome }: { outcome: Outcome }) {
  const { chooseWhatIf } = useActions();
  const rig = useSandbox((state) => state.assessment.assessed.rig);
  const chosen = useSandbox((state) => whatIfKey(state.session.whatIf));
  return (
    <ol className={styles.list}>
      {byDanger(outcome).map(({ entry, worstOf }) => (
        <li key={entry.key}>
          <button
            type="button"
            className={styles.entry}
            aria-pressed={entry.key === chosen}
            onClick={() => chooseWhatIf(entry.whatIf)}
          >
            <span className={styles.title}>{words.whatIfRow(rig, entry).title}</span>
            <span className={styles.numbers}>
              {entry.ok
                ? [words.fate(rig, entry), ...rowNumbers(entry)].join(" · ")
                : words.trouble(rig, entry.trouble)}
            </span>
            <WorstOf worstOf={worstOf} />
          </button>
        </li>
      ))}
    </ol>
  );
}

/** The part nearest to what is required, and how many others have their worst here. */
function WorstOf({ worstOf: [least, ...others] }: Pick<RankedWhatIf, "worstOf">) {
  const rig = useSandbox((state) => state.assessment.assessed.rig);
  if (!least) return null;
  return (
    <span className={styles.worst} style={{ color: verdictColour(least.verdict) }}>
      <VerdictMark verdict={least.verdict} />{" "}
      {sayVerdict(others.length > 0 ? "whatIfList.worstAndMore" : "whatIfList.worst", {
        partName: words.partName(rig, least.part),
        margin: quantity.margin(least.margin),
        count: others.length,
      })}
    </span>
  );
}
