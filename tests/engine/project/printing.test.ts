import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { deltaE2000 } from '../../../src/engine/colour/delta-e.ts';
import { CARD_BLACK, CARD_WHITE } from '../../../src/engine/ink/characterise/card.ts';
import { coloursOn } from '../../../src/engine/ink/characterise/characterise.ts';
import { inkDrift } from '../../../src/engine/ink/drift/drift.ts';
import { USUAL_SURFACE, USUAL_TRAPPING } from '../../../src/engine/ink/film/printing.ts';
import { swatchLab } from '../../../src/engine/ink/film/swatch.ts';
import { apply } from '../../../src/engine/project/apply.ts';
import type { Command } from '../../../src/engine/project/commands/command.ts';
import { demoProject } from '../../../src/engine/project/demo.ts';
import { emptyProject } from '../../../src/engine/project/empty.ts';
import { readProject } from '../../../src/engine/project/read.ts';
import type { Project } from '../../../src/engine/project/types.ts';
import { writeProject } from '../../../src/engine/project/write.ts';
import { driftedRecipes } from '../../../src/engine/recipe/drifted.ts';
import { recipeOf } from '../../../src/engine/recipe/write.ts';
import { printError, pullsError } from '../../../src/engine/stack/print-error.ts';

const files = readdirSync('shapes')
  .filter((name) => name.endsWith('.svg'))
  .map((name) => ({ name, text: readFileSync(`shapes/${name}`, 'utf8') }));
const demo = demoProject(files);
const after = (project: Project, ...commands: Command[]): Project =>
  commands.reduce((now, command) => apply(now, command).project, project);
const surface = { k1: 0, k2: 0.45 };

/** Largest ΔE00 between what inks show over the card now and before. */
function moved(now: Project, before: Project): number {
  return Math.max(
    ...now.drawer.inks.map((ink, i) => {
      const is = coloursOn(ink, CARD_WHITE, CARD_BLACK, now.drawer.surface);
      const was = coloursOn(before.drawer.inks[i]!, CARD_WHITE, CARD_BLACK, before.drawer.surface);
      return Math.max(deltaE2000(is.overWhite, was.overWhite), deltaE2000(is.overBlack, was.overBlack));
    }),
  );
}

describe('surface and trapping of a project', () => {
  it('should keep what inks show over the card when it is said how they were measured, and come back', () => {
    const set = after(demo, { kind: 'set-surface', surface });
    expect(set.drawer.surface).toEqual(surface);
    expect(set.drawer.inks[0]!.kx).not.toEqual(demo.drawer.inks[0]!.kx);
    expect(moved(set, demo)).toBeLessThan(0.5);
    expect(moved(after(set, { kind: 'set-surface', surface: { k1: 0, k2: 0 } }), demo)).toBeLessThan(0.5);
  });

  it('should refuse what no press and no print has in one sentence', () => {
    for (const factor of [0.29, 1.21, NaN]) {
      expect(() => apply(demo, { kind: 'set-trapping', trapping: { factor } })).toThrow(
        /^A film on a film cannot be .* give 30 to 120 %\.$/,
      );
    }
    for (const k2 of [-0.01, 0.91]) {
      expect(() => apply(demo, { kind: 'set-surface', surface: { k1: 0, k2 } })).toThrow(
        /^The share that the surface throws back inside, k2, is .*; give 0 to 0\.9\.$/,
      );
    }
    expect(() => apply(demo, { kind: 'set-surface', surface: { k1: 0.2, k2: 0 } })).toThrow(/k1, is 0\.2; give 0 to 0\.1/);
    expect(() =>
      apply(demo, { kind: 'set-trapping', trapping: { factor: 0.8, pairs: [{ under: 'none', over: 'tar', factor: 0.9 }] } }),
    ).toThrow(/no ink "none"/);
  });

  it('should be written, read and carried by recipes, and absent from projects from before', () => {
    expect(demo.drawer.surface).toBeUndefined();
    const [one, two] = demo.drawer.inks;
    const trapping = { factor: 0.8, pairs: [{ under: one!.id, over: two!.id, factor: 0.7 }] };
    const set = after(demo, { kind: 'set-surface', surface }, { kind: 'set-trapping', trapping });
    expect(readProject(writeProject(set), 'a.json').value!.drawer).toMatchObject({ surface, trapping });
    const recipe = recipeOf(set.bench, set.drawer, { id: 'r', title: 'R' });
    expect(recipe).toMatchObject({ surface, trapping });
    // Opened where nothing is known of a surface, it prints as it did, and inks that were there show what they did.
    const opened = after(demo, { kind: 'keep-recipe', recipe }, { kind: 'open-recipe', recipe: 'r' });
    expect(opened.drawer).toMatchObject({ surface, trapping });
    expect(opened.drawer.inks).toHaveLength(demo.drawer.inks.length);
    expect(
      moved({ ...opened, drawer: { ...opened.drawer, inks: opened.drawer.inks.slice(0, demo.drawer.inks.length) } }, demo),
    ).toBeLessThan(0.5);
    // A pair goes with its ink.
    const free = { ...set, bench: [], lesson: [] };
    expect(apply(free, { kind: 'remove-ink', ink: one!.id }).project.drawer.trapping).toEqual({ factor: 0.8, pairs: [] });
  });

  it('should begin with the usual ones where a project is new', () => {
    const fresh = emptyProject(demo);
    expect(fresh.drawer).toMatchObject({ surface: USUAL_SURFACE, trapping: { factor: USUAL_TRAPPING } });
    expect(moved(fresh, demo)).toBeLessThan(0.5);
    expect(emptyProject(after(demo, { kind: 'set-trapping', trapping: { factor: 1 } })).drawer.trapping).toEqual({ factor: 1 });
  });

  it('should ask for no screen and no wall of the project before', () => {
    const explore = { ...demo.explore, mustScreens: [demo.drawer.screens[0]!.id], onlyAtHand: true, seed: 'another wall 7' };
    expect(emptyProject({ ...demo, explore }).explore).toEqual(emptyProject(demo).explore);
    expect(emptyProject(demo).explore.seed).not.toBe(demo.explore.seed);
  });

  it('should take films, trapping and surface of a fit in one step', () => {
    const [one, other] = demo.drawer.inks;
    const fit = {
      inks: [{ id: one!.id, kx: one!.kx.map((k) => k * 1.1), sx: [...one!.sx], squares: 3 }],
      trapping: { factor: 0.75 },
      surface,
      looDeltaE: 2.5,
    };
    const taken = after(demo, { kind: 'take-target-fit', fit });
    expect(taken.drawer).toMatchObject({ surface, trapping: { factor: 0.75 } });
    expect(taken.drawer.inks[0]).toMatchObject({ basis: 'measured', kx: fit.inks[0]!.kx, fit: { looDeltaE: 2.5, squares: 3 } });
    expect(taken.drawer.inks[1]!.overWhite).toEqual(other!.overWhite);
    expect(() => apply(demo, { kind: 'take-target-fit', fit: { ...fit, trapping: { factor: 2 } } })).toThrow(/cannot be 2 times/);
  });
});

describe('drift', () => {
  const pull = demo.bench[0]!;
  const ink = demo.drawer.inks.find(({ id }) => id === pull.ink)!;
  const stronger = {
    date: '2026-11-02',
    overWhite: ink.overWhite,
    overBlack: ink.overBlack,
    kx: ink.kx.map((k) => 1.3 * k),
    sx: [...ink.sx],
  };
  const again = after(demo, { kind: 'measure-ink', ink: ink.id, measurement: stronger });
  const now = again.drawer.inks.find(({ id }) => id === ink.id)!;

  it('should keep what an ink was, and tell how far that of today is from it', () => {
    expect(now.kx).toEqual(stronger.kx);
    const [card, today] = inkDrift(now, demo.drawer.paper);
    expect(card!.date).toBe('');
    expect(today).toMatchObject({ date: '2026-11-02', onPaper: 0 });
    // What swatches of both inks on the paper differ by.
    const paper = demo.drawer.paper.reflectance;
    expect(card!.onPaper).toBeCloseTo(deltaE2000(swatchLab(ink, paper), swatchLab(stronger, paper)), 9);
    expect(card!.onPaper).toBeGreaterThan(0.5);
    expect(inkDrift(ink, demo.drawer.paper)).toEqual([]);
    expect(readProject(writeProject(again), 'a.json').problems).toEqual([]);
    const march = after(again, { kind: 'measure-ink', ink: ink.id, measurement: { ...stronger, date: '2026-03-14', kx: ink.kx } });
    expect(march.drawer.inks.find(({ id }) => id === ink.id)).toMatchObject({ kx: stronger.kx });
    expect(() => apply(demo, { kind: 'measure-ink', ink: ink.id, measurement: { ...stronger, date: '2026-02-31' } })).toThrow(
      /^“2026-02-31” is no date/,
    );
  });

  it('should predict recipes that use it again', () => {
    const recipe = recipeOf(demo.bench, demo.drawer, { id: 'r', title: 'R' });
    const [drifted] = driftedRecipes([recipe], now);
    expect(drifted!.most).toBeGreaterThan(0.5);
    expect(drifted!.mean).toBeGreaterThan(0);
    expect(drifted!.mean).toBeLessThan(drifted!.most);
    expect(driftedRecipes([recipe], ink)[0]).toMatchObject({ mean: 0, most: 0 });
    expect(driftedRecipes([recipe], { ...now, id: 'another' })).toEqual([]);
  });
});

describe('the error of a print', () => {
  it('should be nothing for bare paper, and between those of its places', () => {
    expect(printError({ pulls: [] }, demo.drawer)).toEqual({ mean: 0, most: 0 });
    const { mean, most } = printError({ pulls: demo.bench }, demo.drawer);
    expect(mean).toBeGreaterThan(0.5);
    expect(most).toBeGreaterThan(mean);
    expect(pullsError(demo.bench.slice(0, 1), demo.drawer).deltaE).toBeLessThan(most);
    expect(() => pullsError([{ ...demo.bench[0]!, ink: 'gone' }], demo.drawer)).toThrow(/uses the ink 'gone'/);
  });
});
