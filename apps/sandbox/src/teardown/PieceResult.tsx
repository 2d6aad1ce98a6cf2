/** One piece of the plan, and the fields for the machine's result. */

import type { Rig } from "@secondline/rig";
import { type BreakTest, OUTCOMES, type Piece, type Teardown, testFields } from "@secondline/strength";
import { sayTeardown } from "@secondline/words/page/teardown";
import { englishTeardownWords as teardownWords } from "@secondline/words/teardown";
import { NOTHING_TYPED, readTyped, type Typed } from "@secondline/workbench";
import { useId, useState } from "react";
import { Lines } from "../design/Lines.tsx";
import styles from "./teardown.module.css";

interface Props {
  rig: Rig;
  plan: Teardown;
  piece: Piece;
  /** Its result in the log. */
  done: BreakTest | undefined;
  onResult: (test: BreakTest) => void;
}

export function PieceResult({ rig, plan, piece, done, onResult }: Props) {
  const { id, what, where, length, state, teaches } = teardownWords.teardownPiece(rig, plan, piece);
  return (
    <li className={styles.piece}>
      <h3 className={styles.name}>
        <span className={styles.id}>{id}</span> {what}
      </h3>
      <p>
        {where}
        {piece.cuts.length > 0 && ` (${length})`}
      </p>
      {state !== "" && <p>{state}</p>}
      <p className={styles.soft}>{teaches}</p>
      {done ? <Done test={done} /> : <Fields {...{ plan, piece, onResult }} />}
    </li>
  );
}

function Done({ test }: { test: BreakTest }) {
  const { outcome, result, result_to, unit } = testFields(test);
  const load = result_to === "" ? result : `${result} – ${result_to}`;
  return <p className={styles.done}>{sayTeardown("pieceResult.breakLog", { outcome, load, unit })}</p>;
}

function Fields({ plan, piece, onResult }: Pick<Props, "plan" | "piece" | "onResult">) {
  const [typed, setTyped] = useState<Typed>(NOTHING_TYPED);
  const [messages, setMessages] = useState<readonly string[]>([]);
  const faults = useId();
  const put = (part: Partial<Typed>) => {
    setTyped({ ...typed, ...part });
    setMessages([]);
  };
  const keep = () => {
    const reading = readTyped(plan, piece, typed);
    if (reading.ok) onResult(reading.test);
    else setMessages(reading.faults.map(({ message }) => message));
  };
  const number = (name: "result" | "result_to", label: string) => (
    <label className={styles.field}>
      {label}
      <input
        inputMode="decimal"
        autoComplete="off"
        value={typed[name]}
        aria-invalid={messages.length > 0 || undefined}
        aria-describedby={messages.length > 0 ? faults : undefined}
        onChange={(event) => put({ [name]: event.target.value })}
      />
    </label>
  );
  return (
    <form
      className={styles.fields}
      aria-label={sayTeardown("pieceResult.result", { id: piece.id })}
      onSubmit={(event) => {
        event.preventDefault();
        keep();
      }}
    >
      <label className={styles.field}>
        {teardownWords.say("teardown.head.outcome")}
        <select value={typed.outcome} onChange={(event) => put({ outcome: event.target.value })}>
          {OUTCOMES.map((outcome) => (
            <option key={outcome}>{outcome}</option>
          ))}
        </select>
      </label>
      {number("result", typed.outcome === "broke between" ? sayTeardown("pieceResult.fromKn") : "kN")}
      {typed.outcome === "broke between" && number("result_to", sayTeardown("pieceResult.toKn"))}
      <label className={styles.field}>
        {teardownWords.say("teardown.head.broke")}
        <input value={typed.failure_place} onChange={(event) => put({ failure_place: event.target.value })} />
      </label>
      <button type="submit" className={styles.button}>
        {sayTeardown("pieceResult.keepResult")}
      </button>
      {messages.length > 0 && <Lines id={faults} className={styles.faults} role="alert" of={messages} />}
    </form>
  );
}
