import { describe, expect, it, vi } from 'vitest';
import { readShapeFiles } from '../../../src/components/drawer/read-files.ts';

const asked: string[] = [];
const read: string[] = [];
vi.mock('../../../src/workers/client/client.ts', () => ({ sentenceOf: String, engineFor: (kind: string) => asked.push(kind) }));
vi.mock('../../../src/workers/client/file-reader.ts', () => ({
  readFile: (_kind: string, { name }: { name: string }) => {
    read.push(name);
    return Promise.resolve({ shapes: [], problems: [] });
  },
}));

const file = (name: string): File => new File(['<svg/>'], name);

describe('readShapeFiles', () => {
  it('should never keep the worker that draws the picture on the Bench', async () => {
    await readShapeFiles([file('a.svg')], new AbortController().signal, () => {});
    expect(read).toEqual(['a.svg']);
    expect(asked).toEqual([]);
  });

  it('should say of each file that a Stop left out', async () => {
    read.length = 0;
    const stop = new AbortController();
    const { remarks } = await readShapeFiles([file('a.svg'), file('b.svg')], stop.signal, () => stop.abort());
    expect(read).toEqual(['a.svg']);
    expect(remarks).toEqual([{ text: expect.stringMatching(/^b\.svg: .*stopped.*\.$/u) as string, kept: false }]);
  });
});
