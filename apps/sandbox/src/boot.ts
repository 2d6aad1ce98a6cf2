/** Brings up a sandbox: from a link, from the work kept on this device, or with the demo rig. */

import type { RigIssue } from "@secondline/rig";
import { readRig } from "@secondline/rig";
import { sayPage } from "@secondline/words/page/page";
import {
  createSandbox,
  fileName,
  findWork,
  KeptFounds,
  keepWork,
  type ReadRig,
  rigName,
  type Sandbox,
  startFrom,
} from "@secondline/workbench";
import type { ReadLink } from "@secondline/workbench/link";
import { FIRST_RIG } from "./demo/firstRig.ts";
import { download } from "./device/download.ts";
import { deviceShelf } from "./device/shelf.ts";
import { claimWriting, openWorkStore, type WorkStore } from "./device/workStore.ts";
import { later, pageServices } from "./state/pageServices.ts";
import { bringWear } from "./wearInHand/wearOnDemand.ts";
import { pageRunner } from "./worker/runner.ts";

export interface Booted {
  readonly sandbox: Sandbox;
  /** Undefined: this device keeps nothing, e.g. in a private window. */
  readonly works: WorkStore | undefined;
  /** Moment of the run to begin at, from a link [s]. */
  readonly time: number | undefined;
  readonly read: ReadRig;
  /** Verdicts of states that come back, for every sandbox of the page. */
  readonly kept: KeptFounds;
}

const read: ReadRig = (source) => readRig(source) as ReturnType<ReadRig>;

const services = (kept: KeptFounds) => pageServices({ runner: pageRunner(), read, kept });

export async function boot(): Promise<Booted> {
  const works = await openWorkStore().catch(() => undefined);
  const { saved, isWritable, notices } = await findWork(works, {
    read,
    now: Date.now,
    shelf: deviceShelf,
    handOut: (text, name) => download(text, fileName(name, "json"), "application/json"),
    reader: () => import("@secondline/workbench/keptWork"),
  });
  const link = await linkedRig(location.hash);
  if (link.kind !== "none") history.replaceState(null, "", location.pathname + location.search);
  const { start, notice, faults, replaced } = startFrom(link, saved, FIRST_RIG);
  if (replaced) await works?.keepCopy(replaced, rigName(replaced), Date.now()).catch(() => undefined);
  const kept = new KeptFounds();
  const sandbox = createSandbox(services(kept), start);
  // Record and tests that are kept are known from the first verdict on.
  await bringWear(sandbox);
  const begun = notice ? [{ ...notice, details: await toldFaults(faults) }] : [];
  for (const one of [...notices, ...begun]) sandbox.actions.tell(one);
  // A store whose work could not be fetched has said so already.
  if (isWritable || !works) await keepOnDevice(sandbox, works);
  void import("./afterStart.ts")
    .then(({ afterStart }) => afterStart(sandbox, start.session?.whatIf !== undefined))
    .catch(() => undefined);
  sandbox.actions.runNow();
  return { sandbox, works, read, kept, time: link.kind === "rig" ? link.time : undefined };
}

/** What tells faults comes only with a fault. */
async function toldFaults(issues: readonly RigIssue[]): Promise<readonly string[]> {
  if (issues.length === 0) return [];
  const { tellFault } = await import("@secondline/words/faults");
  return issues.map(({ message }) => tellFault(message));
}

/** What unpacks links comes only with a link. */
async function linkedRig(hash: string): Promise<ReadLink> {
  if (!new URLSearchParams(hash.replace(/^#/, "")).has("rig")) return { kind: "none" };
  try {
    return (await import("@secondline/workbench/link")).readLink(hash, read);
  } catch {
    const text = sayPage("boot.linkPartMissing");
    return { kind: "broken", opened: { ok: false, text: sayPage("boot.openLinkAgain", { text }), issues: [] } };
  }
}

async function keepOnDevice(sandbox: Sandbox, works: WorkStore | undefined): Promise<void> {
  const autosave = await keepWork(sandbox, works, { now: Date.now, later, claim: claimWriting });
  if (!autosave) return;
  addEventListener("pagehide", autosave.flush);
  document.addEventListener("visibilitychange", () => document.visibilityState === "hidden" && autosave.flush());
}
