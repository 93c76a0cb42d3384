import { f64, u32 } from '../../base/at.ts';
import { LaneCode, type Lanes, type Whole } from '../../base/lanes/lane-code.ts';
import { type LaneFunction, LaneRoom } from '../../base/lanes/lane-room.ts';
import { BANDS } from '../../colour/weights.ts';
import type { FilmBands } from '../../ink/film/film.ts';
import type { CellGroups } from './cell-groups.ts';

// The module's own name for it: unbundled, hot loops would look up another module's each time.
const bandCount = BANDS;
const NUMBER = 8;
/** Cells at a time, two a step. */
export const CELLS_AT_ONCE = 256;
/** Bytes of a ground, and of a film over it. */
const GROUND = BANDS * NUMBER;
const FILM = 3 * GROUND;
/** Where the cells' grounds and films, and their sums lie, in bytes, after the weights or the film that is laid; then come grounds, then films. */
const LIST = FILM;
const OUT = LIST + CELLS_AT_ONCE * 8;
const GROUNDS = OUT + CELLS_AT_ONCE * 3 * NUMBER;

/** Groups of cells that a layer makes, as in CellGroups. */
type Groups = Pick<CellGroups, 'made' | 'from' | 'madeCount'>;

/**
 * Films laid, and three weighted sums over the bands of many cells, two cells at a time where the machine can: the same numbers, to the
 * last bit, as one by one. It keeps the grounds (36 numbers each) and the films over them (36 a, 36 b, 36 c). Holds its
 * buffers, for many maps and stacks.
 */
export class FilmLanes {
  grounds = new Float64Array(0);
  films = new Float64Array(0);
  private readonly room: LaneRoom;
  private readonly run: LaneFunction | null;
  private readonly onGrounds: LaneFunction | null;
  private readonly onFilms: LaneFunction | null;
  private weights = new Float64Array(0);
  private list = new Uint32Array(0);
  private out = new Float64Array(0);

  /** @param plain one by one, as on machines without WebAssembly */
  constructor(plain = false) {
    this.room = new LaneRoom(plain);
    this.run = this.room.load(sumCode());
    this.onGrounds = this.room.load(groundCode());
    this.onFilms = this.room.load(filmCode());
  }

  /** Room for so many numbers of grounds; what was kept is lost. */
  fitGrounds(numbers: number): Float64Array {
    this.layOut(numbers, this.films.length);
    return this.grounds;
  }

  /** Makes room for so many numbers of films. Grounds stay, in another array. */
  fitFilms(numbers: number): void {
    if (this.films.length < numbers) this.layOut(this.grounds.length, numbers);
  }

  /**
   * Lays one film over many grounds, or over many films.
   * @param onto 'grounds' or 'films'
   * @param groups how many, which become which
   * @returns false where the machine cannot: then nothing is done
   */
  lay(onto: 'grounds' | 'films', { r0, q, back }: FilmBands, groups: Groups): boolean {
    const run = onto === 'grounds' ? this.onGrounds : this.onFilms;
    if (run === null) return false;
    const { weights, list } = this;
    weights.set(r0);
    weights.set(q, bandCount);
    weights.set(back, bandCount * 2);
    const { made, from, madeCount } = groups;
    for (let start = 0; start < madeCount; start += CELLS_AT_ONCE) {
      const count = Math.min(CELLS_AT_ONCE, madeCount - start);
      for (let i = 0; i < count; i++) {
        list[i * 2] = u32(from, start + i);
        list[i * 2 + 1] = u32(made, start + i);
      }
      run(count, this.films.byteOffset);
    }
    return true;
  }

  /** Notes where the ground and the film of a cell begin. @param place below CELLS_AT_ONCE */
  note(place: number, ground: number, film: number): void {
    this.list[place * 2] = ground;
    this.list[place * 2 + 1] = film;
  }

  /**
   * Sums up cells that were noted at the places from 0.
   * @param cells their numbers
   * @param weights 36 × 3, [3 · band + sum]
   * @param sums receives three numbers a cell
   */
  sum(cells: Uint32Array, weights: Float64Array, sums: Float64Array): void {
    const count = cells.length;
    if (this.run === null) {
      for (let i = 0; i < count; i++) this.sumOne(i, weights, sums, u32(cells, i) * 3);
      return;
    }
    this.weights.set(weights);
    // The last step takes a cell more where their number is odd.
    if ((count & 1) === 1) this.note(count, 0, 0);
    this.run((count + 1) >> 1, this.films.byteOffset);
    const { out } = this;
    for (let i = 0; i < count; i++) {
      const from = (i >> 1) * 6 + (i & 1);
      const to = u32(cells, i) * 3;
      sums[to] = f64(out, from);
      sums[to + 1] = f64(out, from + 2);
      sums[to + 2] = f64(out, from + 4);
    }
  }

  /** The steps are those of `sumCode`. */
  private sumOne(place: number, weights: Float64Array, ...[sums, to]: [Float64Array, number]): void {
    const { films, grounds } = this;
    let ground = u32(this.list, place * 2);
    const film = u32(this.list, place * 2 + 1);
    let x = 0;
    let y = 0;
    let z = 0;
    for (let at = film, i = 0; i < 3 * bandCount; at++, i += 3) {
      const under = f64(grounds, ground++);
      const value = (f64(films, at) + f64(films, at + bandCount) * under) / (1 - f64(films, at + 2 * bandCount) * under);
      x += value * f64(weights, i);
      y += value * f64(weights, i + 1);
      z += value * f64(weights, i + 2);
    }
    sums[to] = x;
    sums[to + 1] = y;
    sums[to + 2] = z;
  }

  private layOut(grounds: number, films: number): void {
    this.room.fit(GROUNDS + (grounds + films) * NUMBER);
    const { buffer } = this.room;
    this.weights = new Float64Array(buffer, 0, bandCount * 3);
    this.list = new Uint32Array(buffer, LIST, CELLS_AT_ONCE * 2);
    this.out = new Float64Array(buffer, OUT, CELLS_AT_ONCE * 3);
    this.grounds = new Float64Array(buffer, GROUNDS, grounds);
    this.films = new Float64Array(buffer, GROUNDS + grounds * NUMBER, films);
  }
}

/** Called with the number of grounds and the address of the films, which it does not need: R′ = (R0 + q R) / (1 + back R), two bands at once. */
function groundCode(): Uint8Array<ArrayBuffer> {
  const code = new LaneCode(2);
  const step = code.variable(0);
  const [film, list, grounds] = [code.variable(0), code.variable(LIST), code.variable(GROUNDS)];
  code.loop(step, [code.param(0), 1], () => {
    const group = code.offset(list, step, 8);
    const [from, to] = [0, 4].map((bytes) => code.offset(grounds, code.wholeAt(group, bytes), GROUND)) as [Whole, Whole];
    for (let band = 0; band < BANDS; band += 2) {
      const ground = code.load(from, band);
      const shown = code.add(code.load(film, band), code.mul(code.load(film, BANDS + band), ground));
      const back = code.add(code.number(1), code.mul(code.load(film, BANDS * 2 + band), ground));
      code.store(to, band, code.div(shown, back));
    }
  });
  return code.module();
}

/** Called with the number of films and the address of the first: one film after another as in `layOnPile`, two bands at once. */
function filmCode(): Uint8Array<ArrayBuffer> {
  const code = new LaneCode(2);
  const step = code.variable(0);
  const [film, list] = [code.variable(0), code.variable(LIST)];
  code.loop(step, [code.param(0), 1], () => {
    const group = code.offset(list, step, 8);
    const [from, to] = [0, 4].map((bytes) => code.offset(code.param(1), code.wholeAt(group, bytes), FILM)) as [Whole, Whole];
    for (let band = 0; band < BANDS; band += 2) {
      const three = (place: Whole): Lanes[] => [0, 1, 2].map((k) => code.load(place, BANDS * k + band));
      const [a, b, c] = three(from) as [Lanes, Lanes, Lanes];
      const [over, through, thrown] = three(film) as [Lanes, Lanes, Lanes];
      const scale = code.div(code.number(1), code.add(code.number(1), code.mul(thrown, a)));
      const made = [
        code.add(over, code.mul(through, a)),
        code.sub(code.mul(through, b), code.mul(over, c)),
        code.sub(c, code.mul(thrown, b)),
      ];
      made.forEach((value, k) => code.store(to, BANDS * k + band, code.mul(value, scale)));
    }
  });
  return code.module();
}

/** Called with the number of steps of two cells and the address of the films. Bands are shown two at once, and summed up two cells at once, one band after another. */
function sumCode(): Uint8Array<ArrayBuffer> {
  const code = new LaneCode(2);
  const step = code.variable(0);
  const [weights, list, out, grounds] = [code.variable(0), code.variable(LIST), code.variable(OUT), code.variable(GROUNDS)];
  code.loop(step, [code.param(0), 1], () => {
    const cells = code.offset(list, step, 16);
    const places = [0, 8].map((cell): [Whole, Whole] => [
      code.offset(grounds, code.wholeAt(cells, cell), NUMBER),
      code.offset(code.param(1), code.wholeAt(cells, cell + 4), NUMBER),
    ]);
    let sums: Lanes[] = [0, 0, 0].map((zero) => code.number(zero));
    for (let band = 0; band < BANDS; band += 2) {
      const [one, other] = places.map(([ground, film]) => {
        const under = code.load(ground, band);
        const [a, b, c] = [0, 1, 2].map((k) => code.load(film, BANDS * k + band)) as [Lanes, Lanes, Lanes];
        return code.div(code.add(a, code.mul(b, under)), code.sub(code.number(1), code.mul(c, under)));
      }) as [Lanes, Lanes];
      code.turned(one, other).forEach((value, next) => {
        sums = sums.map((sum, k) => code.add(sum, code.mul(value, code.spread(weights, (band + next) * 3 + k))));
      });
    }
    sums.forEach((sum, k) => code.store(code.offset(out, step, 48), k * 2, sum));
  });
  return code.module();
}
