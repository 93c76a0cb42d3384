import { language } from '../../../engine/words/language.ts';
import type { DerivedAsk } from './derived-ask.ts';

const KEY = 'pullstack.prints-from';

/** Keeps for the next load of the page, in this tab alone, which prints those that hang come from; null for none. */
export function keepAsk(ask: DerivedAsk | null): void {
  try {
    if (ask === null) sessionStorage.removeItem(KEY);
    else sessionStorage.setItem(KEY, JSON.stringify({ ask, spoken: language() }));
  } catch {
    // Without a place to keep it the whole wall hangs again.
  }
}

/** What was kept before the page was loaded; null for none, and for words of another language. */
export function keptAsk(): DerivedAsk | null {
  try {
    const { ask, spoken } = JSON.parse(sessionStorage.getItem(KEY) ?? '{}') as { ask?: DerivedAsk; spoken?: string };
    return spoken === language() && ask !== undefined ? ask : null;
  } catch {
    return null;
  }
}
