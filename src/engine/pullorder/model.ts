import { defined, entryAt, i32, num } from '../base/at.ts';
import { EngineError } from '../base/error.ts';
import { say } from '../words/en/pullorder/pullorder.ts';
import type { PlanProblem } from './types.ts';

/*
 * The words of this folder are those of the literature on shortest common supersequences: a *letter*
 * stands for a kind of pull (a screen with an ink at an offset; in models of screens, for a screen),
 * a *word* for a sequence of set-ups or mounts, an *order* for a sheet whose pulls are partly ordered.
 */

/**
 * One partial order of pulls. `letters[p]` is the letter of pull p; `preds[p]` are all pulls that
 * must come before p, directly or not, ascending. Pulls stand in an order in which preds come first.
 */
export interface Order {
  letters: number[];
  preds: number[][];
}

/**
 * A covering problem: find a short word of letters that finishes every order. With `cascade` a
 * letter goes on until none of its pulls is left whose turn has come (a screen that stays mounted);
 * without, the turn is judged once, at the start (one set-up).
 */
export interface Model {
  letterCount: number;
  cascade: boolean;
  orders: Order[];
  /** Per letter: which screen, ink and offset it is. Models of screens alone count each letter as 1. */
  kinds: Kinds | null;
}

/** Counts work, so that a budget is the same on every machine. One unit is about one look at a pull. */
export interface Meter {
  units: number;
}

/** Which screen, ink and offset each letter is. */
export interface Kinds {
  screen: Int32Array;
  ink: Int32Array;
  offset: Int32Array;
}

/** What a kind of pull is called. */
interface KindNames {
  screen: string;
  ink: string;
  offset: string;
}

/** A problem as models for the search. */
export interface Compiled {
  /** Letters are kinds: screen + ink + offset. */
  kindModel: Model;
  /** Letters are screens; each stays mounted as long as it finds work. */
  screenModel: Model;
  names: KindNames[];
}

/** Most different sheets and pulls on them that are planned in one go. */
const MAX_DISTINCT_SHEETS = 2000;
const MAX_DISTINCT_PULLS = 40_000;
export const MAX_PULLS_A_SHEET = 400;

const PART = 8192;

/** Cost of one set-up after another, packed so that numbers compare like (mounts, ink changes, changes of offset, set-ups). */
export const MOUNT = PART ** 3;
export const INK = PART ** 2;
export const MOVE = PART;
/** Longest plan that the packed cost can hold. */
export const MAX_SET_UPS = PART - 1;

/**
 * Cost of set-up `to` straight after `from`.
 * @param from letter before, −1 when the press is empty
 * @param to letter, −1 when nothing follows (costs nothing)
 * @returns packed cost for kinds; 1 for models of screens
 */
export function stepCost(model: Model, from: number, to: number): number {
  if (to < 0) return 0;
  const kinds = model.kinds;
  if (!kinds) return 1;
  if (from < 0) return MOUNT + INK + 1;
  let cost = 1;
  if (kinds.screen[from] !== kinds.screen[to]) cost += MOUNT;
  else if (kinds.offset[from] !== kinds.offset[to]) cost += MOVE;
  if (kinds.ink[from] !== kinds.ink[to]) cost += INK;
  return cost;
}

/** Packed cost of a whole word, from an empty press. */
export function wordCost(model: Model, word: readonly number[]): number {
  let cost = 0;
  for (let i = 0; i < word.length; i++) cost += stepCost(model, i > 0 ? num(word, i - 1) : -1, num(word, i));
  return cost;
}

/** Takes a packed cost apart. */
export function unpackCost(cost: number): {
  mounts: number;
  inkChanges: number;
  registerMoves: number;
  setUps: number;
} {
  const setUps = cost % PART;
  const rest = Math.floor(cost / PART);
  return {
    mounts: Math.floor(rest / PART ** 2),
    inkChanges: Math.floor(rest / PART) % PART,
    registerMoves: rest % PART,
    setUps,
  };
}

/**
 * Closes a relation under "before what is before".
 * @param count number of pulls
 * @param pairs [a, b], a < b
 * @returns for each pull all pulls before it, ascending
 */
function closePreds(count: number, pairs: readonly (readonly [number, number])[]): number[][] {
  const direct: number[][] = Array.from({ length: count }, () => []);
  for (const [a, b] of pairs) entryAt(direct, b).push(a);
  const closed: number[][] = [];
  for (let b = 0; b < count; b++) {
    const all = new Set<number>();
    // From the nearest down: what a near predecessor already covers is not walked again.
    for (const a of entryAt(direct, b).sort((x, y) => y - x)) {
      if (all.has(a)) continue;
      all.add(a);
      for (const before of entryAt(closed, a)) all.add(before);
    }
    closed.push([...all].sort((x, y) => x - y));
  }
  return closed;
}

/**
 * Writes an order in a form that does not depend on how free neighbours were listed: always the
 * smallest letter whose turn has come. Equal keys mean equal orders; equal orders nearly always get
 * equal keys (ties between pulls of one letter are not looked into), so merging by key is safe.
 */
function canonicalOrder(order: Order): { order: Order; key: string } {
  const count = order.letters.length;
  const missing = order.preds.map((p) => p.length);
  const succs: number[][] = Array.from({ length: count }, () => []);
  order.preds.forEach((preds, b) => preds.forEach((a) => entryAt(succs, a).push(b)));
  const place = new Int32Array(count);
  const letters: number[] = [];
  const preds: number[][] = [];
  const open: number[] = [];
  for (let p = 0; p < count; p++) if (missing[p] === 0) open.push(p);
  while (open.length > 0) {
    let best = 0;
    for (let i = 1; i < open.length; i++) {
      const a = num(open, i);
      const b = num(open, best);
      const byLetter = num(order.letters, a) - num(order.letters, b);
      if (byLetter < 0 || (byLetter === 0 && a < b)) best = i;
    }
    const pull = num(open, best);
    open[best] = num(open, open.length - 1);
    open.pop();
    place[pull] = letters.length;
    letters.push(num(order.letters, pull));
    preds.push(
      entryAt(order.preds, pull)
        .map((p) => i32(place, p))
        .sort((x, y) => x - y),
    );
    for (const next of entryAt(succs, pull)) {
      missing[next] = num(missing, next) - 1;
      if (missing[next] === 0) open.push(next);
    }
  }
  return { order: { letters, preds }, key: letters.map((l, i) => `${l}:${entryAt(preds, i).join('.')}`).join(' ') };
}

/** Keeps one of each order and drops empty ones. */
export function distinctOrders(orders: readonly Order[]): Order[] {
  const seen = new Map<string, Order>();
  for (const one of orders) {
    if (one.letters.length === 0) continue;
    const { order, key } = canonicalOrder(one);
    if (!seen.has(key)) seen.set(key, order);
  }
  return [...seen.values()];
}

/**
 * The part of a model that is left when only some pulls of each order count, with the order among
 * them kept. Any word for the model, with the other letters struck out, does for the part when the
 * part keeps all pulls of some letters; that is what the bounds rest on.
 * @param keep (order index, pull) → whether the pull stays
 */
export function partOf(model: Model, keep: (order: number, pull: number) => boolean): Model {
  const orders = model.orders.map((order, index) => {
    const place = new Int32Array(order.letters.length).fill(-1);
    const letters: number[] = [];
    const preds: number[][] = [];
    for (let p = 0; p < order.letters.length; p++) {
      if (!keep(index, p)) continue;
      place[p] = letters.length;
      letters.push(num(order.letters, p));
      const kept: number[] = [];
      for (const q of entryAt(order.preds, p)) if (i32(place, q) >= 0) kept.push(i32(place, q));
      preds.push(kept);
    }
    return { letters, preds };
  });
  return { ...model, orders: distinctOrders(orders) };
}

/**
 * Turns a problem into models for the search; sheets with the same pulls and order become one.
 * @param problem already checked by `checkProblem`
 * @throws EngineError 'pullorder.too-large' beyond the caps on different sheets or pulls
 */
export function compile(problem: PlanProblem): Compiled {
  const kindOf = new Map<string, number>();
  const names: KindNames[] = [];
  const bySheetText = new Map<string, Order>();
  for (const sheet of problem.sheets) {
    const letters = sheet.pulls.map((pull) => {
      const name = { screen: pull.screen, ink: pull.ink, offset: pull.offset ?? '' };
      const key = JSON.stringify([name.screen, name.ink, name.offset]);
      let kind = kindOf.get(key);
      if (kind === undefined) {
        kind = names.length;
        kindOf.set(key, kind);
        names.push(name);
      }
      return kind;
    });
    const text = `${letters.join(',')}|${sheet.overlaps.join(';')}`;
    if (bySheetText.has(text)) continue;
    if (bySheetText.size >= MAX_DISTINCT_SHEETS) throw tooLarge(say.moreThanDifferentSheets(MAX_DISTINCT_SHEETS));
    bySheetText.set(text, { letters, preds: closePreds(letters.length, sheet.overlaps) });
  }
  const orders = distinctOrders([...bySheetText.values()]);
  const pulls = orders.reduce((sum, order) => sum + order.letters.length, 0);
  if (pulls > MAX_DISTINCT_PULLS) throw tooLarge(say.pullsOnDifferentSheets(pulls, MAX_DISTINCT_PULLS));
  const number = (texts: string[]): Int32Array => {
    const ids = new Map<string, number>();
    return Int32Array.from(texts, (text) => {
      if (!ids.has(text)) ids.set(text, ids.size);
      return defined(ids.get(text));
    });
  };
  const kinds = {
    screen: number(names.map((n) => n.screen)),
    ink: number(names.map((n) => n.ink)),
    offset: number(names.map((n) => n.offset)),
  };
  const screens = kinds.screen.reduce((most, s) => Math.max(most, s + 1), 0);
  return {
    kindModel: { letterCount: names.length, cascade: false, orders, kinds },
    screenModel: {
      letterCount: screens,
      cascade: true,
      orders: distinctOrders(orders.map((o) => ({ letters: o.letters.map((l) => i32(kinds.screen, l)), preds: o.preds }))),
      kinds: null,
    },
    names,
  };
}

function tooLarge(found: string): EngineError {
  return new EngineError('pullorder.too-large', say.pullOrderHasPlan(found));
}
