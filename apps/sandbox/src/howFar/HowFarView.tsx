import { howFarWords as words } from "@secondline/words/howFar";
import { useEffect } from "react";
import { useStore } from "zustand";
import type { Booted } from "../boot.ts";
import type { Theme } from "../design/palette.ts";
import { howFarDesk } from "../desks/howFarHere.ts";
import { useActions } from "../state/useSandbox.ts";
import { CautionFoot } from "../verdict/CautionFoot.tsx";
import { words as common } from "../words.ts";
import { HowFarForm } from "./HowFarForm.tsx";
import styles from "./howFar.module.css";
import { PointPane } from "./PointPane.tsx";
import { SweepResult } from "./SweepResult.tsx";

interface Props {
  booted: Booted;
  theme: Theme;
  wide: boolean;
}

/** A number of the rig along a range: where what is required stops being kept, and each value as its run. */
export function HowFarView({ booted, theme, wide }: Props) {
  const desk = howFarDesk(booted.sandbox);
  const at = useStore(desk.store, (state) => state.at);
  const found = useStore(desk.store, (state) => state.found);
  const { stop, runNow } = useActions();
  // The threads are for what is asked here; what the open rig still lacked is looked for when it is in sight again.
  useEffect(() => {
    stop();
    return runNow;
  }, [stop, runNow]);
  // The next time it is opened without saying of what, it is about the open rig.
  useEffect(() => () => desk.about(), [desk]);
  const cautions = found ? words.sweep.cautions(found.named, found.swept) : common.generalCautions();
  const pane = at && found && desk.canOpen() && (
    <PointPane key={`${found.key} ${at.join(" ")}`} {...{ booted, desk, found, at, theme }} />
  );
  return (
    <div className={styles.view}>
      <div className={styles.body} data-point={pane ? "" : undefined}>
        {(wide || !pane) && (
          <main className={styles.main}>
            <HowFarForm desk={desk} booted={booted} />
            <SweepResult desk={desk} />
          </main>
        )}
        {pane}
      </div>
      <CautionFoot cautions={cautions} />
    </div>
  );
}
