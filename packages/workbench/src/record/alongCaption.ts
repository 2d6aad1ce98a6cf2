/** The caption under the drawing of a webbing: its weakest place, and the strength that it needs. */
import { quantity } from "@secondline/words";
import { formatLength } from "@secondline/words/formats";
import { sayWear } from "@secondline/words/page/wear";
import { loadedZones } from "./along.ts";
import { basisKinds, weakest, zoneWords } from "./wearWords.ts";
import type { WebbingFacts } from "./webbingFacts.ts";

export function alongCaption(facts: WebbingFacts): string {
  const { state, needed, stock } = facts;
  const sun = sayWear("alongFigure.sunIsEqual");
  if (!stock) return sayWear("alongFigure.materialMissing", { sun });
  const worst = weakest(loadedZones(facts));
  if (!worst) return sun;
  const where = sayWear("alongFigure.weakestAt", {
    where: state.placement ? sayWear("alongFigure.insideSpan") : sayWear("alongFigure.place"),
    place: formatLength((worst.from + worst.to) / 2),
    zone: zoneWords(worst),
    bases: basisKinds(worst),
  });
  const need = needed
    ? sayWear("alongFigure.needed", {
        needed: quantity.load(needed.needed),
        demand: quantity.load(needed.demand),
        required: quantity.required(needed.required),
      })
    : state.placement
      ? sayWear("alongFigure.needUnknown")
      : "";
  return `${where}${need} ${sun}`;
}
