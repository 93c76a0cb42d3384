import { f64 } from '../../base/at.ts';
import type { Problem } from '../../base/error.ts';
import { CellMapBuilder } from '../../stack/cell-map.ts';
import { pairOverlapAreas } from '../../stack/overlap-areas.ts';
import { SpanCache } from '../../stack/screen-spans.ts';
import type { Pull } from '../../stack/types.ts';
import type { Studio } from '../../studio/studio.ts';
import { say } from '../../words/en/explore/settings.ts';
import { inkArcs } from '../search/ink-arcs.ts';
import type { ExploreSettings } from '../types.ts';
import { conditionsOf } from './conditions.ts';
import { brokenBy } from './hold-arcs.ts';
import { describeHold } from './hold-words.ts';

const ORDER_FIELDS: readonly string[] = ['neverOver', 'inkFirst', 'inkLast'];
const ROWS = 256;
/** Faults that are told. */
const MOST_TOLD = 100;
/** Pulls that share less than this are taken as only touching, mm². */
const MIN_AREA_MM2 = 1;

/**
 * Holds on the order that conditions about inks contradict where the inks of the pulls are held and
 * the pulls are in every print; each pair in one sentence.
 * @param bench pulls of screens and inks that are in the drawer
 * @returns problems 'limit.ink-hold'; where = the condition's field
 */
export function checkInkOrder(settings: ExploreSettings, studio: Studio, bench: readonly Pull[]): Problem[] {
  const { holds, recolour, leaveOut, mustScreens = [], notScreens = [] } = settings;
  const conditions = conditionsOf(
    { ...settings, neverOver: settings.neverOver?.filter(([upper, lower]) => upper !== lower) },
    studio,
    bench,
  ).filter(({ field }) => ORDER_FIELDS.includes(field));
  const held = new Set(holds.map((hold) => `${hold.kind} ${hold.pull}`));
  const has = (pull: Pull, kinds: readonly string[]): boolean => kinds.some((kind) => held.has(`${kind} ${pull.id}`));
  const pulls = bench.filter((pull) => !has(pull, ['out']) && !notScreens.includes(pull.screen));
  if (conditions.length === 0 || pulls.length < 2) return [];
  const stays = pulls.map(
    (pull) =>
      (!recolour || has(pull, ['ink'])) && (leaveOut === 0 || mustScreens.includes(pull.screen) || has(pull, ['first', 'last', 'place'])),
  );
  const grid = { widthMm: studio.paper.widthMm, heightMm: studio.paper.heightMm, rows: ROWS };
  const areas = pairOverlapAreas(new CellMapBuilder().build(new SpanCache(studio).place({ pulls }, grid), grid));
  const shared = (a: number, b: number): boolean => f64(areas, a * pulls.length + b) >= MIN_AREA_MM2;
  const number = new Map(bench.map((pull, i) => [pull.id, i + 1]));
  const problems: Problem[] = [];
  const at = new Map(pulls.map(({ id }, i) => [id, i]));
  const seen = new Set<string>();
  const each = holds.filter((hold) => {
    const words = describeHold(hold, number, pulls);
    const fresh = !seen.has(words) && hold.kind !== 'ink' && hold.kind !== 'out' && !(hold.kind === 'before' && hold.pull === hold.other);
    seen.add(words);
    return fresh;
  });
  for (const { only, field, says } of conditions) {
    const arcs = inkArcs(pulls, only, shared).filter(([low, high]) => stays[low] && stays[high]);
    if (arcs.length === 0) continue;
    const broken = brokenBy(at, arcs);
    for (const hold of each) {
      if (problems.length >= MOST_TOLD || !broken(hold)) continue;
      const words = describeHold(hold, number, pulls);
      problems.push({
        code: 'limit.ink-hold',
        message: say.butAndTheirInks(says, words),
        where: field,
      });
    }
  }
  return problems;
}
