/** Memory that lane code works on. */
interface Memory {
  readonly buffer: ArrayBuffer;
  grow(pages: number): number;
}

/** What of WebAssembly is used; where there is none, plain code does the same. */
interface Machine {
  Memory: new (size: { initial: number }) => Memory;
  Module: new (code: Uint8Array<ArrayBuffer>) => object;
  Instance: new (module: object, imports: object) => { exports: Record<string, unknown> };
}

/** Called with addresses and counts. */
export type LaneFunction = (...whole: number[]) => void;

const PAGE = 65536;

/** Memory that lane code and plain code share. When it grows its content stays, in another buffer: arrays on it are cut anew. */
export class LaneRoom {
  buffer: ArrayBuffer = new ArrayBuffer(0);
  private readonly memory: Memory | null;
  private readonly machine: Machine | null;

  /** @param plain without WebAssembly, as on machines that have none */
  constructor(plain = false) {
    const { WebAssembly: machine = null } = globalThis as { WebAssembly?: Machine };
    this.machine = plain ? null : machine;
    this.memory = this.machine === null ? null : new this.machine.Memory({ initial: 1 });
    if (this.memory !== null) this.buffer = this.memory.buffer;
  }

  /** Makes room for so many bytes. @returns whether `buffer` is another one than before */
  fit(bytes: number): boolean {
    if (this.buffer.byteLength >= bytes) return false;
    if (this.memory === null) {
      const larger = new Uint8Array(bytes);
      larger.set(new Uint8Array(this.buffer));
      this.buffer = larger.buffer;
    } else {
      this.memory.grow(Math.ceil((bytes - this.buffer.byteLength) / PAGE));
      this.buffer = this.memory.buffer;
    }
    return true;
  }

  /** The function of a module made by `LaneCode`; null where the machine cannot run it. */
  load(module: Uint8Array<ArrayBuffer>): LaneFunction | null {
    if (this.machine === null) return null;
    try {
      const { f } = new this.machine.Instance(new this.machine.Module(module), { m: { m: this.memory } }).exports;
      return f as LaneFunction;
    } catch {
      return null;
    }
  }
}
