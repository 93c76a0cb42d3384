import type { Problem } from '../../base/error.ts';
import { MOST_PULLS } from '../../base/limits.ts';
import type { Pull } from '../../stack/types.ts';
import type { Studio } from '../../studio/studio.ts';
import { say } from '../../words/en/explore/settings.ts';
import { rearranged } from '../places/asked.ts';
import type { ExploreSettings } from '../types.ts';
import { checkBlank } from './check-blank.ts';
import { checkClashes } from './check-clashes.ts';
import { checkHolds } from './check-holds.ts';
import { checkInkOrder } from './check-ink-order.ts';
import { checkRanges } from './check-ranges.ts';

/**
 * All that keeps a wall from being made, each in a sentence with its mend.
 * @returns no problems when exploring can start; where = the field of the settings, or 'drawer', 'bench'
 */
export function checkExplore(settings: ExploreSettings, studio: Studio, bench: readonly Pull[]): Problem[] {
  const problems: Problem[] = checkRanges(settings);
  const add = (code: string, where: string, message: string): void => {
    problems.push({ code: `explore.${code}`, message, where });
  };
  checkStack(studio, bench, settings, add);
  checkPalette(settings, studio, add);
  const moves =
    settings.order ||
    settings.recolour ||
    settings.offsetRangeMm > 0 ||
    settings.leaveOut > 0 ||
    settings.bringIn > 0 ||
    (settings.turns ?? 'none') !== 'none' ||
    rearranged(settings) ||
    (settings.echoes ?? 0) > 0 ||
    (settings.maxStrokes ?? 1) > 1 ||
    settings.veil === true;
  if (!moves) add('no-moves', 'order', say.nothingMayChangeSo);
  problems.push(...checkHolds(bench, settings.holds), ...checkClashes(settings, studio, bench));
  // Looks at the sheet itself, so only where all that it names is there.
  if (problems.length === 0) problems.push(...checkBlank(settings, studio, bench));
  return problems.length > 0 ? problems : checkInkOrder(settings, studio, bench);
}

type Add = (code: string, where: string, message: string) => void;

function checkStack(studio: Studio, bench: readonly Pull[], settings: ExploreSettings, add: Add): void {
  const screens = new Set(studio.screens.map((screen) => screen.id));
  const inks = new Set(studio.inks.map((ink) => ink.id));
  if (screens.size === 0) {
    add('no-screens', 'drawer', say.drawerHasNoScreens);
    return;
  }
  if (bench.length > MOST_PULLS) {
    add('too-many-pulls', 'bench', say.stackHasPullsExplorer(bench.length, MOST_PULLS));
  }
  const out = new Set(settings.holds.flatMap((hold) => (hold.kind === 'out' ? [hold.pull] : [])));
  if (bench.every((pull) => out.has(pull.id)) && !(settings.bringIn > 0)) {
    add('empty-stack', 'bench', say.stackHasNoPulls);
  }
  const ids = new Set<string>();
  bench.forEach((pull, index) => {
    if (ids.has(pull.id)) add('same-id', `bench[${index}]`, say.pullHasSameId(index + 1, pull.id));
    ids.add(pull.id);
    if (!screens.has(pull.screen)) add('unknown-screen', `bench[${index}]`, say.pullUsesScreenWhich(index + 1, pull.screen));
    if (!inks.has(pull.ink)) add('unknown-ink', `bench[${index}]`, say.pullUsesInkWhich(index + 1, pull.ink));
  });
}

function checkPalette(settings: ExploreSettings, studio: Studio, add: Add): void {
  const { palette, recolour, bringIn } = settings;
  if (!recolour && !(bringIn > 0)) return;
  if (palette.length === 0) {
    add('empty-palette', 'palette', say.paletteIsEmptyAllow);
  }
  palette.forEach((id, index) => {
    if (!studio.inks.some((ink) => ink.id === id)) {
      add('palette-ink', `palette[${index}]`, say.paletteNamesInkWhich(id));
    }
  });
}
