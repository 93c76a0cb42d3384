import type { Problem } from '../../base/error.ts';
import type { Pull } from '../../stack/types.ts';
import type { Studio } from '../../studio/studio.ts';
import type { ExploreSettings } from '../types.ts';
import { veilPulls } from '../veil/veil-move.ts';

type Add = (code: string, where: string, message: string) => void;

/**
 * Limits and conditions that contradict each other or the holds, each told in one sentence that names
 * which two, with the mend.
 * @returns problems 'limit.…'; where = a field of the settings
 */
export function checkLimits(wished: ExploreSettings, drawer: Studio, bench: readonly Pull[]): Problem[] {
  // A condition about an ink that is gone asks for nothing, and nothing shows it.
  const there = (id: string | undefined): boolean => drawer.inks.some((ink) => ink.id === id);
  const settings: ExploreSettings = {
    ...wished,
    neverOver: wished.neverOver?.filter((pair) => pair.every(there)),
    inkFirst: there(wished.inkFirst) ? wished.inkFirst : undefined,
    inkLast: there(wished.inkLast) ? wished.inkLast : undefined,
  };
  const problems: Problem[] = [];
  const add: Add = (code, where, message) => problems.push({ code: `limit.${code}`, message, where });
  checkRanges(settings, add);
  const known = new Set(drawer.screens.map((screen) => screen.id));
  const must = (settings.mustScreens ?? []).filter((id) => known.has(id));
  const out = new Set(settings.holds.flatMap((hold) => (hold.kind === 'out' ? [hold.pull] : [])));
  const left = bench.filter((pull) => !out.has(pull.id) && settings.notScreens?.includes(pull.screen) !== true);
  checkScreens(settings, drawer, bench, must, add);
  checkCaps(settings, left, must, add);
  checkInks(settings, drawer, left, add);
  checkMoves(settings, drawer, bench, add);
  return problems;
}

function checkRanges(settings: ExploreSettings, add: Add): void {
  const wholes = [
    ['maxInks', 'inks'],
    ['maxPulls', 'pulls'],
    ['maxScreens', 'screens'],
    ['maxSetUps', 'set-ups'],
    ['maxStrokes', 'strokes'],
  ] as const;
  for (const [field, what] of wholes) {
    const value = settings[field];
    if (value !== undefined && !(Number.isInteger(value) && value >= 1)) {
      add('range', field, `At most ${value} ${what} were asked for; give a whole number of 1 or more, or none.`);
    }
  }
  for (const [field, what] of [
    ['maxThirdShare', 'third colours'],
    ['maxEdgeShare', "the sheet's edge"],
  ] as const) {
    const value = settings[field];
    if (value !== undefined && !(value >= 0 && value <= 1))
      add('range', field, `The limit on ${what} is ${value}; give a share from 0 to 1, or none.`);
  }
  const { offsetSnapMm = 0.1, offsetRangeMm } = settings;
  if (!(offsetSnapMm >= 0.1)) add('snap', 'offsetSnapMm', `Lays snap to ${offsetSnapMm} mm; give 0.1 mm or more.`);
  else if (offsetRangeMm > 0 && offsetRangeMm < offsetSnapMm) {
    add('snap', 'offsetRangeMm', `Lays shift up to ${offsetRangeMm} mm, but snap to ${offsetSnapMm} mm; shift further or snap finer.`);
  }
}

function checkScreens(settings: ExploreSettings, drawer: Studio, bench: readonly Pull[], must: readonly string[], add: Add): void {
  const { notScreens = [], holds, bringIn } = settings;
  const name = (id: string): string => `screen ${drawer.screens.find((screen) => screen.id === id)?.number ?? id}`;
  const both = must.find((id) => notScreens.includes(id));
  if (both !== undefined)
    add('must-not', 'mustScreens', `${capital(name(both))} must be in every print, but may be in none; take one of the two away.`);
  for (const hold of holds) {
    const pull = bench.find((each) => each.id === hold.pull);
    if (pull === undefined) continue;
    const number = bench.indexOf(pull) + 1;
    if (hold.kind === 'out' && must.includes(pull.screen) && bench.every((each) => each.screen !== pull.screen || each === pull)) {
      add(
        'must-out',
        'mustScreens',
        `${capital(name(pull.screen))} must be in every print, but pull ${number} of it is held out; take one of the two away.`,
      );
    }
    if (['first', 'last', 'place'].includes(hold.kind) && notScreens.includes(pull.screen)) {
      add(
        'not-held',
        'notScreens',
        `${capital(name(pull.screen))} may be in no print, but pull ${number} of it is held in its place; take one of the two away.`,
      );
    }
  }
  const absent = must.filter((id) => !bench.some((pull) => pull.screen === id));
  if (absent.length > bringIn) {
    add(
      'must-bring',
      'mustScreens',
      `${count(absent.length, 'screen')} that every print must have ${absent.length === 1 ? 'is' : 'are'} not on the Bench, but at most ${bringIn} may be brought in; bring in more or ask for fewer.`,
    );
  }
}

function checkCaps(settings: ExploreSettings, left: readonly Pull[], must: readonly string[], add: Add): void {
  const { maxPulls, maxScreens, maxSetUps, leaveOut, holds } = settings;
  const pinned = new Set(holds.flatMap((hold) => (['first', 'last', 'place'].includes(hold.kind) ? [hold.pull] : [])));
  const loose = left.filter((pull) => !pinned.has(pull.id) && !must.includes(pull.screen)).length;
  const out = Math.min(leaveOut, loose);
  const brought = must.filter((id) => !left.some((pull) => pull.screen === id)).length;
  const tell = (field: 'maxPulls' | 'maxScreens' | 'maxSetUps', what: string, cap: number | undefined, have: number): void => {
    if (cap === undefined || have - out + brought <= cap) return;
    add(
      'cap',
      field,
      `A print may have at most ${count(cap, what)}, but the stack has ${have} of which at most ${out} may be left out${brought > 0 ? `, and ${brought} must be brought in` : ''}; leave out more or allow more.`,
    );
  };
  tell('maxPulls', 'pull', maxPulls, left.length);
  tell('maxScreens', 'screen', maxScreens, new Set(left.map((pull) => pull.screen)).size);
  tell(
    'maxSetUps',
    'set-up',
    maxSetUps,
    new Set(left.map((pull) => JSON.stringify([pull.screen, pull.ink, pull.dxMm, pull.dyMm, pull.turnDeg]))).size,
  );
}

function checkInks(settings: ExploreSettings, drawer: Studio, left: readonly Pull[], add: Add): void {
  const { maxInks, recolour, leaveOut, holds, inkFirst, inkLast, neverOver = [] } = settings;
  const name = (id: string): string => drawer.inks.find((ink) => ink.id === id)?.name ?? id;
  const held = new Set(holds.flatMap((hold) => (hold.kind === 'ink' ? [hold.pull] : [])));
  const kept = new Set(left.filter((pull) => held.has(pull.id) || !recolour).map((pull) => pull.ink));
  if (maxInks !== undefined && leaveOut === 0 && kept.size > maxInks) {
    const why = recolour ? `pulls are held in ${kept.size}` : `the stack has ${kept.size} that may not change`;
    add('inks', 'maxInks', `A print may have at most ${count(maxInks, 'ink')}, but ${why}; allow more, or let inks change.`);
  }
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

function checkMoves(settings: ExploreSettings, drawer: Studio, bench: readonly Pull[], add: Add): void {
  const { echoes = 0, echoMm = 0, veil, holds, offsetSnapMm = 0.1 } = settings;
  if (echoes > 0 && !(echoMm >= Math.max(0.1, offsetSnapMm))) {
    add('echo', 'echoMm', `Echoes are asked for, but they lie ${echoMm} mm off-register at most; let them lie further off.`);
  }
  if (veil !== true) return;
  const last = holds.find((hold) => hold.kind === 'last');
  if (last !== undefined) {
    const number = bench.findIndex((pull) => pull.id === last.pull) + 1;
    add('veil-last', 'veil', `A veil goes down last, but pull ${number} is held last down; take one of the two away.`);
  }
  const resting = drawer.screens.map((screen) => ({ id: screen.id, screen: screen.id, ink: '', dxMm: 0, dyMm: 0, turnDeg: 0, strokes: 1 }));
  if (veilPulls(resting, drawer, settings).length === 0) {
    add('veil-ink', 'veil', 'No ink that may be used lets enough show through for a veil; allow a translucent ink, or take the veil away.');
  }
}

function count(many: number, what: string): string {
  return `${many.toLocaleString('en')} ${what}${many === 1 ? '' : 's'}`;
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
