import { type WhatIf, whatIfKey } from "@secondline/scenarios";
import { sayVerdict } from "@secondline/words/page/verdict";
import { useActions, useSandbox } from "../state/useSandbox.ts";
import styles from "./Reasons.module.css";

/** Brings a what-if into the scene, unless it is there. */
export function Watch({ whatIf }: { whatIf: WhatIf }) {
  const { chooseWhatIf } = useActions();
  const chosen = useSandbox((state) => whatIfKey(state.session.whatIf));
  if (whatIfKey(whatIf) === chosen) return null;
  return (
    <button type="button" className={styles.watch} onClick={() => chooseWhatIf(whatIf)}>
      {sayVerdict("watch.watch")}
    </button>
  );
}
