import { defined } from '../at.ts';
import { type LaneFunction, LaneRoom } from '../lanes/lane-room.ts';
import { PlainCode } from './plain-code.ts';
import { IntVariable, Ints, Reals } from './values.ts';

/** What a function finds by name: whole numbers, and the addresses of lists. */
export interface CodeLists<Name extends string> {
  int(name: Name): IntVariable;
  ints(name: Name): Ints;
  reals(name: Name): Reals;
}

/**
 * A function of `PlainCode` with the memory that its lists lie in. For each call they are laid out anew: `begin`, then
 * `int`, `intList` and `realList` for all names, then `fit`; what lists held before is lost.
 */
export class CodeRoom<Name extends string> {
  /** The whole memory, as each kind of number; cut anew by `fit`. */
  ints = new Int32Array(0);
  words = new Uint32Array(0);
  singles = new Float32Array(0);
  reals = new Float64Array(0);
  private readonly room: LaneRoom;
  private readonly beside: CodeRoom<string> | null;
  private readonly places: ReadonlyMap<Name, number>;
  private readonly header: Int32Array;
  /** Names in the order in which they were told for the latest call, and their places: mostly the next is told in that order. */
  private readonly told: { name: Name; place: number }[] = [];
  private next = 0;
  private readonly run: ((address: number) => unknown) | null;
  private begins = 0;
  private end = 0;

  /**
   * @param names of all that the function reads
   * @param write puts the function down
   * @param where plain as on machines that cannot run it; or beside the lists of another function, which it can read by their addresses
   */
  constructor(
    names: readonly Name[],
    write: (code: PlainCode, lists: CodeLists<Name>) => void,
    where: { plain?: boolean; beside?: CodeRoom<string> } = {},
  ) {
    this.beside = where.beside ?? null;
    this.room = this.beside?.room ?? new LaneRoom(where.plain);
    this.places = new Map(names.map((name, i) => [name, i]));
    this.header = new Int32Array(names.length);
    const code = new PlainCode(1);
    const header = new Ints(code.param(0));
    const found = new Map(names.map((name, i) => [name, code.int(header.at(0, i))]));
    const int = (name: Name): IntVariable => defined(found.get(name));
    write(code, { int, ints: (name) => new Ints(int(name)), reals: (name) => new Reals(int(name)) });
    this.run = this.room.load(code.module());
    if (this.room.buffer.byteLength > 0) this.cut();
  }

  /** Whether the machine can run it. */
  get works(): boolean {
    return this.run !== null;
  }

  /** Another function in the same memory; null where the machine cannot run it. */
  load(module: Uint8Array<ArrayBuffer>): LaneFunction | null {
    return this.room.load(module);
  }

  begin(): void {
    this.begins = Math.ceil((this.beside?.end ?? 0) / 8) * 8;
    this.end = this.begins + this.header.length * 4;
    this.next = 0;
  }

  int(name: Name, value: number): void {
    let known = this.told[this.next];
    if (known?.name !== name) this.told[this.next] = known = { name, place: defined(this.places.get(name)) };
    this.header[known.place] = value;
    this.next++;
  }

  /** @returns where the list begins in `ints` and `words` */
  intList(name: Name, length: number): number {
    const at = this.end;
    this.end += length * 4;
    this.int(name, at);
    return at / 4;
  }

  /** @returns where the list begins in `reals` */
  realList(name: Name, length: number): number {
    const at = Math.ceil(this.end / 8) * 8;
    this.end = at + length * 8;
    this.int(name, at);
    return at / 8;
  }

  /** Makes room for all that was laid out. */
  fit(): void {
    this.room.fit(this.end);
    // It may have grown for another function.
    if (this.ints.buffer !== this.room.buffer) this.cut();
    this.ints.set(this.header, this.begins / 4);
  }

  /** Calls the function. */
  call(): number {
    return Number(this.run?.(this.begins));
  }

  private cut(): void {
    const { buffer } = this.room;
    this.ints = new Int32Array(buffer);
    this.words = new Uint32Array(buffer);
    this.singles = new Float32Array(buffer);
    this.reals = new Float64Array(buffer);
  }
}
