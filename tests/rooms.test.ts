import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';

const ROOT = fileURLToPath(new URL('..', import.meta.url));
/** More files than this in one folder are a place for rooms within. */
const MOST_FILES = 20;

interface Folder {
  path: string;
  files: string[];
}

function folders(path: string): Folder[] {
  const entries = readdirSync(join(ROOT, path), { withFileTypes: true });
  const files = entries.filter((entry) => entry.isFile() && /\.(ts|css)$/.test(entry.name)).map(({ name }) => name);
  const within = entries.filter((entry) => entry.isDirectory()).flatMap(({ name }) => folders(`${path}/${name}`));
  return [{ path, files }, ...within];
}

const all = [...folders('src'), ...folders('tests')];

describe('folders', () => {
  it('should hold at most 20 files each', () => {
    expect(all.length).toBeGreaterThan(40);
    expect(all.filter(({ files }) => files.length > MOST_FILES).map(({ path, files }) => `${path}: ${files.length}`)).toEqual([]);
  });

  it('should have one way in only where scripts enter the engine', () => {
    const doors = all.filter(({ path, files }) => path.startsWith('src') && files.includes('index.ts')).map(({ path }) => path);
    expect(doors).toEqual(['src/engine']);
  });

  it('should name style files alike', () => {
    const odd = all.flatMap(({ path, files }) =>
      files.filter((name) => /(styles|\.style|\.styles)\.ts$/.test(name)).map((name) => `${path}/${name}`),
    );
    expect(odd).toEqual([]);
  });
});
