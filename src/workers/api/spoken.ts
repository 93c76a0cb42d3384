import { type Language, speakIn } from '../../engine/words/language.ts';

/** The language that a page speaks, as it tells a worker that it has begun; nothing is told of English. */
export interface Spoken {
  spoken: Language;
}

type Deeds = Readonly<Record<string, unknown>>;

/** The words of a language, by the names of their catalogues. */
export type Catalogues = ReadonlyMap<string, object>;

function isSpoken(data: unknown): data is Spoken {
  return typeof data === 'object' && data !== null && 'spoken' in data;
}

/**
 * What a worker does, each deed waiting until the page's language is at hand where it is not English.
 * @param from where the page's messages come
 * @param german loads the German words of the worker; English stays where that fails
 */
export function inItsLanguage(deeds: Deeds, from: Pick<EventTarget, 'addEventListener'>, german: () => Promise<Catalogues>): Deeds {
  let heard: Promise<void> | null = null;
  from.addEventListener('message', (event) => {
    const { data } = event as MessageEvent<unknown>;
    if (!isSpoken(data)) return;
    heard = german()
      .then((words) => speakIn(data.spoken, words))
      .catch(() => {})
      .finally(() => (heard = null));
  });
  const waiting = Object.entries(deeds).map(([name, deed]) => [
    name,
    typeof deed !== 'function' ? deed : (...given: unknown[]) => (heard === null ? deed(...given) : heard.then(() => deed(...given))),
  ]);
  return Object.fromEntries(waiting) as Deeds;
}
