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

/** Copies of earlier work on this device, newest first; opening one keeps the work in hand as another. */
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
    <DialogSheet open={open} onClose={onClose} title="Earlier work on this device">
      {copies?.length === 0 && <p>There is none yet. A copy is kept whenever another rig takes the place of yours.</p>}
      <ul>
        {copies?.map((copy) => (
          <li key={copy.key} className={styles.copy}>
            <span>
              {copy.name}
              <span className={styles.when}>{new Date(copy.saved).toLocaleString()}</span>
            </span>
            <Button
              label="Open"
              onClick={() => {
                onOpen(copy.document, `opened ${copy.name}`);
                onClose();
              }}
            />
          </li>
        ))}
      </ul>
    </DialogSheet>
  );
}
