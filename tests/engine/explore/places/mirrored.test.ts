import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { screensToMake } from '../../../../src/engine/explore/prepare/screens-to-make.ts';
import { createExplorer } from '../../../../src/engine/explore/search/explorer.ts';
import { checkExplore } from '../../../../src/engine/explore/settings/check.ts';
import type { Variant } from '../../../../src/engine/explore/types.ts';
import { shapeBounds } from '../../../../src/engine/geometry/rings.ts';
import { apply } from '../../../../src/engine/project/apply.ts';
import { demoProject } from '../../../../src/engine/project/demo.ts';
import { firstWall } from '../../../../src/engine/project/first-wall.ts';
import { checkProject } from '../../../../src/engine/project/read.ts';
import type { Project } from '../../../../src/engine/project/types.ts';
import { readRecipe } from '../../../../src/engine/recipe/read.ts';
import { recipeOf, writeRecipe } from '../../../../src/engine/recipe/write.ts';
import { isMirrored, mirrorPairs, missingMirrors } from '../../../../src/engine/shapes/place/mirrored.ts';
import { screenRings } from '../../../../src/engine/shapes/place/placed.ts';
import { registerRecipes } from '../../../../src/engine/visit/registry.ts';
import { differenceByResvg } from '../../../published/shapes/raster.ts';

const folder = new URL('../../../../shapes/', import.meta.url);
const files = readdirSync(folder)
  .filter((name) => name.endsWith('.svg'))
  .map((name) => ({ name, text: readFileSync(new URL(name, folder), 'utf8') }));
const demo = firstWall(demoProject(files));
const asked = apply(demo, { kind: 'set-explore', change: { mirrored: true } }).project;
const { drawer } = asked;
const { widthMm, heightMm } = drawer.paper;

function wall(project: Project): Variant[] {
  const explorer = createExplorer({ ...project, explore: { ...project.explore, count: 40 } });
  const variants: Variant[] = [];
  while (!explorer.done) variants.push(...explorer.step(16));
  return variants;
}

describe('a mirrored screen', () => {
  // Against a renderer that mirrors the screen's path about the sheet's middle by itself (resvg).
  it('should print what a renderer makes of its other turned over', { timeout: 60_000 }, () => {
    const pairs = mirrorPairs(drawer.screens, widthMm);
    for (const screen of demo.drawer.screens) {
      const mirror = drawer.screens.find(({ id }) => id === pairs.get(screen.id))!;
      expect(isMirrored(mirror)).toBe(true);
      const { rings, fillRule } = screenRings(screen, drawer.shapes);
      const d = rings.map((ring) => `M${Array.from(ring).join(' ')}Z`).join('');
      const svg = `<svg xmlns="http://www.w3.org/2000/svg" width="${widthMm}mm" height="${heightMm}mm" viewBox="0 0 ${widthMm} ${heightMm}"><path fill-rule="${fillRule}" transform="translate(${widthMm} 0) scale(-1 1)" d="${d}"/></svg>`;
      const outline = screenRings(mirror, drawer.shapes);
      const box = shapeBounds(outline.rings);
      const { apart, share } = differenceByResvg(svg, outline, { widthMm, heightMm }, 560);
      expect(share).toBeGreaterThan(0.005);
      expect((apart * widthMm * heightMm) / (box.widthMm * box.heightMm), screen.name).toBeLessThan(0.005);
    }
  });

  it('should be a screen of its own in the drawer, once, under a number of its own, and go again where nothing uses it', () => {
    expect(drawer.screens.length).toBe(32);
    expect(new Set(drawer.screens.map(({ number }) => number)).size).toBe(32);
    expect(missingMirrors(drawer.screens, widthMm)).toEqual([]);
    expect(apply(asked, { kind: 'set-explore', change: { mirrored: true } }).project.drawer.screens).toEqual(drawer.screens);
    expect(checkProject(JSON.parse(JSON.stringify(asked)), 'asked').value?.drawer.screens).toEqual(drawer.screens);
    const used = apply(asked, { kind: 'open-stack', pulls: [{ ...demo.bench[0]!, screen: 'keel-mirrored' }] }).project;
    const ids = (project: Project): string[] => project.drawer.screens.map(({ id }) => id);
    expect(ids(apply(used, { kind: 'set-explore', change: { mirrored: undefined } }).project)).toEqual([...ids(demo), 'keel-mirrored']);
    expect(ids(apply(asked, { kind: 'set-explore', change: { mirrored: undefined } }).project)).toEqual(ids(demo));
  });

  it('should stand in for its other on a wall, and be another frame at the press and on the list to have made', () => {
    const prints = wall(asked);
    const pairs = mirrorPairs(drawer.screens, widthMm);
    const turned = prints.filter(({ pulls }) => pulls.some(({ screen }) => screen.endsWith('-mirrored')));
    expect(turned.length).toBeGreaterThan(10);
    for (const { pulls } of prints) {
      // Mirrors come of the pulls that are there, not as screens that are brought in.
      for (const { id } of pulls) expect(id.startsWith('in-') && id.includes('-mirrored')).toBe(false);
    }
    const print = turned.find(({ pulls }) => new Set(pulls.map(({ screen }) => screen)).size === pulls.length)!;
    const screens = print.pulls.map(({ screen }) => screen);
    const originals = screens.map((screen) => (screen.endsWith('-mirrored') ? pairs.get(screen)! : screen));
    const prepared = screensToMake({ prints: [{ screens }, { screens: originals }], most: 40 });
    expect(prepared.screens.length).toBe(new Set([...screens, ...originals]).size);
    const recipe = recipeOf(print.pulls, drawer, { id: 'turned', title: 'Turned over' });
    const plain = recipeOf(
      print.pulls.map((pull, i) => ({ ...pull, screen: originals[i]! })),
      drawer,
      { id: 'plain', title: 'As drawn' },
    );
    expect(readRecipe(writeRecipe(recipe), 'turned.json').value).toEqual(recipe);
    const frames = registerRecipes([recipe, plain]).screens;
    expect(frames.length).toBe(new Set([...screens, ...originals]).size);
    expect(frames.filter(({ mirrored }) => mirrored === true).length).toBe(screens.filter((id) => id.endsWith('-mirrored')).length);
  });

  it('should be told of where none is there', () => {
    const none = { ...demo.explore, mirrored: true };
    expect(checkExplore(none, demo.drawer, demo.bench).map(({ message }) => message)).toEqual([
      'Mirrored films are asked for, but no screen in the Drawer mirrors another; let the wall do without, then ask for them again to add them.',
    ]);
    expect(checkExplore(none, drawer, demo.bench)).toEqual([]);
  });
});
