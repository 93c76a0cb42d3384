import type { Problem } from '../../base/error.ts';
import type { Pull } from '../../stack/types.ts';
import type { Studio } from '../../studio/studio.ts';
import { checkArrangement } from '../places/check-arrangement.ts';
import type { ExploreSettings } from '../types.ts';
import { veilPulls } from '../veil/veil-move.ts';
import { COUNT_LIMITS, limitText } from './limits.ts';

type Add = (code: string, where: string, message: string) => void;

/** The settings with what they are about. */
interface Asked {
  settings: ExploreSettings;
  studio: Studio;
  bench: readonly Pull[];
  /** Pulls of the bench that may be in a print. */
  left: readonly Pull[];
  /** Screens of the studio that every print must have. */
  must: readonly string[];
}

/** Kinds of holds that keep a pull in the print. */
const PLACES: readonly string[] = ['first', 'last', 'place'];

/**
 * Conditions that contradict each other or what may change, each in one sentence that names which two,
 * with the mend.
 * @returns problems 'limit.…'; where = a field of the settings
 */
export function checkClashes(given: ExploreSettings, studio: Studio, bench: readonly Pull[]): Problem[] {
  // A condition about an ink that is gone asks for nothing, and nothing shows it.
  const there = (id: string | undefined): boolean => studio.inks.some((ink) => ink.id === id);
  const settings: ExploreSettings = {
    ...given,
    neverOver: given.neverOver?.filter((pair) => pair.every(there)),
    inkFirst: there(given.inkFirst) ? given.inkFirst : undefined,
    inkLast: there(given.inkLast) ? given.inkLast : undefined,
  };
  const problems: Problem[] = [];
  const add: Add = (code, where, message) => problems.push({ code: `limit.${code}`, message, where });
  const known = new Set(studio.screens.map((screen) => screen.id));
  const must = (settings.mustScreens ?? []).filter((id) => known.has(id));
  const out = new Set(settings.holds.flatMap((hold) => (hold.kind === 'out' ? [hold.pull] : [])));
  const left = bench.filter((pull) => !out.has(pull.id) && settings.notScreens?.includes(pull.screen) !== true);
  const asked: Asked = { settings, studio, bench, left, must };
  for (const check of [checkScreens, checkHeldScreens, checkCounts, checkInks, checkInkOrders, checkMoves, checkArrangement])
    check(asked, add);
  return problems;
}

function checkScreens({ settings, studio, bench, must }: Asked, add: Add): void {
  const { notScreens = [], bringIn } = settings;
  const both = must.find((id) => notScreens.includes(id));
  if (both !== undefined)
    add('must-not', 'mustScreens', `${screenName(both, studio)} must be in every print, but may be in none; take one of the two away.`);
  const absent = must.filter((id) => !bench.some((pull) => pull.screen === id));
  if (absent.length > bringIn) {
    add(
      'must-bring',
      'mustScreens',
      `${count(absent.length, 'screen')} that every print must have ${absent.length === 1 ? 'is' : 'are'} not on the Bench, but at most ${bringIn} may be brought in; bring in more or ask for fewer.`,
    );
  }
}

function checkHeldScreens({ settings, studio, bench, must }: Asked, add: Add): void {
  for (const hold of settings.holds) {
    const pull = bench.find((each) => each.id === hold.pull);
    if (pull === undefined) continue;
    const number = bench.indexOf(pull) + 1;
    const name = screenName(pull.screen, studio);
    if (hold.kind === 'out' && must.includes(pull.screen) && bench.every((each) => each.screen !== pull.screen || each === pull)) {
      add('must-out', 'mustScreens', `${name} must be in every print, but pull ${number} of it is never there; take one of the two away.`);
    }
    if (PLACES.includes(hold.kind) && settings.notScreens?.includes(pull.screen) === true) {
      add('not-held', 'notScreens', `${name} may be in no print, but pull ${number} of it stays in its place; take one of the two away.`);
    }
  }
}

/** What must stay of the stack is too much already for a limit. */
function checkCounts({ settings, left, must }: Asked, add: Add): void {
  const { leaveOut, holds } = settings;
  const pinned = new Set(holds.flatMap((hold) => (PLACES.includes(hold.kind) ? [hold.pull] : [])));
  const loose = left.filter((pull) => !pinned.has(pull.id) && !must.includes(pull.screen)).length;
  const out = Math.min(leaveOut, loose);
  const brought = must.filter((id) => !left.some((pull) => pull.screen === id)).length;
  for (const [field, { ofStack, measure, atMost }] of COUNT_LIMITS) {
    const most = settings[field];
    const have = measure(left);
    if (!ofStack || most === undefined || have - out + brought <= most) continue;
    add(
      'cap',
      field,
      `A print may have ${atMost(limitText(field, most))}, but the stack has ${have} of which at most ${out} may be left out${brought > 0 ? `, and ${brought} must be brought in` : ''}; leave out more or allow more.`,
    );
  }
}

function checkInks({ settings, left }: Asked, add: Add): void {
  const { maxInks, recolour, leaveOut, holds } = settings;
  const held = new Set(holds.flatMap((hold) => (hold.kind === 'ink' ? [hold.pull] : [])));
  const kept = new Set(left.filter((pull) => held.has(pull.id) || !recolour).map((pull) => pull.ink));
  if (maxInks !== undefined && leaveOut === 0 && kept.size > maxInks) {
    const why = recolour ? `pulls keep ${kept.size}` : `the stack has ${kept.size} that may not change`;
    add('inks', 'maxInks', `A print may have at most ${count(maxInks, 'ink')}, but ${why}; allow more, or let inks change.`);
  }
}

function checkInkOrders({ settings, studio }: Asked, add: Add): void {
  const { inkFirst, inkLast, neverOver = [] } = settings;
  const name = (id: string): string => studio.inks.find((ink) => ink.id === id)?.name ?? id;
  if (inkFirst !== undefined && inkFirst === inkLast) {
    add(
      'first-last',
      'inkFirst',
      `${name(inkFirst)} goes down before all other inks, but also after all others; choose another ink for one of the two.`,
    );
  }
  const twice = neverOver.find(([upper, lower], i) => neverOver.some(([u, l], k) => k > i && u === lower && l === upper));
  if (twice !== undefined) {
    add(
      'never-over',
      'neverOver',
      `${name(twice[0])} never lies over ${name(twice[1])}, but ${name(twice[1])} never over ${name(twice[0])}; take one away, or let the two never touch.`,
    );
  }
  for (const [upper, lower] of neverOver) {
    if (upper === lower)
      add('never-over', 'neverOver', `${name(upper)} is never to lie over itself; choose two inks, or let it not touch itself.`);
    else if (lower === inkFirst || upper === inkLast) {
      const condition =
        lower === inkFirst ? `${name(lower)} goes down before all other inks` : `${name(upper)} goes down after all other inks`;
      add(
        'never-over',
        'neverOver',
        `${name(upper)} never lies over ${name(lower)}, but ${condition}; take one of the two away, or let the two never touch.`,
      );
    }
  }
}

function checkMoves({ settings, studio, bench }: Asked, add: Add): void {
  const { echoes = 0, echoMm = 0, veil, holds, offsetSnapMm = 0.1 } = settings;
  if (echoes > 0 && !(echoMm >= Math.max(0.1, offsetSnapMm))) {
    add('echo', 'echoMm', `Repeats are asked for, but they are off by ${echoMm} mm at most; let them be further off.`);
  }
  if (veil !== true) return;
  const last = holds.find((hold) => hold.kind === 'last');
  if (last !== undefined) {
    const number = bench.findIndex((pull) => pull.id === last.pull) + 1;
    add('veil-last', 'veil', `A veil goes down last, but pull ${number} stays last; take one of the two away.`);
  }
  const resting = studio.screens.map((screen) => ({ id: screen.id, screen: screen.id, ink: '', dxMm: 0, dyMm: 0, turnDeg: 0, strokes: 1 }));
  if (veilPulls(resting, studio, settings).length === 0) {
    add('veil-ink', 'veil', 'No ink that may be used lets enough show through for a veil; allow a translucent ink, or take the veil away.');
  }
}

function screenName(id: string, studio: Studio): string {
  return `Screen ${studio.screens.find((screen) => screen.id === id)?.number ?? id}`;
}

function count(many: number, what: string): string {
  return `${many.toLocaleString('en')} ${what}${many === 1 ? '' : 's'}`;
}
