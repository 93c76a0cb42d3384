import { Buffer, BufferImageSource, BufferUsage, Container, Geometry, GlProgram, Mesh, Shader, UniformGroup } from 'pixi.js';
import type { Picture } from '../../../workers/api/picture-api.ts';
import { SELECTED, TURNED_CORNER, type WallUniforms } from './wall-shader.ts';

const VERTEX = /* glsl */ `#version 300 es
in vec2 aCorner;
uniform vec4 uFrame;
uniform vec2 uScreen;
out vec2 vAt;
out vec2 vFromEdges;

void main() {
  vAt = aCorner;
  vFromEdges = vec2(1.0 - aCorner.x, aCorner.y) * uFrame.zw;
  vec2 at = uFrame.xy + aCorner * uFrame.zw;
  gl_Position = vec4(at.x / uScreen.x * 2.0 - 1.0, 1.0 - at.y / uScreen.y * 2.0, 0.0, 1.0);
}
`;

const FRAGMENT = /* glsl */ `#version 300 es
precision highp float;
in vec2 vAt;
in vec2 vFromEdges;
uniform sampler2D uPicture;
uniform vec3 uCamera;
uniform float uDensity;
uniform vec4 uAccent;
uniform float uSelected;
out vec4 outColour;
${TURNED_CORNER}
void main() {
  vec3 colour = texture(uPicture, vAt).rgb;
  vec2 corner = uSelected * turnedCorner(vFromEdges, uCamera.x, uDensity);
  colour = mix(mix(colour, vec3(1.0), corner.x), uAccent.rgb, corner.y);
  outColour = vec4(colour, 1.0);
}
`;

let program: GlProgram | undefined;

/** The program by which close-ups are drawn. */
export function closeUpProgram(): GlProgram {
  return (program ??= GlProgram.from({ vertex: VERTEX, fragment: FRAGMENT, name: 'close-up' }));
}

interface CloseUp {
  mesh: Mesh<Geometry, Shader>;
  source: BufferImageSource;
  frame: UniformGroup<{ uFrame: { value: Float32Array; type: 'vec4<f32>' }; uSelected: { value: number; type: 'f32' } }>;
}

/**
 * Finer pictures laid over the prints one stands close to. Not sprites: those come with a shader
 * for sixteen pictures at once, which a machine without graphics card takes a second to build.
 */
export class CloseUpPrints {
  readonly container = new Container();
  private readonly uniforms: WallUniforms;
  private readonly laid = new Map<number, CloseUp>();
  private readonly geometry = new Geometry({
    attributes: {
      aCorner: {
        buffer: new Buffer({ data: new Float32Array([0, 0, 1, 0, 1, 1, 0, 1]), usage: BufferUsage.VERTEX }),
        format: 'float32x2',
      },
    },
    indexBuffer: new Uint32Array([0, 1, 2, 0, 2, 3]),
  });

  constructor(uniforms: WallUniforms) {
    this.uniforms = uniforms;
  }

  /**
   * Has the shader built now, while nothing else waits for the graphics card: the first close-up
   * would stop the page until every frame before it is drawn.
   * @param render draws the scene once
   */
  warmUp(render: () => void): void {
    this.add(-1, { widthPx: 1, heightPx: 1, pixels: new Uint8ClampedArray(4) });
    render();
    this.drop(-1);
  }

  add(index: number, picture: Picture): void {
    this.drop(index);
    const source = new BufferImageSource({
      resource: new Uint8Array(picture.pixels.buffer),
      width: picture.widthPx,
      height: picture.heightPx,
      format: 'rgba8unorm',
      scaleMode: 'linear',
      alphaMode: 'no-premultiply-alpha',
      autoGarbageCollect: false,
    });
    const frame = new UniformGroup({
      uFrame: { value: new Float32Array(4), type: 'vec4<f32>' as const },
      uSelected: { value: 0, type: 'f32' as const },
    });
    const shader = new Shader({
      glProgram: closeUpProgram(),
      resources: { uPicture: source, wall: this.uniforms, closeUp: frame },
    });
    const mesh = new Mesh({ geometry: this.geometry, shader });
    this.laid.set(index, { mesh, source, frame });
    this.container.addChild(mesh);
  }

  /** Height of the picture over a print, px; 0 when there is none. */
  heightPx(index: number): number {
    return this.laid.get(index)?.source.height ?? 0;
  }

  /** Lays each picture where its print now is, CSS px, with the print's look bits. */
  place(frameOf: (index: number) => { left: number; top: number; width: number; height: number }, lookOf: (index: number) => number): void {
    for (const [index, { frame }] of this.laid) {
      const { left, top, width, height } = frameOf(index);
      frame.uniforms.uFrame.set([left, top, width, height]);
      frame.uniforms.uSelected = (lookOf(index) & SELECTED) === 0 ? 0 : 1;
    }
  }

  /** Takes away all but some. @returns whether there were others */
  keepOnly(kept: ReadonlySet<number>): boolean {
    const others = [...this.laid.keys()].filter((index) => !kept.has(index));
    for (const index of others) this.drop(index);
    return others.length > 0;
  }

  private drop(index: number): void {
    const found = this.laid.get(index);
    if (found === undefined) return;
    this.laid.delete(index);
    const { shader } = found.mesh;
    found.mesh.destroy();
    shader?.destroy();
    found.source.destroy();
  }
}
