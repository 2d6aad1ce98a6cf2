/** Small symmetric positive definite systems: Cholesky factor, solution and inverse. */

/** Lower triangle L with L·Lᵀ = a; throws when the matrix is not positive definite, which is a programmer's error. */
export function choleskyFactor(a: readonly Float64Array[]): Float64Array[] {
  const n = a.length;
  const l = Array.from({ length: n }, () => new Float64Array(n));
  for (let i = 0; i < n; i++) {
    for (let j = 0; j <= i; j++) {
      let sum = a[i]![j]!;
      for (let k = 0; k < j; k++) sum -= l[i]![k]! * l[j]![k]!;
      if (i === j) {
        if (!(sum > 0)) throw new Error("the matrix is not positive definite");
        l[i]![i] = Math.sqrt(sum);
      } else l[i]![j] = sum / l[j]![j]!;
    }
  }
  return l;
}

/** x with L·Lᵀ·x = b. */
export function choleskySolve(l: readonly Float64Array[], b: ArrayLike<number>): Float64Array {
  const n = l.length;
  const x = new Float64Array(b);
  for (let i = 0; i < n; i++) {
    let sum = x[i]!;
    for (let k = 0; k < i; k++) sum -= l[i]![k]! * x[k]!;
    x[i] = sum / l[i]![i]!;
  }
  for (let i = n - 1; i >= 0; i--) {
    let sum = x[i]!;
    for (let k = i + 1; k < n; k++) sum -= l[k]![i]! * x[k]!;
    x[i] = sum / l[i]![i]!;
  }
  return x;
}

/** Inverse of L·Lᵀ. */
export function choleskyInverse(l: readonly Float64Array[]): Float64Array[] {
  return l.map((_, i) => {
    const unit = new Float64Array(l.length);
    unit[i] = 1;
    return choleskySolve(l, unit);
  });
}
