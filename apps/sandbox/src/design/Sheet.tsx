import { Dialog } from "@base-ui/react/dialog";
import { sayPage } from "@secondline/words/page/page";
import type { ReactNode } from "react";
import { Button } from "./Button.tsx";
import styles from "./Sheet.module.css";

interface Props {
  open: boolean;
  onClose: () => void;
  title: string;
  children: ReactNode;
  /** Buttons at the foot. */
  actions?: ReactNode;
}

/** A page laid over the notebook for something that needs an answer or a look, then goes away. */
export function DialogSheet({ open, onClose, title, children, actions }: Props) {
  return (
    <Dialog.Root open={open} onOpenChange={(next) => !next && onClose()}>
      <Dialog.Portal>
        <Dialog.Backdrop className={styles.backdrop} />
        <Dialog.Popup className={styles.popup}>
          <header className={styles.head}>
            <Dialog.Title className={styles.title}>{title}</Dialog.Title>
            <Button tone="quiet" icon="close" iconOnly label={sayPage("sheet.close")} onClick={onClose} />
          </header>
          <div className={styles.body}>{children}</div>
          {actions && <footer className={styles.actions}>{actions}</footer>}
        </Dialog.Popup>
      </Dialog.Portal>
    </Dialog.Root>
  );
}
