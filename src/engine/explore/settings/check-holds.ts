import { cutText } from '../../base/bounds.ts';
import type { Problem } from '../../base/error.ts';
import type { Pull } from '../../stack/types.ts';
import { say } from '../../words/en/explore/settings.ts';
import { capital } from '../../words/language.ts';
import { arrange } from '../search/arrange.ts';
import type { Hold } from '../types.ts';
import { findCircle } from './hold-circle.ts';
import { holdConstraints } from './hold-constraints.ts';
import { type Known, suspectPairs, withoutRepeats } from './hold-pairs.ts';
import { describeHold } from './hold-words.ts';

/** Pulls of a circle that are named. */
const MOST_NAMED = 10;

type Pulls = readonly Pick<Pull, 'id'>[];

/** Faults that are told; who has mended so many looks again. */
const MOST_TOLD = 100;

/**
 * Finds holds that contradict each other or name a pull that is not there; each in one
 * sentence that names which two (or the circle).
 * @param pulls the base stack, first down first
 * @returns problems 'hold.unknown-pull' | 'hold.contradiction' | 'hold.circle', at most a hundred;
 *   where = `holds[i]`
 * Cost: grows with the number of holds, not with that of their pairs.
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
            message: say.whatMustStayEntry(index + 1, cutText(id)),
            where: `holds[${index}]`,
          },
        ];
  });
  const among = new KnownHolds(pulls, withoutRepeats(known));
  const problems = [...unknown, ...among.aloneAndInPairs()].slice(0, MOST_TOLD);
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
    const out = new Set(known.flatMap(({ hold }) => (hold.kind === 'out' ? [hold.pull] : [])));
    this.left = pulls.filter(({ id }) => !out.has(id));
  }

  /** Holds that no order keeps, and pairs of others that none keeps. */
  aloneAndInPairs(): Problem[] {
    // Any one hold leaves room but that of a pull before itself.
    const isBad = ({ hold }: Known): boolean => hold.kind === 'before' && hold.pull === hold.other;
    const problems = this.known.filter(isBad).map(({ hold, index }) => contradiction(index, say.whichNoOrderCan(capital(this.say(hold)))));
    const good = this.known.filter((each) => !isBad(each));
    for (const [a, b] of suspectPairs(good, this.left)) {
      if (problems.length >= MOST_TOLD) break;
      if (this.admits([a.hold, b.hold])) continue;
      problems.push(contradiction(b.index, say.butTakeOneOf(capital(this.say(a.hold)), this.say(b.hold))));
    }
    return problems;
  }

  /** The circle in which holds go round, or null. */
  circle(): Problem[] | null {
    const circle = findCircle(this.known.map(({ hold }) => hold));
    if (circle === null) return null;
    const numbers = [...circle, ...circle.slice(0, 1)].map((id) => this.number.get(id));
    const names = numbers.length > MOST_NAMED ? [...numbers.slice(0, MOST_NAMED - 2), '…', ...numbers.slice(-1)] : numbers;
    return [
      {
        code: 'hold.circle',
        message: say.whatMustStayGoes(names.join(say.underPull)),
        where: 'holds',
      },
    ];
  }

  /** A hold that no order keeps with those before it; as a rule the first. */
  together(): Problem[] {
    const admitsFirst = (count: number): boolean => this.admits(this.known.slice(0, count).map(({ hold }) => hold));
    if (admitsFirst(this.known.length)) return [];
    let [fits, fails] = [0, this.known.length];
    while (fails - fits > 1) {
      const middle = (fits + fails) >> 1;
      if (admitsFirst(middle)) fits = middle;
      else fails = middle;
    }
    const first = this.known[fails - 1];
    if (first === undefined) return [];
    return [contradiction(first.index, say.whichNoOrderCanKeep(capital(this.say(first.hold))))];
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
  const out = new Set(some.flatMap((hold) => (hold.kind === 'out' ? [hold.pull] : [])));
  return some.some((hold) => out.has(hold.pull) && ['first', 'last', 'place'].includes(hold.kind));
}
