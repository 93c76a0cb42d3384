import { defined, entryAt, i32, num } from '../../base/at.ts';
import { EngineError } from '../../base/error.ts';
import type { Random } from '../../base/random.ts';
import type { Automaton } from '../automaton.ts';
import { BoundSearch } from '../bound/bound.ts';
import { distinctOrders, MAX_SET_UPS, unpackCost, wordCost, type Compiled, type Meter, type Model } from '../model.ts';
import { automataOf, beam } from './beam.ts';
import { exact } from './exact.ts';
import { areFew, MAX_FEW_SHEETS } from './few-sheets.ts';
import { Improver } from './improve.ts';

/** What the search holds so far; the word is always a whole plan, the bounds always hold. */
export interface SearchState {
  word: number[];
  bound: { setUps: number; mounts: number };
}

const MEGA = 1_000_000;
/** States after which automata are thrown away and begun afresh, so that memory stays small. */
const MAX_STATES = 600_000;

/**
 * The search as a series of slices, each yielding where it stands. Mounts come first, so the order
 * of screens is searched on its own (a screen stays mounted while it finds work); its plan is then
 * written out in kinds and bettered for ink changes and register moves. Each round has twice the
 * work of the one before, and ends early when the plan is shown to be a cheapest one.
 * @param firstRound units of the first round; a caller that knows its budget gives it
 */
export function* search(compiled: Compiled, random: Random, meter: Meter, firstRound: number): Generator<SearchState, void> {
  const { kindModel, screenModel } = compiled;
  const first = findBeam(kindModel, automataOf(kindModel, meter), 1, random, meter);
  if (!first) {
    throw new EngineError('pullorder.too-large', `The pull order needs more than ${MAX_SET_UPS} set-ups: plan fewer recipes at a time.`);
  }
  if (first.length === 0) {
    yield { word: [], bound: { setUps: 0, mounts: 0 } };
    return;
  }
  const kinds = new Improver(kindModel, first, random, meter);
  const screens = new Improver(screenModel, screensOf(compiled, first), random, meter);
  const mountBound = new BoundSearch(screenModel, random, meter);
  // With one kind a screen and no kind twice in a row both bounds are the same; it is found once.
  const oneToOne = kindModel.letterCount === screenModel.letterCount && !hasTwins(kindModel);
  const setUpBound = oneToOne ? mountBound : new BoundSearch(kindModel, random, meter);
  // Ink changes follow the same law as mounts; with one ink a screen they are the same number.
  const { ink, screen } = defined(kindModel.kinds);
  const pairs = new Set(Array.from(screen, (s, kind) => `${s} ${ink[kind]}`)).size;
  const inkOfItsOwn = pairs === new Set(screen).size && pairs === new Set(ink).size;
  const inkBound = inkOfItsOwn ? mountBound : new BoundSearch(inkModelOf(kindModel), random, meter);
  let best = first;
  let bestCost = wordCost(kindModel, first);
  let proven = false;

  const soFar = (): SearchState => {
    if (kinds.cost < bestCost) {
      bestCost = kinds.cost;
      best = [...kinds.word];
    }
    return { word: best, bound: { mounts: mountBound.best, setUps: Math.max(setUpBound.best, mountBound.best) } };
  };
  /** Whether each part of the cost has reached its bound. */
  const atBounds = (): boolean => {
    const { word, bound } = soFar();
    const cost = unpackCost(bestCost);
    return cost.mounts <= bound.mounts && cost.inkChanges <= inkBound.best && cost.registerMoves === 0 && word.length <= bound.setUps;
  };
  const takeScreens = (): void => {
    if (screens.cost >= unpackCost(kinds.cost).mounts) return;
    kinds.set(writeOut(compiled, kinds.automata, screens.word));
  };
  const takeKinds = (): void => {
    const order = screensOf(compiled, kinds.word);
    if (order.length < screens.cost) screens.set(order);
  };
  /** Slices of about a tenth of a second, so that a stop is heard. */
  function* sliced(units: number, work: (units: number) => boolean | void): Generator<SearchState, void> {
    const until = meter.units + units;
    while (meter.units < until) {
      if (work(Math.min(MEGA, until - meter.units)) === false) return;
      yield soFar();
    }
  }

  yield soFar();
  const small = (model: Model): boolean => model.orders.reduce((n, o) => n + o.letters.length, 0) <= 240 && model.orders.length <= 12;
  const cheapest = (model: Model, below: number, units: number, round: number): ReturnType<typeof exact> => {
    const orders = model.orders.length;
    return exact(model, automataOf(model, meter), {
      below,
      before: -1,
      after: -1,
      maxNodes: Math.min(400_000, Math.floor(units / (150 + 15 * orders))),
      meter,
      // Larger groups say more but have more states; which pays is tried in turn.
      groups: mountBound.split(num(orders <= 6 ? [6, 7, 5] : [5, 4, 5], round % 3)),
    });
  };
  /** Takes what an exact search of kinds found; true when it shows the plan to be a cheapest one. */
  const settle = (result: ReturnType<typeof exact>): boolean => {
    mountBound.best = Math.max(mountBound.best, unpackCost(result.lower).mounts);
    if (result.word) kinds.set(result.word);
    return result.finished;
  };
  if (small(kindModel)) {
    // The smallest problems are done at once.
    const result = exact(kindModel, kinds.automata, {
      below: bestCost,
      before: -1,
      after: -1,
      maxNodes: Math.max(2000, Math.min(20_000, Math.floor(firstRound / 1000))),
      meter,
    });
    proven = settle(result);
    yield soFar();
  }
  // Where there are few sheets a shortest word is likely to be found on the way to a bound.
  const few = areFew(screenModel);
  const boundShare = !few ? 0.2 : screenModel.orders.length < MAX_FEW_SHEETS ? 0.55 : 0.3;
  for (let round = 0; !proven; round++) {
    const total = firstRound * 2 ** Math.min(round, 8);
    if (!(mountBound.best >= screens.cost)) {
      // A narrow beam tells what a wide one costs; an eighth of the round is for it.
      const start = meter.units;
      const narrow = findBeam(screenModel, screens.automata, 8, random, meter, screens.cost, round);
      if (narrow) screens.set(narrow);
      const width = Math.min(4000, Math.floor((8 * 0.12 * total) / (meter.units - start)) - 8);
      const found = width > 8 ? findBeam(screenModel, screens.automata, width, random, meter, screens.cost, round) : null;
      if (found && found.length < screens.cost) screens.set(found);
      takeScreens();
      yield soFar();
      yield* sliced(boundShare * total, (units) => {
        mountBound.below = screens.cost;
        const more = mountBound.run(units);
        if (mountBound.word && mountBound.word.length < screens.cost) screens.set(mountBound.word);
        takeScreens();
        return more && mountBound.best < screens.cost;
      });
      if (small(screenModel) && !few && mountBound.best < screens.cost) {
        const result = cheapest(screenModel, screens.cost, 0.08 * total, round);
        mountBound.best = Math.max(mountBound.best, result.lower);
        if (result.word) screens.set(result.word);
        takeScreens();
        yield soFar();
      }
    }
    yield* sliced((boundShare > 0.5 ? 0.2 : 0.29) * total, (units) => {
      if (mountBound.best >= screens.cost) return false;
      screens.run(units);
      takeScreens();
      return true;
    });
    if (!inkOfItsOwn) yield* sliced(0.02 * total, (units) => inkBound.run(units));
    if (!oneToOne) yield* sliced(0.06 * total, (units) => setUpBound.run(units));
    yield* sliced(0.31 * total, (units) => {
      kinds.run(units);
      takeKinds();
      return !atBounds();
    });
    if ((proven = atBounds())) break;
    if (small(kindModel)) {
      soFar();
      const result = cheapest(kindModel, bestCost, 0.08 * total, round);
      proven = settle(result);
      yield soFar();
    }
    for (const improver of [kinds, screens]) if (improver.states > MAX_STATES) improver.forget();
  }
  // The plan is a cheapest one; fewer set-ups at more mounts may still be possible, so their bound goes on.
  const spare = exact({ ...kindModel, kinds: null }, kinds.automata, {
    below: best.length,
    before: -1,
    after: -1,
    maxNodes: Math.max(2000, Math.min(50_000, Math.floor(firstRound / 500))),
    meter,
  });
  setUpBound.best = Math.max(setUpBound.best, spare.lower);
  yield soFar();
}

function findBeam(
  model: Model,
  automata: readonly Automaton[],
  width: number,
  random: Random,
  meter: Meter,
  below = Infinity,
  round = 0,
): number[] | null {
  const reachTenths = num([20, 14, 30, 50], round % 4);
  const noise = round < 2 ? 0 : 800;
  return (
    beam(model, automata, {
      width,
      below,
      before: -1,
      after: -1,
      reachTenths,
      finish: num([6, 12, 3, 6], round % 4),
      thriftTenths: 1,
      noise,
      random,
      meter,
    })?.word ?? null
  );
}

/** Whether a pull must come right after another of its own kind on some sheet. */
function hasTwins(model: Model): boolean {
  return model.orders.some(({ letters, preds }) => preds.some((before, p) => before.some((q) => letters[q] === letters[p])));
}

/** The model whose letters are inks; an ink stays on the press while it finds work. */
function inkModelOf(model: Model): Model {
  const { ink } = defined(model.kinds);
  return {
    letterCount: ink.reduce((most, i) => Math.max(most, i + 1), 0),
    cascade: true,
    orders: distinctOrders(model.orders.map((o) => ({ letters: o.letters.map((l) => i32(ink, l)), preds: o.preds }))),
    kinds: null,
  };
}

/** The mounts of a word of kinds. */
function screensOf(compiled: Compiled, word: readonly number[]): number[] {
  const screen = defined(compiled.kindModel.kinds).screen;
  const all = word.map((kind) => i32(screen, kind));
  return all.filter((s, i) => s !== all[i - 1]);
}

/**
 * Writes an order of screens out in kinds: each screen stays mounted while it finds work, going on
 * with the ink, then the offset, that is on the press when it can.
 */
function writeOut(compiled: Compiled, automata: readonly Automaton[], screens: readonly number[]): number[] {
  const model = compiled.kindModel;
  const { screen, ink, offset } = defined(model.kinds);
  const states = new Int32Array(automata.length);
  const word: number[] = [];
  for (const s of screens) {
    for (;;) {
      const last = word.length > 0 ? num(word, word.length - 1) : -1;
      let best = -1;
      let most = -1;
      const served = new Map<number, number>();
      automata.forEach((automaton, c) => {
        const start = automaton.edgeStart(i32(states, c));
        for (let e = start; e < automaton.edgeEnd(i32(states, c)); e++) {
          const kind = i32(automaton.edgeLetter, e);
          if (screen[kind] === s) served.set(kind, (served.get(kind) ?? 0) + 1);
        }
      });
      for (const [kind, count] of served) {
        const likes = last < 0 ? 0 : (ink[kind] === ink[last] ? 1e6 : 0) + (screen[last] === s && offset[kind] === offset[last] ? 1e5 : 0);
        if (likes + count > most || (likes + count === most && kind < best)) {
          most = likes + count;
          best = kind;
        }
      }
      if (best < 0) break;
      word.push(best);
      for (let c = 0; c < states.length; c++) states[c] = entryAt(automata, c).step(i32(states, c), best);
    }
  }
  return word;
}
