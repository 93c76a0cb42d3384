import { Buffer, type BufferImageSource, BufferUsage, Geometry, Mesh, type Shader } from 'pixi.js';
import { wallShader, type WallUniforms } from './wall-shader.ts';

const FLOATS = 6;
const CORNERS = new Float32Array([0, 0, 1, 0, 1, 1, 0, 1]);
const TRIANGLES = new Uint32Array([0, 1, 2, 0, 2, 3]);

/** The prints that share a page of maps and a page of colours: one instanced draw call. */
export class Sheaf {
  readonly mesh: Mesh<Geometry, Shader>;
  private readonly geometry: Geometry;
  private readonly buffer: Buffer;
  private data = new Float32Array(64 * FLOATS);
  private count = 0;

  constructor(maps: BufferImageSource, colours: BufferImageSource, uniforms: WallUniforms) {
    this.buffer = new Buffer({
      data: this.data,
      usage: BufferUsage.VERTEX | BufferUsage.COPY_DST,
      shrinkToFit: false,
      label: 'prints',
    });
    const perPrint = { buffer: this.buffer, format: 'float32x2' as const, stride: FLOATS * 4, instance: true };
    this.geometry = new Geometry({
      attributes: {
        aCorner: { buffer: new Buffer({ data: CORNERS.slice(), usage: BufferUsage.VERTEX }), format: 'float32x2' },
        aPlace: { ...perPrint, offset: 0 },
        aMap: { ...perPrint, offset: 8 },
        aLook: { ...perPrint, offset: 16 },
      },
      indexBuffer: TRIANGLES.slice(),
      instanceCount: 0,
    });
    this.mesh = new Mesh({ geometry: this.geometry, shader: wallShader(maps, colours, uniforms) });
    this.mesh.visible = false;
  }

  /** Forgets which prints are in view. */
  begin(): void {
    this.count = 0;
  }

  /** Adds a print in view: its top left in wall units, its map's corner, its colours, its look bits. */
  push(left: number, top: number, mapX: number, mapY: number, colours: number, look: number): void {
    const at = this.count * FLOATS;
    if (at + FLOATS > this.data.length) {
      const grown = new Float32Array(this.data.length * 2);
      grown.set(this.data);
      this.data = grown;
    }
    const { data } = this;
    data[at] = left;
    data[at + 1] = top;
    data[at + 2] = mapX;
    data[at + 3] = mapY;
    data[at + 4] = colours;
    data[at + 5] = look;
    this.count++;
  }

  /** Sends the prints in view on to be drawn. */
  end(): void {
    this.mesh.visible = this.count > 0;
    this.geometry.instanceCount = this.count;
    if (this.count > 0) this.buffer.setDataWithSize(this.data, this.count * FLOATS, true);
  }

  destroy(): void {
    const { shader } = this.mesh;
    this.mesh.destroy();
    shader?.destroy();
    this.geometry.destroy(true);
  }
}
