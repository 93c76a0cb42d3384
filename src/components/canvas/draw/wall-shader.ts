import { GlProgram, Shader, UniformGroup } from 'pixi.js';
import { pageSource } from './page-source.ts';
import type { TexelPage } from './texel-page.ts';

const VERTEX = /* glsl */ `#version 300 es
in vec2 aCorner;
in vec2 aPlace;
in vec2 aGrid;
in vec2 aLook;
uniform vec3 uCamera;
uniform vec2 uScreen;
uniform vec2 uPrint;
uniform vec2 uMargin;
uniform vec4 uShadowRoom;
uniform float uDensity;
out vec2 vAt;
flat out vec2 vGrid;
flat out vec2 vLook;

void main() {
  // A print's corner lies on a whole device pixel, so that panning never changes how it is sampled.
  vec2 origin = floor((aPlace * uCamera.x + uCamera.yz) * uDensity + 0.5) / uDensity;
  // Room for the shadow all round; marks need more.
  bool plain = aLook.y < 0.5;
  vAt = mix(plain ? -uShadowRoom.xy : -uMargin.xx, uPrint + (plain ? uShadowRoom.zw : uMargin), aCorner);
  vec2 at = origin + vAt * uCamera.x;
  vGrid = aGrid;
  vLook = aLook;
  gl_Position = vec4(at.x / uScreen.x * 2.0 - 1.0, 1.0 - at.y / uScreen.y * 2.0, 0.0, 1.0);
}
`;

/*
 * Cell numbers cannot be blended, colours can: every pixel looks up each texel that it covers and
 * averages their colours by area, in about linear light (squares), which is what keeps small
 * prints free of shimmer. From 2.6 texels a pixel on, sixteen even taps stand for them all.
 */
const NEAR = /* glsl */ `
uniform sampler2D uMaps;
uniform sampler2D uColours;
uniform vec2 uMapSize;
uniform float uTaps;

// Most neighbours are of one cell: its colour is looked up once.
vec2 lastBytes = vec2(-1.0);
vec3 lastColour = vec3(0.0);

vec3 colourAt(ivec2 texel) {
  vec2 bytes = texelFetch(uMaps, ivec2(vGrid) + texel, 0).rg;
  if (bytes != lastBytes) {
    lastBytes = bytes;
    bytes = bytes * 255.0 + 0.5;
    int number = int(vLook.x) + int(bytes.x) + 256 * int(bytes.y);
    vec3 colour = texelFetch(uColours, ivec2(number & 1023, number >> 10), 0).rgb;
    lastColour = colour * colour;
  }
  return lastColour;
}

vec3 printAt(vec2 share, float printPx) {
  vec2 texel = share * uMapSize;
  float covered = uMapSize.y / printPx;
  vec3 sum = vec3(0.0);
  vec2 most = uMapSize - 1.0;
  if (covered <= 2.6 && uTaps > 2.5 || covered <= 1.0) {
    // A little wider than the pixel: near one texel a pixel, cells would show their steps.
    float width = max(1.25 * covered, 1.0);
    vec2 low = max(texel - 0.5 * width, vec2(0.0));
    vec2 high = min(texel + 0.5 * width, uMapSize);
    vec2 from = floor(low);
    vec2 to = min(ceil(high) - 1.0, most);
    float total = 0.0;
    for (float y = from.y; y <= to.y; y += 1.0) {
      float down = min(y + 1.0, high.y) - max(y, low.y);
      for (float x = from.x; x <= to.x; x += 1.0) {
        float weight = down * (min(x + 1.0, high.x) - max(x, low.x));
        sum += weight * colourAt(ivec2(x, y));
        total += weight;
      }
    }
    return sqrt(sum / max(total, 1e-6));
  }
  float apart = covered / uTaps;
  vec2 low = texel - 0.5 * covered + 0.5 * apart;
  for (float y = 0.0; y < uTaps; y += 1.0) {
    for (float x = 0.0; x < uTaps; x += 1.0) {
      sum += colourAt(ivec2(clamp(low + apart * vec2(x, y), vec2(0.0), most)));
    }
  }
  return sqrt(sum / (uTaps * uTaps));
}
`;

/* The small picture's texels are blended by the graphics card; a tap stands for two by two of them. */
const FAR = /* glsl */ `
uniform sampler2D uSmalls;
uniform vec2 uSmallSize;
uniform vec2 uSmallPage;

vec3 printAt(vec2 share, float printPx) {
  float covered = uSmallSize.y / printPx;
  float taps = clamp(ceil(0.5 * covered), 1.0, 3.0);
  if (taps == 1.0) {
    // No nearer to the edge than half a texel: beyond lies another print.
    vec2 at = clamp(share * uSmallSize, vec2(0.5), uSmallSize - 0.5);
    return textureLod(uSmalls, (vGrid + at) / uSmallPage, 0.0).rgb;
  }
  float apart = covered / taps;
  vec2 low = share * uSmallSize - 0.5 * covered + 0.5 * apart;
  vec3 sum = vec3(0.0);
  for (float y = 0.0; y < taps; y += 1.0) {
    for (float x = 0.0; x < taps; x += 1.0) {
      vec2 at = clamp(low + apart * vec2(x, y), vec2(0.5), uSmallSize - 0.5);
      vec3 colour = textureLod(uSmalls, (vGrid + at) / uSmallPage, 0.0).rgb;
      sum += colour * colour;
    }
  }
  return sqrt(sum / (taps * taps));
}
`;

/* How much of a pixel a turned down corner's thin paper edge and its accent take. */
export const TURNED_CORNER = /* glsl */ `
// fromEdges: from a sheet's right and top edges, CSS px
vec2 turnedCorner(vec2 fromEdges, float scale, float density) {
  float inside = clamp(22.0 * scale, 9.0, 26.0) - fromEdges.x - fromEdges.y;
  return clamp(0.5 + (inside + vec2(1.5, 0.0)) * density * 0.7, 0.0, 1.0);
}
`;

const HEAD = /* glsl */ `#version 300 es
precision highp float;
precision highp int;
in vec2 vAt;
flat in vec2 vGrid;
flat in vec2 vLook;
uniform vec3 uCamera;
uniform vec2 uPrint;
uniform float uDensity;
uniform vec4 uShadow;
uniform vec4 uAccent;
uniform vec4 uRing;
out vec4 outColour;
`;

const SHEET = /* glsl */ `
float boxDistance(vec2 at, vec2 halfSize) {
  vec2 d = abs(at) - halfSize;
  return length(max(d, 0.0)) + min(max(d.x, d.y), 0.0);
}

float soft(float low, float high, float spread) {
  return smoothstep(-spread, spread, low) * smoothstep(-spread, spread, high);
}

void over(inout vec4 below, vec3 colour, float alpha) {
  below = vec4(colour * alpha, alpha) + below * (1.0 - alpha);
}

void main() {
  float pixels = uCamera.x * uDensity;
  vec2 halfSize = 0.5 * uPrint;
  int flags = int(vLook.y + 0.5);
  // Most pixels lie well inside a sheet without marks, and need nothing else.
  vec2 inside = min(vAt, uPrint - vAt) * pixels;
  if (min(inside.x, inside.y) >= 0.5 && (flags & 4) == 0) {
    outColour = vec4(printAt(vAt / uPrint, uPrint.y * pixels), 1.0);
    return;
  }
  float distance = boxDistance(vAt - halfSize, halfSize);
  float sheet = clamp(0.5 - distance * pixels, 0.0, 1.0);
  vec4 colour = vec4(0.0);

  if (sheet < 1.0) {
    // Paper hangs a little off the wall: a wide soft shadow below, a tight one at its foot.
    vec2 far = vAt - vec2(0.0, 2.6);
    vec2 near = vAt - vec2(0.0, 0.5);
    float spread = max(4.2, 2.0 / pixels);
    float tight = max(0.8, 0.8 / pixels);
    float wide = soft(far.x, uPrint.x - far.x, spread) * soft(far.y, uPrint.y - far.y, spread);
    float foot = soft(near.x, uPrint.x - near.x, tight) * soft(near.y, uPrint.y - near.y, tight);
    over(colour, uShadow.rgb, uShadow.a * wide);
    over(colour, uShadow.rgb, uShadow.a * 0.75 * foot);

    if ((flags & 1) != 0) {
      float radius = clamp(1.8 * uCamera.x, 2.6, 5.5) / uCamera.x;
      vec2 dot = vec2(uPrint.x - radius, uPrint.y + clamp(10.0 * uCamera.x + 1.5, 4.5, 12.5) / uCamera.x);
      over(colour, uAccent.rgb, clamp(0.5 - (length(vAt - dot) - radius) * pixels, 0.0, 1.0));
    }
    if ((flags & 2) != 0) {
      float away = abs(distance * uCamera.x - uRing.x) - 0.5 * uRing.y;
      over(colour, uAccent.rgb, uRing.z * clamp(0.5 - away * uDensity, 0.0, 1.0));
    }
  }
  if (sheet > 0.0) {
    over(colour, printAt(clamp(vAt / uPrint, 0.0, 1.0), uPrint.y * pixels), sheet);
    if ((flags & 4) != 0) {
      // A corner of the accent colour with a thin edge of paper, so that it shows on any print.
      vec2 corner = turnedCorner(vec2(uPrint.x - vAt.x, vAt.y) * uCamera.x, uCamera.x, uDensity);
      over(colour, vec3(1.0), sheet * corner.x);
      over(colour, uAccent.rgb, sheet * corner.y);
    }
  }
  outColour = colour;
}
`;

/** Bits of a print's look. */
export const KEPT = 1;
export const FOCUSED = 2;
/** Chosen for something: a corner turned down. */
export const SELECTED = 4;

export type Rgba = [number, number, number, number];

/** Uniforms that all prints share. */
export function wallUniforms() {
  return new UniformGroup({
    uCamera: { value: new Float32Array(3), type: 'vec3<f32>' },
    uScreen: { value: new Float32Array(2), type: 'vec2<f32>' },
    uPrint: { value: new Float32Array(2), type: 'vec2<f32>' },
    uMapSize: { value: new Float32Array(2), type: 'vec2<f32>' },
    uSmallSize: { value: new Float32Array(2), type: 'vec2<f32>' },
    uSmallPage: { value: new Float32Array([1, 1]), type: 'vec2<f32>' },
    uMargin: { value: new Float32Array([8, 20]), type: 'vec2<f32>' },
    /** Left, above, right and below a print without marks. */
    uShadowRoom: { value: new Float32Array([4.5, 2, 4.5, 7]), type: 'vec4<f32>' },
    uDensity: { value: 1, type: 'f32' },
    /** Look-ups a pixel, across and down, where prints are small: 4, or 2 while a slow screen moves. */
    uTaps: { value: 4, type: 'f32' },
    uShadow: { value: new Float32Array([0.12, 0.09, 0.06, 0.2]), type: 'vec4<f32>' },
    uAccent: { value: new Float32Array([0.65, 0.24, 0.13, 1]), type: 'vec4<f32>' },
    /** Distance from the sheet, width (CSS px), strength. */
    uRing: { value: new Float32Array([4, 2, 1, 0]), type: 'vec4<f32>' },
  });
}

export type WallUniforms = ReturnType<typeof wallUniforms>;

let near: GlProgram | undefined;
let far: GlProgram | undefined;

function nearProgram(): GlProgram {
  return (near ??= GlProgram.from({ vertex: VERTEX, fragment: HEAD + NEAR + TURNED_CORNER + SHEET, name: 'near' }));
}

function farProgram(): GlProgram {
  return (far ??= GlProgram.from({ vertex: VERTEX, fragment: HEAD + FAR + TURNED_CORNER + SHEET, name: 'far' }));
}

/** The programs by which prints are drawn, near by and from far. */
export function wallPrograms(): GlProgram[] {
  return [nearProgram(), farProgram()];
}

/** The shader for prints whose maps and colours lie on a pair of pages. */
export function nearShader(maps: TexelPage, colours: TexelPage, uniforms: WallUniforms): Shader {
  return new Shader({ glProgram: nearProgram(), resources: { uMaps: pageSource(maps), uColours: pageSource(colours), wall: uniforms } });
}

/** The shader for prints whose small pictures lie on a page. */
export function farShader(smalls: TexelPage, uniforms: WallUniforms): Shader {
  return new Shader({ glProgram: farProgram(), resources: { uSmalls: pageSource(smalls), wall: uniforms } });
}
