import { describe, expect, it, vi } from 'vitest';
import { readShapeFiles } from '../../../src/components/drawer/read-files.ts';

const asked: string[] = [];
vi.mock('../../../src/workers/client/client.ts', () => ({
  sentenceOf: String,
  engineFor: (kind: string) => {
    asked.push(kind);
    return { readShapeFile: () => Promise.resolve({ shape: null, page: null, problems: [] }) };
  },
}));

describe('readShapeFiles', () => {
  it('should never keep the worker that draws the picture on the Bench', async () => {
    await readShapeFiles([new File(['<svg/>'], 'a.svg')], () => {});
    expect(asked).toHaveLength(1);
    expect(asked).not.toContain('picture');
  });
});
