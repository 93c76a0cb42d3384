import { engineGerman } from '../../../workers/words/engine-german.ts';

const files = import.meta.glob<{ say: object }>('./*/*.ts', { eager: true });

/** All German words, by the names of their catalogues. A file beside this one is found by itself. */
export const german: ReadonlyMap<string, object> = new Map([
  ...engineGerman,
  ...Object.entries(files).map(([path, { say }]) => [path.slice('./'.length, -'.ts'.length), say] as const),
]);
