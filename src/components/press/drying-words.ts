import type { PressPlan } from '../../engine/output/visit.ts';
import type { SetUpCard } from '../../engine/output/set-up-cards.ts';
import { minutesText } from './plan-words.ts';

/**
 * The ink that a set-up waits for: the only one printed earlier that day on one of its sheets that
 * can still be wet when it starts. Null when several can.
 */
function waitsFor(plan: PressPlan, index: number): string | null {
  const time = plan.times[index]!;
  const sheets = new Set(plan.cards[index]!.sheets);
  const wet = new Set<string>();
  for (let i = 0; i < index; i++) {
    const { day, endMinute } = plan.times[i]!;
    const { ink, sheets: printed } = plan.cards[i]!;
    if (day !== time.day || endMinute + ink.ink.dryMinutes <= time.startMinute) continue;
    if (printed.some((sheet) => sheets.has(sheet))) wet.add(ink.key);
  }
  return wet.size === 1 ? [...wet][0]! : null;
}

/** 'wait 25 min: Rust dries' before a set-up. */
export function waitWords(plan: PressPlan, index: number): string {
  return `wait ${minutesText(plan.times[index]!.waitMinutes)}: ${waitsFor(plan, index) ?? 'ink'} dries`;
}

/** How long what was just printed dries before the next film. */
export function dryWords(card: SetUpCard): string {
  const minutes = card.ink.ink.dryMinutes;
  return minutes === 0
    ? `${card.ink.key} needs no drying before the next film over it.`
    : `Let ${card.ink.key} dry ${minutesText(minutes)} before the next film goes over it.`;
}
