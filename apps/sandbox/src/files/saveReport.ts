/** The report as a file. In a file of its own, so that its code comes only when it is asked for. */
import { report } from "@secondline/scenarios";
import type { RigVerdict } from "../state/types.ts";
import { download, fileName } from "./download.ts";

export function saveReport({ outcome, rig }: RigVerdict, date: Date): void {
  const written = date.toLocaleDateString("en-GB", { dateStyle: "long" });
  download(report(outcome, { rig, date: written }), fileName(`${outcome.rigName} report`, "html"), "text/html");
}
