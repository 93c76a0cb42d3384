import { type Language, LANGUAGES, speakIn } from '../engine/words/language.ts';

const KEY = 'pullstack.language';

function isSpoken(tag: string): tag is Language {
  return Object.hasOwn(LANGUAGES, tag);
}

/** The language chosen in this browser, else the first of the browser's own that the app speaks, else English. */
function chosenLanguage(): Language {
  let stored: string | null = null;
  try {
    stored = localStorage.getItem(KEY);
  } catch {
    // A browser that keeps nothing still says what it speaks.
  }
  const wanted = [...(stored === null ? [] : [stored]), ...navigator.languages.map((tag) => tag.slice(0, 2).toLowerCase())];
  return wanted.find(isSpoken) ?? 'en';
}

/** Speaks the chosen language from now on; to be waited for before anything is loaded that has words. */
export async function speakChosen(): Promise<void> {
  const chosen = chosenLanguage();
  document.documentElement.lang = chosen;
  if (chosen === 'en') return;
  // An English page never loads the other words.
  const { german } = await import('./words/de/german.ts');
  speakIn(chosen, german);
}

/** Keeps the choice in this browser; it holds when the page is loaded anew. */
export function chooseLanguage(chosen: Language): void {
  try {
    localStorage.setItem(KEY, chosen);
  } catch {
    // The browser's own language stays.
  }
}
