import { readdirSync, readFileSync, statSync } from 'node:fs';
import { dirname, join, normalize, relative } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { ROOMS } from '../src/components/rooms.ts';

const SRC = fileURLToPath(new URL('../src', import.meta.url));

/** Engine folders from the ground up; a folder imports only from those before it. */
const ENGINE_ORDER = [
  'words',
  'base',
  'geometry',
  'shapes',
  'colour',
  'ink',
  'studio',
  'output',
  'stack',
  'order',
  'explore',
  'recipe',
  'lesson',
  'pullorder',
  'visit',
  'log',
  'project',
  'visitfile',
];
const LAYERS = ['engine', 'workers', 'components'];

/** Packages that only one place may import. */
const ONLY: [RegExp, RegExp][] = [
  [/^seedrandom$/, /^engine\/base\/random\.ts$/],
  [/^culori/, /^engine\/colour\//],
  [/^clipper2-ts$/, /^engine\/geometry\//],
  [/^(saxes|svgpath|css-tree|css-select)$/, /^engine\/shapes\//],
  [/^d3-contour$/, /^engine\/shapes\/trace\//],
  [/^pixi\.js/, /^components\/canvas\//],
  [/^comlink$/, /^workers\//],
  [/^fflate$/, /^engine\/visitfile\//],
  [/^uqr$/, /^components\//],
  [/^idb$/, /^workers\/storage\//],
  [/^workbox-/, /^workers\/.*\/offline/],
  [/^lit/, /^components\//],
];

function files(folder: string): string[] {
  return readdirSync(folder).flatMap((name) => {
    const path = join(folder, name);
    return statSync(path).isDirectory() ? files(path) : path.endsWith('.ts') ? [path] : [];
  });
}

interface Import {
  from: string;
  to: string;
}

const sources = files(SRC).map((path) => ({ name: relative(SRC, path), text: readFileSync(path, 'utf8') }));

const imports: Import[] = sources.flatMap(({ name, text }) =>
  [...text.matchAll(/(?:^|\n)\s*(?:import|export)\b[^'";]*?from\s*'([^']+)'|(?:^|\n)\s*import\s*'([^']+)'|import\(\s*'([^']+)'/g)].map(
    (match) => ({
      from: name,
      to: (match[1] ?? match[2] ?? match[3])!,
    }),
  ),
);

const internal = imports.filter(({ to }) => to.startsWith('.')).map(({ from, to }) => ({ from, to: normalize(join(dirname(from), to)) }));

const layerOf = (name: string): number => LAYERS.indexOf(name.split('/')[0]!);
const domainOf = (name: string): number => ENGINE_ORDER.indexOf(name.split('/')[1]!);

describe('imports', () => {
  it('should be found, or the other checks check nothing', () => {
    expect(imports.length).toBeGreaterThan(100);
  });

  it('should run from components to workers to engine and never back', () => {
    expect(internal.filter(({ from, to }) => layerOf(to) > layerOf(from))).toEqual([]);
  });

  it('should run downwards inside the engine', () => {
    const inEngine = internal.filter(({ from, to }) => from.startsWith('engine/') && to.startsWith('engine/'));
    const upward = inEngine.filter(({ from, to }) => {
      // The engine's door stands above all domains.
      if (from === 'engine/index.ts') return false;
      return domainOf(to) < 0 || domainOf(to) > domainOf(from);
    });
    expect(upward).toEqual([]);
  });

  it('should keep rooms apart', () => {
    const roomOf = (name: string): string | null => {
      const [layer, folder] = name.split('/');
      return layer === 'components' && folder !== undefined && ROOMS.some(({ id }) => id === folder) ? folder : null;
    };
    // Only the frame at the top of components opens rooms: neither another room nor what rooms share does.
    const inside = internal.filter(({ from }) => from.startsWith('components/') && from.split('/').length > 2);
    const strays = inside.filter(({ from, to }) => roomOf(to) !== null && roomOf(to) !== roomOf(from));
    expect(new Set(inside.map(({ from }) => roomOf(from)).filter((room) => room !== null)).size).toBe(ROOMS.length);
    expect(strays).toEqual([]);
  });

  it('should have no cycles', () => {
    const next = new Map<string, string[]>();
    for (const { from, to } of internal) next.set(from, [...(next.get(from) ?? []), to]);
    const done = new Set<string>();
    const cycles: string[] = [];
    const visit = (name: string, path: string[]): void => {
      if (path.includes(name)) {
        cycles.push([...path.slice(path.indexOf(name)), name].join(' → '));
        return;
      }
      if (done.has(name)) return;
      for (const to of next.get(name) ?? []) visit(to, [...path, name]);
      done.add(name);
    };
    for (const name of next.keys()) visit(name, []);
    expect(cycles).toEqual([]);
  });

  it('should keep each package in its one place', () => {
    const strays = imports.filter(({ from, to }) => ONLY.some(([what, where]) => what.test(to) && !where.test(from)));
    expect(strays).toEqual([]);
  });
});

describe('engine', () => {
  it('should use no clock, no chance of its own and no page', () => {
    const banned = /\bMath\.random\b|\bDate\b(?!\w)|\bperformance\.now\b|\bdocument\.|\bwindow\.|\bself\./;
    const strays = sources
      .filter(({ name }) => name.startsWith('engine/'))
      .flatMap(({ name, text }) =>
        text
          .split('\n')
          .map((line, i) => ({ place: `${name}:${i + 1}`, line }))
          .filter(({ line }) => banned.test(line.replace(/\/\/.*|^\s*\*.*|\/\*.*?\*\//, ''))),
      );
    expect(strays).toEqual([]);
  });
});
