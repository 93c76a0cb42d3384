/** Values in a chunk: small beside what is kept, large beside a list. */
const CHUNK = 1 << 15;

/**
 * Room for the lists of many row spans. A list with a buffer of its own costs some 370 bytes beside its values, in V8 and in
 * the browser, so that tens of thousands of short ones took more than they hold; here many share one.
 */
export class SpanRoom {
  private readonly reals = new Chunks((length) => new Float64Array(length));
  private readonly words = new Chunks((length) => new Uint32Array(length));

  /** A list of so many numbers, 0 each; it is the caller's for good. */
  realList(length: number): Float64Array<ArrayBuffer> {
    return this.reals.list(length);
  }

  /** The same of whole numbers. */
  wordList(length: number): Uint32Array<ArrayBuffer> {
    return this.words.list(length);
  }
}

type Numbers = Float64Array<ArrayBuffer> | Uint32Array<ArrayBuffer>;

/** Gives parts of long lists, one after the other. */
class Chunks<List extends Numbers> {
  private readonly make: (length: number) => List;
  private chunk: List;
  private used = 0;

  constructor(make: (length: number) => List) {
    this.make = make;
    this.chunk = make(0);
  }

  list(length: number): List {
    if (length > CHUNK / 4) return this.make(length);
    if (this.used + length > this.chunk.length) {
      this.chunk = this.make(CHUNK);
      this.used = 0;
    }
    const from = this.used;
    this.used += length;
    return this.chunk.subarray(from, this.used) as List;
  }
}
