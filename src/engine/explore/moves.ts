import type { Random } from '../base/random.ts';
import { toOffsetGrid } from '../base/units.ts';
import type { Pull } from '../stack/types.ts';
import type { ExploreSettings } from './types.ts';

/** A base stack with moves made, before it has an order. */
export interface Moved {
  /** Left of the base stack, in base order, then those brought in. */
  pulls: Pull[];
  /** How many are of the base stack. */
  base: number;
  /** Whether some lay differs from the one at rest. */
  shifted: boolean;
  /** Whether the order is to be drawn. */
  reorder: boolean;
  /** Where each pull would like to lie: base order, with those brought in thrown in between. */
  ranks: number[];
}

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
}

type Kind = 'order' | 'recolour' | 'shift' | 'leaveOut' | 'bringIn';

/**
 * Makes some of the allowed moves: how many kinds is drawn first, then which, then how much of
 * each, little more often than much, so that a wall holds near and far variants.
 */
export function drawMoves(source: MoveSource, random: Random): Moved {
  const { settings } = source;
  const kinds = kindsOf(source);
  const chosen = new Set(random.shuffle(kinds).slice(0, kinds.length === 0 ? 0 : 1 + random.int(kinds.length)));

  let pulls = [...source.bench];
  if (chosen.has('leaveOut')) pulls = leaveOut(pulls, source, random);
  const base = pulls.length;
  // A stack that has nothing else must bring something in.
  if (chosen.has('bringIn') || (base === 0 && source.spares.length > 0)) {
    const most = Math.min(settings.bringIn, source.spares.length);
    for (const spare of random.shuffle(source.spares).slice(0, some(most, random))) {
      pulls.push({ ...spare, ink: random.pick(settings.palette) });
    }
  }
  if (chosen.has('recolour')) pulls = recolour(pulls, base, source, random);
  let shifted = false;
  if (chosen.has('shift')) {
    const moved = shift(pulls, settings.offsetRangeMm, random);
    shifted = moved.some((pull, i) => pull !== pulls[i]);
    pulls = moved;
  }
  return { pulls, base, shifted, reorder: chosen.has('order'), ranks: throwIn(pulls.length, base, random) };
}

function kindsOf({ settings, bench, spares, kept, inkHeld }: MoveSource): Kind[] {
  const kinds: Kind[] = [];
  if (settings.order) kinds.push('order');
  if (settings.recolour && bench.some((pull) => !inkHeld.has(pull.id) && settings.palette.some((ink) => ink !== pull.ink))) kinds.push('recolour');
  if (toOffsetGrid(settings.offsetRangeMm) > 0) kinds.push('shift');
  if (settings.leaveOut > 0 && bench.length > 1 && bench.some((pull) => !kept.has(pull.id))) kinds.push('leaveOut');
  if (settings.bringIn > 0 && spares.length > 0) kinds.push('bringIn');
  return kinds;
}

/** 1 … most, the lower the likelier. */
function some(most: number, random: Random): number {
  return 1 + random.int(1 + random.int(most));
}

function leaveOut(pulls: readonly Pull[], source: MoveSource, random: Random): Pull[] {
  const loose = pulls.filter((pull) => !source.kept.has(pull.id));
  const most = Math.min(source.settings.leaveOut, loose.length, pulls.length - 1);
  const out = new Set(random.shuffle(loose).slice(0, some(most, random)));
  return pulls.filter((pull) => !out.has(pull));
}

function recolour(pulls: readonly Pull[], base: number, source: MoveSource, random: Random): Pull[] {
  const { palette } = source.settings;
  const able = pulls.filter(
    (pull, i) => i < base && !source.inkHeld.has(pull.id) && palette.some((ink) => ink !== pull.ink),
  );
  if (able.length === 0) return [...pulls];
  const picked = new Set(random.shuffle(able).slice(0, some(able.length, random)));
  return pulls.map((pull) =>
    picked.has(pull) ? { ...pull, ink: random.pick(palette.filter((ink) => ink !== pull.ink)) } : pull,
  );
}

function shift(pulls: readonly Pull[], rangeMm: number, random: Random): Pull[] {
  const steps = Math.floor(rangeMm * 10 + 1e-6);
  const picked = new Set(random.shuffle(pulls).slice(0, some(pulls.length, random)));
  return pulls.map((pull) => {
    if (!picked.has(pull)) return pull;
    const dx = random.int(2 * steps + 1) - steps;
    const dy = random.int(2 * steps + 1) - steps;
    if (dx === 0 && dy === 0) return pull;
    return { ...pull, dxMm: toOffsetGrid(pull.dxMm + dx / 10), dyMm: toOffsetGrid(pull.dyMm + dy / 10) };
  });
}

function throwIn(pulls: number, base: number, random: Random): number[] {
  const order = Array.from({ length: base }, (_, i) => i);
  for (let i = base; i < pulls; i++) order.splice(random.int(order.length + 1), 0, i);
  const ranks: number[] = [];
  order.forEach((pull, rank) => {
    ranks[pull] = rank;
  });
  return ranks;
}
