import { defined, entryAt } from '../../base/at.ts';
import { randomFrom, type Random } from '../../base/random.ts';
import { toOffsetGrid } from '../../base/units.ts';
import type { Pull } from '../../stack/types.ts';
import { placed } from '../places/asked.ts';
import type { ExploreSettings } from '../types.ts';

/** Edits of a print that is to stay near: mostly one, at most so many. */
const MOST_EDITS = 3;
/** Shifts of a near print are at most so long, mm, whatever the wall allows. */
const NEAR_OFFSET_MM = 2;
/** The same where whole screens may lie elsewhere, mm: small on a sheet, but seen. */
const NEAR_PLACE_MM = 10;

/**
 * A stack a few small edits away: two neighbours change places, a pull takes another ink or shifts a
 * little, one is left out or a screen comes in; only edits that the settings allow.
 * @param spares a pull at rest for each screen that may come in
 */
export function nearStack(pulls: readonly Pull[], settings: ExploreSettings, spares: readonly Pull[], random: Random): Pull[] {
  const held = (which: string): Set<string> => new Set(settings.holds.filter(({ kind }) => kind === which).map(({ pull }) => pull));
  const [inkHeld, still] = [held('ink'), held('lies')];
  const range = placed(settings) ? NEAR_PLACE_MM : Math.min(NEAR_OFFSET_MM, settings.offsetRangeMm);
  const edits: ((stack: Pull[]) => Pull[])[] = [];
  if (settings.order && pulls.length > 1) {
    edits.push((stack) => {
      const at = random.int(stack.length - 1);
      return stack.map((pull, i) => (i === at ? entryAt(stack, at + 1) : i === at + 1 ? entryAt(stack, at) : pull));
    });
  }
  if (settings.recolour && settings.palette.length > 1) {
    edits.push((stack) => {
      const at = random.int(stack.length);
      const others = settings.palette.filter((ink) => ink !== entryAt(stack, at).ink);
      if (inkHeld.has(entryAt(stack, at).id) || others.length === 0) return stack;
      const ink = random.pick(others);
      return stack.map((pull, i) => (i === at ? { ...pull, ink } : pull));
    });
  }
  const steps = Math.round(range * 10);
  if (steps > 0) {
    edits.push((stack) => {
      const at = random.int(stack.length);
      if (still.has(entryAt(stack, at).id)) return stack;
      const [dx, dy] = [random.int(2 * steps + 1) - steps, random.int(2 * steps + 1) - steps];
      const moved = {
        ...entryAt(stack, at),
        dxMm: toOffsetGrid(entryAt(stack, at).dxMm + dx / 10),
        dyMm: toOffsetGrid(entryAt(stack, at).dyMm + dy / 10),
      };
      return stack.map((pull, i) => (i === at ? moved : pull));
    });
  }
  if (settings.leaveOut > 0 && pulls.length > 2) edits.push((stack) => without(stack, random.int(stack.length)));
  if (settings.bringIn > 0 && spares.length > 0 && settings.palette.length > 0) {
    edits.push((stack) => {
      const spare = random.pick(spares);
      if (stack.some(({ id }) => id === spare.id)) return stack;
      const out = [...stack];
      out.splice(random.int(stack.length + 1), 0, { ...spare, ink: random.pick(settings.palette) });
      return out;
    });
  }
  let stack = pulls.map((pull) => ({ ...pull }));
  if (edits.length === 0) return stack;
  const count = 1 + Math.min(random.int(MOST_EDITS), random.int(MOST_EDITS));
  for (let i = 0; i < count && stack.length > 0; i++) stack = random.pick(edits)(stack);
  return stack;
}

function without(stack: Pull[], at: number): Pull[] {
  return stack.length > 1 ? stack.filter((_, i) => i !== at) : stack;
}

/**
 * A stack that has from each of two what a coin says, pull by pull: whether it is there, its ink, and
 * how it lies. Two pulls that both parents have in one order stay in it.
 */
export function crossStacks(a: readonly Pull[], b: readonly Pull[], random: Random): Pull[] {
  const inB = new Map(b.map((pull) => [pull.id, pull]));
  const inA = new Map(a.map((pull) => [pull.id, pull]));
  const child = new Map<string, Pull>();
  const ids = [...a.map(({ id }) => id), ...b.filter(({ id }) => !inA.has(id)).map(({ id }) => id)];
  for (const id of ids) {
    const [one, other] = [inA.get(id), inB.get(id)];
    if (one === undefined || other === undefined) {
      if (random.chance(1, 2)) child.set(id, { ...defined(one ?? other) });
      continue;
    }
    const [ink, place] = [random.chance(1, 2) ? one : other, random.chance(1, 2) ? one : other];
    // Another screen under the same id is another pull: then all of it comes from one parent.
    child.set(id, one.screen === other.screen ? { ...place, ink: ink.ink } : { ...place });
  }
  return mergeOrders(a, b, child, random);
}

/** An order of the child in which every pair that both parents order alike is ordered so. */
function mergeOrders(a: readonly Pull[], b: readonly Pull[], child: ReadonlyMap<string, Pull>, random: Random): Pull[] {
  const place = (of: readonly Pull[]): Map<string, number> => new Map(of.filter(({ id }) => child.has(id)).map(({ id }, i) => [id, i]));
  const [atA, atB] = [place(a), place(b)];
  const lowerIn = (at: Map<string, number>, low: string, high: string): boolean => {
    const [x, y] = [at.get(low), at.get(high)];
    return x === undefined || y === undefined || x < y;
  };
  const together = (low: string, high: string): boolean => {
    const known = (at: Map<string, number>): boolean => at.has(low) && at.has(high);
    if (!known(atA) && !known(atB)) return false;
    return lowerIn(atA, low, high) && lowerIn(atB, low, high);
  };
  const left = [...child.keys()];
  const out: Pull[] = [];
  while (left.length > 0) {
    // In parents' circles (one pull each that the other has not) any pull may be next.
    const open = left.filter((id) => !left.some((other) => other !== id && together(other, id)));
    const next = random.pick(open.length > 0 ? open : left);
    out.push(defined(child.get(next)));
    left.splice(left.indexOf(next), 1);
  }
  return out;
}

/**
 * All stacks on a walk from one stack to another, one small edit apart: neighbours change places
 * only where the two stacks order them otherwise, inks, offsets and screens change one by one. The edits
 * come in an order drawn from the seed.
 * @returns both ends included
 */
export function walkStacks(from: readonly Pull[], to: readonly Pull[], seed: string): Pull[][] {
  const random = randomFrom(seed);
  const target = new Map(to.map((pull) => [pull.id, pull]));
  const goal = new Map(to.map((pull, i) => [pull.id, i]));
  let stack = from.map((pull) => ({ ...pull }));
  const walk: Pull[][] = [stack];
  const edits = (): (() => Pull[])[] => {
    const list: (() => Pull[])[] = [];
    stack.forEach((pull, i) => {
      const end = target.get(pull.id);
      if (end === undefined) {
        list.push(() => stack.filter((_, k) => k !== i));
        return;
      }
      const set = (changed: Partial<Pull>) => list.push(() => stack.map((each, k) => (k === i ? { ...each, ...changed } : each)));
      if (end.screen !== pull.screen) set({ ...end });
      if (end.ink !== pull.ink) set({ ink: end.ink });
      if (end.dxMm !== pull.dxMm || end.dyMm !== pull.dyMm) set({ dxMm: end.dxMm, dyMm: end.dyMm });
      if (end.turnDeg !== pull.turnDeg) set({ turnDeg: end.turnDeg });
      if (end.strokes !== pull.strokes) set({ strokes: end.strokes });
      const above = stack[i + 1];
      const [mine, its] = [goal.get(pull.id), above === undefined ? undefined : goal.get(above.id)];
      if (above !== undefined && its !== undefined && its < defined(mine)) {
        list.push(() => stack.map((each, k) => (k === i ? above : k === i + 1 ? pull : each)));
      }
    });
    for (const pull of to) {
      if (stack.some(({ id }) => id === pull.id)) continue;
      list.push(() => {
        const at = stack.findIndex(({ id }) => (goal.get(id) ?? -1) > defined(goal.get(pull.id)));
        const out = [...stack];
        out.splice(at < 0 ? out.length : at, 0, { ...pull });
        return out;
      });
    }
    return list;
  };
  for (let open = edits(); open.length > 0; open = edits()) {
    stack = random.pick(open)();
    walk.push(stack);
  }
  return walk;
}
