import { Collapsible } from "@base-ui/react/collapsible";
import { sayPage } from "@secondline/words/page/page";
import type { ReactNode } from "react";
import styles from "./Disclosure.module.css";
import { Icon } from "./icons.tsx";

interface Props {
  /** The heading that opens and closes. */
  title: ReactNode;
  children: ReactNode;
  defaultOpen?: boolean;
  open?: boolean;
  onOpenChange?: (open: boolean) => void;
  /** Number of faults inside, shown while closed too. */
  faults?: number;
  level?: 2 | 3 | 4;
}

export function Disclosure({ title, children, defaultOpen, open, onOpenChange, faults = 0, level = 3 }: Props) {
  const Heading = `h${level}` as const;
  const control = {
    ...(open === undefined ? {} : { open }),
    ...(defaultOpen === undefined ? {} : { defaultOpen }),
    ...(onOpenChange === undefined ? {} : { onOpenChange }),
  };
  return (
    <Collapsible.Root className={styles.root} {...control}>
      <Heading className={styles.heading}>
        <Collapsible.Trigger className={styles.trigger}>
          <span className={styles.arrow}>
            <Icon name="right" size={14} />
          </span>
          <span className={styles.title}>{title}</span>
          {faults > 0 && <span className={styles.faults}>{sayPage("disclosure.putRight", { faults })}</span>}
        </Collapsible.Trigger>
      </Heading>
      <Collapsible.Panel className={styles.panel}>{children}</Collapsible.Panel>
    </Collapsible.Root>
  );
}
