import {
  Buffer,
  BufferUsage,
  type Container,
  Geometry,
  GlProgram,
  Mesh,
  RenderTexture,
  Shader,
  State,
  UniformGroup,
  type WebGLRenderer,
} from 'pixi.js';
import { defined } from '../../../engine/base/at.ts';
import type { View } from '../camera/camera.ts';

/** Wall beside the screen that is drawn along, CSS px: so far one can pan before it is drawn anew. */
export const CACHE_PAD = 160;

const VERTEX = /* glsl */ `#version 300 es
in vec2 aCorner;
void main() {
  gl_Position = vec4(aCorner * 2.0 - 1.0, 0.0, 1.0);
}
`;

const FRAGMENT = /* glsl */ `#version 300 es
precision highp float;
uniform sampler2D uDrawn;
uniform vec2 uShift;
uniform float uRatio;
out vec4 outColour;

void main() {
  if (uRatio == 1.0) {
    outColour = texelFetch(uDrawn, ivec2(gl_FragCoord.xy + uShift), 0);
    return;
  }
  vec2 at = (gl_FragCoord.xy * uRatio + uShift) / vec2(textureSize(uDrawn, 0));
  outColour = textureLod(uDrawn, at, 0.0);
}
`;

/** A screen in CSS px, and its device px to one of them. */
export interface Screen {
  width: number;
  height: number;
  density: number;
}

/**
 * The wall as it was last drawn, with some more on all sides. While one pans, nothing changes but what
 * part of it is seen: that is a copy, however many prints there are. A slow screen is shown it larger
 * or smaller too while one zooms.
 */
export class WallCache {
  private readonly screen: Screen;
  private readonly drawn: RenderTexture;
  private readonly blitted: Mesh<Geometry, Shader>;
  private readonly place = new UniformGroup({
    uShift: { value: new Float32Array(2), type: 'vec2<f32>' as const },
    uRatio: { value: 1, type: 'f32' as const },
  });
  private view: View | null = null;
  private coarse = false;

  constructor(screen: Screen) {
    this.screen = screen;
    const { width, height } = this.padded;
    this.drawn = RenderTexture.create({ width, height, resolution: screen.density, antialias: false });
    const state = new State();
    state.blend = false;
    this.blitted = new Mesh({
      geometry: new Geometry({
        attributes: {
          aCorner: {
            buffer: new Buffer({ data: new Float32Array([0, 0, 1, 0, 1, 1, 0, 1]), usage: BufferUsage.VERTEX }),
            format: 'float32x2',
          },
        },
        indexBuffer: new Uint32Array([0, 1, 2, 0, 2, 3]),
      }),
      shader: new Shader({
        glProgram: GlProgram.from({ vertex: VERTEX, fragment: FRAGMENT, name: 'wall-cache' }),
        resources: { uDrawn: this.drawn.source, place: this.place },
      }),
      state,
    });
  }

  /** The screen with the wall beside it, CSS px. */
  get padded(): { width: number; height: number } {
    return { width: this.screen.width + 2 * CACHE_PAD, height: this.screen.height + 2 * CACHE_PAD };
  }

  serves(screen: Screen): boolean {
    const own = this.screen;
    return own.width === screen.width && own.height === screen.height && own.density === screen.density;
  }

  /** Forgets what was drawn: the wall has changed. */
  forget(): void {
    this.view = null;
  }

  /** Whether all that a view shows was drawn, in its size or, if that will do, in about its size. */
  reaches(view: View, otherSize: boolean): boolean {
    if (this.view === null) return false;
    const ratio = this.view.scale / view.scale;
    if (ratio !== 1 && (!otherSize || ratio < 0.5 || ratio > 2)) return false;
    const { left, top } = this.offset(view);
    const { width, height } = this.screen;
    const all = this.padded;
    return left >= 0 && top >= 0 && left + width * ratio <= all.width && top + height * ratio <= all.height;
  }

  /** Whether a view would be shown just as it would be drawn at rest. */
  exact(view: View): boolean {
    if (this.view === null || this.coarse || this.view.scale !== view.scale) return false;
    const { density } = this.screen;
    return [(view.x - this.view.x) * density, (view.y - this.view.y) * density].every(
      (shift) => Math.abs(shift - Math.round(shift)) < 1e-6,
    );
  }

  /**
   * Draws the wall, which must be placed for the padded screen.
   * @param coarse whether it is drawn with fewer look-ups than at rest
   */
  draw(renderer: WebGLRenderer, wall: Container, view: View, coarse: boolean): void {
    renderer.render({ container: wall, target: this.drawn, clear: true, clearColor: [0, 0, 0, 0] });
    this.view = { scale: view.scale, x: view.x, y: view.y };
    this.coarse = coarse;
  }

  /** Shows a view of what was drawn. */
  show(renderer: WebGLRenderer, view: View): void {
    const ratio = defined(this.view).scale / view.scale;
    const { density, height } = this.screen;
    const { left, top } = this.offset(view);
    // Rows count from below here.
    const bottom = this.padded.height - top - height * ratio;
    const device = (px: number): number => (ratio === 1 ? Math.round(px * density) : px * density);
    this.place.uniforms.uShift.set([device(left), device(bottom)]);
    this.place.uniforms.uRatio = ratio;
    renderer.render({ container: this.blitted, clear: false });
  }

  /** Where a view begins in what was drawn, CSS px of that. */
  private offset(view: View): { left: number; top: number } {
    const { scale, x, y } = defined(this.view);
    const ratio = scale / view.scale;
    return { left: x - view.x * ratio + CACHE_PAD, top: y - view.y * ratio + CACHE_PAD };
  }

  destroy(): void {
    const { shader, geometry } = this.blitted;
    this.blitted.destroy();
    shader?.destroy();
    geometry.destroy(true);
    this.drawn.destroy(true);
  }
}
