import { lettering } from "../design/lettering.ts";
import { useFrameSize } from "../time/useFrameSize.ts";

/**
 * Width to draw a picture with, so that its letters are as large as they are meant: that of its place where this is narrow; in a wide
 * place picture and letters grow together [px].
 */
export function usePictureWidth(most: number) {
  const { ref, size } = useFrameSize<HTMLDivElement>();
  return { ref, width: size.width === 0 ? most : Math.min(most, Math.round(size.width / lettering())) };
}
