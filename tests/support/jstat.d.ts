/** The few functions of jstat that our tests compare with. */
declare module "jstat" {
  export const jStat: {
    readonly normal: { inv(p: number, mean: number, deviation: number): number };
    readonly studentt: { inv(p: number, freedom: number): number };
    readonly beta: { inv(p: number, a: number, b: number): number };
    readonly noncentralt: { cdf(t: number, freedom: number, delta: number): number };
  };
}
