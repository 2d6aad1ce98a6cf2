import type { PlotRequest } from "@secondline/figures/time";
import { sayPage } from "@secondline/words/page/page";
import { shownName } from "@secondline/workbench";
import { useMemo } from "react";
import type { Theme } from "../design/palette.ts";
import type { SceneSnapshot } from "../scene/sceneProps.ts";
import { useContextOrThrow } from "../state/useSandbox.ts";
import type { PictureKind } from "./savePicture.ts";

const code = () => Promise.all([import("./savePicture.ts"), import("@secondline/workbench/pictures")]);

/** Saves pictures of the run in sight; says so aloud, or why it could not. Their code comes when it is asked for. */
export function useSavePictures(theme: Theme) {
  const { store, recordings, actions } = useContextOrThrow();
  return useMemo(() => {
    async function attempt(make: () => Promise<void>): Promise<void> {
      try {
        await make();
        actions.announce(sayPage("useSavePictures.pictureSaved"));
      } catch (error) {
        const reason = error instanceof Error ? error.message : String(error);
        actions.tell({ tone: "fault", text: sayPage("useSavePictures.pictureNotSaved", { reason }) });
      }
    }
    const source = () => ({ state: store.getState(), recordings, theme, date: new Date() });
    const name = () => {
      const { shown } = store.getState().run;
      return shown ? shownName(shown) : sayPage("useSavePictures.rig");
    };
    const scene = (take: () => SceneSnapshot, kind: PictureKind) =>
      attempt(async () => {
        const snapshot = take();
        const [{ savePicture }, { scenePicture, sideSnapshot }] = await code();
        // What is made of pixels has no vectors: then the drawing from the side is saved.
        const seen = kind === "svg" && snapshot.image ? sideSnapshot(source(), snapshot.time) : snapshot;
        await savePicture(scenePicture(seen, source()), kind, name());
      });
    const plot = (request: PlotRequest, kind: PictureKind) =>
      attempt(async () => {
        const [{ savePicture }, { plotPicture }] = await code();
        await savePicture(plotPicture(request, source()), kind, `${name()} ${request.forces ? "forces" : "energy"}`);
      });
    return { scene, plot };
  }, [store, recordings, actions, theme]);
}
