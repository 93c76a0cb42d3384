import { entryAt } from '../../engine/base/at.ts';
import { minutesText } from '../../engine/base/words.ts';
import type { PressPlan } from '../../engine/visit/visit.ts';
import { say } from './en/phrases/plan.ts';
import { listed, wallClock } from './plan-words.ts';

type Timed = Pick<PressPlan, 'cards' | 'times' | 'clock'>;

/** What a set-up waits for: 'Rust and Kelp dry', 'Rust dries, then racks'. */
function reason({ waitFor, waitMinutes, rackWaitMinutes }: PressPlan['times'][number]): string {
  const parts: string[] = [];
  if (waitFor.length > 0) parts.push(say.dry(listed(waitFor), waitFor.length));
  if (rackWaitMinutes >= 1) parts.push(say.racksAreFull);
  if (parts.length === 0 && waitMinutes >= 1) parts.push(say.sheetsAreOnOther);
  return parts.join(say.and);
}

/** 'wait 25 min: Rust dries' before a set-up, with the bed where there are several and it is not said beside. */
export function waitWords(plan: Pick<PressPlan, 'times'>, index: number, withBed = true): string {
  const time = entryAt(plan.times, index);
  const bed = withBed && plan.times.some((other) => other.bed > 0) ? say.onBed(time.bed + 1) : '';
  return say.wait(minutesText(time.waitMinutes), bed, reason(time));
}

/** Until when what was just printed dries: to print on it, and to stack it. */
export function dryWords(plan: Timed, index: number): string {
  const card = entryAt(plan.cards, index);
  const time = entryAt(plan.times, index);
  if (card.ink.ink.dryMinutes === 0) return say.needsNoDryingBefore(card.ink.key);
  const { dryMinute, stackMinute } = time;
  return say.driesPrintOverLast(card.ink.key, minutesText(card.ink.ink.dryMinutes), moment(plan, dryMinute), moment(plan, stackMinute));
}

/** The same for a narrow place: '14:35' and '15:00'; 'next day' where the day is over by then. */
export function dryFrom(plan: Timed, index: number): { dry: string; stack: string } {
  const { dryMinute, stackMinute } = entryAt(plan.times, index);
  const { dryMinutes } = entryAt(plan.cards, index).ink.ink;
  const short = (minute: number): string => (minute > closesAt(plan) ? say.nextDay : wallClock(plan, minute));
  return { dry: dryMinutes === 0 ? say.atOnce : short(dryMinute), stack: short(stackMinute) };
}

/** When the press closes, minutes from the day's start. */
function closesAt({ clock }: Timed): number {
  return clock.workMinutes + (clock.lunch?.minutes ?? 0);
}

/** '14:35'; when the day is over by then, 'the next morning'. */
function moment(plan: Timed, minute: number): string {
  if (minute > 24 * 60) return say.daysLater(Math.floor(minute / (24 * 60)), wallClock(plan, minute));
  return minute > closesAt(plan) ? say.nextMorning : wallClock(plan, minute);
}
