import { defined } from '../../base/at.ts';
import type { Ink } from '../../ink/types.ts';
import { inkText } from '../registry.ts';

/** The id under which a recipe may carry an ink: its own, unless another ink has it; and whether it is there already. */
export function inkId(ink: Ink, inks: readonly Ink[]): { id: string; known: boolean } {
  const text = inkText(ink);
  for (let id = ink.id; ; id += ' b') {
    const other = inks.find((entry) => entry.id === id);
    if (other === undefined) return { id, known: false };
    if (inkText(other) === text) return { id, known: true };
  }
}

/** The stock inks of a mix, from a recipe that has it; null when none has it with all of them. */
export function stocksOfInk({ mix, ...ink }: Ink, recipes: readonly { readonly inks: readonly Ink[] }[]): Map<string, Ink> | null {
  if (mix === undefined) return null;
  const text = inkText(ink);
  const parts = JSON.stringify(mix);
  for (const { inks } of recipes) {
    if (!inks.some((entry) => inkText(entry) === text && JSON.stringify(entry.mix) === parts)) continue;
    const stocks = new Map(inks.map((entry) => [entry.id, entry]));
    if (mix.every((part) => stocks.has(part.ink))) return stocks;
  }
  return null;
}

/**
 * The inks of a recipe with one that it borrows, and the stocks that this is weighed from.
 * @param stocks as `stocksOfInk` gives them; null makes a mix an ink by itself
 */
export function withInk(inks: readonly Ink[], borrowed: Ink, stocks: Map<string, Ink> | null): Ink[] {
  const all = [...inks];
  const add = (ink: Ink): string => {
    const { id, known } = inkId(ink, all);
    if (!known) all.push({ ...ink, id });
    return id;
  };
  const { mix, ...bare } = borrowed;
  if (inkId(borrowed, all).known) return all;
  if (mix === undefined || stocks === null) add(bare);
  else {
    const parts = mix.map((part) => ({ ...part, ink: add(defined(stocks.get(part.ink))) }));
    add({ ...bare, mix: parts });
  }
  return all;
}
