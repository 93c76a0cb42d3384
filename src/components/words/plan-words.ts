import { entryAt } from '../../engine/base/at.ts';
import type { RestPlan } from '../../engine/log/rest.ts';
import type { CardTime, PressPlan } from '../../engine/visit/visit.ts';
import { fixed, numberLocale } from '../../engine/words/language.ts';
import { say } from './en/phrases/plan.ts';

/** 'a', 'a and b', 'a, b and c'. */
export function listed(parts: readonly string[]): string {
  if (parts.length < 2) return parts[0] ?? '';
  return say.andTheParts(parts.slice(0, -1).join(', '), parts.at(-1) ?? '');
}

/** '14 set-ups, 11 screen mounts, 9 ink changes'; changes of offset only when there are some. */
export function planHeadline(plan: PressPlan): string {
  const left = plan.setUpsBefore === undefined || plan.setUpsBefore === 0 ? '' : say.left;
  const parts = [say.setUps(plan.cards.length, left), say.screenMounts(plan.mounts), say.inkChanges(plan.inkChanges)];
  if (plan.registerMoves > 0) parts.push(say.changesOfOffset(plan.registerMoves));
  return parts.join(', ');
}

/** How near the order is to the fewest there can be. */
export function boundWords(plan: PressPlan): string {
  const { bound } = plan;
  const overSetUps = plan.cards.length - bound.setUps;
  const overMounts = plan.mounts - bound.mounts;
  const floor = say.noOrderHasFewer(bound.setUps, bound.mounts);
  if (overSetUps <= 0 && overMounts <= 0) return say.thisOneIsProven(floor);
  const parts = [
    overMounts > 0 ? say.atMostMountsMore(overMounts) : say.fewestMounts,
    overSetUps > 0 ? say.atMostSetUps(overSetUps) : say.fewestSetUps,
  ];
  return say.thisOneHas(floor, parts.join(say.and2));
}

/** Whether no order has fewer set-ups, mounts, ink changes or changes of offset, as far as that is known. */
export function isProven({ cards, mounts, bound }: PressPlan): boolean {
  return cards.length <= bound.setUps && mounts <= bound.mounts;
}

/**
 * What a new order brings against going on by the one at hand, and which figure decides; '' where
 * there was none.
 */
export function beforeWords(plan: PressPlan): string {
  const { before } = plan;
  if (before === undefined) return '';
  if (plan.kept === true) return say.noBetterOrderWas;
  const now = { setUps: plan.cards.length, mounts: plan.mounts, inkChanges: plan.inkChanges, registerMoves: plan.registerMoves };
  const was = [
    say.setUpsSetUps(before.setUps),
    say.mounts(before.mounts),
    say.inkChanges(before.inkChanges),
    say.changesOfOffset(before.registerMoves),
  ];
  const end = say.endingOnDayAt(before.ends.day, wallClock(plan, before.ends.minute));
  const beds = new Set(plan.times.map(({ bed }) => bed)).size;
  const decided = (['mounts', 'inkChanges', 'registerMoves'] as const).find((key) => now[key] !== before[key]);
  const named = { mounts: say.mounts2, inkChanges: say.inkChanges2, registerMoves: say.changesOfOffset2 };
  const sooner = plan.ends.day !== before.ends.day || plan.ends.minute !== before.ends.minute;
  const bySooner = decided === undefined || (beds > 1 && sooner);
  const counts = bySooner ? say.itEndsSooner(beds) : say.itHasFewerWhich(named[decided]);
  const against = [
    now.mounts > before.mounts ? say.moreOf(say.mounts(now.mounts - before.mounts)) : '',
    now.inkChanges > before.inkChanges ? say.moreOf(say.inkChanges(now.inkChanges - before.inkChanges)) : '',
    now.registerMoves > before.registerMoves ? say.moreOf(say.changesOfOffset(now.registerMoves - before.registerMoves)) : '',
    endsLater(plan, before) ? say.laterEnd : '',
  ].filter((words) => words !== '');
  return say.goingOnAsBefore(listed(was), end, against.length === 0 ? counts : say.butOf(counts, listed(against)));
}

function endsLater({ ends }: Pick<PressPlan, 'ends'>, before: Pick<PressPlan, 'ends'>): boolean {
  return ends.day > before.ends.day || (ends.day === before.ends.day && ends.minute > before.ends.minute);
}

/** What the free swaps are worth, as far as it is proven. */
export function freeSwapWords(plan: PressPlan): string {
  if (plan.freeSwaps === 0) return say.noFreeSwapsWherever;
  if (plan.savedSetUps === null || plan.savedMounts === null) {
    return say.overlappingPairsMayChange(plan.freeSwaps);
  }
  const saved: string[] = [];
  if (plan.savedSetUps > 0) saved.push(say.setUpsSavedSetUps(plan.savedSetUps));
  if (plan.savedMounts > 0) saved.push(say.mountsSavedMounts(plan.savedMounts));
  const may = say.overlappingPairsMayChange(plan.freeSwaps);
  return saved.length > 0 ? say.freeSwapsSaveAt(listed(saved)) : may;
}

/** When the last bed is washed up, before when no order could be, and why; '' for an order kept from before that was worked out. */
export function endWords(plan: PressPlan): string {
  const { ends, endsAtLeast, endsAtLeastBy } = plan as Partial<PressPlan>;
  if (ends === undefined || endsAtLeast === undefined || endsAtLeast === null) return '';
  const at = say.itEndsOnDay(ends.day, wallClock(plan, ends.minute));
  if (endsAtLeast.day === ends.day && endsAtLeast.minute >= ends.minute) return say.noOrderOfThese(at);
  const least = `${wallClock(plan, endsAtLeast.minute)} ${endsAtLeast.day === ends.day ? say.thatDay : say.onDay(endsAtLeast.day)}`;
  return say.noOrderOfThesePulls(at, least, endsAtLeastBy === undefined ? '' : say.endReasons[endsAtLeastBy]);
}

/** 'Takes 2 days, and a rack for 12 sheets.'; of what is left of a visit the day on which it is done. */
export function needsWords(plan: RestPlan): string {
  const takes = plan.begins === undefined ? say.takesDays(plan.daysNeeded) : say.doneOnDay(plan.daysNeeded);
  return say.andRackForWet(takes, plan.racksNeeded);
}

/** Where the plan of what is left begins: 'From day 2, 14:05 on: 4 sheets are still wet; screen 7 stays on the press.' */
export function beginWords(plan: RestPlan): string {
  const { begins } = plan;
  if (begins === undefined) return '';
  const { day, minute, wetSheets, stays } = begins;
  const frames = [stays ?? []].flat();
  const wet = wetSheets === 0 ? say.everythingIsDry : say.stillWet(wetSheets === 1 ? say.n1SheetIs : say.sheetsAre(wetSheets));
  return say.fromDayOn(day, wallClock(plan, minute), wet, frames.length === 0 ? '' : say.screensStayOnPress(listed(frames), frames.length));
}

/**
 * What must be done before the first pull of a set-up, as short tags. What was washed up overnight
 * is mounted again in the morning; the times count that, the count of mounts does not.
 */
export function setUpTags(plan: Pick<PressPlan, 'cards' | 'times'>, index: number): string[] {
  const card = entryAt(plan.cards, index);
  const bed = plan.times[index]?.bed;
  const before = plan.times.slice(0, index).findLast((time) => time.bed === bed);
  const morning = before !== undefined && plan.times[index]?.day !== before.day;
  const tags: string[] = [];
  if (card.mount) tags.push(say.mount);
  else if (morning) tags.push(say.mountAgain);
  if (card.inkChange) tags.push(say.newInk);
  if (card.registerMove) tags.push(say.newOffset);
  return tags;
}

/** '9:05' of minutes after midnight; past midnight it goes round. */
export function clockText(minute: number): string {
  const whole = Math.round(minute) % (24 * 60);
  return `${Math.floor(whole / 60)}:${String(whole % 60).padStart(2, '0')}`;
}

/** The clock on the wall, of minutes from the day's start. */
export function wallClock(plan: Pick<PressPlan, 'clock'>, minute: number): string {
  return clockText(plan.clock.startMinute + minute);
}

/** 'Day 1, 9:30 to 10:15', with the bed where there are several. */
export function timeWords(plan: Pick<PressPlan, 'clock' | 'times'>, time: CardTime): string {
  const bed = plan.times.some((other) => other.bed > 0) ? say.bed(time.bed + 1) : '';
  return say.dayTo(time.day, bed, wallClock(plan, time.startMinute), wallClock(plan, time.endMinute));
}

/** Names a recipe in grids and on cards: A, B, … Z, AA. */
export function recipeLetter(index: number): string {
  const letter = String.fromCharCode(65 + (index % 26));
  return index < 26 ? letter : recipeLetter(Math.floor(index / 26) - 1) + letter;
}

/** Marks proofs and overs where a word is too wide. */
export function useLetter(use: 'proof' | 'over'): string {
  return use === 'proof' ? 'P' : 'O';
}

/** What a sheet beyond those asked for is. */
export function useWord(use: 'proof' | 'over'): string {
  return say[use];
}

/** Grams as one weighs them: below 10 g with one decimal. */
export function gramsText(grams: number): string {
  return grams < 10 ? fixed(grams, 1) : Math.round(grams).toLocaleString(numberLocale());
}
