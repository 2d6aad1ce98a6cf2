import { LAYOUT_LOOKS } from "@secondline/figures/time";
import type { Outcome } from "@secondline/scenarios";
import { sayLayouts } from "@secondline/words/page/layouts";
import {
  fallRows,
  foundOf,
  type Layout,
  LETTERS,
  outcomeOf,
  rigName,
  type TableRow,
  verdictRows,
} from "@secondline/workbench";
import { memo, useMemo } from "react";
import { VerdictMark, verdictColour } from "../design/VerdictMark.tsx";
import { words } from "../words.ts";
import styles from "./DifferenceTable.module.css";
import { TraceSample } from "./TraceSample.tsx";
import { useEach } from "./useLayouts.ts";

const NOTHING_YET: Pick<Outcome, "verdict"> & Partial<Pick<Outcome, "reasons">> = { verdict: "open" };

/** What differs, number by number: in the what-if of the pictures, then over all what-ifs of the verdict. */
export const DifferenceTable = memo(function DifferenceTable({ list }: { list: readonly Layout[] }) {
  const names = useEach(list, ({ document }) => rigName(document.history.present.rig));
  const rigs = useEach(list, ({ assessment }) => assessment.assessed.rig);
  const falls = useEach(list, ({ run, assessment }) =>
    run.shown?.key === assessment.key ? run.shown.outcome : undefined,
  );
  // Figures of searches that have not ended are of different sets of what-ifs: they are not held against each other.
  const verdicts = useEach(list, (state) => foundOf(state)?.outcome);
  const soFar = useEach(list, (state) => outcomeOf(state) ?? NOTHING_YET);
  const fails = soFar.map(({ verdict }) => verdict === "fails");
  const fall = complete(falls) ? fallRows(rigs, falls, fails) : undefined;
  const verdict = useMemo(() => (complete(verdicts) ? verdictRows(rigs[0]!, verdicts) : undefined), [rigs, verdicts]);
  const counts = [...new Set(verdicts.map((one) => one?.search.of))];
  const scope =
    counts.length === 1 && counts[0]
      ? sayLayouts("differenceTable.overCounted", { counts: counts[0] })
      : sayLayouts("differenceTable.overEvery");
  return (
    <section className={styles.place} aria-label={sayLayouts("differenceTable.differences")}>
      <h3 className={styles.title}>{sayLayouts("differenceTable.whatDiffers")}</h3>
      <p className={styles.note}>{sayLayouts("differenceTable.legend")}</p>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a table that scrolls sideways must be reachable with the keys */}
      <section className={styles.scroll} aria-label={sayLayouts("differenceTable.tableDifferences")} tabIndex={0}>
        <table className={styles.table}>
          <thead>
            <tr>
              <td />
              {list.map(({ id }, i) => (
                <th key={id} scope="col">
                  <TraceSample look={LAYOUT_LOOKS[i]!} /> <b>{LETTERS[i]}</b>{" "}
                  <span className={styles.verdict} style={{ color: verdictColour(soFar[i]!.verdict) }}>
                    <VerdictMark verdict={soFar[i]!.verdict} size={13} /> {words.verdictWord(soFar[i]!)}
                  </span>
                  <span className={styles.name}>{names[i]}</span>
                </th>
              ))}
            </tr>
          </thead>
          <Group
            title={sayLayouts("differenceTable.whatIf")}
            rows={fall}
            count={list.length}
            waiting={sayLayouts("differenceTable.coming")}
          />
          <Group
            title={scope}
            rows={verdict?.figures}
            count={list.length}
            waiting={sayLayouts("differenceTable.verdictsComing")}
          />
          {verdict && verdict.margins.length > 0 && (
            <Group title={sayLayouts("differenceTable.margins")} rows={verdict.margins} count={list.length} />
          )}
        </table>
      </section>
      {verdict?.note && <p className={styles.note}>{verdict.note}</p>}
    </section>
  );
});

interface GroupProps {
  title: string;
  rows: readonly TableRow[] | undefined;
  count: number;
  waiting?: string;
}

function Group({ title, rows, count, waiting }: GroupProps) {
  return (
    <tbody>
      <tr>
        <th className={styles.group} colSpan={count + 1} scope="rowgroup">
          {title}
        </th>
      </tr>
      {rows === undefined && (
        <tr>
          <td className={styles.waiting} colSpan={count + 1}>
            {waiting}
          </td>
        </tr>
      )}
      {rows?.map(({ id, label, cells, verdicts, changes, kindest }) => (
        <tr key={id}>
          <th scope="row">{label}</th>
          {cells.map((cell, i) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: a layout's cell is known by its place
            <td key={i} data-kindest={kindest.includes(i)}>
              {verdicts?.[i] && <VerdictMark verdict={verdicts[i]} size={12} />} {cell}
              {verdicts?.[i] && verdicts[i] !== "notLoaded" && (
                <span className="visually-hidden"> {words.partVerdict(verdicts[i])}</span>
              )}
              {kindest.includes(i) && <span className="visually-hidden"> {sayLayouts("differenceTable.kindest")}</span>}
              {changes[i] !== "" && <span className={styles.change}>{changes[i]}</span>}
            </td>
          ))}
        </tr>
      ))}
    </tbody>
  );
}

function complete<T>(values: readonly (T | undefined)[]): values is readonly T[] {
  return values.length > 1 && values.every((value) => value !== undefined);
}
