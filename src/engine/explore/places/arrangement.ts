import { MOST_PULLS } from '../../base/limits.ts';
import type { Random } from '../../base/random.ts';
import type { Pull } from '../../stack/types.ts';
import type { MoveSource } from '../search/move-source.ts';
import { placed } from './asked.ts';
import type { Placer } from './placer.ts';

/** Which of the ways a print is arranged by. */
interface Ways {
  turns: boolean;
  repeat: boolean;
  mirror: boolean;
}

/**
 * Pulls laid elsewhere, turned, and some once more: from half of those that may move to
 * all of them, gathered about a point, a column or a row of the sheet, or about nothing.
 * @returns the same pulls in their order, then those pulled again
 */
export function arranged(pulls: readonly Pull[], source: MoveSource, { turns, repeat, mirror }: Ways, random: Random): Pull[] {
  const { placer, settings } = source;
  if (placer === null) return [...pulls];
  const aim = placer.aim(random);
  const loose = pulls.filter((pull) => !source.still.has(pull.id));
  const turning = new Set(turns ? random.shuffle(loose).slice(0, halfOrMore(loose.length, random)) : []);
  const placing = new Set(placed(settings) ? random.shuffle(loose).slice(0, halfOrMore(loose.length, random)) : []);
  const mirroring = new Set(mirror ? random.shuffle(loose).slice(0, halfOrMore(loose.length, random)) : []);
  const laid = pulls.map((pull) => {
    const film = mirroring.has(pull) ? mirroredOf(pull, source) : pull;
    const turned = turning.has(pull) ? turnedAnew(film, source, random) : film;
    return placing.has(pull) ? placer.place(turned, pull, aim, random) : turned;
  });
  return repeat ? [...laid, ...again(laid, { placer, source, turns }, random)] : laid;
}

function halfOrMore(count: number, random: Random): number {
  const least = Math.ceil(count / 2);
  return least + random.int(count - least + 1);
}

/** On the screen that mirrors its own; as it was where there is none, or where it would lie too far beside the sheet. */
function mirroredOf(pull: Pull, { mirrors, placer }: MoveSource): Pull {
  const screen = mirrors.get(pull.screen);
  if (screen === undefined) return pull;
  return placer?.settle({ ...pull, screen }, pull) ?? pull;
}

/** Turned by what the wall allows, on the sheet; as it was where it does not fit so. */
function turnedAnew(pull: Pull, { placer, settings }: MoveSource, random: Random): Pull {
  const [stepDeg, steps] = settings.turns === 'any' ? [1, 359] : settings.turns === 'half' ? [180, 1] : [90, 3];
  const turnDeg = (pull.turnDeg + stepDeg * (1 + random.int(steps))) % 360;
  return placer?.settle({ ...pull, turnDeg }, pull) ?? pull;
}

/** Some pulls a second time, each somewhere else. */
function again(
  pulls: readonly Pull[],
  { placer, source, turns }: { placer: Placer; source: MoveSource; turns: boolean },
  random: Random,
): Pull[] {
  const { settings, still } = source;
  const room = Math.min(settings.maxPulls ?? MOST_PULLS, settings.maxSetUps ?? MOST_PULLS, MOST_PULLS) - pulls.length;
  const most = Math.min(settings.repeats ?? 0, pulls.length, room);
  if (most < 1) return [];
  const ids = new Set(pulls.map(({ id }) => id));
  const picked = random.shuffle(pulls.filter(({ id }) => !still.has(id))).slice(0, 1 + random.int(most));
  return picked.flatMap((pull): Pull[] => {
    const turned = turns ? turnedAnew(pull, source, random) : pull;
    const elsewhere = placer.place(turned, pull, {}, random);
    if (elsewhere.dxMm === pull.dxMm && elsewhere.dyMm === pull.dyMm && elsewhere.turnDeg === pull.turnDeg) return [];
    let id = `${pull.id}-again`;
    while (ids.has(id)) id += '+';
    ids.add(id);
    return [{ ...elsewhere, id }];
  });
}
