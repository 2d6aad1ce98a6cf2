/** Webbings and ropes by id: the document's own, taken over from another where they say so, and the built-in ones. */

import { readBasis } from "./basis.ts";
import { finalSlope, steepestSlope, straightOn } from "./curve.ts";
import { Draft } from "./draft.ts";
import { missing } from "./issues.ts";
import { nearest } from "./nearest.ts";
import type { Basis, Fibre, LineStock, StockForm } from "./rig.ts";
import { fact, guessed, type RigFact } from "./rigFacts.ts";
import { GENERIC_STOCKS } from "./stocks.ts";

/** What could be read of a stock. */
export type PartialStock = { [K in keyof LineStock]?: LineStock[K] | undefined };

/** The stock of an id as far as it can be read; undefined when there is none. */
export function findStock(draft: Draft, id: string, seen: readonly string[] = []): PartialStock | undefined {
  const at = draft.items("stocks").find((path) => draft.text(`${path}.id`) === id);
  if (at === undefined) return GENERIC_STOCKS.get(id);
  if (seen.includes(id)) return undefined;
  const like = draft.text(`${at}.like`);
  const model = like === undefined ? {} : (findStock(draft, like, [...seen, id]) ?? {});
  const basis = (path: string): Basis => readBasis(draft.text(path));
  const strength = draft.number(`${at}.strength`);
  const curve = draft.has(`${at}.curve`) ? draft.pairs(`${at}.curve`) : model.curve;
  const branches = draft.has(`${at}.branches`) ? draft.pairs(`${at}.branches`) : model.branches;
  const form = (draft.text(`${at}.form`) as StockForm | undefined) ?? model.form;
  const ownCurve = draft.has(`${at}.curve`) || draft.has(`${at}.branches`) || draft.has(`${at}.curveBasis`);
  return {
    id,
    // A stock without a name goes by its id, in any language.
    name: draft.text(`${at}.name`) ?? (model.name === undefined ? undefined : id),
    fibre: (draft.text(`${at}.fibre`) as Fibre | undefined) ?? model.fibre,
    ...(form === undefined ? {} : { form }),
    mass: draft.has(`${at}.mass`) ? draft.number(`${at}.mass`) : model.mass,
    width: draft.has(`${at}.width`) ? draft.number(`${at}.width`) : model.width,
    curve: curve !== undefined && curveFault(curve) === undefined ? straightOn(curve) : undefined,
    branches,
    rated: draft.has(`${at}.strength`)
      ? strength === undefined
        ? undefined
        : { strength, basis: basis(`${at}.basis`) }
      : model.rated,
    basis: ownCurve ? basis(`${at}.curveBasis`) : model.basis,
  };
}

/** A document's own stocks as far as they are whole: what one may choose from. */
export function stocksIn(document: unknown): readonly LineStock[] {
  const draft = new Draft(document);
  const ids = draft.items("stocks").flatMap((path) => draft.text(`${path}.id`) ?? []);
  return ids.flatMap((id) => {
    const stock = findStock(draft, id);
    const whole = stock && NEEDED_FIELDS.every((key) => (key === "strength" ? stock.rated : stock[key]) !== undefined);
    return whole ? [stock as LineStock] : [];
  });
}

/** What is wrong with a slow-pull curve, and at which point. */
function curveFault(curve: readonly (readonly [number, number])[]): { at: number; why: RigFact } | undefined {
  if (curve.length < 2) return { at: 0, why: fact("curve.fewPoints", {}) };
  if (curve[0]?.[0] !== 0 || curve[0][1] !== 0) return { at: 0, why: fact("curve.start", {}) };
  for (let i = 1; i < curve.length; i++) {
    if (curve[i]![0] <= curve[i - 1]![0]) return { at: i, why: fact("curve.stretch", {}) };
    if (curve[i]![1] <= curve[i - 1]![1]) return { at: i, why: fact("curve.tension", {}) };
  }
  // A curve that went on flat would hide every load beyond its last point.
  if (finalSlope(curve) <= 0) return { at: curve.length - 1, why: fact("curve.flat", {}) };
  return undefined;
}

const NEEDED_FIELDS = ["name", "fibre", "mass", "width", "strength", "curve", "branches"] as const;

/** Checks the document's own stocks: ids, what they are like, what they lack, their curves. */
export function checkStocks(draft: Draft): void {
  const ids = draft.items("stocks").map((path) => draft.text(`${path}.id`));
  draft.items("stocks").forEach((path, i) => {
    const id = ids[i];
    if (id !== undefined && GENERIC_STOCKS.has(id)) {
      draft.fault(`${path}.id`, fact("expected.ownId", {}), fact("stock.builtIn", { id }));
    } else if (id !== undefined && ids.indexOf(id) < i) {
      draft.fault(`${path}.id`, fact("expected.ownId", {}), fact("stock.twice", { id }));
    }
    if (draft.has(`${path}.like`)) checkLike(draft, path);
    else
      for (const key of NEEDED_FIELDS) if (!draft.has(`${path}.${key}`)) draft.issues.push(missing(`${path}.${key}`));
    const curve = draft.pairs(`${path}.curve`);
    const fault = curve && draft.has(`${path}.curve`) ? curveFault(curve) : undefined;
    if (fault) draft.fault(`${path}.curve[${fault.at}]`, fact("expected.risingCurve", {}), fault.why);
    else if (id !== undefined) checkSpeed(draft, path, findStock(draft, id));
  });
}

/** Fastest pull in a line that is believed; the engine refuses the same [m/s]. */
const FASTEST_PULL = 20_000;

/** A line so stiff for its mass is none: a unit is wrong, or two points of its curve are too close. A run would take hours. */
function checkSpeed(draft: Draft, path: string, stock: PartialStock | undefined): void {
  const { curve, branches = [], mass } = stock ?? {};
  if (curve === undefined || mass === undefined) return;
  const stiffness = steepestSlope(curve) + branches.reduce((sum, [force]) => sum + force, 0);
  const speed = Math.sqrt(stiffness / mass);
  if (speed <= FASTEST_PULL) return;
  const at = draft.has(`${path}.curve`) ? "curve" : draft.has(`${path}.branches`) ? "branches" : "mass";
  draft.fault(`${path}.${at}`, fact("expected.speed", {}), fact("stock.tooFast", { speed: Math.ceil(speed / 1000) }));
}

function checkLike(draft: Draft, path: string): void {
  const seen: string[] = [];
  let id = draft.text(`${path}.id`);
  while (id !== undefined) {
    if (seen.includes(id)) {
      draft.fault(
        `${path}.like`,
        fact("expected.otherStock", {}),
        fact("stock.likeItself", { id: seen[0]!, way: { list: seen } }),
      );
      return;
    }
    seen.push(id);
    const at = draft.items("stocks").find((item) => draft.text(`${item}.id`) === id);
    id = at === undefined ? undefined : draft.text(`${at}.like`);
  }
  checkStockId(draft, `${path}.like`);
}

/** Checks that the id at a path is one of a webbing or rope. */
export function checkStockId(draft: Draft, path: string): void {
  const id = draft.text(path);
  if (id === undefined || findStock(draft, id) !== undefined) return;
  const own = draft.items("stocks").flatMap((item) => draft.text(`${item}.id`) ?? []);
  const ids = [...own, ...GENERIC_STOCKS.keys()];
  const expected = fact("expected.oneOf", { list: { list: ids } });
  draft.fault(path, expected, fact("stock.unknown", { id }, guessed(nearest(id, ids))));
}
