import type { Problem } from '../../base/error.ts';
import { CellMapBuilder } from '../../stack/cell-map.ts';
import { SpanCache } from '../../stack/screen-spans.ts';
import type { Pull } from '../../stack/types.ts';
import type { Studio } from '../../studio/studio.ts';
import { say } from '../../words/en/explore/settings.ts';
import { prints } from '../measure/prints.ts';
import { rearranged } from '../places/asked.ts';
import type { ExploreSettings } from '../types.ts';

/**
 * Whether all that a print may be made of leaves no ink on the sheet.
 * @param bench pulls of screens that are in the drawer
 * @returns one problem 'explore.blank', or none; where = 'bench' or 'drawer'
 * Cost: one pull's map as a rule, since the first that prints ends it.
 */
export function checkBlank(settings: ExploreSettings, studio: Studio, bench: readonly Pull[]): Problem[] {
  const { holds, notScreens = [], bringIn, offsetRangeMm, turns = 'none', echoes = 0, echoMm = 0 } = settings;
  // A turn or another place may bring on what lies anywhere about the sheet; the wall finds out.
  if (turns !== 'none' || rearranged(settings)) return [];
  // What a shift or an echo can bring onto the sheet lies on one that is larger by as much all round.
  const roundMm = offsetRangeMm + (echoes > 0 ? echoMm : 0);
  const { paper } = studio;
  const larger = { ...studio, paper: { ...paper, widthMm: paper.widthMm + 2 * roundMm, heightMm: paper.heightMm + 2 * roundMm } };
  const out = new Set(holds.flatMap((hold) => (hold.kind === 'out' ? [hold.pull] : [])));
  const pulls = bench.filter((pull) => !out.has(pull.id) && !notScreens.includes(pull.screen));
  const spare = bringIn > 0 ? studio.screens.filter(({ id }) => !notScreens.includes(id) && !bench.some((pull) => pull.screen === id)) : [];
  const spans = new SpanCache(larger);
  const builder = new CellMapBuilder();
  const rest = spare.map(({ id }): Pull => ({ id, screen: id, ink: '', dxMm: 0, dyMm: 0, turnDeg: 0, strokes: 1 }));
  const there = (pull: Pull): boolean => prints({ ...pull, dxMm: pull.dxMm + roundMm, dyMm: pull.dyMm + roundMm }, larger, spans, builder);
  if ([...pulls, ...rest].some(there)) return [];
  const what = pulls.length > 0 ? say.pullsOnBench : say.screensThatMayBe;
  return [
    {
      code: 'explore.blank',
      message: say.noneOfPrintsAnything(what),
      where: pulls.length > 0 ? 'bench' : 'drawer',
    },
  ];
}
