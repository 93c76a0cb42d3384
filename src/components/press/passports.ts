import type { MadePlan } from './plan-run.ts';

/** Sheets that go the same way. */
export interface Passport {
  recipe: number;
  sheets: number[];
  /** Indices of the set-ups that print on these sheets, in time. */
  setUps: number[];
}

/** Sheets that go through the same set-ups share a passport. */
export function passportsOf({ plan }: Pick<MadePlan, 'plan'>): Passport[] {
  const ways = new Map<number, number[]>(plan.sheets.map(({ number }) => [number, []]));
  for (const [at, card] of plan.cards.entries()) for (const sheet of card.sheets) ways.get(sheet)!.push(at);
  const found = new Map<string, Passport>();
  for (const { number, recipe } of plan.sheets) {
    const setUps = ways.get(number)!;
    const key = JSON.stringify([recipe, setUps]);
    const known = found.get(key);
    if (known === undefined) found.set(key, { recipe, sheets: [number], setUps });
    else known.sheets.push(number);
  }
  return [...found.values()];
}
