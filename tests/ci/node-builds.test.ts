import { build } from 'vite';
import { describe, expect, it } from 'vitest';

describe('scripts that are built for Node', () => {
  // Each of them is run by its name after `npm run fuzz`, `npm run bench` or `npm run visits` built it.
  it.each(['tests/fuzz/fuzz.ts', 'tests/bench/stop.ts', 'tests/visits/visits.ts'])('should find %s under its name', async (entry) => {
    const built = await build({ logLevel: 'silent', build: { ssr: entry, write: false } });
    const { output } = (Array.isArray(built) ? built[0] : built) as { output: { fileName: string }[] };
    expect(output.map(({ fileName }) => fileName)).toContain(entry.slice(entry.lastIndexOf('/') + 1).replace('.ts', '.js'));
    expect(output.some(({ fileName }) => fileName.endsWith('.webmanifest'))).toBe(false);
  });
});
