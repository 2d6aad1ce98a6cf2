/** The report as a file. In a file of its own, so that its code comes only when it is asked for. */
import { report } from "@secondline/scenarios";
import { chancesOf } from "../chances/chancesDesk.ts";
import type { RigVerdict } from "../state/types.ts";
import { download, fileName } from "./download.ts";

export function saveReport({ outcome, rig, rigVersion }: RigVerdict, date: Date): void {
  const written = date.toLocaleDateString("en-GB", { dateStyle: "long" });
  const chances = chancesOf(rigVersion);
  const html = report(outcome, { rig, date: written, ...(chances ? { chances: [chances] } : {}) });
  download(html, fileName(`${outcome.rigName} report`, "html"), "text/html");
}
