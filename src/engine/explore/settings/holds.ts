import { entryAt, num } from '../../base/at.ts';
import type { Problem } from '../../base/error.ts';
import type { Pull } from '../../stack/types.ts';
import { arrange, type Constraints } from '../search/arrange.ts';
import type { Hold } from '../types.ts';

/**
 * The order holds as places and arcs among pulls.
 * @param pulls the pulls that are left of the base stack, then those brought in
 * @param base how many of them are of the base stack; 'place' counts these only
 */
export function holdConstraints(pulls: readonly Pick<Pull, 'id'>[], base: number, holds: readonly Hold[]): Constraints {
  const at = new Map(pulls.map((pull, index) => [pull.id, index]));
  const slots = pulls.map(() => -1);
  const arcs: [number, number][] = [];
  for (const hold of holds) {
    const index = at.get(hold.pull);
    if (index === undefined) continue;
    if (hold.kind === 'before') {
      const then = at.get(hold.other);
      if (then !== undefined) arcs.push([index, then]);
      continue;
    }
    const slot = slotOf(hold.kind, index, base, pulls.length);
    if (slot < 0) continue;
    // Two different places for one pull: no order keeps a pull below itself.
    if (num(slots, index) >= 0 && slots[index] !== slot) arcs.push([index, index]);
    slots[index] = slot;
  }
  return { arcs, slots };
}

function slotOf(kind: Hold['kind'], index: number, base: number, pulls: number): number {
  if (kind === 'first') return 0;
  if (kind === 'last') return pulls - 1;
  return kind === 'place' && index < base ? index : -1;
}

/**
 * Finds holds that contradict each other or name a pull that is not there; each told in one
 * sentence that names which two (or the circle).
 * @param pulls the base stack, first down first
 * @returns problems 'hold.unknown-pull' | 'hold.contradiction' | 'hold.circle'; where = `holds[i]`
 */
export function checkHolds(pulls: readonly Pick<Pull, 'id'>[], holds: readonly Hold[]): Problem[] {
  const number = new Map(pulls.map((pull, index) => [pull.id, index + 1]));
  const problems: Problem[] = [];
  const known: { hold: Hold; index: number }[] = [];
  holds.forEach((hold, index) => {
    const ends = hold.kind === 'before' ? [hold.pull, hold.other] : [hold.pull];
    const missing = ends.find((id) => !number.has(id));
    if (missing === undefined) known.push({ hold, index });
    else {
      problems.push({
        code: 'hold.unknown-pull',
        message: `Hold ${index + 1} names the pull '${missing}', which is not in the stack; take the hold away.`,
        where: `holds[${index}]`,
      });
    }
  });
  const left = pulls.filter((pull) => !known.some(({ hold }) => hold.kind === 'out' && hold.pull === pull.id));
  const admits = (some: readonly Hold[]): boolean => {
    const kept = some.some((hold) => hold.kind === 'out') ? left : allBut(pulls, left, some);
    return (
      !outAndPlaced(some) &&
      arrange(
        kept.length,
        holdConstraints(kept, kept.length, some),
        kept.map((_, i) => i),
      ) !== null
    );
  };
  const say = (hold: Hold): string => describeHold(hold, number, left);

  const bad = new Set<number>();
  for (const { hold, index } of known) {
    if (admits([hold])) continue;
    bad.add(index);
    problems.push({
      code: 'hold.contradiction',
      message: `${capital(say(hold))}, which no order can keep; take the hold away.`,
      where: `holds[${index}]`,
    });
  }
  for (const a of known) {
    for (const b of known) {
      if (a.index >= b.index || bad.has(a.index) || bad.has(b.index) || admits([a.hold, b.hold])) continue;
      problems.push({
        code: 'hold.contradiction',
        message: `${capital(say(a.hold))}, but ${say(b.hold)}; take one of the two holds away.`,
        where: `holds[${b.index}]`,
      });
    }
  }
  if (problems.length > 0) return problems;

  const circle = findCircle(known.map(({ hold }) => hold));
  if (circle !== null) {
    const names = [...circle, ...circle.slice(0, 1)].map((id) => number.get(id));
    return [
      {
        code: 'hold.circle',
        message: `The holds go round in a circle: pull ${names.join(' before pull ')}; take one of them away.`,
        where: 'holds',
      },
    ];
  }
  const together: Hold[] = [];
  for (const { hold, index } of known) {
    together.push(hold);
    if (admits(together)) continue;
    return [
      {
        code: 'hold.contradiction',
        message: `${capital(say(hold))}, which no order can keep together with the holds before it; take one of them away.`,
        where: `holds[${index}]`,
      },
    ];
  }
  return [];
}

/** Places count without the pulls left out, so a hold on a pull that is out is looked at apart. */
function allBut(pulls: readonly Pick<Pull, 'id'>[], left: readonly Pick<Pull, 'id'>[], some: readonly Hold[]): readonly Pick<Pull, 'id'>[] {
  const named = new Set(some.flatMap((hold) => (hold.kind === 'before' ? [hold.pull, hold.other] : [hold.pull])));
  const stays = new Set(left.map((pull) => pull.id));
  return pulls.filter((pull) => stays.has(pull.id) || named.has(pull.id));
}

function outAndPlaced(some: readonly Hold[]): boolean {
  return some.some(
    (out) => out.kind === 'out' && some.some((hold) => hold.pull === out.pull && ['first', 'last', 'place'].includes(hold.kind)),
  );
}

/**
 * A hold in words: 'pull 3 is held first down'.
 * @param number of each pull on the bench, from 1
 * @param left pulls that are not held out, first down first
 */
export function describeHold(hold: Hold, number: ReadonlyMap<string, number>, left: readonly Pick<Pull, 'id'>[]): string {
  const pull = `pull ${number.get(hold.pull)}`;
  switch (hold.kind) {
    case 'first':
      return `${pull} is held first down`;
    case 'last':
      return `${pull} is held last down`;
    case 'place':
      return `${pull} is held in its place (number ${left.findIndex((each) => each.id === hold.pull) + 1 || number.get(hold.pull)} down)`;
    case 'ink':
      return `${pull} is held in its ink`;
    case 'out':
      return `${pull} is held out`;
    case 'before':
      return `${pull} is held before pull ${number.get(hold.other)}`;
  }
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

/** Pulls that are each held before the next and the last before the first, or null. */
function findCircle(holds: readonly Hold[]): string[] | null {
  const next = new Map<string, string[]>();
  for (const hold of holds) {
    if (hold.kind === 'before') next.set(hold.pull, [...(next.get(hold.pull) ?? []), hold.other]);
  }
  const done = new Set<string>();
  for (const start of next.keys()) {
    const path = [start];
    const tried = new Map([[start, 0]]);
    while (path.length > 0) {
      const top = entryAt(path, path.length - 1);
      const turn = tried.get(top) ?? 0;
      const to = next.get(top)?.[turn];
      tried.set(top, turn + 1);
      if (to === undefined) {
        done.add(top);
        path.pop();
      } else if (path.includes(to)) {
        return path.slice(path.indexOf(to));
      } else if (!done.has(to)) {
        path.push(to);
        tried.set(to, 0);
      }
    }
  }
  return null;
}
