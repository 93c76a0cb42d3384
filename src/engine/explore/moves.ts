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

/** One print in so many is kept to few inks, where its inks change at all. */
const FEW_INKS_IN = 3;
/** How few: from 2 to 4. */
const FEW_INKS = { least: 2, most: 4 };
/** A print of nothing but brought-in screens has at least so many, where there are so many. */
const LEAST_ALONE = 2;

/**
 * Makes some of the allowed moves: how many kinds is drawn first, more rather than fewer, then which,
 * then how much of each, less rather than more. A shift shows little by itself, so it comes alone
 * only when nothing else may change. A wall so holds near and far variants, and few that look alike.
 */
export function drawMoves(source: MoveSource, random: Random): Moved {
  const { settings } = source;
  const chosen = drawKinds(kindsOf(source), random);
  const inks = drawInks(settings.palette, random);

  let pulls = [...source.bench];
  if (chosen.has('leaveOut')) pulls = leaveOut(pulls, source, random);
  const base = pulls.length;
  // A stack that has nothing else must bring something in.
  if (chosen.has('bringIn') || (base === 0 && source.spares.length > 0)) {
    const most = Math.min(settings.bringIn, source.spares.length);
    const brought = base === 0 ? alone(Math.max(1, most), random) : some(most, random);
    for (const spare of random.shuffle(source.spares).slice(0, brought)) {
      pulls.push({ ...spare, ink: random.pick(inks.of) });
    }
  }
  if (chosen.has('recolour')) pulls = recolour(pulls, base, source, inks, random);
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

function drawKinds(kinds: readonly Kind[], random: Random): Set<Kind> {
  if (kinds.length === 0) return new Set();
  const count = 1 + Math.max(random.int(kinds.length), random.int(kinds.length));
  const order = random.shuffle(kinds);
  const chosen = order.slice(0, count);
  if (chosen.length === 1 && chosen[0] === 'shift' && kinds.length > 1) chosen.push(order[1]!);
  return new Set(chosen);
}

/** The inks of one print: the whole palette, or a few of it, in which then all is printed. */
interface Inks {
  of: readonly string[];
  few: boolean;
}

function drawInks(palette: readonly string[], random: Random): Inks {
  const few = random.chance(1, FEW_INKS_IN) && palette.length > FEW_INKS.least;
  if (!few) return { of: palette, few };
  const most = Math.min(FEW_INKS.most, palette.length - 1);
  return { of: random.shuffle(palette).slice(0, FEW_INKS.least + random.int(most - FEW_INKS.least + 1)), few };
}

/** How many of `most` screens make a print by themselves, all numbers alike. */
function alone(most: number, random: Random): number {
  const least = Math.min(LEAST_ALONE, most);
  return least + random.int(most - least + 1);
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

function recolour(pulls: readonly Pull[], base: number, source: MoveSource, inks: Inks, random: Random): Pull[] {
  const able = pulls.filter(
    (pull, i) => i < base && !source.inkHeld.has(pull.id) && inks.of.some((ink) => ink !== pull.ink),
  );
  if (able.length === 0) return [...pulls];
  // Kept to few inks, a pull that has one of them may keep it.
  if (inks.few) return pulls.map((pull) => (able.includes(pull) ? { ...pull, ink: random.pick(inks.of) } : pull));
  const picked = new Set(random.shuffle(able).slice(0, some(able.length, random)));
  return pulls.map((pull) =>
    picked.has(pull) ? { ...pull, ink: random.pick(inks.of.filter((ink) => ink !== pull.ink)) } : pull,
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
