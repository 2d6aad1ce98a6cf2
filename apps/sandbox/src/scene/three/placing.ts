/** Moving things in the frame loop without making anything. */
import { type Camera, type Object3D, type PerspectiveCamera, Vector3 } from "three";

const direction = new Vector3();
const seen = new Vector3();
const alongZ = new Vector3(0, 0, 1);

/** Puts a thing at node i of a flat array, its z axis towards node j. */
export function alignTo(thing: Object3D, nodes: Float32Array, i: number, j: number): void {
  thing.position.set(nodes[3 * i]!, nodes[3 * i + 1]!, nodes[3 * i + 2]!);
  direction.set(
    nodes[3 * j]! - thing.position.x,
    nodes[3 * j + 1]! - thing.position.y,
    nodes[3 * j + 2]! - thing.position.z,
  );
  if (direction.lengthSq() < 1e-12) direction.copy(alongZ);
  thing.quaternion.setFromUnitVectors(alongZ, direction.normalize());
}

/** Pixels per metre at a thing's place [px/m]. */
export function pixelsPerMetre(thing: Object3D, camera: Camera, height: number): number {
  seen.copy(thing.position).applyMatrix4(camera.matrixWorldInverse);
  return (0.5 * height * (camera as PerspectiveCamera).projectionMatrix.elements[5]!) / Math.max(-seen.z, 0.05);
}

/** Scales a thing of `size` metres up until it is `px` pixels; from near it has its true size. */
export function atLeastPx(thing: Object3D, size: number, px: number, camera: Camera, height: number): void {
  thing.scale.setScalar(Math.max(1, px / (size * pixelsPerMetre(thing, camera, height))));
}
