import type { Problem } from '../../base/error.ts';
import { MOST_PULLS } from '../../base/limits.ts';
import type { Pull } from '../../stack/types.ts';
import type { Studio } from '../../studio/studio.ts';
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
  if (!moves)
    add(
      'no-moves',
      'order',
      'Nothing may change, so there is nothing to find; let the order, the inks, the offsets or the screens change.',
    );
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
    add('no-screens', 'drawer', 'The drawer has no screens; add a shape and make a screen of it first.');
    return;
  }
  if (bench.length > MOST_PULLS) {
    add('too-many-pulls', 'bench', `The stack has ${bench.length} pulls; the explorer takes up to ${MOST_PULLS}, so leave some out.`);
  }
  const out = new Set(settings.holds.flatMap((hold) => (hold.kind === 'out' ? [hold.pull] : [])));
  if (bench.every((pull) => out.has(pull.id)) && !(settings.bringIn > 0)) {
    add('empty-stack', 'bench', 'The stack has no pulls to start from; put one on the bench or let screens be brought in.');
  }
  const ids = new Set<string>();
  bench.forEach((pull, index) => {
    if (ids.has(pull.id))
      add('same-id', `bench[${index}]`, `Pull ${index + 1} has the same id '${pull.id}' as a pull before it; give each pull its own.`);
    ids.add(pull.id);
    if (!screens.has(pull.screen))
      add(
        'unknown-screen',
        `bench[${index}]`,
        `Pull ${index + 1} uses the screen '${pull.screen}', which is not in the drawer; choose another screen or leave the pull out.`,
      );
    if (!inks.has(pull.ink))
      add(
        'unknown-ink',
        `bench[${index}]`,
        `Pull ${index + 1} uses the ink '${pull.ink}', which is not in the drawer; choose another ink or leave the pull out.`,
      );
  });
}

function checkPalette(settings: ExploreSettings, studio: Studio, add: Add): void {
  const { palette, recolour, bringIn } = settings;
  if (!recolour && !(bringIn > 0)) return;
  if (palette.length === 0) {
    add('empty-palette', 'palette', 'The palette is empty; allow at least one ink, or keep the inks and bring no screens in.');
  }
  palette.forEach((id, index) => {
    if (!studio.inks.some((ink) => ink.id === id)) {
      add('palette-ink', `palette[${index}]`, `The palette names the ink '${id}', which is not in the drawer; take it off the palette.`);
    }
  });
}
