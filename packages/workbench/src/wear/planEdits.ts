/** The plan of use of a rig in a record as written. */
import type { Rig } from "@secondline/rig";
import type { WrittenRecord } from "../documents/documents.ts";
import { isNamed, nameFor } from "./rigNamed.ts";

export interface WrittenPlan {
  readonly rig: string;
  readonly inspectEvery?: unknown;
  readonly falls?: unknown;
}

export const NO_PLAN: Omit<WrittenPlan, "rig"> = {};

const plansIn = (record: WrittenRecord): readonly WrittenPlan[] =>
  Array.isArray(record.plans) ? (record.plans as WrittenPlan[]) : [];

export function planOf(
  record: WrittenRecord,
  rig: Rig,
): { readonly plan: WrittenPlan; readonly index: number } | undefined {
  const index = plansIn(record).findIndex((plan) => isNamed(rig, plan.rig));
  return index < 0 ? undefined : { plan: plansIn(record)[index]!, index };
}

/** The record with one value of the rig's plan put anew; a plan without values is taken out. */
export function withPlan(
  record: WrittenRecord,
  rig: Rig,
  key: "inspectEvery" | "falls",
  value: unknown,
): WrittenRecord {
  const { [key]: _, ...others } = planOf(record, rig)?.plan ?? { rig: nameFor(rig) };
  const next: WrittenPlan = value === undefined ? others : { ...others, [key]: value };
  const isEmpty = next.inspectEvery === undefined && next.falls === undefined;
  const rest = plansIn(record).filter((plan) => !isNamed(rig, plan.rig));
  const plans = isEmpty ? rest : [...rest, next];
  const { plans: _plans, ...bare } = record;
  return plans.length === 0 ? (bare as WrittenRecord) : { ...record, plans };
}

/** A count as a number, anything else as it was typed. */
export const plannedCount = (text: string): unknown =>
  text === "" ? undefined : /^\d+(\.\d+)?$/.test(text) ? Number(text) : text;
