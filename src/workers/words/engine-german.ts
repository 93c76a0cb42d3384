const files = import.meta.glob<{ say: object }>('../../engine/words/de/*/*.ts', { eager: true });

/** The engine's German sentences, by the names of their catalogues. */
export const engineGerman: ReadonlyMap<string, object> = new Map(
  Object.entries(files).map(([path, { say }]) => [path.slice('../../'.length, -'.ts'.length).replace('/words/de/', '/'), say] as const),
);
