import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { type Plugin, runnerImport } from 'vite';

const ROOT = fileURLToPath(new URL('..', import.meta.url));
const SHAPES = join(ROOT, 'shapes');
const NAME = 'virtual:demo-project';
const RESOLVED = `\0${NAME}`;

/**
 * The demo project as the module `virtual:demo-project`, read from shapes/ when the app is built, its outlines packed:
 * the page needs no SVG parser for it, and every browser opens the same numbers.
 */
export function demoModule(): Plugin {
  return {
    name: 'demo-module',
    resolveId: (id) => (id === NAME ? RESOLVED : null),
    async load(id) {
      if (id !== RESOLVED) return null;
      const { demoProject } = await engineFile<typeof import('../src/engine/project/demo.ts')>('project/demo');
      const { firstWall } = await engineFile<typeof import('../src/engine/project/first-wall.ts')>('project/first-wall');
      const names = readdirSync(SHAPES).filter((name) => name.endsWith('.svg'));
      const files = names.map((name) => ({ name, text: readFileSync(join(SHAPES, name), 'utf8') }));
      for (const { name } of files) this.addWatchFile(join(SHAPES, name));
      const { packRing, unpackRing } = await engineFile<typeof import('../src/engine/geometry/packed-ring.ts')>('geometry/packed-ring');
      const project = firstWall(demoProject(files));
      const { drawer } = project;
      const shapes = drawer.shapes.map((shape) => ({ ...shape, rings: shape.rings.map(packRing) }));
      const same = shapes.every(({ rings }, i) =>
        rings.every((ring, j) => String(unpackRing(ring)) === String(drawer.shapes[i]?.rings[j])),
      );
      if (!same) throw new Error('The shapes of shapes/ are not on the grid of geometry/packed-ring.ts, so the demo would be another one.');
      const text = JSON.stringify({ ...project, drawer: { ...drawer, shapes } });
      return `export default JSON.parse(${JSON.stringify(text)});`;
    },
  };
}

async function engineFile<T>(name: string): Promise<T> {
  return (await runnerImport<T>(join(ROOT, `src/engine/${name}.ts`))).module;
}
