import { entryAt, f64, u16, u32 } from '../base/at.ts';
import type { Pull } from './types.ts';

/** Words of a pull: where its id, screen and ink stand among the names, then its strokes. */
const WORDS = 4;
/** Numbers of a pull: dxMm, dyMm and turnDeg. */
const REALS = 3;

/** Room for packed pulls. */
interface PullRoom {
  words: Uint16Array<ArrayBuffer>;
  reals: Float64Array<ArrayBuffer>;
}

/** Pulls in few lists: as objects, those of ten thousand prints of 20 pulls take 13 MB, packed 6. */
export interface PackedPulls extends PullRoom {
  /** What pulls, screens and inks are called, each name once; at most 65,536. */
  names: string[];
}

/** The pulls of several prints. */
export interface PackedPrints extends PackedPulls {
  /** The pull after the last of each print. */
  ends: Uint32Array<ArrayBuffer>;
}

/** Room for so many pulls. */
export function roomForPulls(count: number): PullRoom {
  return { words: new Uint16Array(count * WORDS), reals: new Float64Array(count * REALS) };
}

/** Packs a pull. @param at its place in the lists @param place of a name among the names */
export function packPull({ words, reals }: PullRoom, at: number, pull: Pull, place: (name: string) => number): void {
  words[at * WORDS] = place(pull.id);
  words[at * WORDS + 1] = place(pull.screen);
  words[at * WORDS + 2] = place(pull.ink);
  words[at * WORDS + 3] = pull.strokes;
  reals[at * REALS] = pull.dxMm;
  reals[at * REALS + 1] = pull.dyMm;
  reals[at * REALS + 2] = pull.turnDeg;
}

/** So many pulls from a place on; new objects each time. */
export function unpackPulls({ names, words, reals }: PackedPulls, from: number, count: number): Pull[] {
  return Array.from({ length: count }, (_, i) => {
    const word = (from + i) * WORDS;
    const real = (from + i) * REALS;
    return {
      id: entryAt(names, u16(words, word)),
      screen: entryAt(names, u16(words, word + 1)),
      ink: entryAt(names, u16(words, word + 2)),
      dxMm: f64(reals, real),
      dyMm: f64(reals, real + 1),
      turnDeg: f64(reals, real + 2),
      strokes: u16(words, word + 3),
    };
  });
}

/** Copies so many pulls to lists of the same names. */
export function copyPacked(from: PullRoom, to: PullRoom, { first, at, count }: { first: number; at: number; count: number }): void {
  to.words.set(from.words.subarray(first * WORDS, (first + count) * WORDS), at * WORDS);
  to.reals.set(from.reals.subarray(first * REALS, (first + count) * REALS), at * REALS);
}

/** Numbers names as they come. */
export class NamePlaces {
  readonly names: string[] = [];
  private readonly places = new Map<string, number>();

  readonly of = (name: string): number => {
    const known = this.places.get(name);
    if (known !== undefined) return known;
    this.places.set(name, this.names.length);
    return this.names.push(name) - 1;
  };
}

/** Packs the pulls of prints as they come, over and over in the same room. */
export class PullPacker {
  private places = new NamePlaces();
  private room = roomForPulls(0);
  private ends: number[] = [];
  private count = 0;

  add(pulls: readonly Pull[]): void {
    const { room, count } = this;
    if ((count + pulls.length) * WORDS > room.words.length) {
      this.room = roomForPulls((count + pulls.length) * 2);
      copyPacked(room, this.room, { first: 0, at: 0, count });
    }
    for (let i = 0; i < pulls.length; i++) packPull(this.room, this.count++, entryAt(pulls, i), this.places.of);
    this.ends.push(this.count);
  }

  /** All that came, in lists of its own; the next begin anew. */
  take(): PackedPrints {
    const { words, reals } = this.room;
    const { places, count, ends } = this;
    this.places = new NamePlaces();
    this.ends = [];
    this.count = 0;
    return {
      names: places.names,
      words: words.slice(0, count * WORDS),
      reals: reals.slice(0, count * REALS),
      ends: Uint32Array.from(ends),
    };
  }
}

/** The pulls of a print, by its place among those that were packed; new objects each time. */
export function unpackPrint(packed: PackedPrints, print: number): Pull[] {
  const from = print === 0 ? 0 : u32(packed.ends, print - 1);
  return unpackPulls(packed, from, u32(packed.ends, print) - from);
}
