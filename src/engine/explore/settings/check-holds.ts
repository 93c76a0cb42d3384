import type { Problem } from '../../base/error.ts';
import type { Pull } from '../../stack/types.ts';
import { arrange } from '../search/arrange.ts';
import type { Hold } from '../types.ts';
import { findCircle } from './hold-circle.ts';
import { holdConstraints } from './hold-constraints.ts';
import { describeHold } from './hold-words.ts';

type Pulls = readonly Pick<Pull, 'id'>[];

/** A hold on pulls that are in the stack, and its place among all holds. */
interface Known {
  hold: Hold;
  index: number;
}

/**
 * Finds holds that contradict each other or name a pull that is not there; each in one
 * sentence that names which two (or the circle).
 * @param pulls the base stack, first down first
 * @returns problems 'hold.unknown-pull' | 'hold.contradiction' | 'hold.circle'; where = `holds[i]`
 */
export function checkHolds(pulls: Pulls, holds: readonly Hold[]): Problem[] {
  const there = new Set(pulls.map(({ id }) => id));
  const missing = (hold: Hold): string | undefined =>
    (hold.kind === 'before' ? [hold.pull, hold.other] : [hold.pull]).find((id) => !there.has(id));
  const known = holds.map((hold, index): Known => ({ hold, index })).filter(({ hold }) => missing(hold) === undefined);
  const unknown = holds.flatMap((hold, index): Problem[] => {
    const id = missing(hold);
    return id === undefined
      ? []
      : [
          {
            code: 'hold.unknown-pull',
            message: `What must stay, entry ${index + 1}, names the pull '${id}', which is not in the stack; take it away.`,
            where: `holds[${index}]`,
          },
        ];
  });
  const among = new KnownHolds(pulls, known);
  const problems = [...unknown, ...among.aloneAndInPairs()];
  return problems.length > 0 ? problems : (among.circle() ?? among.together());
}

/** Looks at holds alone, by two, and all together. */
class KnownHolds {
  private readonly pulls: Pulls;
  private readonly known: readonly Known[];
  private readonly number: ReadonlyMap<string, number>;
  /** Pulls that are not held out. */
  private readonly left: Pulls;

  constructor(pulls: Pulls, known: readonly Known[]) {
    this.pulls = pulls;
    this.known = known;
    this.number = new Map(pulls.map((pull, index) => [pull.id, index + 1]));
    this.left = pulls.filter((pull) => !known.some(({ hold }) => hold.kind === 'out' && hold.pull === pull.id));
  }

  /** Holds that no order keeps, and pairs of others that none keeps. */
  aloneAndInPairs(): Problem[] {
    const bad = this.known.filter(({ hold }) => !this.admits([hold]));
    const good = this.known.filter((each) => !bad.includes(each));
    const alone = bad.map(({ hold, index }) => contradiction(index, `${capital(this.say(hold))}, which no order can keep; let it move.`));
    const pairs = good.flatMap((a, at) =>
      good
        .slice(at + 1)
        .filter((b) => !this.admits([a.hold, b.hold]))
        .map((b) => contradiction(b.index, `${capital(this.say(a.hold))}, but ${this.say(b.hold)}; take one of the two away.`)),
    );
    return [...alone, ...pairs];
  }

  /** The circle in which holds go round, or null. */
  circle(): Problem[] | null {
    const circle = findCircle(this.known.map(({ hold }) => hold));
    if (circle === null) return null;
    const names = [...circle, ...circle.slice(0, 1)].map((id) => this.number.get(id));
    return [
      {
        code: 'hold.circle',
        message: `What must stay goes round in a circle: pull ${names.join(' under pull ')}; take one of them away.`,
        where: 'holds',
      },
    ];
  }

  /** The first hold that no order keeps with those before it. */
  together(): Problem[] {
    const at = this.known.findIndex((_, i) => !this.admits(this.known.slice(0, i + 1).map(({ hold }) => hold)));
    const first = this.known[at];
    if (first === undefined) return [];
    return [
      contradiction(
        first.index,
        `${capital(this.say(first.hold))}, which no order can keep together with what must stay before it; take one of them away.`,
      ),
    ];
  }

  private admits(some: readonly Hold[]): boolean {
    const kept = some.some((hold) => hold.kind === 'out') ? this.left : allBut(this.pulls, this.left, some);
    const ranks = kept.map((_, i) => i);
    return !outAndPlaced(some) && arrange(kept.length, holdConstraints(kept, kept.length, some), ranks) !== null;
  }

  private say(hold: Hold): string {
    return describeHold(hold, this.number, this.left);
  }
}

function contradiction(index: number, message: string): Problem {
  return { code: 'hold.contradiction', message, where: `holds[${index}]` };
}

/** Places count without the pulls left out, so a hold on a pull that is out is looked at apart. */
function allBut(pulls: Pulls, left: Pulls, some: readonly Hold[]): Pulls {
  const named = new Set(some.flatMap((hold) => (hold.kind === 'before' ? [hold.pull, hold.other] : [hold.pull])));
  const stays = new Set(left.map((pull) => pull.id));
  return pulls.filter((pull) => stays.has(pull.id) || named.has(pull.id));
}

function outAndPlaced(some: readonly Hold[]): boolean {
  return some.some(
    (out) => out.kind === 'out' && some.some((hold) => hold.pull === out.pull && ['first', 'last', 'place'].includes(hold.kind)),
  );
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
