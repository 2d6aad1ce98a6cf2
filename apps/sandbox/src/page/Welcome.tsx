import { sayVerdict } from "@secondline/words/page/verdict";
import { useState } from "react";
import { FIRST_RIG } from "../demo/firstRig.ts";
import { Button } from "../design/Button.tsx";
import { TextButton } from "../design/TextButton.tsx";
import { deviceShelf } from "../device/shelf.ts";
import { useActions, useSandbox } from "../state/useSandbox.ts";
import styles from "./Welcome.module.css";

const READ_KEY = "secondline.welcome";

/** What this answers and for whom: beside the demo rig of a first visit, until somebody has read it. */
export function Welcome() {
  const isDemo = useSandbox((state) => state.document.history.present.rig === FIRST_RIG);
  const { look } = useActions();
  const [read, setRead] = useState(() => deviceShelf().getItem(READ_KEY) !== null);
  if (!isDemo || read) return null;
  return (
    <section className={styles.welcome} aria-label={sayVerdict("welcome.what")}>
      <p>
        {sayVerdict("welcome.text")}{" "}
        <TextButton onClick={() => look({ view: "newRig" })}>{sayVerdict("welcome.beginYourOwn")}</TextButton>
      </p>
      <Button
        tone="quiet"
        icon="close"
        iconOnly
        label={sayVerdict("welcome.read")}
        onClick={() => {
          setRead(true);
          try {
            deviceShelf().setItem(READ_KEY, "read");
          } catch {
            // It is said again at the next visit.
          }
        }}
      />
    </section>
  );
}
