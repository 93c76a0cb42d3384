import { Resvg } from '@resvg/resvg-js';
import { strFromU8 } from 'fflate';
import { describe, expect, it } from 'vitest';
import { filmsFile } from '../../../src/components/output/films/films-file.ts';
import { visitFilms } from '../../../src/components/ui/films/film-offers.ts';
import { atOnce } from '../../../src/engine/base/at-once.ts';
import { USUAL_FILMS } from '../../../src/engine/output/film/settings.ts';
import { apply } from '../../../src/engine/project/apply.ts';
import { readProject } from '../../../src/engine/project/read.ts';
import { visitInputOf } from '../../../src/engine/project/visit-input.ts';
import { writeProject } from '../../../src/engine/project/write.ts';
import { readRecipe } from '../../../src/engine/recipe/read.ts';
import { sectionRecipes } from '../../../src/engine/recipe/section-recipes.ts';
import type { Recipe } from '../../../src/engine/recipe/types.ts';
import { recipeOf, studioOfRecipe, writeRecipe } from '../../../src/engine/recipe/write.ts';
import { planVisit, type PressPlan } from '../../../src/engine/visit/visit.ts';
import { Jobs } from '../../../src/workers/jobs/jobs.ts';
import { StudioPictures } from '../../../src/workers/jobs/pictures.ts';
import { runSections } from '../../../src/workers/jobs/section-job.ts';
import { pageFonts as fonts } from '../../helpers/page-fonts.ts';
import { pullOf, smallProject } from '../../helpers/small-project.ts';

const PAPER = { widthMm: 500, heightMm: 400 };
/** Three rectangles, one of them printed twice near by, once far off and once turned. */
function whole(): Recipe {
  const { drawer } = smallProject();
  const printable = { xMm: 10, yMm: 10, widthMm: 480, heightMm: 380 };
  const pulls = [
    pullOf('p1', 's1', 'rust', { dxMm: 12, dyMm: -6 }),
    pullOf('p2', 's2', 'weed'),
    pullOf('p3', 's1', 'foam', { dxMm: -3 }),
    pullOf('p4', 's1', 'tar', { dxMm: 150, dyMm: 40 }),
    pullOf('p5', 's3', 'weed', { turnDeg: 180, dyMm: 20 }),
  ];
  return recipeOf(
    pulls,
    { ...drawer, paper: { ...drawer.paper, ...PAPER, printable } },
    { id: 'w', title: 'Slack tide', note: 'Keep dry.' },
  );
}
const cutAt = (acrossMm: number[], downMm: number[] = [], overlapMm = 0) =>
  atOnce(sectionRecipes(whole(), { acrossMm, downMm, overlapMm }, (n) => `w-${n}`));

describe('sectionRecipes', () => {
  // Half of an overlap of 20 mm on either side of each cut, by hand.
  it.each([
    [0, [220, 280, 190, 210], [undefined, undefined]],
    [
      20,
      [230, 290, 200, 220],
      [
        { acrossMm: [220], downMm: [190] },
        { acrossMm: [10], downMm: [10] },
      ],
    ],
  ])('should show, laid joint on joint, what the whole print shows, sharing %i mm', (overlapMm, [left, right, up, low], joints) => {
    const recipe = whole();
    const sections = cutAt([220], [190], overlapMm);
    expect(sections.map(({ title, paper }) => [title, paper.widthMm, paper.heightMm])).toEqual([
      ['Slack tide, section 1 of 4', left, up],
      ['Slack tide, section 2 of 4', right, up],
      ['Slack tide, section 3 of 4', left, low],
      ['Slack tide, section 4 of 4', right, low],
    ]);
    expect([sections[0]!.joints, sections[3]!.joints]).toEqual(joints);
    for (const each of sections) expect(readRecipe(writeRecipe(each), 'x.json')).toEqual({ value: each, problems: [] });
    const draw = (of: Recipe) =>
      new StudioPictures(studioOfRecipe(of)).thumbnail({ pulls: of.pulls, heightPx: of.paper.heightMm, relative: false });
    const all = draw(recipe);
    expect([all.widthPx, all.heightPx]).toEqual([500, 400]);
    expect(new Set(new Uint32Array(all.pixels.buffer, all.pixels.byteOffset, 500 * 400)).size).toBeGreaterThan(6);
    const [x1, y1] = [500 - right!, 400 - low!];
    for (const [i, [x, y]] of [
      [0, 0],
      [x1, 0],
      [0, y1],
      [x1, y1],
    ].entries()) {
      const part = draw(sections[i]!);
      const row = (of: typeof all, from: number, at: number, count: number) =>
        Array.from(new Uint32Array(of.pixels.buffer, of.pixels.byteOffset + 4 * (at * of.widthPx + from), count));
      for (let at = 0; at < part.heightPx; at++) expect(row(part, 0, at, part.widthPx)).toEqual(row(all, x!, y! + at, part.widthPx));
    }
  });

  it('should have only what prints there, and read as recipes do', () => {
    const [left, right] = cutAt([320]) as [Recipe, Recipe];
    // By hand: p1 lies over 112 to 312 mm, p3 over 97 to 297, p4 over 250 to 450; p2 over 180 to 280; s3 turned about 250, 200 over 160 to 360.
    expect(left.pulls.map(({ id }) => id)).toEqual(['p1', 'p2', 'p3', 'p4', 'p5']);
    expect(right.pulls.map(({ id }) => id)).toEqual(['p4', 'p5']);
    expect(left.pulls.map(({ dxMm, dyMm, turnDeg }) => [dxMm, dyMm, turnDeg])).toEqual([
      [12, -6, 0],
      [0, 0, 0],
      [-3, 0, 0],
      [0, 0, 0],
      [0, 0, 0],
    ]);
    expect(left.screens.map(({ name, number }) => [number, name])).toEqual([
      [1, 's1, section 1 of 2'],
      [2, 's2, section 1 of 2'],
      [1, 's1, moved 150 mm right and 40 mm down, section 1 of 2'],
      [3, 's3, turned 180°, section 1 of 2'],
    ]);
    expect(right.inks.map(({ id }) => id).sort()).toEqual(['tar', 'weed']);
    expect(left.note).toBe(
      'Cut of “Slack tide”, section 1 of 2, row 1, column 1: 0 to 320 mm from its left and 0 to 400 mm from its top.\nKeep dry.',
    );
    expect(right.paper.printable).toEqual({ xMm: 0, yMm: 10, widthMm: 170, heightMm: 380 });
    for (const each of [left, right]) expect(readRecipe(writeRecipe(each), 'x.json')).toEqual({ value: each, problems: [] });
    // Nothing lies on the last 40 mm.
    expect(cutAt([460]).map(({ id }) => id)).toEqual(['w-1']);
  });

  it('should be planned as sheets of their own, in set-ups of their own stencils, with their own films', async () => {
    const sections = cutAt([320]);
    const kept = apply(smallProject(), { kind: 'keep-recipe', recipe: whole() }).project;
    const asked = apply(kept, { kind: 'set-visit', runs: [{ recipe: 'w', sheets: 3, overs: 1, proofs: 0 }] }).project;
    const cut = apply(asked, { kind: 'cut-recipe', recipe: 'w', sections }).project;
    expect(cut.visit).toEqual([
      { recipe: 'w-1', sheets: 3, overs: 1, proofs: 0 },
      { recipe: 'w-2', sheets: 3, overs: 1, proofs: 0 },
    ]);
    expect(readProject(writeProject(cut), 'p.json').value!.recipes.map(({ id }) => id)).toEqual(['w', 'w-1', 'w-2']);
    const input = visitInputOf(cut);
    let plan: PressPlan | null = null;
    for (const step of planVisit(input, 50)) plan = step;
    const made = { plan: plan!, input, recipes: sections };
    expect(plan!.sheets.map(({ recipe }) => recipe).sort()).toEqual([0, 0, 0, 0, 1, 1, 1, 1]);
    // Each pull of each section is a set-up here, and no set-up prints sheets of both.
    expect(plan!.cards.length).toBe(7);
    for (const { states } of plan!.cards) expect(new Set(states.map(({ recipe }) => recipe)).size).toBe(1);
    const films = visitFilms(made);
    expect(films.map(({ screen }) => screen.name).sort()).toEqual(
      sections.flatMap(({ screens }) => screens.map(({ name }) => name)).sort(),
    );
    // p4 on the right section, in the eyes of another renderer (resvg): 320 to 450 mm of its 250 to 450, 100 mm high, all of the film's black.
    // Two sections and two places of one screen: its number, told apart by letters.
    expect(films.map(({ key }) => key)).toEqual(['1', '1 b', '1 c', '2', '3', '3 b']);
    const film = films.find(({ screen }) => screen.name.startsWith('s1') && screen.name.endsWith('section 2 of 2'))!;
    expect(film.paper).toMatchObject({ widthMm: 180, heightMm: 400 });
    const ways = { ...USUAL_FILMS, title: '', cuts: { acrossMm: [], downMm: [] }, tile: null };
    const { bytes } = await filmsFile({ films: [film], among: films, ways, as: 'svgs', fonts }, () => {});
    const { pixels, width } = new Resvg(strFromU8(bytes), { fitTo: { mode: 'zoom', value: 1 }, font: { loadSystemFonts: false } }).render();
    const pxPerMm = width / (180 + 40);
    let black = 0;
    for (let y = Math.round(21 * pxPerMm); y < 419 * pxPerMm; y++)
      for (let x = Math.round(20 * pxPerMm); x < 199 * pxPerMm; x++) black += pixels[4 * (y * width + x) + 3]! / 255;
    expect(Math.abs(black / pxPerMm ** 2 - 130 * 100)).toBeLessThan(130);
  });

  it('should trim a section that is cut again at the joints of both', () => {
    const [, right] = cutAt([320], [], 20) as [Recipe, Recipe];
    expect([right.paper.widthMm, right.joints]).toEqual([190, { acrossMm: [10], downMm: [] }]);
    const again = atOnce(sectionRecipes(right, { acrossMm: [90], downMm: [], overlapMm: 6 }, (n) => `r-${n}`));
    expect(again.map(({ joints }) => joints)).toEqual([
      { acrossMm: [90, 10], downMm: [] },
      { acrossMm: [3], downMm: [] },
    ]);
    expect(again[0]!.note).toContain('It shares 6 mm with each neighbour: trim one of the two at the marks and lay it over the other.');
  });

  it('should be cut a step at a time, with what is done told, until it is stopped', async () => {
    const request = { job: 'a', recipe: whole(), cuts: { acrossMm: [220], downMm: [190] }, ids: ['w-1', 'w-2', 'w-3', 'w-4'] };
    const shares: number[] = [];
    expect(await runSections(new Jobs(), request, (share) => shares.push(share))).toEqual(cutAt([220], [190]));
    expect(shares.length).toBeGreaterThan(10);
    expect(shares).toEqual(shares.toSorted((a, b) => a - b));
    expect(shares.at(-1)).toBeLessThanOrEqual(1);
    const jobs = new Jobs();
    expect(await runSections(jobs, request, () => jobs.cancel('a'))).toBeNull();
    await expect(runSections(jobs, { ...request, cuts: { acrossMm: [600], downMm: [] } }, () => {})).rejects.toThrow(
      'does not lie on the sheet',
    );
  });

  it('should refuse what makes no sections in a sentence', () => {
    expect(() => cutAt([220], [], 41)).toThrow('Sections cannot overlap by 41 mm; give 0 to 40 mm.');
    expect(() => cutAt([])).toThrow('Without a cut the print is one section; say where to cut it, in mm from its left or top.');
    expect(() => cutAt([600])).toThrow('A cut at 600 mm from the left does not lie on the sheet, which is 500 mm wide; move or drop it.');
  });
});
