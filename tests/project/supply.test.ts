import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { auditSentence } from '../../.ci/audit-sentence.mjs';
import { shippedPackages } from '../../.ci/notices.ts';

const read = (path: string): string => readFileSync(new URL(`../../${path}`, import.meta.url), 'utf8');
const { dependencies, devDependencies } = JSON.parse(read('package.json')) as Record<string, Record<string, string>>;
const names = [...Object.keys(dependencies!), ...Object.keys(devDependencies!)].sort();
const reasons = JSON.parse(read('.ci/reasons.json')) as Record<string, { reason: string; old?: string }>;
const { packages } = JSON.parse(read('package-lock.json')) as {
  packages: Record<string, { version?: string; license?: string; hasInstallScript?: boolean }>;
};
const table = read('.ci/DECISIONS.md');

describe('packages', () => {
  it('should each have a reason, and no other', () => {
    expect(Object.keys(reasons).sort()).toEqual(names);
    for (const { reason } of Object.values(reasons)) expect(reason.length).toBeGreaterThan(4);
  });

  it('should stand in the table with version and licence, and with a reason to stay where three years have no release', () => {
    const made = /on (\d{4})-(\d{2})-\d{2}, dates/.exec(table)!;
    const months = (year: string, month: string): number => Number(year) * 12 + Number(month);
    for (const name of names) {
      const { version, license } = packages[`node_modules/${name}`]!;
      const row = table.split('\n').find((line) => line.startsWith(`| ${name} | `));
      expect(row, `${name}: run npm run supply`).toMatch(new RegExp(`^\\| ${name} \\| ${version} \\| `));
      expect(row).toContain(`| ${license} |`);
      const [, year, month] = /\| (\d{4})-(\d{2}) \|/.exec(row!)!;
      if (months(made[1]!, made[2]!) - months(year!, month!) > 36) expect(reasons[name]!.old, `${name} is old`).toBeDefined();
    }
  });

  it('should run nothing when those that ship are installed', () => {
    const shipped = shippedPackages().map(([folder]) => folder);
    expect(shipped.length).toBeGreaterThan(15);
    expect(shipped.filter((folder) => packages[folder]?.hasInstallScript === true)).toEqual([]);
    // No package at all, but for the file watcher of one system, which is left out elsewhere.
    const all = Object.entries(packages).filter(([, { hasInstallScript }]) => hasInstallScript === true);
    expect(all.map(([folder]) => folder.split('node_modules/').at(-1)).filter((name) => name !== 'fsevents')).toEqual([]);
  });

  it('should be called clean, faulty or not known, as npm audit answers', () => {
    // The shapes of npm's answers, from memory; the last as a mirror without audits gives it.
    const answer = (high: number): string =>
      JSON.stringify({
        vulnerabilities: high === 0 ? {} : { left: { name: 'left', severity: 'high' } },
        metadata: { vulnerabilities: { info: 0, low: 2, moderate: 0, high, critical: 0, total: 2 + high } },
      });
    expect(auditSentence({ stdout: answer(0) })).toEqual({
      sentence: 'npm audit: no fault that is high or critical is known, 2 lesser.',
      faulty: false,
    });
    expect(auditSentence({ stdout: answer(1) })).toEqual({ sentence: 'npm audit: 1 faults are high or critical, in left.', faulty: true });
    const refused = JSON.stringify({ message: '405 Method Not Allowed - POST https://registry.example/-/npm/v1/security/audits/quick' });
    expect(auditSentence({ stdout: refused }).sentence).toMatch(/^npm audit: the registry .* nothing of known faults \(405 .*\); ask/);
    expect(auditSentence({ stdout: '' }).sentence).toMatch(/\(no answer\)/);
  });
});
