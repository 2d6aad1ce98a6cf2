import type { Projector } from "@secondline/figures/scene";
import { type Camera, Vector3 } from "three";

const seen = new Vector3();
/** Where a point behind the camera is taken to be, from the middle of the picture [px]. */
const BEHIND_CAMERA_DISTANCE = 1e5;

/** Projects places in space to places in a picture of `size` [px], as the camera sees them at the time of the call. */
export function cameraProjector(camera: Camera, size: { readonly width: number; readonly height: number }): Projector {
  return (x, y, z, out) => {
    seen.set(x, y, z).applyMatrix4(camera.matrixWorldInverse);
    out[2] = seen.z < -0.1 ? 1 : 0;
    if (out[2] === 0) {
      const away = BEHIND_CAMERA_DISTANCE / Math.max(Math.hypot(seen.x, seen.y), 1e-6);
      out[0] = 0.5 * size.width + away * seen.x;
      out[1] = 0.5 * size.height - away * seen.y;
      return;
    }
    seen.applyMatrix4(camera.projectionMatrix);
    out[0] = (0.5 + 0.5 * seen.x) * size.width;
    out[1] = (0.5 - 0.5 * seen.y) * size.height;
  };
}
