import * as Comlink from 'comlink';

interface Thrown {
  value: unknown;
}

/**
 * Lets an error's own fields cross the worker boundary; comlink alone keeps only name, message and stack.
 * To be called once on the worker's side.
 */
export function keepErrorFields(): void {
  const handler = Comlink.transferHandlers.get('throw') as
    | Comlink.TransferHandler<Thrown, { isError: boolean; value: unknown }>
    | undefined;
  if (handler === undefined) throw new Error('comlink no longer has a "throw" handler');
  const { deserialize } = handler;
  const kept: Comlink.TransferHandler<Thrown, { isError: boolean; value: unknown }> = {
    canHandle: (value): value is Thrown => handler.canHandle(value),
    serialize: ({ value }) => {
      if (value instanceof Error) {
        const { name, message, stack } = value;
        return [{ isError: true, value: { ...value, name, message, stack } }, []];
      }
      return [{ isError: false, value }, []];
    },
    deserialize,
  };
  Comlink.transferHandlers.set('throw', kept as Comlink.TransferHandler<unknown, unknown>);
}
