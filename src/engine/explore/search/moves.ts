import { entryAt } from '../../base/at.ts';
import type { Random } from '../../base/random.ts';
import { toOffsetGrid } from '../../base/units.ts';
import type { Pull } from '../../stack/types.ts';
import { arranged } from '../places/arrangement.ts';
import { placed } from '../places/asked.ts';
import type { ExploreSettings } from '../types.ts';
import type { MoveSource } from './move-source.ts';

/** A base stack with moves made, before it has an order. */
export interface Moved {
  /** Left of the base stack, in base order, then those brought in. */
  pulls: Pull[];
  /** How many are of the base stack. */
  base: number;
  /** Whether some pull lies elsewhere than at rest, or is there twice. */
  shifted: boolean;
  /** Index of the veil, which goes down last; −1 without. */
  veil: number;
  /** Whether the order is to be drawn. */
  reorder: boolean;
  /** Where each pull would like to lie: base order, with those brought in thrown in between. */
  ranks: number[];
}

type Kind = 'order' | 'recolour' | 'shift' | 'leaveOut' | 'bringIn' | 'turn' | 'echo' | 'strokes' | 'veil' | 'place' | 'repeat' | 'mirror';

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
  const drawn: Drawn = { inks: drawInks(settings.palette, random), random };

  let pulls = [...source.bench];
  const tooMany = excess(pulls, settings);
  if (chosen.has('leaveOut') || tooMany > 0) pulls = leaveOut(pulls, source, tooMany, random);
  const base = pulls.length;
  pulls.push(...bringIn(pulls, chosen.has('bringIn'), source, drawn));
  if (chosen.has('recolour')) pulls = recolour(pulls, base, source, drawn);
  pulls = fewerInks(pulls, base, source, random);
  let shifted = false;
  const move = (moved: Pull[]): void => {
    shifted ||= moved.length !== pulls.length || moved.some((pull, i) => pull !== pulls[i]);
    pulls = moved;
  };
  if (chosen.has('shift')) move(shift(pulls, source, random));
  // Where whole screens lie elsewhere, turns are of the arrangement and not of a few pulls.
  const turnedWhole = settings.turns === 'quarter' || placed(settings);
  if (chosen.has('turn') && !turnedWhole) move(turn(pulls, source, random));
  const ways = {
    turns: chosen.has('turn') && turnedWhole,
    repeat: chosen.has('repeat'),
    mirror: chosen.has('mirror'),
  };
  if (chosen.has('place') || Object.values(ways).includes(true)) move(arranged(pulls, source, ways, random));
  if (chosen.has('strokes')) pulls = strokes(pulls, settings.maxStrokes ?? 1, random);
  if (chosen.has('echo')) move([...pulls, ...echoes(pulls, source, random)]);
  const ranks = throwIn(pulls.length, base, random);
  let veil = -1;
  if (chosen.has('veil')) {
    const here = settings.maxScreens === undefined ? source.veils : onScreensOf(pulls, source.veils);
    if (here.length > 0) {
      veil = pulls.length;
      move([...pulls, random.pick(here)]);
      ranks.push(veil);
    }
  }
  return { pulls, base, shifted, veil, reorder: chosen.has('order'), ranks };
}

/** The kinds of moves that the settings allow and the stack has something for. */
export function kindsOf({ settings, bench, spares, kept, inkHeld, veils, mirrors }: MoveSource): Kind[] {
  const kinds: Kind[] = [];
  if (settings.order) kinds.push('order');
  if (settings.recolour && bench.some((pull) => !inkHeld.has(pull.id) && settings.palette.some((ink) => ink !== pull.ink)))
    kinds.push('recolour');
  if (toOffsetGrid(settings.offsetRangeMm) > 0) kinds.push('shift');
  if (settings.leaveOut > 0 && bench.length > 1 && bench.some((pull) => !kept.has(pull.id))) kinds.push('leaveOut');
  if (settings.bringIn > 0 && spares.length > 0) kinds.push('bringIn');
  if ((settings.turns ?? 'none') !== 'none') kinds.push('turn');
  if ((settings.echoes ?? 0) > 0 && toOffsetGrid(settings.echoMm ?? 0) > 0) kinds.push('echo');
  if ((settings.maxStrokes ?? 1) > 1) kinds.push('strokes');
  if (settings.veil === true && veils.length > 0) kinds.push('veil');
  if (placed(settings)) kinds.push('place');
  if ((settings.repeats ?? 0) > 0) kinds.push('repeat');
  if (settings.mirrored === true && mirrors.size > 0) kinds.push('mirror');
  return kinds;
}

function drawKinds(kinds: readonly Kind[], random: Random): Set<Kind> {
  if (kinds.length === 0) return new Set();
  const count = 1 + Math.max(random.int(kinds.length), random.int(kinds.length));
  const order = random.shuffle(kinds);
  const chosen = order.slice(0, count);
  if (chosen.length === 1 && chosen[0] === 'shift' && kinds.length > 1) chosen.push(entryAt(order, 1));
  // Screens that may lie elsewhere do in every print: what lies as drawn is on every other wall.
  if (kinds.includes('place')) chosen.push('place');
  return new Set(chosen);
}

/** The inks of one print: the whole palette, or a few of it, in which then all is printed. */
interface Inks {
  of: readonly string[];
  few: boolean;
}

/** What the moves of one print are drawn with. */
interface Drawn {
  inks: Inks;
  random: Random;
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

/** How many pulls are too many for the caps, at least; below 0 there is room for more. */
function excess(bench: readonly Pull[], { maxPulls, maxScreens, maxSetUps }: ExploreSettings): number {
  const screens = new Set(bench.map((pull) => pull.screen)).size;
  return Math.max(bench.length - Math.min(maxPulls ?? Infinity, maxSetUps ?? Infinity), screens - (maxScreens ?? Infinity));
}

function leaveOut(pulls: readonly Pull[], source: MoveSource, least: number, random: Random): Pull[] {
  const loose = pulls.filter((pull) => !source.kept.has(pull.id));
  const most = Math.min(source.settings.leaveOut, loose.length, pulls.length - 1);
  if (most < 1) return [...pulls];
  const out = new Set(random.shuffle(loose).slice(0, Math.min(most, Math.max(least, some(most, random)))));
  return pulls.filter((pull) => !out.has(pull));
}

/** Screens that every print must have, and when it is wanted some more, each in a drawn ink. */
function bringIn(pulls: readonly Pull[], wanted: boolean, { settings, spares }: MoveSource, { inks, random }: Drawn): Pull[] {
  const must = spares.filter((spare) => settings.mustScreens?.includes(spare.screen) === true);
  const room = -excess([...pulls, ...must], settings);
  const most = Math.min(settings.bringIn - must.length, spares.length - must.length, room);
  // A stack that has nothing else must bring something in.
  let brought = 0;
  if (pulls.length === 0 && spares.length > 0) brought = Math.max(0, alone(Math.max(1, most + must.length), random) - must.length);
  else if (wanted && most > 0) brought = some(most, random);
  if (brought + must.length === 0) return [];
  const chosen = random.shuffle(spares.filter((spare) => !must.includes(spare))).slice(0, brought);
  return [...must, ...chosen].map((spare) => ({ ...spare, ink: random.pick(inks.of) }));
}

function recolour(pulls: readonly Pull[], base: number, { inkHeld }: MoveSource, { inks, random }: Drawn): Pull[] {
  const able = pulls.filter((pull, i) => i < base && !inkHeld.has(pull.id) && inks.of.some((ink) => ink !== pull.ink));
  if (able.length === 0) return [...pulls];
  // Kept to few inks, a pull that has one of them may keep it.
  if (inks.few) return pulls.map((pull) => (able.includes(pull) ? { ...pull, ink: random.pick(inks.of) } : pull));
  const picked = new Set(random.shuffle(able).slice(0, some(able.length, random)));
  return pulls.map((pull) => (picked.has(pull) ? { ...pull, ink: random.pick(inks.of.filter((ink) => ink !== pull.ink)) } : pull));
}

/** Where a print may have but few inks, those too many give way to those held and a draw of the palette. */
function fewerInks(pulls: Pull[], base: number, { settings, inkHeld }: MoveSource, random: Random): Pull[] {
  const { maxInks, recolour: free, palette } = settings;
  if (maxInks === undefined || new Set(pulls.map((pull) => pull.ink)).size <= maxInks) return pulls;
  const stays = (pull: Pull, i: number): boolean => inkHeld.has(pull.id) || (i < base && !free);
  const few = new Set(pulls.filter(stays).map((pull) => pull.ink));
  for (const ink of random.shuffle(palette)) if (few.size < maxInks) few.add(ink);
  const open = palette.filter((ink) => few.has(ink));
  if (open.length === 0) return pulls;
  return pulls.map((pull, i) => (stays(pull, i) || open.includes(pull.ink) ? pull : { ...pull, ink: random.pick(open) }));
}

/** Some of the pulls that need not lie as they were drawn. */
function someLoose(pulls: readonly Pull[], { still }: MoveSource, random: Random): Set<Pull> {
  const loose = pulls.filter(({ id }) => !still.has(id));
  return new Set(loose.length === 0 ? [] : random.shuffle(loose).slice(0, some(loose.length, random)));
}

function shift(pulls: readonly Pull[], source: MoveSource, random: Random): Pull[] {
  const { settings } = source;
  const { offsetRangeMm, offsetDirection } = settings;
  const picked = someLoose(pulls, source, random);
  return pulls.map((pull) => {
    if (!picked.has(pull)) return pull;
    const dx = offsetDirection === 'down' ? 0 : step(offsetRangeMm, settings, random);
    const dy = offsetDirection === 'across' ? 0 : step(offsetRangeMm, settings, random);
    return dx === 0 && dy === 0 ? pull : shiftedBy(pull, dx, dy);
  });
}

/** A shift of up to a range either way, in tenths of a mm, on the grid that offsets snap to. */
function step(rangeMm: number, { offsetSnapMm }: ExploreSettings, random: Random): number {
  const snap = Math.max(1, Math.round((offsetSnapMm ?? 0.1) * 10));
  const steps = Math.floor((rangeMm * 10 + 1e-6) / snap);
  return (random.int(2 * steps + 1) - steps) * snap;
}

function shiftedBy(pull: Pull, dx: number, dy: number): Pull {
  return { ...pull, dxMm: toOffsetGrid(pull.dxMm + dx / 10), dyMm: toOffsetGrid(pull.dyMm + dy / 10) };
}

function turn(pulls: readonly Pull[], source: MoveSource, random: Random): Pull[] {
  const any = source.settings.turns === 'any';
  const picked = someLoose(pulls, source, random);
  return pulls.map((pull) => (picked.has(pull) ? { ...pull, turnDeg: (pull.turnDeg + (any ? 1 + random.int(359) : 180)) % 360 } : pull));
}

function strokes(pulls: readonly Pull[], most: number, random: Random): Pull[] {
  const picked = new Set(random.shuffle(pulls).slice(0, some(pulls.length, random)));
  return pulls.map((pull) => (picked.has(pull) ? { ...pull, strokes: 1 + random.int(most) } : pull));
}

/** Some pulls once more, off-register; in another ink where inks may change and are not held. */
function echoes(pulls: readonly Pull[], { settings, inkHeld }: MoveSource, random: Random): Pull[] {
  const room = Math.min(settings.maxPulls ?? Infinity, settings.maxSetUps ?? Infinity) - pulls.length;
  const most = Math.min(settings.echoes ?? 0, pulls.length, room);
  if (most < 1) return [];
  const inks = new Set(pulls.map((pull) => pull.ink));
  const open = settings.maxInks === undefined ? settings.palette : settings.palette.filter((ink) => inks.has(ink));
  const ids = new Set(pulls.map((pull) => pull.id));
  return random
    .shuffle(pulls)
    .slice(0, some(most, random))
    .flatMap((pull): Pull[] => {
      const dx = step(settings.echoMm ?? 0, settings, random);
      const dy = step(settings.echoMm ?? 0, settings, random);
      if (dx === 0 && dy === 0) return [];
      let id = `${pull.id}-echo`;
      while (ids.has(id)) id += '+';
      const other = settings.recolour && open.length > 0 && !inkHeld.has(pull.id) && random.chance(1, 2);
      return [{ ...shiftedBy(pull, dx, dy), id, ink: other ? random.pick(open) : pull.ink }];
    });
}

function onScreensOf(pulls: readonly Pull[], veils: readonly Pull[]): Pull[] {
  return veils.filter((veil) => pulls.some((pull) => pull.screen === veil.screen));
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
