/** A sandbox for one value of a sweep: it runs the fall that governs there, and looks for the verdict only when it is asked to. */
import type { WhatIf } from "@secondline/scenarios";
import { createSandbox, type KeptFounds, type ReadRig, type Sandbox, type WrittenRig } from "@secondline/workbench";
import { pageServices } from "../state/pageServices.ts";
import { pageRunner } from "../worker/runner.ts";
import { sideRunner } from "../worker/sideRunner.ts";

export interface PointSandbox {
  readonly sandbox: Sandbox;
  /** Searches the whole rig for its verdict. */
  readonly check: () => void;
}

interface PointOf {
  readonly subject: Sandbox;
  readonly document: WrittenRig;
  readonly whatIf: WhatIf;
  readonly read: ReadRig;
  readonly kept: KeptFounds;
}

const NOT_ASKED = { ok: false, reason: "cancelled", code: "cancelled", message: "" } as const;

export function pointSandbox({ subject, document, whatIf, read, kept }: PointOf): PointSandbox {
  const [eye, aside] = [pageRunner(), sideRunner()];
  let asked = false;
  const services = pageServices({
    runner: {
      run: (request, onProgress) => eye.run(request, onProgress),
      study: async (request, onProgress) => (asked ? aside.study(request, onProgress) : NOT_ASKED),
      async cancel(id) {
        await Promise.all([eye.cancel(id), aside.cancel(id)]);
      },
    },
    read,
    kept,
  });
  const { session, assessment } = subject.store.getState();
  const { known, leftOut } = assessment;
  const start = { document, goodDocument: document, known, leftOut, keepsPrevious: false };
  const sandbox = createSandbox(services, {
    ...start,
    session: { whatIf, accuracy: session.accuracy, camera: "event" },
  });
  return {
    sandbox,
    check() {
      asked = true;
      void sandbox.actions.lookOn();
    },
  };
}
