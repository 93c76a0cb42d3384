const files = import.meta.glob<{ say: object }>('../../engine/words/de/*/*.ts', { eager: true });

const own = import.meta.glob<{ say: object }>('./de/*.ts', { eager: true });

/** The engine's German sentences and those of the workers, by the names of their catalogues. */
export const engineGerman: ReadonlyMap<string, object> = new Map([
  ...Object.entries(files).map(([path, { say }]) => [path.slice('../../'.length, -'.ts'.length).replace('/words/de/', '/'), say] as const),
  ...Object.entries(own).map(([path, { say }]) => [`workers/${path.slice('./de/'.length, -'.ts'.length)}`, say] as const),
]);
