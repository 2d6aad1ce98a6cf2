/** First and second derivative of ln Γ, by recurrence upward and the asymptotic series (Abramowitz & Stegun 6.3.18, 6.4.12). */

export function digamma(x: number): number {
  let [sum, z] = [0, x];
  for (; z < 8; z++) sum -= 1 / z;
  const w = 1 / (z * z);
  return sum + Math.log(z) - 0.5 / z - w * (1 / 12 - w * (1 / 120 - w * (1 / 252 - w / 240)));
}

export function trigamma(x: number): number {
  let [sum, z] = [0, x];
  for (; z < 8; z++) sum += 1 / (z * z);
  const w = 1 / (z * z);
  return sum + 1 / z + w / 2 + (w / z) * (1 / 6 - w * (1 / 30 - w * (1 / 42 - w / 30)));
}
