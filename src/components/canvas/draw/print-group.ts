import { Buffer, BufferUsage, Geometry, Mesh, type Shader } from 'pixi.js';

const FLOATS = 6;
const CORNERS = new Float32Array([0, 0, 1, 0, 1, 1, 0, 1]);
const TRIANGLES = new Uint32Array([0, 1, 2, 0, 2, 3]);

/** How a print in view is drawn. */
export interface DrawnPrint {
  /** Its top left, wall units. */
  left: number;
  top: number;
  /** The corner of its map or small picture in its page, texels. */
  gridX: number;
  gridY: number;
  /** The first of its colours in their page. */
  colours: number;
  look: number;
}

/** The prints that are drawn from the same pages: one instanced draw call. */
export class PrintGroup {
  readonly mesh: Mesh<Geometry, Shader>;
  private readonly geometry: Geometry;
  private readonly buffer: Buffer;
  private data = new Float32Array(64 * FLOATS);
  private count = 0;

  constructor(shader: Shader) {
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
        aGrid: { ...perPrint, offset: 8 },
        aLook: { ...perPrint, offset: 16 },
      },
      indexBuffer: TRIANGLES.slice(),
      instanceCount: 0,
    });
    this.mesh = new Mesh({ geometry: this.geometry, shader });
    this.mesh.visible = false;
  }

  /** Forgets which prints are in view. */
  begin(): void {
    this.count = 0;
  }

  /** Adds a print in view. */
  push({ left, top, gridX, gridY, colours, look }: DrawnPrint): void {
    const at = this.count * FLOATS;
    if (at + FLOATS > this.data.length) {
      const grown = new Float32Array(this.data.length * 2);
      grown.set(this.data);
      this.data = grown;
    }
    const { data } = this;
    data[at] = left;
    data[at + 1] = top;
    data[at + 2] = gridX;
    data[at + 3] = gridY;
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
