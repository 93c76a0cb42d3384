import { madeAsMirror, mirrorPairs } from '../../shapes/place/mirrored.ts';
import type { Pull } from '../../stack/types.ts';
import type { Studio } from '../../studio/studio.ts';
import { rearranged } from '../places/asked.ts';
import { Placer } from '../places/placer.ts';
import type { ExploreInput, ExploreSettings, Hold } from '../types.ts';
import { veilPulls } from '../veil/veil-move.ts';

/** What moves are made from. */
export interface MoveSource {
  settings: ExploreSettings;
  /** Base stack without the pulls held out. */
  bench: readonly Pull[];
  /** A pull at rest of each screen that is not in the base stack; inks are drawn. */
  spares: readonly Pull[];
  /** Ids that may not be left out, and those that keep their ink. */
  kept: ReadonlySet<string>;
  inkHeld: ReadonlySet<string>;
  /** Ids that lie as they were drawn. */
  still: ReadonlySet<string>;
  /** Pulls at rest of all screens on which a veil may lie, each with an ink that lets show what is below. */
  veils: readonly Pull[];
  /** By a screen's id, the one that may stand in for it as its mirror. */
  mirrors: ReadonlyMap<string, string>;
  /** Finds places for whole screens; null where none may lie elsewhere or turn by a quarter. */
  placer: Placer | null;
}

/**
 * What moves are made from, of a base stack and settings.
 * @param prints whether a pull at rest leaves ink on the sheet, so that it may be brought in
 */
export function moveSource({ drawer: studio, bench, explore }: ExploreInput, prints: (pull: Pull) => boolean): MoveSource {
  const held = (...kinds: Hold['kind'][]): Set<string> =>
    new Set(explore.holds.filter((hold) => kinds.includes(hold.kind)).map((hold) => hold.pull));
  const out = held('out');
  const used = new Set(bench.map((pull) => pull.screen));
  const not = new Set(explore.notScreens);
  const kept = held('first', 'last', 'place');
  for (const pull of bench) if (explore.mustScreens?.includes(pull.screen) === true) kept.add(pull.id);
  // Mirrors come in by turning a film over, not as screens of their own.
  const standIns = new Set(explore.mirrored === true ? studio.screens.filter(madeAsMirror).map(({ id }) => id) : []);
  const resting = studio.screens
    .filter((screen) => !not.has(screen.id))
    .map((screen) => ({ id: newId(screen.id, bench), screen: screen.id, ink: '', dxMm: 0, dyMm: 0, turnDeg: 0, strokes: 1 }));
  return {
    // A screen that is no longer in the drawer asks for nothing.
    settings: { ...explore, mustScreens: explore.mustScreens?.filter((id) => studio.screens.some((screen) => screen.id === id)) },
    bench: bench.filter((pull) => !out.has(pull.id) && !not.has(pull.screen)),
    spares: resting.filter((pull) => !used.has(pull.screen) && !standIns.has(pull.screen) && (explore.bringIn === 0 || prints(pull))),
    kept,
    inkHeld: held('ink'),
    still: held('lies'),
    veils: explore.veil === true ? veilPulls(resting, studio, explore) : [],
    mirrors: mirrorsOf(studio, explore),
    placer: rearranged(explore) ? new Placer(studio, explore) : null,
  };
}

/** The screens that may stand in for others; one that every print must have stays itself. */
function mirrorsOf({ screens, paper }: Studio, { mirrored, mustScreens = [], notScreens = [] }: ExploreSettings): Map<string, string> {
  const pairs = mirrored === true ? mirrorPairs(screens, paper.widthMm) : new Map<string, string>();
  return new Map([...pairs].filter(([screen, other]) => !mustScreens.includes(screen) && !notScreens.includes(other)));
}

function newId(screen: string, bench: readonly Pull[]): string {
  let id = `in-${screen}`;
  while (bench.some((pull) => pull.id === id)) id += '+';
  return id;
}
