import { sceneWords } from "@secondline/figures/scene";
import { sayLayouts } from "@secondline/words/page/layouts";
import { type Layout, LETTERS, outcomeOf, type PlaybackClock } from "@secondline/workbench";
import type { Theme } from "../design/palette.ts";
import { useReducedMotion } from "../design/useMedia.ts";
import { Elevation } from "../scene/elevation/Elevation.tsx";
import { SandboxContext, useRecordings, useSandbox } from "../state/useSandbox.ts";
import styles from "./LayoutColumn.module.css";
import { LayoutDifferences } from "./LayoutDifferences.tsx";
import { LayoutHead } from "./LayoutHead.tsx";
import { LayoutFall, LayoutVerdict } from "./LayoutOutcome.tsx";

interface Props {
  layout: Layout;
  /** 0 for the open rig. */
  place: number;
  first: Layout;
  clock: PlaybackClock;
  theme: Theme;
  frame: "event" | "overview";
  editing: boolean;
  full: boolean;
  onEdit: () => void;
  onDuplicate: () => void;
  onRemove: () => void;
}

/** One layout from top to bottom: picture, result of the fall, verdict, and what the layout does differently. */
export function LayoutColumn(props: Props) {
  const { layout, place } = props;
  return (
    <SandboxContext.Provider value={layout.sandbox}>
      <section
        className={styles.column}
        aria-label={sayLayouts("layoutColumn.layout", { letter: LETTERS[place]! })}
        data-editing={props.editing}
      >
        <LayoutHead {...props} />
        <Picture {...props} />
        <LayoutFall />
        <LayoutVerdict />
        <LayoutDifferences place={place} first={props.first} />
      </section>
    </SandboxContext.Provider>
  );
}

function Picture({ clock, theme, frame }: Props) {
  const { current } = useRecordings();
  const shown = useSandbox((state) => state.run.shown);
  const outcome = useSandbox(outcomeOf);
  const reducedMotion = useReducedMotion();
  if (!current || !shown)
    return <div className={`${styles.picture} ${styles.empty}`}>{sayLayouts("layoutColumn.coming")}</div>;
  return (
    <div
      className={styles.picture}
      data-scene
      role="img"
      aria-label={sceneWords(current, shown.assessed.rig, outcome, shown.outcome.gaveWay)}
      // biome-ignore lint/a11y/noNoninteractiveTabindex: the picture is moved with the arrow keys
      tabIndex={0}
      // The wheel scrolls the page; with Ctrl it zooms the picture.
      onWheelCapture={(event) => {
        if (!event.ctrlKey && !event.metaKey) event.stopPropagation();
      }}
    >
      <Elevation
        recording={current}
        rig={shown.assessed.rig}
        gaveWay={shown.outcome.gaveWay}
        clock={clock}
        theme={theme}
        camera={frame}
        showForces={false}
        reducedMotion={reducedMotion}
      />
    </div>
  );
}
