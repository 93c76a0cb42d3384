import { entryAt, i32 } from '../../base/at.ts';
import type { PlanProblem, SetUp } from '../../pullorder/types.ts';

/** Set-ups in their order, with the bed of each. */
interface Order {
  setUps: SetUp[];
  beds: number[];
}

/** A pull that an order does not have: it comes before the set-up of that number, at the latest. */
interface Missing {
  pull: [number, number];
  before: number;
}

/** Names a pull's kind, or a set-up's: its screen, ink and offset. */
export function kindOf({ screen, ink, offset = '' }: { screen: string; ink: string; offset?: string | undefined }): string {
  return JSON.stringify([screen, ink, offset]);
}

/** Numbers of the set-ups of each kind, and of the one that prints each pull; −1 where none does. */
function lookUp(problem: PlanProblem, setUps: readonly SetUp[]) {
  const ofKind = new Map<string, number[]>();
  const at = problem.sheets.map(({ pulls }) => new Int32Array(pulls.length).fill(-1));
  setUps.forEach((setUp, i) => {
    const key = kindOf(setUp);
    ofKind.set(key, [...(ofKind.get(key) ?? []), i]);
    for (const [s, p] of setUp.pulls) entryAt(at, s)[p] = i;
  });
  return { ofKind, at };
}

/**
 * An order with the pulls that it lacks: each joins a set-up of its kind after all that must lie under it and
 * before all that must lie over it, and where there is none it has one of its own, those of a kind together.
 * Whether the result is sound is for others to see.
 */
export function filled(problem: PlanProblem, { setUps, beds }: Order): Order {
  const { ofKind, at } = lookUp(problem, setUps);
  const joined = setUps.map((setUp) => ({ ...setUp, pulls: [...setUp.pulls] }));
  const own: Missing[] = [];
  problem.sheets.forEach(({ pulls, overlaps }, s) => {
    const places = entryAt(at, s);
    // From the last pull down, so that what must lie over a pull has its place.
    for (let p = pulls.length - 1; p >= 0; p--) {
      if (i32(places, p) >= 0) continue;
      const over = overlaps.filter(([a]) => a === p).map(([, b]) => i32(places, b));
      const under = overlaps.filter(([, b]) => b === p).map(([a]) => i32(places, a));
      const before = Math.min(setUps.length, ...over);
      const join = ofKind.get(kindOf(entryAt(pulls, p)))?.findLast((i) => i < before && under.every((j) => j < i));
      if (join === undefined) own.push({ pull: [s, p], before });
      else entryAt(joined, join).pulls.push([s, p]);
      places[p] = join ?? before;
    }
  });
  return merged(problem, { setUps: joined, beds }, own);
}

function merged(problem: PlanProblem, { setUps, beds }: Order, own: readonly Missing[]): Order {
  const fresh = new Map<string, { setUp: SetUp; before: number; depth: number }>();
  for (const { pull, before } of own) {
    const [s, p] = pull;
    const { pulls } = entryAt(problem.sheets, s);
    const { screen, ink, offset = '' } = entryAt(pulls, p);
    const kind = kindOf(entryAt(pulls, p));
    // A pull of the same kind on the same sheet may have one between: another set-up.
    const alike = own.filter(({ pull: [sheet, at] }) => sheet === s && at < p && kindOf(entryAt(pulls, at)) === kind);
    const key = `${kind} ${alike.length}`;
    const known = fresh.get(key);
    if (known === undefined) fresh.set(key, { setUp: { screen, ink, offset, pulls: [pull] }, before, depth: p });
    else {
      known.setUp.pulls.push(pull);
      known.before = Math.min(known.before, before);
      known.depth = Math.min(known.depth, p);
    }
  }
  const list = [...fresh.values()].sort((a, b) => a.before - b.before || a.depth - b.depth);
  const order: Order = { setUps: [], beds: [] };
  for (let i = 0; i <= setUps.length; i++) {
    for (const { setUp, before } of list) {
      if (before !== i) continue;
      order.setUps.push(setUp);
      order.beds.push(beds[Math.min(i, beds.length - 1)] ?? 0);
    }
    const next = setUps[i];
    if (next === undefined) break;
    order.setUps.push(next);
    order.beds.push(beds[i] ?? 0);
  }
  return order;
}
