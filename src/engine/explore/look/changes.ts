import { defined, entryAt, num } from '../../base/at.ts';
import { toOffsetGrid } from '../../base/units.ts';
import type { Pull } from '../../stack/types.ts';
import type { Studio } from '../../studio/studio.ts';
import { say } from '../../words/en/explore/look.ts';

/** What became of a stack. */
export interface Changes {
  /** One sentence; pulls are numbered as they lay in the first stack, first down 1. */
  sentence: string;
  /** Ids of the pulls of the second stack that changed, moved or came in. */
  touched: string[];
}

/** More of one kind than this are summed up. */
const MOST_LISTED = 4;
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
 * @param studio for the numbers of screens and the names of inks
 */
export function changesBetween(from: readonly Pull[], to: readonly Pull[], studio: Studio): Changes {
  const pairs = pairUp(from, to);
  const kept = new Set(pairs.map(({ was }) => was));
  const known = new Set(pairs.map(({ is }) => is));
  const gone = from.filter((pull) => !kept.has(pull));
  const come = to.filter((pull) => !known.has(pull));
  const names = namesOf(studio);
  const moves = movesOf(pairs);
  const edits = editsOf(pairs, names);
  const changed = [...moves.swaps.flat(), ...moves.moved, ...edits.flatMap(({ of }) => of)].map(({ is }) => is.id);
  const touched = new Set([...changed, ...come.map(({ id }) => id)]);
  const text = [...moveWords(moves, pairs), ...edits.flatMap(editWords), ...screenWords(gone, come, names)].join('; ');
  return {
    sentence: text === '' ? say.nothingChanged : `${text.charAt(0).toUpperCase()}${text.slice(1)}.`,
    touched: to.filter(({ id }) => touched.has(id)).map(({ id }) => id),
  };
}

/**
 * What changed from one stack to another, counted in pulls, as part of a sentence: '5 pulls reordered, 10 in
 * another ink, 1 left out'; 'nothing changed' when nothing did.
 */
export function changesInShort(from: readonly Pull[], to: readonly Pull[]): string {
  const pairs = pairUp(from, to);
  const { swaps, moved } = movesOf(pairs);
  const where = (differs: (pair: Pair) => boolean): number => pairs.filter(differs).length;
  const kinds: [number, string][] = [
    [swaps.length * 2 + moved.length, say.reordered],
    [where(({ was, is }) => was.ink !== is.ink), say.inAnotherInk],
    [where(({ was, is }) => was.dxMm !== is.dxMm || was.dyMm !== is.dyMm || was.turnDeg !== is.turnDeg), say.moved],
    [where(({ was, is }) => was.strokes !== is.strokes), say.inOtherStrokes],
    [from.length - pairs.length, say.leftOutInShort],
    [to.length - pairs.length, say.broughtInInShort],
  ];
  const parts = kinds.filter(([number]) => number > 0).map(([number, words], i) => `${i === 0 ? say.pulls(number) : number} ${words}`);
  return parts.length === 0 ? say.nothingChanged2 : parts.join(', ');
}

interface Names {
  screen: (id: string) => string;
  ink: (id: string) => string;
}

function namesOf(studio: Studio): Names {
  return {
    screen: (id) => {
      const found = studio.screens.find((each) => each.id === id);
      return found === undefined ? say.screenThatIsGone : say.screen(found.number);
    },
    ink: (id) => studio.inks.find((each) => each.id === id)?.name ?? id,
  };
}

function moveWords({ swaps, moved }: Moves, pairs: readonly Pair[]): string[] {
  if (swaps.length + moved.length > MOST_LISTED) return [say.pullsChangedPlaces(list(numbersOf([...swaps.flat(), ...moved])))];
  return [
    ...swaps.map((pair) => say.pullsChangedPlacesNumbersOf(numbersOf(pair).join(say.and))),
    ...moved.map((pair) => say.pullNowGoesDown(pair.number, after(pair, pairs))),
  ];
}

/** A way in which pulls that stayed are other than before. */
interface Edit {
  of: readonly Pair[];
  one: (pair: Pair) => string;
  /** Said of many: 'changed ink'. */
  many: string;
}

function editsOf(pairs: readonly Pair[], { ink }: Names): Edit[] {
  const where = (differs: (pair: Pair) => boolean): Pair[] => pairs.filter(differs);
  return [
    {
      of: where(({ was, is }) => was.ink !== is.ink),
      one: ({ number, was, is }) => say.pullIsNowInstead(number, ink(is.ink), ink(was.ink)),
      many: say.changedInk,
    },
    {
      of: where(({ was, is }) => was.dxMm !== is.dxMm || was.dyMm !== is.dyMm),
      one: ({ number, was, is }) => say.pullLies(number, offsetWords(was, is)),
      many: say.haveOtherOffsets,
    },
    {
      of: where(({ was, is }) => was.turnDeg !== is.turnDeg),
      one: ({ number, was, is }) => say.pullIsTurnedBy(number, (((is.turnDeg - was.turnDeg) % 360) + 360) % 360),
      many: say.areTurned,
    },
    {
      of: where(({ was, is }) => was.strokes !== is.strokes),
      one: ({ number, was, is }) => say.pullHasStrokesInstead(number, is.strokes, was.strokes),
      many: say.haveOtherStrokes,
    },
  ];
}

function editWords({ of, one, many }: Edit): string[] {
  return of.length <= MOST_LISTED ? of.map(one) : [say.pullsList(list(numbersOf(of)), many)];
}

function screenWords(gone: readonly Pull[], come: readonly Pull[], { screen, ink }: Names): string[] {
  const out = gone.length > MOST_NAMED ? say.screensLeftOutGone(gone.length) : say.leftOut(list(gone.map((pull) => screen(pull.screen))));
  const brought =
    come.length > MOST_NAMED
      ? [say.screensBroughtInCome(come.length)]
      : come.map((pull) => say.broughtInIn(screen(pull.screen), ink(pull.ink)));
  return gone.length > 0 ? [out, ...brought] : brought;
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

/** Pairs of pulls that changed places, and pulls that went elsewhere. */
interface Moves {
  swaps: [Pair, Pair][];
  moved: Pair[];
}

/**
 * Which pulls moved: pairs that changed places, and else the fewest that explain the order.
 * @param pairs in their new order
 */
function movesOf(pairs: readonly Pair[]): Moves {
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
  if (at === 0) return say.first;
  if (at === pairs.length - 1) return say.last;
  return say.afterPull(entryAt(pairs, at - 1).number);
}

function offsetWords(was: Pull, is: Pull): string {
  const dx = toOffsetGrid(is.dxMm - was.dxMm);
  const dy = toOffsetGrid(is.dyMm - was.dyMm);
  const parts: string[] = [];
  if (dx !== 0) parts.push(say.mmFurtherRight(Math.abs(dx), dx > 0));
  if (dy !== 0) parts.push(say.mmLower(Math.abs(dy), dy > 0));
  return parts.length === 0 ? say.hairBesideWhereIt : parts.join(say.and);
}

function list(names: readonly string[]): string {
  return names.length < 2 ? (names[0] ?? '') : say.andNames(names.slice(0, -1).join(', '), names.at(-1) ?? '');
}
