import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { nodeServes } from '../../.ci/install.mjs';

const file = (name: string): string => readFileSync(fileURLToPath(new URL(`../../${name}`, import.meta.url)), 'utf8');
const { engines } = JSON.parse(file('package.json')) as { engines: { node: string } };
const lock = JSON.parse(file('package-lock.json')) as { packages: Record<string, { engines?: { node?: string } }> };

describe('engines', () => {
  it('should be what README says and what vite asks for at the least', () => {
    expect(engines.node).toBe('^20.19.0 || ^22.12.0 || >=24');
    expect(file('README.md')).toContain(`Node \`${engines.node}\``);
    expect(lock.packages['node_modules/vite']!.engines!.node).toBe('^20.19.0 || >=22.12.0');
  });

  // By hand, from the meaning of ^ and >= in semver ranges.
  it.each([
    ['20.18.3', false],
    ['20.19.0', true],
    ['20.20.2', true],
    ['21.7.0', false],
    ['22.11.0', false],
    ['22.12.0', true],
    ['23.1.0', false],
    ['24.0.0', true],
    ['26.3.1', true],
    ['18.20.0', false],
  ])('should know whether Node %s serves: %s', (version, serves) => {
    expect(nodeServes(version, engines.node)).toBe(serves);
  });
});
