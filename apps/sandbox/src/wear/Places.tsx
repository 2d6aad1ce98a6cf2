import type { WebbingState } from "@secondline/strength";
import { useMemo } from "react";
import { Button } from "../design/Button.tsx";
import { DEMO_RIGS } from "../files/demoRigs.ts";
import { useContextOrThrow, useSandbox } from "../state/useSandbox.ts";
import { dateWords } from "./days.ts";
import type { Stretch } from "./entryKinds.ts";
import { around } from "./useAlong.ts";
import { applyTo } from "./useInRig.ts";
import { useFits, useWear, useWearActions, useWearState } from "./useWear.ts";
import styles from "./wear.module.css";
import { flagWords } from "./wearWords.ts";

/** Old marks that lie in a loaded span today, in words. */
export function Places() {
  const { webbings, flags } = useWearState();
  const on = useWear((state) => state.on);
  const { look } = useWearActions();
  function show({ id, to }: WebbingState, place: Stretch): void {
    const owner = { list: "webbings", index: webbings.findIndex((webbing) => webbing.id === id) } as const;
    look({ owner, entry: undefined, along: around(place, to) });
    document.querySelector("[data-along]")?.scrollIntoView({ block: "nearest" });
  }
  const told = useMemo(
    () =>
      webbings
        .map((webbing) => ({ webbing, words: flagWords(webbing, flags) }))
        .filter(({ words }) => words.length > 0),
    [webbings, flags],
  );
  return (
    <section className={styles.section} aria-label="Places to look at">
      <h3 className={styles.h3}>Look at these places</h3>
      {told.length === 0 && (
        <p className={styles.serif}>
          No old mark, seam or damage on record lies in a loaded span on {dateWords(on)}. What nobody wrote down is not
          in here.
        </p>
      )}
      {told.map(({ webbing, words }) => (
        <div key={webbing.id}>
          <h4 className={styles.h4}>{webbing.name}</h4>
          <ul className={styles.flags}>
            {words.map(({ key, headline, detail, place }) => (
              <li key={key}>
                <span aria-hidden="true" className={styles.flagMark}>
                  ▲
                </span>
                <span>
                  {headline} <span className={styles.soft}>{detail}</span>{" "}
                  <button type="button" className={styles.show} onClick={() => show(webbing, place)}>
                    Show it
                  </button>
                </span>
              </li>
            ))}
          </ul>
        </div>
      ))}
    </section>
  );
}

/** Puts the state of the day shown into the rig in hand, as one step that undo takes back. */
export function UseInRig() {
  const sandbox = useContextOrThrow();
  const record = useWear((state) => state.good.record);
  const faulty = useWear((state) => state.issues.length > 0);
  const on = useWear((state) => state.on);
  const fits = useFits();
  const rigName = useSandbox((state) => state.document.rig.name);
  const rigFaulty = useSandbox((state) => state.document.issues.length > 0);
  const names = [
    ...new Set(
      record.webbings.flatMap(({ entries }) =>
        entries.flatMap((e) => (e.event === "rigged" || e.event === "moved" ? [e.placement.rig] : [])),
      ),
    ),
  ];
  const demo = DEMO_RIGS.find(({ document }) => names.includes(String(document.name)) && document.name !== rigName);
  return (
    <section className={styles.section} aria-label="The rig in hand">
      <h3 className={styles.h3}>The rig in hand</h3>
      {fits ? (
        <p className={styles.note}>
          {rigName}: takes conditions, wear and months in the clamp from this record, as of {dateWords(on)}, in place of
          what its own file says. Positions are exact only if webbing and rig are measured alike.
        </p>
      ) : (
        <p className={styles.note}>
          The record has nothing in “{rigName}” on {dateWords(on)}. It speaks of:{" "}
          {names.length > 0 ? names.join("; ") : "no rig yet"}.
        </p>
      )}
      <div className={styles.buttons}>
        <Button
          tone="filled"
          label="Use this state in the rig"
          disabled={!fits || faulty || rigFaulty}
          onClick={() => applyTo(sandbox, record, on)}
        />
        {!fits && demo && (
          <Button
            label={`Open ${String(demo.document.name).replace("Example crag, ", "")}`}
            onClick={() => sandbox.actions.replaceRig(demo.document, `opened ${demo.title}`)}
          />
        )}
      </div>
      {(faulty || rigFaulty) && (
        <p className={styles.wrong}>✕ First put right what is wrong in the {faulty ? "record" : "rig"}.</p>
      )}
    </section>
  );
}
