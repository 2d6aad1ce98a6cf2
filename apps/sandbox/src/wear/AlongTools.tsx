import { scaleOf } from "@secondline/figures";
import { panned } from "@secondline/figures/time";
import { overview, sightWindow } from "@secondline/figures/wear";
import type { WebbingState } from "@secondline/strength";
import { formatLength } from "@secondline/words/formats";
import { sayWear } from "@secondline/words/page/wear";
import type { Stretch } from "@secondline/workbench";
import { useRef } from "react";
import { Button } from "../design/Button.tsx";
import { Shapes } from "../picture/Shapes.tsx";
import { useFrameSize } from "../time/useFrameSize.ts";
import styles from "./figures.module.css";
import { Grip } from "./Grip.tsx";
import type { Along } from "./useAlong.ts";

/** How much of the webbing is in sight, where this stretch lies on the webbing, and how to see more or less. */
export function AlongTools({ along, state }: { along: Along; state: WebbingState }) {
  const { ref, size } = useFrameSize<HTMLDivElement>();
  return (
    <div className={styles.tools}>
      <div ref={ref} className={styles.overview}>
        {size.width > 0 && <Overview {...{ along, state }} width={size.width} />}
      </div>
      <span className={styles.sight}>
        {along.whole ? sayWear("alongTools.all", { length: formatLength(along.length) }) : sightWords(along)}
      </span>
      <Button
        tone="quiet"
        icon="minus"
        iconOnly
        label={sayWear("alongTools.zoomOut")}
        disabled={along.whole}
        onClick={() => along.zoom(0.5)}
      />
      <Button tone="quiet" icon="plus" iconOnly label={sayWear("alongTools.zoomIn")} onClick={() => along.zoom(2)} />
      <Button
        tone="quiet"
        icon="fit"
        iconOnly
        label={sayWear("alongTools.zoomToAll")}
        disabled={along.whole}
        onClick={along.reset}
      />
    </div>
  );
}

const sightWords = ({ sight }: Along): string =>
  sayWear("alongTools.stretch", { from: formatLength(sight.from), to: formatLength(sight.to) });

const STRIP_HEIGHT = 24;

/** The whole webbing, small, with the stretch in sight as a window that can be moved along it. */
function Overview({ along, state, width }: { along: Along; state: WebbingState; width: number }) {
  const { sight, length } = along;
  const x = scaleOf(0, length, 2, width - 2);
  const start = useRef<Stretch>(sight);
  return (
    <svg
      className={styles.svg}
      width={width}
      height={STRIP_HEIGHT}
      viewBox={`0 0 ${width} ${STRIP_HEIGHT}`}
      role="presentation"
    >
      <Shapes of={[overview(state, x)]} />
      <Grip
        label={sayWear("alongTools.stretchInSight")}
        text={sightWords(along)}
        value={(sight.from + sight.to) / 2}
        min={(sight.to - sight.from) / 2}
        max={length - (sight.to - sight.from) / 2}
        step={(sight.to - sight.from) / 10}
        bigStep={(sight.to - sight.from) / 2}
        perUnit={x.perUnit}
        onBegin={() => {
          start.current = sight;
        }}
        onBy={(by) => along.set(panned(start.current, by, length))}
        data="sight"
      >
        <Shapes of={sightWindow(x.px(sight.from), x.px(sight.to))} styles={styles} />
      </Grip>
    </svg>
  );
}
