/**
 * Levels for marks along an axis, one for each place in rising order. Each mark gets the lowest level on which it stands clear
 * of earlier marks by `apart`, in the unit of the places.
 */
export function piled(places: readonly number[], apart: number): readonly number[] {
  const last: number[] = [];
  return places.map((at) => {
    const free = last.findIndex((before) => at - before >= apart);
    const level = free < 0 ? last.length : free;
    last[level] = at;
    return level;
  });
}
