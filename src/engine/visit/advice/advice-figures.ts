import { entryAt } from '../../base/at.ts';
import type { PressPlan } from '../press-plan.ts';
import { workMinutes } from '../visit-times.ts';

/** What a plan costs, as advice compares it. */
export interface AdviceFigures {
  setUps: number;
  mounts: number;
  minutes: number;
  days: number;
  /** Most inks that are used on one day. */
  inksADay: number;
  /** Set-ups that lie beyond the days of the visit. */
  late: number;
}

/** What a plan costs. */
export function adviceFigures(plan: PressPlan): AdviceFigures {
  const byDay = new Map<number, Set<string>>();
  for (const [i, card] of plan.cards.entries()) {
    const { day } = entryAt(plan.times, i);
    const inks = byDay.get(day) ?? new Set();
    byDay.set(day, inks.add(card.ink.key));
  }
  return {
    setUps: plan.cards.length,
    mounts: plan.mounts,
    minutes: Math.round(workMinutes(plan)),
    days: plan.daysNeeded,
    inksADay: Math.max(0, ...[...byDay.values()].map((inks) => inks.size)),
    late: plan.times.filter(({ fits }) => !fits).length,
  };
}

/** Whether anything that somebody may wish for becomes less; a minute is nothing. */
export function isLess(one: AdviceFigures, other: AdviceFigures): boolean {
  const { setUps, mounts, minutes, days, inksADay, late } = one;
  return (
    setUps < other.setUps ||
    mounts < other.mounts ||
    minutes < other.minutes - 1 ||
    days < other.days ||
    inksADay < other.inksADay ||
    late < other.late
  );
}

/** The lesser of each figure. */
export function leastOf(one: AdviceFigures, other: AdviceFigures): AdviceFigures {
  return {
    setUps: Math.min(one.setUps, other.setUps),
    mounts: Math.min(one.mounts, other.mounts),
    minutes: Math.min(one.minutes, other.minutes),
    days: Math.min(one.days, other.days),
    inksADay: Math.min(one.inksADay, other.inksADay),
    late: Math.min(one.late, other.late),
  };
}
