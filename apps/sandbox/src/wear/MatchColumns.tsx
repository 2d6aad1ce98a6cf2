import { issuesListed, type LineStock } from "@secondline/rig";
import { type BreakTest, LOG_COLUMNS, type LogColumn, type LogFault } from "@secondline/strength";
import { columnLabel, sayColumns as say } from "@secondline/words/columns";
import { tellLogFault } from "@secondline/words/logFaults";
import { moreText } from "@secondline/words/more";
import { sayBreakLog } from "@secondline/words/page/breakLog";
import { type ColumnMatch, DATE_ORDERS, fileName, type LogTable, withWord } from "@secondline/workbench";
import {
  type MatchState,
  matchState,
  materialWords,
  previewHeads,
  previewRows,
  sameOptions,
  sourceChoice,
  strangeWords,
  type WordChoice,
  withSource,
} from "@secondline/workbench/record";
import { useMemo, useState } from "react";
import { Button } from "../design/Button.tsx";
import { Choice } from "../design/Choice.tsx";
import { Table } from "../design/Table.tsx";
import { TextField } from "../design/TextField.tsx";
import { download } from "../device/download.ts";
import { useOwnStocks } from "../stocks/useOwnStocks.ts";
import styles from "./matchColumns.module.css";

interface Props {
  file: string;
  table: LogTable;
  first: ColumnMatch;
  remembered: boolean;
  onTake: (tests: readonly BreakTest[], match: ColumnMatch) => void;
  onCancel: () => void;
}

/** Columns of a file matched with those of a break log, with the first rows as they are read. */
export function MatchColumns({ file, table, first, remembered, onTake, onCancel }: Props) {
  const [match, setMatch] = useState(first);
  const state = useMemo(() => matchState(table, match), [table, match]);
  const { tests, elsewhere, missing, words } = state;
  const own = useOwnStocks();
  const count = tests?.length ?? 0;
  return (
    <section className={styles.match} aria-label={say("title")}>
      <h2 className={styles.title}>{say("title")}</h2>
      <p className={styles.intro}>{say("intro", { file, rows: table.rows.length })}</p>
      {remembered && <p className={styles.note}>{say("remembered")}</p>}
      <div className={styles.columns}>
        {LOG_COLUMNS.map((column) => (
          <Source key={column} {...{ column, table, match, setMatch }} />
        ))}
        {match.columns.date && "column" in match.columns.date && (
          <Choice
            label={say("dates.label")}
            value={match.dates}
            options={DATE_ORDERS.map((value) => ({ value, label: say(`dates.${value}`) }))}
            onChange={(dates) => setMatch({ ...match, dates })}
          />
        )}
      </div>
      {WORDS.map(([of, choices]) => (
        <Words key={of} choices={choices(table, match, own)} {...{ of, match, setMatch }} />
      ))}
      <Preview state={state} own={own} />
      <div role="status" className={styles.state}>
        {words}
      </div>
      {elsewhere.length > 0 && <Faults faults={elsewhere} />}
      <div className={styles.buttons}>
        <Button
          tone="filled"
          label={count > 0 ? say("take", { count }) : say("takeNone")}
          disabled={!tests}
          onClick={() => tests && onTake(tests, match)}
        />
        <Button label={say("cancel")} onClick={onCancel} />
        <Button
          tone="quiet"
          label={say("save")}
          title={say("saveHint")}
          disabled={missing.length > 0}
          onClick={() =>
            download(
              `${JSON.stringify(match, null, 2)}\n`,
              fileName(sayBreakLog("matchColumns.columns", { file }), "json"),
              "application/json",
            )
          }
        />
      </div>
    </section>
  );
}

const WORDS = [
  ["words", strangeWords],
  ["material", materialWords],
] as const;

interface Part {
  match: ColumnMatch;
  setMatch: (match: ColumnMatch) => void;
}

/** Where one column of the log comes from; a unit is chosen from those that there are. */
function Source({ column, table, match, setMatch }: Part & { column: LogColumn; table: LogTable }) {
  const from = match.columns[column];
  const { isMissing, ...choice } = sourceChoice(table, match, column);
  const onSame = (same: string) => setMatch({ ...match, columns: { ...match.columns, [column]: { same } } });
  return (
    <div className={styles.source} data-missing={isMissing || undefined}>
      <Choice {...choice} onChange={(next) => setMatch(withSource(table, match, column, next))} />
      {from && "same" in from && <Same {...{ column }} value={from.same} onChange={onSame} />}
      {column === "unit" && !from && <p className={styles.note}>{say("unit.ask")}</p>}
    </div>
  );
}

function Same({ column, value, onChange }: { column: LogColumn; value: string; onChange: (text: string) => void }) {
  const label = say("same.label", { column: columnLabel(column) });
  const options = sameOptions(column);
  return options ? <Choice {...{ label, value, options, onChange }} /> : <TextField {...{ label, value, onChange }} />;
}

/** Words of the file that mean one of few, or materials that may have another name in a rig. */
function Words({ of, choices, match, setMatch }: Part & { of: "words" | "material"; choices: readonly WordChoice[] }) {
  if (choices.length === 0) return null;
  return (
    <section className={styles.words}>
      <h3 className={styles.head}>{say(`${of}.head`)}</h3>
      <p className={styles.note}>{say(`${of}.intro`)}</p>
      {choices.map(({ column, text, ...choice }) => (
        <Choice
          key={`${column} ${text}`}
          {...choice}
          onChange={(next) =>
            setMatch(withWord(match, column, text, next === "" ? (of === "material" ? text : undefined) : next))
          }
        />
      ))}
    </section>
  );
}

/** The first rows, and the bad ones with the reason beside them. */
function Preview({ state, own }: { state: MatchState; own: readonly LineStock[] }) {
  const rows = previewRows(state, own);
  return (
    <section className={styles.preview}>
      <h3 className={styles.head}>{say("preview.head")}</h3>
      {rows.length === 0 ? (
        <p className={styles.note}>{say("preview.none")}</p>
      ) : (
        <div className={styles.scroll}>
          <Table
            heads={previewHeads(state)}
            rows={rows.map(({ cells }) => cells)}
            areMarked={rows.map(({ bad }) => bad)}
            isNamed
            className={styles.table}
          />
        </div>
      )}
      {state.moreBad > 0 && <p className={styles.wrong}>{say("preview.more", { count: state.moreBad })}</p>}
    </section>
  );
}

/** Faults of no row. */
function Faults({ faults }: { faults: readonly LogFault[] }) {
  const { issues, more } = issuesListed(faults);
  return (
    <ul className={styles.faults}>
      {issues.map(({ line, column, message }) => (
        <li key={`${line} ${column} ${message.code}`}>
          {say("fault.line", { line, column, message: tellLogFault(message) })}
        </li>
      ))}
      {more !== undefined && <li>{moreText(more)}</li>}
    </ul>
  );
}
