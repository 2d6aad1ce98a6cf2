import { dayAndTime } from "@secondline/words/dates";
import { sayFiles } from "@secondline/words/page/files";
import type { WrittenRig } from "@secondline/workbench";
import { useEffect, useState } from "react";
import { Button } from "../design/Button.tsx";
import { DialogSheet } from "../design/Sheet.tsx";
import type { Copy, WorkStore } from "../device/workStore.ts";
import styles from "./EarlierWork.module.css";

interface Props {
  open: boolean;
  onClose: () => void;
  works: WorkStore | undefined;
  onOpen: (document: WrittenRig, label: string) => void;
}

/** Copies of earlier work on this device, newest first; opening one keeps the current work as another. */
export function EarlierWork({ open, onClose, works, onOpen }: Props) {
  const [copies, setCopies] = useState<readonly Copy[]>();
  useEffect(() => {
    if (!open || !works) return;
    let gone = false;
    works.copies().then(
      (list) => !gone && setCopies(list),
      () => !gone && setCopies([]),
    );
    return () => {
      gone = true;
    };
  }, [open, works]);
  return (
    <DialogSheet open={open} onClose={onClose} title={sayFiles("earlierWork.title")}>
      {copies?.length === 0 && <p>{sayFiles("earlierWork.none")}</p>}
      <ul>
        {copies?.map((copy) => (
          <li key={copy.key} className={styles.copy}>
            <span>
              {copy.name}
              <span className={styles.when}>{dayAndTime(new Date(copy.saved))}</span>
            </span>
            <Button
              label={sayFiles("earlierWork.open")}
              onClick={() => {
                onOpen(copy.document, sayFiles("earlierWork.opened", { name: copy.name }));
                onClose();
              }}
            />
          </li>
        ))}
      </ul>
    </DialogSheet>
  );
}
