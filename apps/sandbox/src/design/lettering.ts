/** Size of letters that are drawn, over their usual size: what is painted grows in a class as what is written does [-]. */
export function lettering(): number {
  const root = document.documentElement;
  return root.dataset.class === undefined ? 1 : Number.parseFloat(getComputedStyle(root).fontSize) / 16;
}
