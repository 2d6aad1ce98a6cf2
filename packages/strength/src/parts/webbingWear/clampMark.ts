/** A place that sits or sat in a clamp. */
import { standIn } from "../../derating/unknown.ts";
import { aboutMiddle, type WearKind, type WearOf } from "./wearKind.ts";

export const clampMark: WearKind<WearOf<"clampMark">> = {
  kind: "clampMark",
  title: "clamp mark",
  extent: aboutMiddle,
  factor({ months, load }, { section, factorsOf, wearAt }) {
    const { clamp } = factorsOf(section.stock);
    if (load !== undefined) return clamp(months, load / section.stock.rated.strength);
    const why = "the load in the clamp is not written down; the heaviest that makes a difference is counted";
    const best = clamp(months, 0).value;
    return standIn(clamp(months, "unknown"), { field: `${wearAt}.load`, best }, why);
  },
  /** The months of all marks together, under the heaviest load; under an unknown load if any mark's load is unknown. */
  together(worn) {
    const months = worn.reduce((sum, { wear }) => sum + wear.months, 0);
    const heaviest = worn.reduce((most, one) => (loadOf(one.wear) > loadOf(most.wear) ? one : most));
    return { ...heaviest, wear: { ...heaviest.wear, months } };
  },
};

const loadOf = ({ load = Number.POSITIVE_INFINITY }: WearOf<"clampMark">) => load;
