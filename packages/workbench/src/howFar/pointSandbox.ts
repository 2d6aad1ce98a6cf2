/** A sandbox for one value of a sweep: it runs the fall that governs there, and looks for the verdict only when it is asked to. */
import type { WhatIf } from "@secondline/scenarios";
import type { WrittenRig } from "../documents/documents.ts";
import { createSandbox, type Sandbox } from "../inHand/sandbox.ts";
import type { Services } from "../inHand/state.ts";
import { layoutRunner } from "../layouts/runners.ts";

export interface PointSandbox {
  readonly sandbox: Sandbox;
  /** Searches the whole rig for its verdict. */
  readonly check: () => void;
}

interface PointOf {
  readonly subject: Sandbox;
  readonly document: WrittenRig;
  readonly whatIf: WhatIf;
  /** Their runner makes the fall in sight. */
  readonly services: Services;
  /** Searches for the verdict; gives way to others. */
  readonly aside: Services["runner"];
}

const NOT_ASKED = { ok: false, reason: "cancelled", code: "cancelled", message: "" } as const;

export function pointSandbox({ subject, document, whatIf, services, aside }: PointOf): PointSandbox {
  const { runner: eye } = services;
  let asked = false;
  const own: Services = {
    ...services,
    runner: {
      ...layoutRunner(eye, aside),
      study: async (request, onProgress) => (asked ? aside.study(request, onProgress) : NOT_ASKED),
    },
  };
  const { session, assessment } = subject.store.getState();
  const { known, leftOut } = assessment;
  const start = { document, goodDocument: document, known, leftOut, keepsPrevious: false };
  const sandbox = createSandbox(own, {
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
