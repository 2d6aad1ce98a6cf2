/** Shader text of the scene. Colours are display values throughout (no colour conversion), so that paper is the paper. */

const HAZE = /* glsl */ `
uniform vec3 uPaper;
uniform vec4 uHaze; // distance where it begins and ends, height where it begins and ends
vec3 inHaze(vec3 colour, float away, float z) {
  float far = smoothstep(uHaze.x, uHaze.y, away);
  float deep = 0.72 * smoothstep(uHaze.z, uHaze.w, z);
  return mix(colour, uPaper, 1.0 - (1.0 - far) * (1.0 - deep));
}
// Light from the upper left, soft: no side of a thing is black.
float lit(vec3 n) {
  float sun = 0.5 + 0.5 * dot(n, normalize(vec3(-0.45, -0.55, 0.7)));
  return clamp(0.15 + 0.85 * sun * sun + 0.12 * n.z, 0.0, 1.0);
}
`;

export const ROCK_VERTEX = /* glsl */ `
attribute float presence;
varying vec3 vPlace;
varying vec3 vNormal;
varying float vAway;
varying float vPresence;
void main() {
  vec4 seen = modelViewMatrix * vec4(position, 1.0);
  vPlace = position;
  vNormal = normal;
  vAway = length(seen.xyz);
  vPresence = presence;
  gl_Position = projectionMatrix * seen;
}`;

export const ROCK_FRAGMENT = /* glsl */ `
${HAZE}
uniform vec3 uLit;
uniform vec3 uShade;
uniform vec3 uContour;
uniform vec3 uInk;
uniform float uInterval;
varying vec3 vPlace;
varying vec3 vNormal;
varying float vAway;
varying float vPresence;
float contour(float value, float halfWidth) {
  float step1 = max(fwidth(value), 1e-5);
  float off = abs(fract(value - 0.5) - 0.5) / step1;
  return (1.0 - smoothstep(halfWidth - 0.5, halfWidth + 0.5, off)) * (1.0 - smoothstep(0.22, 0.5, step1));
}
void main() {
  vec3 n = normalize(vNormal) * (gl_FrontFacing ? 1.0 : -1.0);
  vec3 colour = mix(uShade, uLit, lit(n));
  // Level ground lies on no contour line, or wholly on one.
  float sloping = 1.0 - smoothstep(0.9985, 0.9999, abs(n.z));
  float height = vPlace.z / uInterval + 0.37;
  float lines = max(0.55 * contour(height, 0.55), 0.85 * contour(height / 5.0, 0.8));
  colour = mix(colour, uContour, sloping * lines);
  float section = abs(vPlace.y) / max(fwidth(vPlace.y), 1e-5);
  colour = mix(colour, uInk, 0.55 * (1.0 - smoothstep(0.4, 1.3, section)));
  gl_FragColor = vec4(inHaze(colour, vAway, vPlace.z), vPresence);
}`;

/** Lines as ribbons that face the eye, at least uMinPx wide. */
export const RIBBON_VERTEX = /* glsl */ `
attribute vec3 aTangent;
attribute float aTension;
attribute vec2 aPlace;
uniform vec2 uViewport;
uniform float uWidth;
uniform float uMinPx;
varying float vSide;
varying float vAlong;
varying float vHalf;
varying float vTension;
void main() {
  vec4 here = modelViewMatrix * vec4(position, 1.0);
  vec4 at = projectionMatrix * here;
  vec4 next = projectionMatrix * (here + vec4(mat3(modelViewMatrix) * aTangent, 0.0) * 0.02);
  vec2 way = (next.xy * at.w - at.xy * next.w) * uViewport;
  float size = length(way);
  way = size > 1e-9 ? way / size : vec2(1.0, 0.0);
  float perMetre = 0.5 * uViewport.y * projectionMatrix[1][1] / max(at.w, 0.01);
  vHalf = max(0.5 * uWidth * perMetre, 0.5 * uMinPx);
  vSide = aPlace.x;
  vAlong = aPlace.y;
  vTension = aTension;
  at.xy += vec2(-way.y, way.x) * aPlace.x * vHalf * 2.0 / uViewport * at.w;
  gl_Position = at;
}`;

export const RIBBON_FRAGMENT = /* glsl */ `
uniform sampler2D uTable;
uniform float uScale;
uniform vec3 uInk;
uniform vec3 uFlat;
uniform float uMode; // 0 main, 1 backup, 2 rope, 3 one colour
uniform float uChosen;
uniform vec3 uAccent;
varying float vSide;
varying float vAlong;
varying float vHalf;
varying float vTension;
void main() {
  if (vTension < -0.5) discard;
  float across = abs(vSide) * vHalf;
  vec3 colour = uMode > 2.5 ? uFlat : texture2D(uTable, vec2(0.008 + 0.984 * clamp(vTension / uScale, 0.0, 1.0), 0.5)).rgb;
  float perPx = max(fwidth(vAlong), 1e-5);
  if (uMode > 0.5 && uMode < 1.5) {
    float dash = exp2(ceil(log2(perPx * max(15.0, 5.0 * vHalf))));
    if (fract(vAlong / dash) > 0.6 && across > max(0.2 * vHalf, 0.55)) discard;
  } else if (uMode > 1.5 && uMode < 2.5 && vHalf > 2.0) {
    float lay = fract(vAlong / max(0.02, perPx * 7.0) + 0.35 * vSide);
    colour = mix(colour, uInk, 0.3 * step(0.6, lay));
  } else if (uMode < 0.5 && vHalf > 5.0) {
    float seam = 1.0 - smoothstep(0.5, 1.2, abs(across - 0.66 * vHalf));
    float stitch = step(0.35, fract(vAlong / max(0.012, perPx * 6.0)));
    colour = mix(colour, uInk, 0.5 * seam * stitch);
  }
  float edge = uMode > 2.5 ? 0.0 : smoothstep(vHalf - 1.3, vHalf - 0.2, across) * step(2.2, vHalf);
  colour = mix(colour, uInk, 0.45 * edge);
  if (uChosen > 0.5 && across > 0.5 * vHalf) colour = uAccent;
  gl_FragColor = vec4(colour, 1.0);
}`;

export const SOLID_VERTEX = /* glsl */ `
varying vec3 vNormal;
varying vec3 vPlace;
varying float vAway;
void main() {
  #ifdef USE_INSTANCING
    mat4 model = modelMatrix * instanceMatrix;
  #else
    mat4 model = modelMatrix;
  #endif
  vec4 place = model * vec4(position, 1.0);
  vec4 seen = viewMatrix * place;
  vNormal = mat3(model) * normal;
  vPlace = place.xyz;
  vAway = length(seen.xyz);
  gl_Position = projectionMatrix * seen;
}`;

export const SOLID_FRAGMENT = /* glsl */ `
${HAZE}
uniform vec3 uColour;
uniform vec3 uDark;
varying vec3 vNormal;
varying vec3 vPlace;
varying float vAway;
void main() {
  vec3 colour = mix(uDark, uColour, lit(normalize(vNormal)));
  gl_FragColor = vec4(inHaze(colour, vAway, vPlace.z), 1.0);
}`;

/** Ridges far away are paper with a breath of stone; the normal's x carries how much. */
export const RIDGE_FRAGMENT = /* glsl */ `
uniform vec3 uPaper;
uniform vec3 uColour;
varying vec3 vNormal;
void main() { gl_FragColor = vec4(mix(uPaper, uColour, vNormal.x), 1.0); }`;

/** The walker: bones move the parts; uGrow pushes the surface outwards for the ink outline [px]. */
export const BODY_VERTEX = /* glsl */ `
attribute vec2 binding;
uniform mat4 uBones[12];
uniform vec2 uViewport;
uniform float uGrow;
varying vec3 vNormal;
varying float vTone;
void main() {
  mat4 bone = uBones[int(binding.x + 0.5)];
  vNormal = mat3(bone) * normal;
  vTone = binding.y;
  vec4 at = projectionMatrix * viewMatrix * bone * vec4(position, 1.0);
  vec2 out2 = (projectionMatrix * viewMatrix * vec4(vNormal, 0.0)).xy * uViewport;
  float size = length(out2);
  if (size > 1e-6) at.xy += out2 / size * uGrow * 2.0 / uViewport * at.w;
  gl_Position = at;
}`;

export const BODY_FRAGMENT = /* glsl */ `
${HAZE}
uniform vec3 uTones[6];
uniform vec3 uInk;
uniform float uFlatInk; // 1: outline, 2: hatched ghost, 3: ghost hatched the other way
varying vec3 vNormal;
varying float vTone;
void main() {
  if (uFlatInk > 1.5) {
    float slant = uFlatInk > 2.5 ? gl_FragCoord.x - gl_FragCoord.y : gl_FragCoord.x + gl_FragCoord.y;
    if (mod(slant, 5.0) > 1.6) discard;
    gl_FragColor = vec4(uInk, 1.0);
  } else if (uFlatInk > 0.5) {
    gl_FragColor = vec4(uInk, 1.0);
  } else {
    vec3 tone = uTones[int(vTone + 0.5)];
    float light = lit(normalize(vNormal));
    gl_FragColor = vec4(mix(tone * 0.55, mix(tone, vec3(1.0), 0.12), light), 1.0);
  }
}`;
