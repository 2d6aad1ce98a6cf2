import { dotPlot } from "@secondline/figures/breakLog";
import type { BreakTest, GroupReport } from "@secondline/strength";
import { dotsOf, dotsTold } from "@secondline/workbench/record";
import { Shapes } from "../picture/Shapes.tsx";
import { useFrameSize } from "../time/useFrameSize.ts";
import styles from "./figures.module.css";

interface Props {
  tests: readonly BreakTest[];
  /** Largest load of the axis, the same for all groups of a log [N]. */
  most: number;
  report: GroupReport | undefined;
  wide: boolean;
}

/** Every test as a mark on one axis, a row for each way of failing. */
export function DotPlot({ tests, most, report, wide }: Props) {
  const { ref, size } = useFrameSize<HTMLElement>();
  return (
    <figure className={styles.figure} ref={ref}>
      {size.width > 0 && <Drawing {...{ tests, most, report, wide }} width={size.width} />}
    </figure>
  );
}

function Drawing({ tests, most, report, wide, width }: Props & { width: number }) {
  const modes = dotsOf(tests, report);
  const { height, shapes } = dotPlot({ modes, most, bounds: report?.characteristic, wide, width });
  const size = { width, height, viewBox: `0 0 ${width} ${height}` };
  return (
    <svg className={styles.svg} {...size} role="img" aria-label={dotsTold(modes)}>
      <Shapes of={shapes} styles={styles} />
    </svg>
  );
}
