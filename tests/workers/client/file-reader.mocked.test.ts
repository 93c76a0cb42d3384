import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { readFile } from '../../../src/workers/client/file-reader.ts';

/** Readers that were begun, and what each does with a file. */
const begun: { terminated: boolean; die(): void }[] = [];
let answer: () => Promise<unknown> = () => Promise.resolve('read');

vi.mock('../../../src/workers/client/seat.ts', () => ({
  seat: () => {
    let die = (): void => undefined;
    const gone = new Promise<void>((resolve) => (die = resolve));
    const state = { terminated: false, die };
    begun.push(state);
    const worker = { terminate: () => (state.terminated = true), addEventListener: () => undefined };
    return { worker, remote: { recipe: () => answer(), shape: () => answer() }, gone };
  },
}));

const file = new File(['{}'], 'ebb.json');
const going = (): AbortSignal => new AbortController().signal;

beforeEach(() => {
  vi.useFakeTimers();
  vi.stubGlobal('Worker', Object);
  begun.length = 0;
});

afterEach(() => {
  vi.useRealTimers();
  vi.unstubAllGlobals();
});

/** A file that is never read through, and what the page hears in the end. */
function hanging(signal = going()): Promise<unknown> {
  answer = () => new Promise(() => {});
  return readFile('recipe', file, signal).catch((error: unknown) => (error as Error).message);
}

describe('readFile', () => {
  it('should end a reader that takes longer than is allowed, and say of which file', async () => {
    const said = hanging();
    await vi.advanceTimersByTimeAsync(30_000);
    expect(await said).toBe('ebb.json: reading it took more than 30 s; choose a file that was saved here.');
    expect(begun.at(-1)!.terminated).toBe(true);
  });

  it('should end a reader in the midst of a file when it is told to stop', async () => {
    const stop = new AbortController();
    const said = hanging(stop.signal);
    stop.abort();
    expect(await said).toBe('ebb.json: reading it was stopped; choose it again to read it.');
    expect(begun.at(-1)!.terminated).toBe(true);
  });

  it('should say so when the reader dies, and read the next file with another', async () => {
    const said = hanging();
    begun.at(-1)!.die();
    expect(await said).toBe('ebb.json: reading it broke down; choose a file that was saved here.');
    answer = () => Promise.resolve('read');
    expect(await readFile('recipe', file, going())).toBe('read');
  });

  it('should read two files at once with two readers, so that a Stop ends one of them', async () => {
    const first = new AbortController();
    const said = hanging(first.signal);
    const before = begun.length;
    answer = () => Promise.resolve('read');
    expect(await readFile('recipe', file, going())).toBe('read');
    expect(begun.length).toBeLessThanOrEqual(before + 1);
    first.abort();
    expect(await said).toMatch(/stopped/u);
  });

  it('should refuse a file by its size before anything reads it', async () => {
    const large = new File([new Uint8Array(20_100_000)], 'net.svg');
    await expect(readFile('shape', large, going())).rejects.toThrow(
      'net.svg: the file has 20.1 MB, over the 20 MB that a shape file may have; simplify the drawing or split it.',
    );
    expect(begun).toEqual([]);
  });

  it('should say why a file cannot be opened', async () => {
    answer = () => Promise.reject(new Error('it is gone'));
    await expect(readFile('shape', file, going())).rejects.toThrow(
      'ebb.json: the file could not be read (it is gone); choose an SVG file, not a folder.',
    );
  });
});
