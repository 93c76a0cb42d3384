import type { Problem } from '../../base/error.ts';
import type { Pull } from '../../stack/types.ts';
import type { Studio } from '../../studio/studio.ts';
import { say } from '../../words/en/explore/settings.ts';
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
  if (both !== undefined) add('must-not', 'mustScreens', say.mustBeInEvery(screenName(both, studio)));
  const absent = must.filter((id) => !bench.some((pull) => pull.screen === id));
  if (absent.length > bringIn) {
    add('must-bring', 'mustScreens', say.screensThatEveryPrint(absent.length, bringIn));
  }
}

function checkHeldScreens({ settings, studio, bench, must }: Asked, add: Add): void {
  for (const hold of settings.holds) {
    const pull = bench.find((each) => each.id === hold.pull);
    if (pull === undefined) continue;
    const number = bench.indexOf(pull) + 1;
    const name = screenName(pull.screen, studio);
    if (hold.kind === 'out' && must.includes(pull.screen) && bench.every((each) => each.screen !== pull.screen || each === pull)) {
      add('must-out', 'mustScreens', say.mustBeInEveryPrint(name, number));
    }
    if (PLACES.includes(hold.kind) && settings.notScreens?.includes(pull.screen) === true) {
      add('not-held', 'notScreens', say.mayBeInNo(name, number));
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
    add('cap', field, say.printMayHaveBut(atMost(limitText(field, most)), have, out, brought > 0 ? say.andMustBeBrought(brought) : ''));
  }
}

function checkInks({ settings, left }: Asked, add: Add): void {
  const { maxInks, recolour, leaveOut, holds } = settings;
  const held = new Set(holds.flatMap((hold) => (hold.kind === 'ink' ? [hold.pull] : [])));
  const kept = new Set(left.filter((pull) => held.has(pull.id) || !recolour).map((pull) => pull.ink));
  if (maxInks !== undefined && leaveOut === 0 && kept.size > maxInks) {
    const why = recolour ? say.pullsKeep(kept.size) : say.stackHasThatMay(kept.size);
    add('inks', 'maxInks', say.printMayHaveAt(maxInks, why));
  }
}

function checkInkOrders({ settings, studio }: Asked, add: Add): void {
  const { inkFirst, inkLast, neverOver = [] } = settings;
  const name = (id: string): string => studio.inks.find((ink) => ink.id === id)?.name ?? id;
  if (inkFirst !== undefined && inkFirst === inkLast) {
    add('first-last', 'inkFirst', say.goesDownBeforeAll(name(inkFirst)));
  }
  const twice = neverOver.find(([upper, lower], i) => neverOver.some(([u, l], k) => k > i && u === lower && l === upper));
  if (twice !== undefined) {
    add('never-over', 'neverOver', say.neverLiesOverBut(name(twice[0]), name(twice[1])));
  }
  for (const [upper, lower] of neverOver) {
    if (upper === lower) add('never-over', 'neverOver', say.isNeverToLie(name(upper)));
    else if (lower === inkFirst || upper === inkLast) {
      const condition = lower === inkFirst ? say.goesDownBeforeAllOther(name(lower)) : say.goesDownAfterAll(name(upper));
      add('never-over', 'neverOver', say.neverLiesOverButTake(name(upper), name(lower), condition));
    }
  }
}

function checkMoves({ settings, studio, bench }: Asked, add: Add): void {
  const { echoes = 0, echoMm = 0, veil, holds, offsetSnapMm = 0.1 } = settings;
  if (echoes > 0 && !(echoMm >= Math.max(0.1, offsetSnapMm))) {
    add('echo', 'echoMm', say.repeatsAreAskedFor(echoMm));
  }
  if (veil !== true) return;
  const last = holds.find((hold) => hold.kind === 'last');
  if (last !== undefined) {
    const number = bench.findIndex((pull) => pull.id === last.pull) + 1;
    add('veil-last', 'veil', say.veilGoesDownLast(number));
  }
  const resting = studio.screens.map((screen) => ({ id: screen.id, screen: screen.id, ink: '', dxMm: 0, dyMm: 0, turnDeg: 0, strokes: 1 }));
  if (veilPulls(resting, studio, settings).length === 0) {
    add('veil-ink', 'veil', say.noInkThatMay);
  }
}

function screenName(id: string, studio: Studio): string {
  return say.screen(studio.screens.find((screen) => screen.id === id)?.number ?? id);
}
