import { defined } from '../base/at.ts';
import type { PressPlan } from './visit.ts';

/** Sheets that go the same way. */
export interface Passport {
  /** Index into the visit's recipes. */
  recipe: number;
  /** Numbers of the sheets, ascending. */
  sheets: number[];
  /** Indices of the set-ups that print on these sheets, in time. */
  setUps: number[];
}

/**
 * Gathers sheets of one recipe that go through the same set-ups: they share a passport.
 * @returns every sheet of the plan in just one passport, by the sheet that comes first; a sheet
 *   that nothing prints on has no set-ups
 */
export function passportsOf(plan: Pick<PressPlan, 'sheets' | 'cards'>): Passport[] {
  const ways = new Map<number, number[]>(plan.sheets.map(({ number }) => [number, []]));
  for (const [at, card] of plan.cards.entries()) for (const sheet of card.sheets) defined(ways.get(sheet)).push(at);
  const found = new Map<string, Passport>();
  for (const { number, recipe } of plan.sheets) {
    const setUps = defined(ways.get(number));
    const key = JSON.stringify([recipe, setUps]);
    const known = found.get(key);
    if (known === undefined) found.set(key, { recipe, sheets: [number], setUps });
    else known.sheets.push(number);
  }
  for (const { sheets } of found.values()) sheets.sort((a, b) => a - b);
  return [...found.values()];
}
