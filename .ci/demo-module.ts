import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { type Plugin, runnerImport } from 'vite';

const ROOT = fileURLToPath(new URL('..', import.meta.url));
const SHAPES = join(ROOT, 'shapes');
const NAME = 'virtual:demo-project';
const RESOLVED = `\0${NAME}`;

/**
 * The demo project as the module `virtual:demo-project`, read from shapes/ when the app is built: the page
 * needs no SVG parser for it, and every browser opens the same numbers.
 */
export function demoModule(): Plugin {
  return {
    name: 'demo-module',
    resolveId: (id) => (id === NAME ? RESOLVED : null),
    async load(id) {
      if (id !== RESOLVED) return null;
      const { demoProject } = await engineFile<typeof import('../src/engine/project/demo.ts')>('demo');
      const { firstWall } = await engineFile<typeof import('../src/engine/project/first-wall.ts')>('first-wall');
      const names = readdirSync(SHAPES).filter((name) => name.endsWith('.svg'));
      const files = names.map((name) => ({ name, text: readFileSync(join(SHAPES, name), 'utf8') }));
      for (const { name } of files) this.addWatchFile(join(SHAPES, name));
      const text = JSON.stringify(firstWall(demoProject(files)));
      return `export default JSON.parse(${JSON.stringify(text)});`;
    },
  };
}

async function engineFile<T>(name: string): Promise<T> {
  return (await runnerImport<T>(join(ROOT, `src/engine/project/${name}.ts`))).module;
}
