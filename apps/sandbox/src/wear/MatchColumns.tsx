import { GENERIC_STOCKS, listed, unitsOf } from "@secondline/rig";
import type { LogFact } from "@secondline/strength";
import { type BreakTest, LOG_COLUMNS, type LogColumn, REQUIRED_COLUMNS } from "@secondline/strength";
import { quantity } from "@secondline/words";
import { columnLabel, sayColumns as say } from "@secondline/words/columns";
import { tellLogFault } from "@secondline/words/logFaults";
import { moreText } from "@secondline/words/more";
import { sayBreakLog } from "@secondline/words/page/breakLog";
import {
  type ColumnMatch,
  chosenWord,
  DATE_ORDERS,
  KNOWN_WORDS,
  type LogTable,
  loadOf,
  missingIn,
  readMatched,
  WORD_COLUMNS,
  withWord,
  wordsIn,
} from "@secondline/workbench";
import { useMemo, useState } from "react";
import { Button } from "../design/Button.tsx";
import { Choice } from "../design/Choice.tsx";
import { TextField } from "../design/TextField.tsx";
import { download, fileName } from "../device/download.ts";
import styles from "./matchColumns.module.css";

interface Props {
  file: string;
  table: LogTable;
  first: ColumnMatch;
  remembered: boolean;
  onTake: (tests: readonly BreakTest[], match: ColumnMatch) => void;
  onCancel: () => void;
}

const NO_COLUMN = " none";
const SAME_FOR_ALL = " same";

/** Columns of a file matched with those of a break log, with the first rows as they are read. */
export function MatchColumns({ file, table, first, remembered, onTake, onCancel }: Props) {
  const [match, setMatch] = useState(first);
  const missing = missingIn(match);
  const unknown = WORD_COLUMNS.some((column) => wordsIn(table, match, column).some(({ means }) => means === undefined));
  const reading = useMemo(() => (missingIn(match).length > 0 ? undefined : readMatched(table, match)), [table, match]);
  const count = reading?.ok ? reading.tests.length : 0;
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
      <Words {...{ table, match, setMatch }} />
      <Preview tests={reading?.ok ? reading.tests : []} />
      <div role="status" className={styles.state}>
        {missing.length > 0
          ? say("state.missing", { list: missing.map((one) => columnLabel(one)).join(", ") })
          : unknown
            ? say("state.words")
            : reading?.ok
              ? say("state.good", { count })
              : say("state.faults", { count: new Set(reading?.faults.map(({ line }) => line)).size })}
      </div>
      {reading && !reading.ok && !unknown && <Faults faults={reading.faults} />}
      <div className={styles.buttons}>
        <Button
          tone="filled"
          label={count > 0 ? say("take", { count }) : say("takeNone")}
          disabled={!reading?.ok}
          onClick={() => reading?.ok && onTake(reading.tests, match)}
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

interface Part {
  table: LogTable;
  match: ColumnMatch;
  setMatch: (match: ColumnMatch) => void;
}

/** Where one column of the log comes from; a unit is chosen from those that there are. */
function Source({ column, table, match, setMatch }: Part & { column: LogColumn }) {
  const from = match.columns[column];
  const put = (source: ColumnMatch["columns"][LogColumn]) => {
    const { [column]: _, ...others } = match.columns;
    setMatch({ ...match, columns: source ? { ...others, [column]: source } : others });
  };
  const isNeeded = REQUIRED_COLUMNS.includes(column);
  const label = isNeeded ? `${columnLabel(column)}, ${say("needed")}` : columnLabel(column);
  const value = !from ? NO_COLUMN : "same" in from ? SAME_FOR_ALL : from.column;
  const choose = (next: string) =>
    put(next === NO_COLUMN ? undefined : next === SAME_FOR_ALL ? { same: "" } : { column: next });
  return (
    <div className={styles.source} data-missing={(isNeeded && !from) || undefined}>
      <Choice
        label={label}
        value={value}
        options={[
          { value: NO_COLUMN, label: say("source.none") },
          { value: SAME_FOR_ALL, label: say("source.same") },
          ...table.columns.map((name) => ({ value: name, label: name })),
        ]}
        onChange={choose}
      />
      {from && "same" in from && <Same {...{ column }} value={from.same} onChange={(same) => put({ same })} />}
      {column === "unit" && !from && <p className={styles.note}>{say("unit.ask")}</p>}
    </div>
  );
}

function Same({ column, value, onChange }: { column: LogColumn; value: string; onChange: (text: string) => void }) {
  const label = say("same.label", { column: columnLabel(column) });
  const known =
    column === "unit" ? unitsOf("force") : column === "outcome" || column === "wet" ? KNOWN_WORDS[column] : undefined;
  if (!known) return <TextField label={label} value={value} onChange={onChange} />;
  const options = [{ value: "", label: say("unit.choose") }, ...known.map((one) => ({ value: one, label: one }))];
  return <Choice<string> label={label} value={value} options={options} onChange={onChange} />;
}

/** Words of the file that mean one of few, and materials that may have another name in a rig. */
function Words({ table, match, setMatch }: Part) {
  const put = (column: LogColumn, text: string, means: string | undefined) =>
    setMatch(withWord(match, column, text, means));
  const strange = WORD_COLUMNS.flatMap((column) =>
    wordsIn(table, match, column)
      .filter(({ text, means }) => means === undefined || chosenWord(match, column, text) !== undefined)
      .map((one) => ({ column, ...one })),
  );
  const materials = wordsIn(table, match, "material");
  return (
    <>
      {strange.length > 0 && (
        <section className={styles.words}>
          <h3 className={styles.head}>{say("words.head")}</h3>
          <p className={styles.note}>{say("words.intro")}</p>
          {strange.map(({ column, text, means }) => (
            <Choice<string>
              key={`${column} ${text}`}
              label={say("words.label", { text, column: columnLabel(column) })}
              value={means ?? ""}
              options={[
                { value: "", label: say("words.choose") },
                ...KNOWN_WORDS[column].map((word) => ({ value: word, label: word })),
              ]}
              onChange={(next) => put(column, text, next === "" ? undefined : next)}
            />
          ))}
        </section>
      )}
      {materials.length > 0 && (
        <section className={styles.words}>
          <h3 className={styles.head}>{say("material.head")}</h3>
          <p className={styles.note}>{say("material.intro")}</p>
          {materials.map(({ text, means }) => (
            <Choice<string>
              key={text}
              label={text}
              value={means !== undefined && GENERIC_STOCKS.has(means) ? means : ""}
              options={[
                { value: "", label: say("material.asIs", { text }) },
                ...[...GENERIC_STOCKS].map(([id, { name }]) => ({ value: id, label: name })),
              ]}
              onChange={(next) => put("material", text, next === "" ? text : next)}
            />
          ))}
        </section>
      )}
    </>
  );
}

const PREVIEWED_TESTS = 5;

function Preview({ tests }: { tests: readonly BreakTest[] }) {
  return (
    <section className={styles.preview}>
      <h3 className={styles.head}>{say("preview.head")}</h3>
      {tests.length === 0 ? (
        <p className={styles.note}>{say("preview.none")}</p>
      ) : (
        <div className={styles.scroll}>
          <table className={styles.table}>
            <thead>
              <tr>
                {(["date", "part", "material", "state", "wet", "outcome"] as const).map((column) => (
                  <th key={column} scope="col">
                    {columnLabel(column)}
                  </th>
                ))}
                <th scope="col">{say("preview.load")}</th>
              </tr>
            </thead>
            <tbody>
              {tests.slice(0, PREVIEWED_TESTS).map((test) => (
                <tr key={test.line}>
                  <td>{test.date ?? ""}</td>
                  <td>{test.part}</td>
                  <td>{GENERIC_STOCKS.get(test.material)?.name ?? test.material}</td>
                  <td>{test.state}</td>
                  <td>{test.wet ? sayBreakLog("matchColumns.wet") : sayBreakLog("matchColumns.dry")}</td>
                  <td>{test.outcome}</td>
                  <td className={styles.number}>{quantity.strength(loadOf(test))}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </div>
      )}
    </section>
  );
}

function Faults({
  faults,
}: {
  faults: readonly { readonly line: number; readonly column: string; readonly message: LogFact }[];
}) {
  const { issues, more } = listed(faults);
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
