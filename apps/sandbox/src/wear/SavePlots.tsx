import type { Plot } from "@secondline/figures";
import { sayWear } from "@secondline/words/page/wear";
import { useActions } from "../state/useSandbox.ts";
import { usePalette } from "../time/usePalette.ts";
import { useWear } from "../wearInHand/useWear.ts";
import styles from "./wear.module.css";

/** Two buttons: the plots as a drawing, and their numbers as a table. `of` tells them from others to who cannot see the page. */
export function SavePlots({ plots, of }: { plots: readonly Plot[]; of: string }) {
  const log = useWear((state) => state.work.log);
  const { announce, tell } = useActions();
  const palette = usePalette();
  if (plots.length === 0) return null;
  const save = async (kind: "svg" | "csv") => {
    try {
      const { savePlots } = await import("../files/savePlots.ts");
      savePlots(plots, { name: log.name, input: log, invented: log.invented }, kind, palette);
      announce(sayWear("savePlots.plotSaved"));
    } catch (error) {
      const reason = error instanceof Error ? error.message : String(error);
      tell({ tone: "fault", text: sayWear("savePlots.plotNotSaved", { reason }) });
    }
  };
  const many = plots.length > 1;
  const words = {
    svg: many ? sayWear("savePlots.allAsSvg", { count: plots.length }) : sayWear("savePlots.oneAsSvg"),
    csv: many ? sayWear("savePlots.allAsCsv") : sayWear("savePlots.oneAsCsv"),
  };
  return (
    <span className={styles.savePlots}>
      {(["svg", "csv"] as const).map((kind) => (
        <button
          key={kind}
          type="button"
          className={styles.textButton}
          aria-label={`${words[kind]}: ${of}`}
          onClick={() => void save(kind)}
        >
          {words[kind]}
        </button>
      ))}
    </span>
  );
}
