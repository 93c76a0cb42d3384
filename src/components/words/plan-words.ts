import { entryAt } from '../../engine/base/at.ts';
import type { RestPlan } from '../../engine/log/rest.ts';
import type { CardTime, PressPlan } from '../../engine/visit/visit.ts';
import { counted } from '../ui/words.ts';

/** With a capital first letter. */
export function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

/** 'a', 'a and b', 'a, b and c'. */
export function listed(parts: readonly string[]): string {
  if (parts.length < 2) return parts[0] ?? '';
  return `${parts.slice(0, -1).join(', ')} and ${parts.at(-1)}`;
}

/** '14 set-ups, 11 screen mounts, 9 ink changes'; changes of offset only when there are some. */
export function planHeadline(plan: PressPlan): string {
  const left = plan.setUpsBefore === undefined || plan.setUpsBefore === 0 ? '' : ' left';
  const parts = [
    `${counted(plan.cards.length, 'set-up')}${left}`,
    counted(plan.mounts, 'screen mount'),
    counted(plan.inkChanges, 'ink change'),
  ];
  if (plan.registerMoves > 0) parts.push(counted(plan.registerMoves, 'change of offset', 'changes of offset'));
  return parts.join(', ');
}

/** How near the order is to the fewest there can be. */
export function boundWords(plan: PressPlan): string {
  const { bound } = plan;
  const overSetUps = plan.cards.length - bound.setUps;
  const overMounts = plan.mounts - bound.mounts;
  const floor = `No order has fewer than ${counted(bound.setUps, 'set-up')} and ${counted(bound.mounts, 'mount')}`;
  if (overSetUps <= 0 && overMounts <= 0) return `${floor}: this one is proven fewest in both.`;
  const parts = [gapWords(overMounts, 'mount'), gapWords(overSetUps, 'set-up')];
  return `${floor}: this one has ${parts.join(' and ')}.`;
}

function gapWords(over: number, word: string): string {
  return over > 0 ? `at most ${counted(over, word)} more than the fewest there can be` : `the fewest ${word}s`;
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
  if (plan.kept === true) return 'No better order was found than to go on as before: this is the order at hand, without what is done.';
  const now = { setUps: plan.cards.length, mounts: plan.mounts, inkChanges: plan.inkChanges, registerMoves: plan.registerMoves };
  const was = [
    counted(before.setUps, 'set-up'),
    counted(before.mounts, 'mount'),
    counted(before.inkChanges, 'ink change'),
    counted(before.registerMoves, 'change of offset', 'changes of offset'),
  ];
  const end = `ending on day ${before.ends.day} at ${wallClock(plan, before.ends.minute)}`;
  const beds = new Set(plan.times.map(({ bed }) => bed)).size;
  const decided = (['mounts', 'inkChanges', 'registerMoves'] as const).find((key) => now[key] !== before[key]);
  const named = { mounts: 'mounts', inkChanges: 'ink changes', registerMoves: 'changes of offset' };
  const counts = beds > 1 || decided === undefined ? 'its end counts' : `it has fewer ${named[decided]}, which count first`;
  return `Going on as before would be ${listed(was)}, ${end}. This order is better: ${counts}. Undo brings the old one back.`;
}

/** What the free swaps are worth, as far as it is proven. */
export function freeSwapWords(plan: PressPlan): string {
  if (plan.freeSwaps === 0) return 'No free swaps: wherever shapes overlap, their order shows.';
  if (plan.savedSetUps === null || plan.savedMounts === null) {
    return `${counted(plan.freeSwaps, 'overlapping pair')} may change places unseen.`;
  }
  const saved: string[] = [];
  if (plan.savedSetUps > 0) saved.push(counted(plan.savedSetUps, 'set-up'));
  if (plan.savedMounts > 0) saved.push(counted(plan.savedMounts, 'mount'));
  const may = `${counted(plan.freeSwaps, 'overlapping pair')} may change places unseen.`;
  return saved.length > 0 ? `Free swaps save at least ${listed(saved)}.` : may;
}

/** When the last bed is washed up, and how much sooner any order could be; '' for an order kept from before that was worked out. */
export function endWords(plan: PressPlan): string {
  const { ends, endsAtLeast } = plan as Partial<PressPlan>;
  if (ends === undefined || endsAtLeast === undefined || endsAtLeast === null) return '';
  const at = `It ends on day ${ends.day} at ${wallClock(plan, ends.minute)}, washed up`;
  if (endsAtLeast.day === ends.day && endsAtLeast.minute >= ends.minute) return `${at}: no order of these pulls ends sooner.`;
  const least = `${wallClock(plan, endsAtLeast.minute)} ${endsAtLeast.day === ends.day ? 'that day' : `on day ${endsAtLeast.day}`}`;
  return `${at}; no order of these pulls can end before ${least}.`;
}

/** 'Takes 2 days, and a rack for 12 sheets.'; of what is left of a visit the day on which it is done. */
export function needsWords(plan: RestPlan): string {
  const takes = plan.begins === undefined ? `Takes ${counted(plan.daysNeeded, 'day')}` : `Done on day ${plan.daysNeeded}`;
  return `${takes}, and a rack for ${counted(plan.racksNeeded, 'wet sheet')}.`;
}

/** Where the plan of what is left begins: 'From day 2, 14:05 on: 4 sheets are still wet; screen 7 stays on the press.' */
export function beginWords(plan: RestPlan): string {
  const { begins } = plan;
  if (begins === undefined) return '';
  const { day, minute, wetSheets, stays } = begins;
  const wet = wetSheets === 0 ? 'everything is dry' : `${wetSheets === 1 ? '1 sheet is' : `${wetSheets} sheets are`} still wet`;
  return `From day ${day}, ${wallClock(plan, minute)} on: ${wet}${stays === null ? '' : `; screen ${stays} stays on the press`}.`;
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
  if (card.mount) tags.push('mount');
  else if (morning) tags.push('mount again');
  if (card.inkChange) tags.push('new ink');
  if (card.registerMove) tags.push('new offset');
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
  const bed = plan.times.some((other) => other.bed > 0) ? `, bed ${time.bed + 1}` : '';
  return `Day ${time.day}${bed}, ${wallClock(plan, time.startMinute)} to ${wallClock(plan, time.endMinute)}`;
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

/** Grams as one weighs them: below 10 g with one decimal. */
export function gramsText(grams: number): string {
  return grams < 10 ? grams.toFixed(1) : Math.round(grams).toLocaleString('en');
}
