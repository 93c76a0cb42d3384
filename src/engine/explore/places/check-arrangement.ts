import { mirrorPairs } from '../../shapes/place/mirrored.ts';
import type { Pull } from '../../stack/types.ts';
import type { Studio } from '../../studio/studio.ts';
import { say } from '../../words/en/explore/places.ts';
import { DEFAULT_PLACE_MM, type ExploreSettings } from '../types.ts';
import { placed, rearranged } from './asked.ts';
import { Placer } from './placer.ts';

/** What a wall is to be arranged from. */
interface ToArrange {
  settings: ExploreSettings;
  studio: Studio;
  /** Pulls of the base stack that may be in a print. */
  left: readonly Pull[];
}

/** Ways of arranging that no screen can follow, each in one sentence with its mend. */
export function checkArrangement({ settings, studio, left }: ToArrange, add: (code: string, where: string, message: string) => void): void {
  if (!rearranged(settings)) return;
  const { places, placeMm = DEFAULT_PLACE_MM, offsetSnapMm = 0.1, turns, holds, bringIn, onSheet = 1 } = settings;
  if (places === 'near' && placeMm < offsetSnapMm) {
    add('place', 'placeMm', say.screensMayLieUp(placeMm, offsetSnapMm));
    return;
  }
  if (settings.mirrored === true && mirrorPairs(studio.screens, studio.paper.widthMm).size === 0) {
    add('mirror', 'mirrored', say.mirroredFilmsAreAsked);
    return;
  }
  const known = new Set(studio.screens.map(({ id }) => id));
  const still = new Set(holds.flatMap((hold) => (hold.kind === 'lies' ? [hold.pull] : [])));
  const loose = left.filter((pull) => !still.has(pull.id));
  if (loose.length === 0 && left.length > 0 && bringIn === 0) {
    add('place', 'places', say.screensMayLieElsewhere);
    return;
  }
  const spare = bringIn > 0 ? studio.screens.map(({ id }) => atRest(id)) : [];
  const movable = [...loose.filter(({ screen }) => known.has(screen)), ...spare];
  const placer = new Placer(studio, settings);
  const share = `${Math.round(onSheet * 100)} %`;
  if (movable.length === 0) return;
  if (placed(settings) && !movable.some((pull) => placer.hasRoom(pull))) {
    add('place', 'places', say.screensMayLieElsewhereBut(share));
  }
  const turnsOn = (pull: Pull): boolean => [90, 270].some((by) => placer.settle({ ...pull, turnDeg: pull.turnDeg + by }, pull) !== null);
  if (turns === 'quarter' && !movable.some(turnsOn)) {
    add('quarter', 'turns', say.screensMayTurnBy(share));
  }
}

function atRest(screen: string): Pull {
  return { id: screen, screen, ink: '', dxMm: 0, dyMm: 0, turnDeg: 0, strokes: 1 };
}
