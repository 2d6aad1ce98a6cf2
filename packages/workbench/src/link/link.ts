/** A rig in a link: JSON, deflated, in base64 for URLs, behind the hash so that no server ever sees it. */

import { parseWhatIf, type WhatIf, whatIfKey } from "@secondline/scenarios";
import { sayFiles } from "@secondline/words/page/files";
import { deflateSync, Inflate, strFromU8, strToU8 } from "fflate";
import type { WrittenRig } from "../documents/documents.ts";
import { type Opened, readRigText } from "../files/readRigFile.ts";
import type { CameraName, ReadRig } from "../inHand/state.ts";

export interface Shared {
  readonly document: WrittenRig;
  readonly whatIf: WhatIf;
  /** Moment of the run [s]. */
  readonly time?: number;
  /** Part pointed out. */
  readonly part?: string | undefined;
  readonly camera?: CameraName;
}

/** A small text in a link can be made to unpack to gigabytes [B]. */
const LARGEST_UNPACKED_BYTES = 1_000_000;

export function linkHash({ document, whatIf, time, part, camera }: Shared): string {
  const parameters = new URLSearchParams();
  parameters.set("rig", toBase64(deflateSync(strToU8(JSON.stringify(document)), { level: 9 })));
  parameters.set("whatif", whatIfKey(whatIf));
  if (time !== undefined && time > 0) parameters.set("t", time.toFixed(3));
  if (part !== undefined) parameters.set("part", part);
  if (camera !== undefined) parameters.set("view", camera);
  return `#${parameters}`;
}

const CAMERAS: readonly CameraName[] = ["overview", "event", "elevation", "anchor"];

export type ReadLink =
  | { readonly kind: "none" }
  | { readonly kind: "broken"; readonly opened: Extract<Opened, { ok: false }> }
  | ({ readonly kind: "rig" } & Omit<Shared, "whatIf"> & { readonly whatIf?: WhatIf });

export function readLink(hash: string, read: ReadRig): ReadLink {
  const parameters = new URLSearchParams(hash.replace(/^#/, ""));
  const packed = parameters.get("rig");
  if (packed === null) return { kind: "none" };
  const text = unpack(packed);
  if (text === undefined) return broken(sayFiles("link.damaged"));
  const opened = readRigText(text, sayFiles("link.rigLink"), read);
  if (!opened.ok) return { kind: "broken", opened };
  const whatIf = parseWhatIf(parameters.get("whatif") ?? "");
  const time = Number(parameters.get("t") ?? Number.NaN);
  const part = parameters.get("part");
  const camera = CAMERAS.find((name) => name === parameters.get("view"));
  return {
    kind: "rig",
    document: opened.document,
    ...(whatIf ? { whatIf } : {}),
    ...(Number.isFinite(time) && time >= 0 ? { time } : {}),
    ...(part === null ? {} : { part }),
    ...(camera === undefined ? {} : { camera }),
  };
}

const broken = (text: string): ReadLink => ({ kind: "broken", opened: { ok: false, text, issues: [] } });

function unpack(packed: string): string | undefined {
  const pieces: Uint8Array[] = [];
  let length = 0;
  let ended = false;
  const inflate = new Inflate((piece, final) => {
    length += piece.length;
    if (length > LARGEST_UNPACKED_BYTES) throw new Error(sayFiles("link.tooLarge"));
    pieces.push(piece);
    ended = final;
  });
  try {
    const bytes = fromBase64(packed);
    // It unpacks in small pieces, so that the limit stops it before it has unpacked much more.
    const bite = 4096;
    for (let at = 0; at < bytes.length; at += bite)
      inflate.push(bytes.subarray(at, at + bite), at + bite >= bytes.length);
    if (!ended) return undefined;
  } catch {
    return undefined;
  }
  const all = new Uint8Array(length);
  let at = 0;
  for (const piece of pieces) {
    all.set(piece, at);
    at += piece.length;
  }
  return strFromU8(all);
}

function toBase64(bytes: Uint8Array): string {
  let binary = "";
  for (const byte of bytes) binary += String.fromCharCode(byte);
  return btoa(binary).replaceAll("+", "-").replaceAll("/", "_").replace(/=+$/, "");
}

function fromBase64(text: string): Uint8Array {
  return Uint8Array.from(atob(text.replaceAll("-", "+").replaceAll("_", "/")), (letter) => letter.charCodeAt(0));
}
