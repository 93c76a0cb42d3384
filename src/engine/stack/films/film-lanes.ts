import { f64, num, u32 } from '../../base/at.ts';
import { EngineError } from '../../base/error.ts';
import { LaneCode, type Lanes, type Whole } from '../../base/lanes/lane-code.ts';
import { type LaneFunction, LaneRoom } from '../../base/lanes/lane-room.ts';
import { labCode, toLab } from '../../colour/lab-code.ts';
import { BANDS } from '../../colour/weights.ts';
import type { FilmBands } from '../../ink/film/film.ts';
import { say } from '../../words/en/stack/films.ts';
import { STEP } from './film-tree.ts';

// The module's own name for it: unbundled, hot loops would look up another module's each time.
const bandCount = BANDS;
const NUMBER = 8;
/** Bytes of a ground, of a film, and of three whole numbers. */
const GROUND = BANDS * NUMBER;
const FILM = 3 * GROUND;
const STEP_BYTES = STEP * 4;
const FOUR_BANDS = 4 * NUMBER;
/** Where films lie, after the weights; then come, each as long as it need be, a list, sums, grounds and piles. */
const FILMS = FILM;

/**
 * Films laid on one another, and three weighted sums over the bands of many cells, two bands or cells at a time where the machine can: the
 * same numbers, to the last bit, as one by one. It keeps the grounds (36 numbers each) and the piles of films over them (36 a, 36 b, 36 c).
 * Holds its buffers, for many maps and stacks.
 */
export class FilmLanes {
  /** Three a cell. */
  sums = new Float64Array(0);
  grounds = new Float64Array(0);
  piles = new Float64Array(0);
  private readonly room: LaneRoom;
  private readonly run: Record<'sum' | 'lab' | 'grounds' | 'piles', LaneFunction | null>;
  private weights = new Float64Array(0);
  private films = new Float64Array(0);
  private list = new Uint32Array(0);
  /** The films that lie there. */
  private held: FilmBands[] = [];

  /** @param plain one by one, as on machines without WebAssembly */
  constructor(plain = false) {
    this.room = new LaneRoom(plain);
    const load = (code: LaneCode): LaneFunction | null => this.room.load(code.module());
    this.run = { sum: load(sumCode()), lab: load(sumsToLab()), grounds: load(groundCode()), piles: load(pileCode()) };
  }

  /**
   * Makes room and takes films; they are not written to any more.
   * @param rooms how many steps and cells are listed at most, and how many sums, grounds and piles there are
   * @throws EngineError 'stack.bad-bands'
   */
  start(films: readonly FilmBands[], [listed, sums, grounds, piles]: readonly [number, number, number, number]): void {
    const { room } = this;
    // Two cells are summed up at once, so that one more may be listed.
    const list = FILMS + Math.max(films.length, this.films.length / (3 * bandCount)) * FILM;
    const out = list + Math.ceil(((listed + 1) * STEP_BYTES) / NUMBER) * NUMBER;
    const ground = out + (sums + 1) * 3 * NUMBER;
    const pile = ground + grounds * GROUND;
    room.fit(pile + piles * FILM);
    const { buffer } = room;
    this.weights = new Float64Array(buffer, 0, bandCount * 3);
    this.films = new Float64Array(buffer, FILMS, (list - FILMS) / NUMBER);
    this.list = new Uint32Array(buffer, list, (out - list) / 4);
    this.sums = new Float64Array(buffer, out, sums * 3);
    this.grounds = new Float64Array(buffer, ground, grounds * bandCount);
    this.piles = new Float64Array(buffer, pile, piles * bandCount * 3);
    films.forEach((film, i) => this.hold(film, i));
  }

  private hold(film: FilmBands, place: number): void {
    if (this.held[place] === film) return;
    checkBands(film.r0.length);
    [film.r0, film.q, film.back].forEach((bands, k) => this.films.set(bands, (place * 3 + k) * bandCount));
    this.held[place] = film;
  }

  /** Lays films on grounds or on piles. @param steps three a step: the film, what it is laid on, what this makes */
  lay(onto: 'grounds' | 'piles', steps: Uint32Array): void {
    const run = this.run[onto];
    if (run === null) {
      for (let i = 0; i < steps.length; i += STEP) {
        const [film, from, to] = [u32(steps, i), u32(steps, i + 1), u32(steps, i + 2)];
        if (onto === 'grounds') this.layGround(film, from * bandCount, to * bandCount);
        else this.layPile(film, from * 3 * bandCount, to * 3 * bandCount);
      }
    } else if (steps.length > 0) {
      this.list.set(steps);
      run(steps.length / STEP, this.list.byteOffset, this[onto].byteOffset);
    }
  }

  /**
   * Sums cells up.
   * @param groundOf ground of each cell
   * @param pileOf pile over it
   * @param weights 36 × 3, [3 · band + sum]
   */
  sum(groundOf: Uint32Array, pileOf: Uint32Array, weights: Float64Array): void {
    const { list, grounds, piles, sums } = this;
    // One sum after another, as lanes read them.
    for (let i = 0; i < 3 * bandCount; i++) this.weights[(i % 3) * bandCount + Math.floor(i / 3)] = f64(weights, i);
    const cells = groundOf.length;
    for (let cell = 0; cell < cells; cell++) {
      if (this.run.sum === null) this.sumOne(u32(groundOf, cell) * bandCount, u32(pileOf, cell) * 3 * bandCount, cell * 3);
      list[cell * 2] = u32(groundOf, cell);
      list[cell * 2 + 1] = u32(pileOf, cell);
    }
    // The last step takes a cell more where their number is odd.
    list.fill(0, cells * 2, cells * 2 + 2);
    this.run.sum?.((cells + 1) >> 1, list.byteOffset, grounds.byteOffset, piles.byteOffset, sums.byteOffset);
  }

  /** Puts CIELAB in the place of sums that are D50 tristimulus values. */
  toLab(cells: number): void {
    if (this.run.lab === null) for (let cell = 0; cell < cells; cell++) toLab(this.sums, cell * 3);
    this.run.lab?.((cells + 1) >> 1, this.sums.byteOffset);
  }

  /** One film over one reflectance: R′ = (R0 + q R) / (1 + back R). Source: see ink/film.ts. The steps are those of `groundCode`. */
  private layGround(film: number, from: number, to: number): void {
    const { films, grounds } = this;
    for (let band = 0, at = film * 3 * bandCount; band < bandCount; band++, at++) {
      const under = f64(grounds, from + band);
      const shown = f64(films, at) + f64(films, at + bandCount) * under;
      grounds[to + band] = shown / (1 + f64(films, at + 2 * bandCount) * under);
    }
  }

  /** One film on a pile: [[q, r0], [back, 1]] · [[b, a], [−c, 1]], scaled so that the last entry is 1. The steps are those of `pileCode`. */
  private layPile(film: number, from: number, to: number): void {
    const { films, piles } = this;
    for (let band = 0, at = film * 3 * bandCount; band < bandCount; band++, at++, from++, to++) {
      const a = f64(piles, from);
      const b = f64(piles, from + bandCount);
      const c = f64(piles, from + 2 * bandCount);
      const over = f64(films, at);
      const through = f64(films, at + bandCount);
      const thrown = f64(films, at + 2 * bandCount);
      const scale = 1 / (1 + thrown * a);
      piles[to] = (over + through * a) * scale;
      piles[to + bandCount] = (through * b - over * c) * scale;
      piles[to + 2 * bandCount] = (c - thrown * b) * scale;
    }
  }

  /** The steps are those of `sumCode`. */
  private sumOne(ground: number, pile: number, to: number): void {
    const { grounds, piles, weights, sums } = this;
    const shown = (band: number): number => f64(piles, pile + band) + f64(piles, pile + bandCount + band) * f64(grounds, ground + band);
    const back = (band: number): number => 1 - f64(piles, pile + 2 * bandCount + band) * f64(grounds, ground + band);
    for (let k = 0; k < 3; k++) {
      const lanes = [0, 1].map((lane) => {
        let sum = 0;
        for (let band = lane; band < bandCount; band += 4) {
          const share = 1 / (back(band) * back(band + 2));
          sum += shown(band) * (back(band + 2) * share) * f64(weights, k * bandCount + band);
          sum += shown(band + 2) * (back(band) * share) * f64(weights, k * bandCount + band + 2);
        }
        return sum;
      });
      sums[to + k] = num(lanes, 0) + num(lanes, 1);
    }
  }
}

/** @throws EngineError 'stack.bad-bands' */
export function checkBands(bands: number): void {
  if (bands !== bandCount) {
    throw new EngineError('stack.bad-bands', say.reflectanceHasBandsAre(bands, bandCount));
  }
}

/** Called with a number of steps, the address of their list and that of what films are laid on, each so many bytes long. */
function stepCode(bytes: number, body: (code: LaneCode, places: readonly [film: Whole, from: Whole, to: Whole]) => void): LaneCode {
  const code = new LaneCode(3);
  const step = code.variable(0);
  const films = code.variable(FILMS);
  code.loop(step, [code.param(0), 1], () => {
    const at = code.offset(code.param(1), step, STEP_BYTES);
    const place = (i: number): Whole => code.offset(code.param(2), code.wholeAt(at, i * 4), bytes);
    body(code, [code.offset(films, code.wholeAt(at, 0), FILM), place(1), place(2)]);
  });
  return code;
}

/** R′ = (R0 + q R) / (1 + back R), two bands at once. */
function groundCode(): LaneCode {
  return stepCode(GROUND, (code, [film, from, to]) => {
    for (let band = 0; band < BANDS; band += 2) {
      const ground = code.load(from, band);
      const shown = code.add(code.load(film, band), code.mul(code.load(film, BANDS + band), ground));
      const back = code.add(code.number(1), code.mul(code.load(film, BANDS * 2 + band), ground));
      code.store(to, band, code.div(shown, back));
    }
  });
}

/** As `layPile`, two bands at once. */
function pileCode(): LaneCode {
  return stepCode(FILM, (code, [film, from, to]) => {
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
}

/**
 * Called with the number of steps of two cells and the addresses of their list, of grounds, of piles and of sums. Two bands are shown and
 * summed up at once; two quotients are worked out by one division. Bands go in a loop: written out one after another, engines read
 * all of them at first and put them aside, which took as long again as all that is worked out.
 */
function sumCode(): LaneCode {
  const code = new LaneCode(5);
  const step = code.variable(0);
  const [weights, end] = [code.variable(0), code.variable(GROUND)];
  code.loop(step, [code.param(0), 1], () => {
    const at = code.offset(code.param(1), step, 16);
    const cells = [0, 8].map((cell) =>
      [GROUND, FILM].map((bytes, i) => code.offset(code.param(2 + i), code.wholeAt(at, cell + i * 4), bytes)),
    );
    const none = code.number(0);
    const sums = cells.map((places) => {
      const [ground, pile] = places as [Whole, Whole];
      const ofCell = [none, none, none].map((value) => code.lanes(value));
      const band = code.variable(0);
      code.loop(band, [end, FOUR_BANDS], () => {
        const [under, over, weight] = [ground, pile, weights].map((place) => code.offset(place, band, 1)) as [Whole, Whole, Whole];
        const [[shown, back], [otherShown, otherBack]] = [0, 2].map((at) => {
          const reflected = code.load(under, at);
          const [a, b, c] = [0, 1, 2].map((k) => code.load(over, BANDS * k + at)) as [Lanes, Lanes, Lanes];
          return [code.add(a, code.mul(b, reflected)), code.sub(code.number(1), code.mul(c, reflected))];
        }) as [[Lanes, Lanes], [Lanes, Lanes]];
        const share = code.div(code.number(1), code.mul(back, otherBack));
        const values = [code.mul(shown, code.mul(otherBack, share)), code.mul(otherShown, code.mul(back, share))];
        values.forEach((value, next) => {
          ofCell.forEach((sum, k) => code.putLanes(sum, code.add(sum, code.mul(value, code.load(weight, BANDS * k + 2 * next)))));
        });
      });
      return ofCell;
    }) as [Lanes[], Lanes[]];
    const out = code.offset(code.param(4), step, 6 * NUMBER);
    const [[x, y, z], [otherX, otherY, otherZ]] = sums as [[Lanes, Lanes, Lanes], [Lanes, Lanes, Lanes]];
    [
      [x, y],
      [z, otherX],
      [otherY, otherZ],
    ].forEach(([one, other], i) => {
      const [even, odd] = code.turned(one as Lanes, other as Lanes);
      code.store(out, 2 * i, code.add(even, odd));
    });
  });
  return code;
}

/** Called with the number of steps of two cells and the address of their sums. */
function sumsToLab(): LaneCode {
  const code = new LaneCode(2);
  const step = code.variable(0);
  code.loop(step, [code.param(0), 1], () => {
    const at = code.offset(code.param(1), step, 6 * NUMBER);
    const [xy, zx, yz] = [0, 2, 4].map((number) => code.load(at, number)) as [Lanes, Lanes, Lanes];
    const [l, a, b] = labCode(code, [code.halves(xy, 0, zx, 1), code.halves(xy, 1, yz, 0), code.halves(zx, 0, yz, 1)]);
    [code.halves(l, 0, a, 0), code.halves(b, 0, l, 1), code.halves(a, 1, b, 1)].forEach((two, i) => code.store(at, 2 * i, two));
  });
  return code;
}
