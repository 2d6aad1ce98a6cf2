/** A plan of a teardown with fields for its results. Knows no store: what is kept is handed on. */

import type { Rig } from "@secondline/rig";
import type { BreakTest, Teardown } from "@secondline/strength";
import { dayText } from "@secondline/words/dates";
import { englishTeardownWords as teardownWords } from "@secondline/words/teardown";
import { pieceResultOf } from "@secondline/workbench";
import { Lines } from "../design/Lines.tsx";
import { PieceResult } from "./PieceResult.tsx";
import styles from "./teardown.module.css";

interface Props {
  rig: Rig;
  plan: Teardown;
  tests: readonly BreakTest[];
  onResult: (test: BreakTest) => void;
}

export function PlanPart({ rig, plan, tests, onResult }: Props) {
  const { pieces, pulls, on, bands, invented } = plan;
  const wanted = teardownWords.teardownWanted(rig, plan);
  const cannot = teardownWords.teardownCannot(rig, plan);
  return (
    <>
      <h2 className={styles.title}>
        {teardownWords.say("teardown.title", { name: rig.name, on: dayText(on), pieces: pieces.length, pulls })}
      </h2>
      {invented && <p className={styles.warn}>▲ {teardownWords.say("teardown.invented")}</p>}
      <List items={bands.map((band) => teardownWords.teardownBand(rig, band))} />
      <ol className={styles.pieces}>
        {pieces.map((piece) => (
          <PieceResult key={piece.id} {...{ rig, plan, piece, onResult }} done={pieceResultOf(tests, plan, piece)} />
        ))}
      </ol>
      {wanted !== undefined && <p>{wanted}</p>}
      {cannot.length > 0 && (
        <>
          <h3>{teardownWords.say("teardown.cannotHead")}</h3>
          <List items={cannot} />
        </>
      )}
      <h3>{teardownWords.say("teardown.section.assumed")}</h3>
      <List items={teardownWords.teardownAssumed(plan)} />
    </>
  );
}

function List({ items }: { items: readonly string[] }) {
  return <Lines className={styles.list} of={items} />;
}
