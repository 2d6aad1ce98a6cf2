import { newRigWords } from "@secondline/words/newRig";
import {
  EMPTY_STOCK,
  STOCK_FIELDS,
  type StockDocument,
  type StockEntry,
  type StockEntryField,
  type StockFault,
  stockFaultText,
  stockFrom,
  withPull,
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
    const read = await withPull(entry, file);
    setEntry(read.entry);
    setTold(read.told);
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
        {STOCK_FIELDS.map(({ at, label, options, placeholder }) => {
          const put = (text: string) => setEntry({ ...entry, [at]: text });
          return options ? (
            <Choice key={at} {...{ label, options }} value={entry[at]} onChange={put} />
          ) : (
            <Typed key={at} {...{ at, label, placeholder, faults, put }} value={entry[at]} />
          );
        })}
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
              <Typed
                key={part}
                {...{ at, faults }}
                label={say(`own.${part}`, { number: i + 1 })}
                value={row[part]}
                placeholder={part === "load" ? "2 kN" : "1.5 %"}
                put={(text) => put(i, part, text)}
                wide
              />
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

interface TypedProps {
  at: StockEntryField;
  label: string;
  value: string;
  placeholder: string | undefined;
  faults: readonly StockFault[];
  put: (text: string) => void;
  wide?: boolean;
}

/** A field with its faults, and the remedies that there are for them. */
function Typed({ at, label, value, placeholder = "", faults, put, wide = false }: TypedProps) {
  const own = faults.filter((one) => one.at === at);
  const remedies = own.flatMap((one) => (one.kind === "issue" && one.remedy !== undefined ? [one.remedy] : []));
  return (
    <div>
      <TextField {...{ label, value, placeholder, wide }} messages={own.map(stockFaultText)} onChange={put} />
      {remedies.map((remedy) => (
        <Button key={remedy} label={say("remedy", { remedy })} onClick={() => put(remedy)} />
      ))}
    </div>
  );
}
