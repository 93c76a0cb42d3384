type Numbers = Uint8Array<ArrayBuffer> | Uint16Array<ArrayBuffer> | Uint32Array<ArrayBuffer> | Float64Array<ArrayBuffer>;

const FIRST_LENGTH = 1024;

/** Numbers gathered into one list, over and over in the same room. */
export class Gathered<List extends Numbers> {
  private readonly make: (length: number) => List;
  private room: List;
  private length = 0;

  constructor(make: (length: number) => List) {
    this.make = make;
    this.room = make(FIRST_LENGTH);
  }

  add(numbers: List | readonly number[]): void {
    const end = this.length + numbers.length;
    if (end > this.room.length) {
      const room = this.make(end * 2);
      room.set(this.room);
      this.room = room;
    }
    this.room.set(numbers, this.length);
    this.length = end;
  }

  /** All of them in a list of its own; the next begin anew. */
  take(): List {
    const list = this.room.slice(0, this.length) as List;
    this.length = 0;
    return list;
  }
}
