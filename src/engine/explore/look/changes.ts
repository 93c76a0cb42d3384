import { defined, entryAt, num } from '../../base/at.ts';
import { toOffsetGrid } from '../../base/units.ts';
import type { Pull } from '../../stack/types.ts';
import type { Studio } from '../../studio/studio.ts';

/** What became of a stack. */
export interface Changes {
  /** One sentence; pulls are numbered as they lay in the first stack, first down 1. */
  sentence: string;
  /** Ids of the pulls of the second stack that changed, moved or came in. */
  touched: string[];
}

/** More of one kind than this are summed up. */
const MOST_TOLD = 4;
/** More screens than this are counted. */
const MOST_NAMED = 8;

/** A pull of the first stack (by number, from 1) with what it became. */
interface Pair {
  number: number;
  was: Pull;
  is: Pull;
}

/**
 * What changed from one stack to another. Pulls are the same when their ids are and their screens, or
 * else when their screens are, as they come.
 * @param drawer for the numbers of screens and the names of inks
 */
export function changesBetween(from: readonly Pull[], to: readonly Pull[], drawer: Studio): Changes {
  const pairs = pairUp(from, to);
  const touched = new Set<string>();
  const touch = (some: readonly Pair[]): Pair[] => {
    for (const { is } of some) touched.add(is.id);
    return [...some];
  };
  const kept = new Set(pairs.map(({ was }) => was));
  const known = new Set(pairs.map(({ is }) => is));
  const screen = (id: string): string => {
    const found = drawer.screens.find((each) => each.id === id);
    return found === undefined ? 'a screen that is gone' : `screen ${found.number}`;
  };
  const ink = (id: string): string => drawer.inks.find((each) => each.id === id)?.name ?? id;
  const tell = (some: readonly Pair[], one: (pair: Pair) => string, all: string): string[] =>
    some.length <= MOST_TOLD ? some.map(one) : [`pulls ${list(numbersOf(some))} ${all}`];

  const moves = movesOf(pairs);
  touch([...moves.swaps.flat(), ...moves.moved]);
  const parts: string[] = [];
  const swaps = moves.swaps.map(numbersOf);
  if (swaps.length + moves.moved.length > MOST_TOLD) {
    parts.push(`pulls ${list(numbersOf([...moves.swaps.flat(), ...moves.moved]))} changed places`);
  } else {
    for (const each of swaps) parts.push(`pulls ${each.join(' and ')} changed places`);
    for (const pair of moves.moved) parts.push(`pull ${pair.number} now goes down ${after(pair, pairs)}`);
  }
  const recoloured = touch(pairs.filter(({ was, is }) => was.ink !== is.ink));
  parts.push(
    ...tell(recoloured, ({ number, was, is }) => `pull ${number} is now ${ink(is.ink)} instead of ${ink(was.ink)}`, 'changed ink'),
  );
  const shifted = touch(pairs.filter(({ was, is }) => was.dxMm !== is.dxMm || was.dyMm !== is.dyMm));
  parts.push(...tell(shifted, ({ number, was, is }) => `pull ${number} lies ${shift(was, is)}`, 'are shifted'));
  const turned = touch(pairs.filter(({ was, is }) => was.turnDeg !== is.turnDeg));
  parts.push(
    ...tell(
      turned,
      ({ number, was, is }) => `pull ${number} is turned by ${(((is.turnDeg - was.turnDeg) % 360) + 360) % 360}°`,
      'are turned',
    ),
  );
  const stroked = touch(pairs.filter(({ was, is }) => was.strokes !== is.strokes));
  parts.push(
    ...tell(
      stroked,
      ({ number, was, is }) => `pull ${number} has ${count(is.strokes, 'stroke')} instead of ${was.strokes}`,
      'have other strokes',
    ),
  );
  const gone = from.filter((pull) => !kept.has(pull));
  if (gone.length > MOST_NAMED) parts.push(`${gone.length} screens left out`);
  else if (gone.length > 0) parts.push(`${list(gone.map((pull) => screen(pull.screen)))} left out`);
  const come = to.filter((pull) => !known.has(pull));
  for (const { id } of come) touched.add(id);
  if (come.length > MOST_NAMED) parts.push(`${come.length} screens brought in`);
  else parts.push(...come.map((pull) => `${screen(pull.screen)} brought in, in ${ink(pull.ink)}`));
  const text = parts.join('; ');
  return {
    sentence: text === '' ? 'Nothing changed.' : `${text.charAt(0).toUpperCase()}${text.slice(1)}.`,
    touched: to.filter(({ id }) => touched.has(id)).map(({ id }) => id),
  };
}

function numbersOf(pairs: readonly Pair[]): string[] {
  return pairs
    .map(({ number }) => number)
    .sort((a, b) => a - b)
    .map(String);
}

function pairUp(from: readonly Pull[], to: readonly Pull[]): Pair[] {
  const pairs: Pair[] = [];
  const left = new Set(to);
  const take = (was: Pull, number: number, fits: (is: Pull) => boolean): boolean => {
    for (const is of left) {
      if (is.screen !== was.screen || !fits(is)) continue;
      left.delete(is);
      pairs.push({ number, was, is });
      return true;
    }
    return false;
  };
  const unmatched = from
    .map((was, i) => ({ was, number: i + 1 }))
    .filter(({ was, number }) => !take(was, number, (is) => is.id === was.id));
  const ids = new Set(from.map(({ id }) => id));
  for (const { was, number } of unmatched) take(was, number, (is) => !ids.has(is.id));
  const place = new Map(to.map((pull, i) => [pull, i]));
  return pairs.sort((a, b) => defined(place.get(a.is)) - defined(place.get(b.is)));
}

/**
 * Which pulls moved: pairs that changed places, and else the fewest that explain the order.
 * @param pairs in their new order
 */
function movesOf(pairs: readonly Pair[]): { swaps: [Pair, Pair][]; moved: Pair[] } {
  const before = [...pairs].sort((a, b) => a.number - b.number);
  const rank = new Map(before.map((pair, i) => [pair, i]));
  const order = pairs.map((pair) => defined(rank.get(pair)));
  // Who moves in between shifts all places, so places tell swaps only where nothing else moved.
  if (order.every((was, at) => order[was] === at)) {
    const swaps = order.flatMap((was, at): [Pair, Pair][] => (was > at ? [[entryAt(pairs, at), entryAt(pairs, was)]] : []));
    return { swaps, moved: [] };
  }
  const stays = longestRise(order);
  return { swaps: [], moved: pairs.filter((_, at) => !stays.has(at)) };
}

/** Positions of a longest rising subsequence. */
function longestRise(order: readonly number[]): Set<number> {
  const length = order.map(() => 1);
  const before = order.map(() => -1);
  let best = -1;
  order.forEach((value, i) => {
    for (let j = 0; j < i; j++) {
      if (num(order, j) < value && num(length, j) + 1 > num(length, i)) {
        length[i] = num(length, j) + 1;
        before[i] = j;
      }
    }
    if (best < 0 || num(length, i) > num(length, best)) best = i;
  });
  const stays = new Set<number>();
  for (let at = best; at >= 0; at = num(before, at)) stays.add(at);
  return stays;
}

function after(pair: Pair, pairs: readonly Pair[]): string {
  const at = pairs.indexOf(pair);
  if (at === 0) return 'first';
  if (at === pairs.length - 1) return 'last';
  return `after pull ${entryAt(pairs, at - 1).number}`;
}

function shift(was: Pull, is: Pull): string {
  const dx = toOffsetGrid(is.dxMm - was.dxMm);
  const dy = toOffsetGrid(is.dyMm - was.dyMm);
  const parts: string[] = [];
  if (dx !== 0) parts.push(`${Math.abs(dx)} mm further ${dx > 0 ? 'right' : 'left'}`);
  if (dy !== 0) parts.push(`${Math.abs(dy)} mm ${dy > 0 ? 'lower' : 'higher'}`);
  return parts.length === 0 ? 'a hair beside where it lay' : parts.join(' and ');
}

function list(names: readonly string[]): string {
  return names.length < 2 ? (names[0] ?? '') : `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`;
}

function count(n: number, what: string): string {
  return `${n} ${what}${n === 1 ? '' : 's'}`;
}
