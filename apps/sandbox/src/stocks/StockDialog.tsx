import { broughtIn } from "@secondline/words";
import { newRigWords } from "@secondline/words/newRig";
import {
  EMPTY_STOCK,
  loadRows,
  readPull,
  type StockDocument,
  type StockEntry,
  type StockEntryField,
  type StockFault,
  stockFaultText,
  stockFrom,
  stockOptions,
} from "@secondline/workbench";
import { useEffect, useRef, useState } from "react";
import { Button } from "../design/Button.tsx";
import { Choice } from "../design/Choice.tsx";
import { DialogSheet } from "../design/Sheet.tsx";
import { TextField } from "../design/TextField.tsx";
import { chooseFile } from "../device/chooseFile.ts";
import styles from "./stocks.module.css";

const { say } = newRigWords;
const TABLES = ".csv,.tsv,.txt,text/csv";
const BASES = ["published", "tested", "common practice", "from memory", "assumed"].map((kind) => ({
  value: kind,
  label: broughtIn(kind),
}));

interface Props {
  open: boolean;
  /** Names that are taken. */
  names: readonly string[];
  onClose: () => void;
  onKeep: (stock: StockDocument) => void;
}

/** A webbing or rope of one's own: typed, its stretch also from the file of a test machine. */
export function StockDialog({ open, names, onClose, onKeep }: Props) {
  const [entry, setEntry] = useState(EMPTY_STOCK);
  const [tried, setTried] = useState(false);
  const [told, setTold] = useState("");
  const body = useRef<HTMLDivElement>(null);
  const word = useRef<HTMLParagraphElement>(null);
  // What is told of a file stands at the dialog's foot, where a screen may end above it.
  useEffect(() => {
    if (told !== "") word.current?.scrollIntoView({ block: "nearest" });
  }, [told]);
  const read = stockFrom(entry, names);
  const faults = tried && !read.ok ? read.faults : [];
  const doubts = read.ok ? read.doubts : [];
  const put = (at: Exclude<keyof StockEntry, "loads">, text: string) => setEntry({ ...entry, [at]: text });
  const said = (at: StockEntryField) => ({
    messages: faults.filter((one) => one.at === at).map(stockFaultText),
  });
  const text = (at: "name" | "strength" | "source" | "mass" | "width", placeholder = "") => (
    <>
      <TextField
        label={say(`own.${at}`)}
        value={entry[at]}
        placeholder={placeholder}
        onChange={(next) => put(at, next)}
        {...said(at)}
      />
      <Remedies faults={faults} at={at} onTake={(remedy) => put(at, remedy)} />
    </>
  );
  function keep(): void {
    setTried(true);
    if (!read.ok) {
      // The first field with a fault, once the faults stand beside their fields.
      requestAnimationFrame(() => body.current?.querySelector<HTMLElement>("[aria-invalid=true]")?.focus());
      return;
    }
    onKeep(read.stock);
    setEntry(EMPTY_STOCK);
    setTried(false);
    setTold("");
    onClose();
  }
  async function take(file: File): Promise<void> {
    const pulled = await file.text().then(readPull, () => undefined);
    if (pulled?.ok) {
      setEntry({ ...entry, loads: loadRows(pulled.points) });
      setTold(say("own.fileRead", { file: file.name, count: pulled.points.length }));
    } else {
      const why = pulled ? pulled.faults.map(newRigWords.fileFault).join(" ") : say("file.device");
      setTold(say("file.unread", { file: file.name, why }));
    }
  }
  return (
    <DialogSheet
      open={open}
      onClose={onClose}
      title={say("own.title")}
      actions={
        <Button tone="filled" label={doubts.length > 0 ? say("own.doubtful") : say("own.keep")} onClick={keep} />
      }
    >
      <div ref={body}>
        <p className={styles.intro}>{say("own.intro")}</p>
        {text("name")}
        <Choice
          label={say("own.fibre")}
          value={entry.fibre}
          options={stockOptions("fibre")}
          onChange={(next) => put("fibre", next)}
        />
        <Choice
          label={say("own.form")}
          value={entry.form}
          options={stockOptions("form")}
          onChange={(next) => put("form", next)}
        />
        {text("strength", "30 kN")}
        <Choice
          label={say("own.basisKind")}
          value={entry.basisKind}
          options={BASES}
          onChange={(next) => put("basisKind", next)}
        />
        {text("source")}
        {text("mass", "60 g/m")}
        {text("width", say("own.likeGeneric"))}
        <h3 className={styles.heading}>{say("own.loads")}</h3>
        <Loads entry={entry} faults={faults} onChange={setEntry} />
        <div className={styles.buttons}>
          <Button icon="open" label={say("own.file")} onClick={() => chooseFile(TABLES, take)} />
        </div>
        <p ref={word} role="status" className={styles.told}>
          {told}
        </p>
        {doubts.map(({ kind, values }) => (
          <p key={kind} className={styles.doubt}>
            {say(`own.doubt.${kind}`, values)}
          </p>
        ))}
      </div>
    </DialogSheet>
  );
}

/** Loads and the stretch under them, smallest first. */
function Loads({
  entry,
  faults,
  onChange,
}: {
  entry: StockEntry;
  faults: readonly StockFault[];
  onChange: (entry: StockEntry) => void;
}) {
  const { loads } = entry;
  const put = (i: number, part: "load" | "stretch", text: string) =>
    onChange({ ...entry, loads: loads.map((row, j) => (j === i ? { ...row, [part]: text } : row)) });
  return (
    <>
      {loads.map((row, i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: a row is known by its place
        <div key={i} className={styles.row}>
          {(["load", "stretch"] as const).map((part) => {
            const at = `loads.${i}.${part}` as const;
            return (
              <div key={part}>
                <TextField
                  label={say(`own.${part}`, { number: i + 1 })}
                  value={row[part]}
                  placeholder={part === "load" ? "2 kN" : "1.5 %"}
                  messages={faults.filter((one) => one.at === at).map(stockFaultText)}
                  onChange={(text) => put(i, part, text)}
                  wide
                />
                <Remedies faults={faults} at={at} onTake={(remedy) => put(i, part, remedy)} />
              </div>
            );
          })}
        </div>
      ))}
      <div className={styles.buttons}>
        <Button
          icon="plus"
          label={say("own.more")}
          onClick={() => onChange({ ...entry, loads: [...loads, { load: "", stretch: "" }] })}
        />
        <Button
          icon="minus"
          label={say("own.fewer")}
          disabled={loads.length <= 2}
          onClick={() => onChange({ ...entry, loads: loads.slice(0, -1) })}
        />
      </div>
    </>
  );
}

function Remedies({
  faults,
  at,
  onTake,
}: {
  faults: readonly StockFault[];
  at: StockEntryField;
  onTake: (remedy: string) => void;
}) {
  return faults.map((one) =>
    one.kind === "issue" && one.at === at && one.remedy !== undefined ? (
      <Button key={one.remedy} label={say("remedy", { remedy: one.remedy })} onClick={() => onTake(one.remedy!)} />
    ) : null,
  );
}
