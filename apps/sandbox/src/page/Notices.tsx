import { sayPage } from "@secondline/words/page/page";
import type { Notice } from "@secondline/workbench";
import { Button } from "../design/Button.tsx";
import { Lines } from "../design/Lines.tsx";
import { useActions, useSandbox } from "../state/useSandbox.ts";
import styles from "./Notices.module.css";

/** Short messages over the foot of the page; they stay until they are closed, because a fault must not vanish unread. */
export function Notices() {
  const notices = useSandbox((state) => state.session.notices);
  return (
    <section className={styles.notices} aria-label={sayPage("notices.messages")} aria-live="polite">
      {notices.map((notice) => (
        <NoticeSlip key={notice.id} notice={notice} />
      ))}
    </section>
  );
}

function NoticeSlip({ notice }: { notice: Notice }) {
  const { dismiss } = useActions();
  const { action, details } = notice;
  return (
    <div className={`${styles.slip} ${notice.tone === "fault" ? styles.fault : ""}`}>
      <div className={styles.words}>
        <p>{notice.text}</p>
        {details && details.length > 0 && <Lines className={styles.details} of={details} />}
        {action && (
          <Button
            label={action.label}
            onClick={() => {
              action.run();
              dismiss(notice.id);
            }}
          />
        )}
      </div>
      <Button
        tone="quiet"
        icon="close"
        iconOnly
        label={sayPage("notices.closeMessage")}
        onClick={() => dismiss(notice.id)}
      />
    </div>
  );
}
