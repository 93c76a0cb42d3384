import { defined } from '../at.ts';
import { type LaneFunction, LaneRoom } from '../lanes/lane-room.ts';
import { PlainCode } from './plain-code.ts';
import { Int, type IntVariable, Ints, Real, Reals } from './values.ts';

/** What a function finds by name: whole numbers, and lists by their places. */
export interface CodeLists<Name extends string> {
  /** A number that was told before the call, or the address of a list that lies elsewhere. */
  int(name: Name): IntVariable;
  ints(name: Name): Ints;
  reals(name: Name): Reals;
}

/** A name of a function, in the order of its names. */
interface Told<Name> {
  readonly name: Name;
  readonly place: number;
  /** Where its list begins, and how much room that has, in bytes; −1 of a number, or of what was not told yet. */
  at: number;
  room: number;
}

/** A list is given so many times the room that it asks for, and at least so many bytes, so that it hardly ever moves. */
const MORE_ROOM = 1.5;
const LEAST_ROOM = 16_384;
/** Places and rooms are whole multiples of this; a list more of it lies between two, or lists of like lengths would contend for the same part of near memory. */
const LINE = 64;

/**
 * A function of `PlainCode` with the memory that its lists lie in. Before each call all names are told: `begin`, then `int`, `intList` and
 * `realList`, then `fit`. A list stays where it lies until it outgrows its room, and the function is written anew then: it knows all places
 * as numbers, as processors have not registers enough for dozens of addresses. It may have several sizes, each written when it is first
 * called, in which loops of so many steps are written out.
 */
export class CodeRoom<Name extends string> {
  /** The whole memory, as each kind of number; cut anew by `fit`. */
  ints = new Int32Array(0);
  words = new Uint32Array(0);
  singles = new Float32Array(0);
  reals = new Float64Array(0);
  /** Whether the machine can run it. */
  readonly works: boolean;
  private readonly memory: { readonly room: LaneRoom; end: number };
  private readonly names: ReadonlyMap<Name, Told<Name>>;
  private readonly write: (code: PlainCode, lists: CodeLists<Name>, size: number) => void;
  /** Numbers that are told, and where they lie in memory, in bytes. */
  private readonly header: Int32Array;
  private readonly headerAt: number;
  /** Names in the order in which they were told for the latest call: mostly the next is told in that order. */
  private readonly told: Told<Name>[] = [];
  private next = 0;
  private size = 0;
  private readonly runs = new Map<number, () => unknown>();

  /**
   * @param names of all that the function reads
   * @param write puts the function down
   * @param where plain as on machines that cannot run it; or beside the lists of another function, which it can read by their addresses
   */
  constructor(
    names: readonly Name[],
    write: (code: PlainCode, lists: CodeLists<Name>, size: number) => void,
    where: { plain?: boolean; beside?: CodeRoom<string> } = {},
  ) {
    this.memory = where.beside?.memory ?? { room: new LaneRoom(where.plain), end: 0 };
    this.names = new Map(names.map((name, place) => [name, { name, place, at: -1, room: -1 }]));
    this.write = write;
    this.header = new Int32Array(names.length);
    this.headerAt = this.take(names.length * 4);
    this.works = canRun(this.memory.room);
  }

  /** Another function in the same memory; null where the machine cannot run it. */
  load(module: Uint8Array<ArrayBuffer>): LaneFunction | null {
    return this.memory.room.load(module);
  }

  /** @param size of the function that is called next */
  begin(size = 0): void {
    this.size = size;
    this.next = 0;
  }

  int(name: Name, value: number): void {
    this.header[this.tell(name).place] = value;
  }

  /** @returns where the list begins in `ints` and `words` */
  intList(name: Name, length: number): number {
    return this.list(name, length * 4) / 4;
  }

  /** @returns where the list begins in `reals` */
  realList(name: Name, length: number): number {
    return this.list(name, length * 8) / 8;
  }

  /** Makes room for all that was told. */
  fit(): void {
    const { room, end } = this.memory;
    room.fit(end);
    // It may have grown for another function.
    if (this.ints.buffer !== room.buffer) this.cut();
    this.ints.set(this.header, this.headerAt / 4);
  }

  /** Calls the function. */
  call(): number {
    const run = this.runs.get(this.size) ?? this.writeDown();
    return Number(run());
  }

  private tell(name: Name): Told<Name> {
    let known = this.told[this.next];
    if (known?.name !== name) this.told[this.next] = known = defined(this.names.get(name));
    this.next++;
    return known;
  }

  /** @returns where it begins, in bytes */
  private list(name: Name, bytes: number): number {
    const known = this.tell(name);
    if (bytes > known.room) {
      known.room = Math.max(LEAST_ROOM, bytes * MORE_ROOM);
      known.at = this.take(known.room);
      this.runs.clear();
    }
    return known.at;
  }

  private take(bytes: number): number {
    const { memory } = this;
    const at = memory.end;
    memory.end += (Math.ceil(bytes / LINE) + 1) * LINE;
    return at;
  }

  private writeDown(): () => unknown {
    const code = new PlainCode(0);
    const header = new Ints(Int.of(this.headerAt));
    const numbers = [...this.names.values()].filter(({ at }) => at < 0);
    const variables = new Map(numbers.map(({ name, place }) => [name, code.int(header.at(place))]));
    const int = (name: Name): IntVariable => defined(variables.get(name));
    const address = (name: Name): Int => variables.get(name) ?? Int.of(defined(this.names.get(name)).at);
    this.write(code, { int, ints: (name) => new Ints(address(name)), reals: (name) => new Reals(address(name)) }, this.size);
    const run = defined(this.memory.room.load(code.module()));
    this.runs.set(this.size, run);
    return run;
  }

  private cut(): void {
    const { buffer } = this.memory.room;
    this.ints = new Int32Array(buffer);
    this.words = new Uint32Array(buffer);
    this.singles = new Float32Array(buffer);
    this.reals = new Float64Array(buffer);
  }
}

/** Whether a machine runs such functions, lanes among them. */
function canRun(room: LaneRoom): boolean {
  const code = new PlainCode(0);
  code.set(code.real(), Real.of(0).least(1));
  return room.load(code.module()) !== null;
}
