import type { TimelineInput } from '../../../../src/engine/pullorder/timeline/start-state.ts';
import type { PlanPull } from '../../../../src/engine/pullorder/types.ts';

interface Bed {
  clock: number;
  on: PlanPull | null;
}

/** How a visit stands after some pulls. */
interface Stand {
  done: number;
  beds: Bed[];
  /** Until when each screen is in use, and on which bed. */
  screens: Map<string, { until: number; bed: number }>;
  mixed: string[];
  /** By pull: when its film is dry; by sheet: when it leaves its bed. */
  dry: number[];
  free: number[];
}

/**
 * The soonest end of a visit of one long day over every grouping, order and bed of its pulls: one pull
 * after another is put on a bed, and what follows another of its kind there is one set-up with it. Counts
 * minutes by itself; no lunch, racks, test sheet or strokes. Stands that are nowhere sooner than another
 * with the same pulls done are left out.
 */
export function soonestOnBeds({ problem, times, dryMinutesByInk, touching, visit }: TimelineInput): number {
  const pulls = problem.sheets.flatMap((sheet, s) => sheet.pulls.map((pull, p) => ({ pull, s, p })));
  const at = (s: number, p: number): number => pulls.findIndex((each) => each.s === s && each.p === p);
  const under = pulls.map(({ s, p }) => problem.sheets[s]!.overlaps.filter(([, b]) => b === p).map(([a]) => at(s, a)));
  const touches = pulls.map(({ s, p }) =>
    (touching?.[s] ?? problem.sheets[s]!.overlaps).flatMap(([a, b]) => (a === p ? [at(s, b)] : b === p ? [at(s, a)] : [])),
  );
  const { mountMinutes, washUpMinutes, registerMinutes = 5, mixMinutes = 0, pullsPerHour } = times;
  const known = new Map<string, number[][]>();
  let best = Infinity;

  const ended = ({ pull, s }: (typeof pulls)[number], i: number, bed: number, stand: Stand): number => {
    const { clock, on } = stand.beds[bed]!;
    const elsewhere = stand.screens.get(pull.screen);
    let now = elsewhere !== undefined && elsewhere.bed !== bed ? Math.max(clock, elsewhere.until + washUpMinutes) : clock;
    if (on !== null && (on.screen !== pull.screen || on.ink !== pull.ink)) now += washUpMinutes;
    if (!stand.mixed.includes(pull.ink)) now += mixMinutes;
    if (on?.screen !== pull.screen) now += mountMinutes;
    else if (on.offset !== pull.offset) now += registerMinutes;
    return Math.max(now, stand.free[s]!, ...touches[i]!.map((other) => stand.dry[other]!)) + 60 / pullsPerHour;
  };

  const go = (stand: Stand): void => {
    const { done, beds, screens, mixed, dry, free } = stand;
    const end = Math.max(...beds.map(({ clock, on }) => (on === null ? 0 : clock + washUpMinutes)));
    if (end >= best) return;
    if (done === 2 ** pulls.length - 1) {
      best = end;
      return;
    }
    const key = JSON.stringify([done, mixed, beds.map(({ on }) => [on?.screen, on?.ink, on?.offset])]);
    const when = [
      ...beds.map(({ clock }) => clock),
      ...problem.sheets.flatMap((sheet) =>
        sheet.pulls.flatMap(({ screen }) =>
          beds.map((_, bed) => {
            const used = screens.get(screen);
            return used === undefined || used.bed === bed ? 0 : used.until;
          }),
        ),
      ),
      ...free,
      ...dry,
    ];
    const alike = known.get(key) ?? [];
    if (alike.some((other) => other.every((value, i) => value <= when[i]!))) return;
    known.set(key, [...alike, when]);
    const next = pulls.flatMap((each, i) => {
      if ((done >> i) & 1 || under[i]!.some((other) => !((done >> other) & 1))) return [];
      // A second bare bed is as good as the first.
      const open = beds.flatMap(({ on }, bed) => (on === null && bed > 0 && beds[bed - 1]!.on === null ? [] : [bed]));
      return open.map((bed) => ({ ...each, i, bed, end: ended(each, i, bed, stand) }));
    });
    for (const { pull, s, i, bed, end: until } of next.sort((a, b) => a.end - b.end)) {
      const gone = (on: PlanPull | null): PlanPull | null => (on?.screen === pull.screen ? { ...on, screen: '' } : on);
      go({
        done: done | (1 << i),
        beds: beds.map((each, b) => (b === bed ? { clock: until, on: pull } : { ...each, on: gone(each.on) })),
        screens: new Map([...screens, [pull.screen, { until, bed }]]),
        mixed: mixed.includes(pull.ink) ? mixed : [...mixed, pull.ink].sort(),
        dry: dry.with(i, until + dryMinutesByInk[pull.ink]!),
        free: free.with(s, until),
      });
    }
  };
  const count = visit.beds ?? 1;
  go({
    done: 0,
    beds: Array.from({ length: count }, () => ({ clock: 0, on: null })),
    screens: new Map(),
    mixed: [],
    dry: pulls.map(() => 0),
    free: problem.sheets.map(() => 0),
  });
  return best;
}
