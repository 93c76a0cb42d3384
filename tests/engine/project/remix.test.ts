import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { demoStocks } from '../../../src/engine/ink/demo/demo-stocks.ts';
import { mixInks } from '../../../src/engine/ink/mix/mix.ts';
import { mixesOf } from '../../../src/engine/ink/mix/remix.ts';
import { apply } from '../../../src/engine/project/apply.ts';
import { demoProject } from '../../../src/engine/project/demo.ts';
import { emptyProject } from '../../../src/engine/project/empty.ts';
import type { Project } from '../../../src/engine/project/types.ts';

const [base, one, two] = demoStocks() as [
  ReturnType<typeof demoStocks>[0],
  ReturnType<typeof demoStocks>[0],
  ReturnType<typeof demoStocks>[0],
];
const mix = mixInks(
  [
    { ink: base, parts: 60 },
    { ink: one, parts: 30 },
    { ink: two, parts: 10 },
  ],
  { id: 'mix', name: 'Mix' },
);
const other = mixInks(
  [
    { ink: base, parts: 1 },
    { ink: two, parts: 1 },
  ],
  { id: 'other', name: 'Other' },
);
const files = readdirSync('shapes')
  .filter((name) => name.endsWith('.svg'))
  .map((name) => ({ name, text: readFileSync(`shapes/${name}`, 'utf8') }));
const project: Project = apply(emptyProject(demoProject(files)), { kind: 'add-inks', inks: [base, one, two, mix, other] }).project;
const stronger = { ...one, kx: one.kx.map((k) => k * 2) };
const inkOf = ({ drawer }: Project, id: string) => drawer.inks.find((ink) => ink.id === id)!;

describe('a stock ink that changes', () => {
  it('should change the mixes weighed from it, in one step, and no others', () => {
    const { project: next, inverse } = apply(project, { kind: 'change-ink', ink: stronger });
    // What weighing the changed ink afresh gives.
    const fresh = mixInks(
      [
        { ink: base, parts: 60 },
        { ink: stronger, parts: 30 },
        { ink: two, parts: 10 },
      ],
      { id: 'mix', name: 'Mix' },
      project.drawer.surface,
    );
    expect(inkOf(next, 'mix')).toEqual(fresh);
    expect(inkOf(next, 'mix').kx[20]).toBeGreaterThan(mix.kx[20]!);
    expect(inkOf(next, 'other')).toEqual(other);
    expect(inverse.length).toBeGreaterThan(0);
    expect(mixesOf(next.drawer.inks, one.id).map(({ id }) => id)).toEqual(['mix']);
  });

  it('should keep the names and drying times of mixes, and mixes that were fitted to real prints', () => {
    const named = apply(project, { kind: 'change-ink', ink: { ...mix, name: 'My rust', dryMinutes: 77 } }).project;
    expect(inkOf(apply(named, { kind: 'change-ink', ink: stronger }).project, 'mix')).toMatchObject({ name: 'My rust', dryMinutes: 77 });
    const fitted = { ...mix, kx: mix.kx.map((k) => k * 1.1) };
    const measured = apply(project, { kind: 'change-ink', ink: fitted }).project;
    expect(inkOf(apply(measured, { kind: 'change-ink', ink: stronger }).project, 'mix')).toEqual(fitted);
  });

  it('should leave mixes alone when only its name or drying time changes', () => {
    const { project: next } = apply(project, { kind: 'change-ink', ink: { ...one, name: 'New name', dryMinutes: 5 } });
    expect(inkOf(next, 'mix')).toBe(inkOf(project, 'mix'));
  });

  it('should give its solids by volume to its mixes, weighted by volume', () => {
    const { project: next } = apply(project, { kind: 'change-ink', ink: { ...one, solids: 0.6 } });
    const volumes = [60 / base.densityGPerCm3, 30 / one.densityGPerCm3, 10 / two.densityGPerCm3] as const;
    // 0.35 from memory for inks that name none.
    const wanted = (0.35 * (volumes[0] + volumes[2]) + 0.6 * volumes[1]) / (volumes[0] + volumes[1] + volumes[2]);
    expect(inkOf(next, 'mix').solids).toBeCloseTo(wanted, 12);
    expect(inkOf(next, 'other').solids).toBeUndefined();
  });
});
