import { describe, expect, it } from 'vitest';
import { editionSchema } from '../../../src/engine/log/edition/edition-schema.ts';
import { type Edition, newEdition } from '../../../src/engine/log/edition/edition.ts';
import { USUAL_FILMS } from '../../../src/engine/output/film/settings.ts';
import { apply } from '../../../src/engine/project/apply.ts';
import { filmsSchema } from '../../../src/engine/project/schema.ts';
import { pullSchema } from '../../../src/engine/recipe/schema.ts';
import { recipeOf } from '../../../src/engine/recipe/write.ts';
import type { Pull } from '../../../src/engine/stack/types.ts';
import { smallProject } from '../../helpers/small-project.ts';

const start = smallProject();
const recipe = recipeOf(start.bench, start.drawer, { id: 'a', title: 'Ebb' });
const project = apply(start, { kind: 'keep-recipe', recipe }).project;

const signs = [0, 1, 40, 41, 200, 201, 1000, 1001].map((length) => 'x'.repeat(length));
const numbers = [-2000.5, -2000, -361, -360, -1, 0, 0.5, 1, 20, 21, 360.5, 500, 501, 100_000, 100_001, Number.NaN, Infinity];
const VALUES: unknown[] = [...signs, ...numbers, undefined, null, true, false, 'kept', 'sold', {}, [], [{}], [null], ['x']];

/** Every way to put one of the values in the place of one field, however deep. */
function* mutants<T>(whole: T): Generator<T> {
  for (const value of VALUES) yield value as T;
  if (typeof whole !== 'object' || whole === null) return;
  for (const [field, own] of Object.entries(whole))
    for (const other of mutants(own)) {
      const copy = structuredClone(whole) as Record<string, unknown>;
      copy[field] = other;
      yield copy as T;
    }
}

function refused(act: () => unknown): boolean {
  try {
    act();
    return false;
  } catch (error) {
    expect(error).toMatchObject({ message: expect.stringMatching(/^The .* cannot be so: it must be .*\.$/) });
    return true;
  }
}

describe('what commands check by hand', () => {
  it('should refuse of a pull what a file could not hold, and nothing else', () => {
    const pull = { ...start.bench[0]!, id: 'new' };
    let tried = 0;
    for (const field of ['id', 'dxMm', 'dyMm', 'turnDeg', 'strokes'] as const)
      for (const value of VALUES) {
        const other = { ...pull, [field]: value } as Pull;
        expect(
          refused(() => apply(project, { kind: 'add-pull', pull: other, at: 0 })),
          `${field} ${String(value).slice(0, 20)}`,
        ).toBe(!pullSchema.safeParse(other).success);
        tried++;
      }
    expect(tried).toBeGreaterThan(150);
  });

  it('should refuse of an edition what a file could not hold, and nothing else', () => {
    const edition: Edition = {
      ...newEdition(recipe),
      fates: [{ screen: 's1', fate: 'cancelled', by: 'the printer', when: '5 May' }],
      spares: 3,
      visit: 'v',
      marks: [{ sheet: 3, mark: 'BAT' }],
    };
    let tried = 0;
    for (const other of mutants(edition)) {
      // Of a recipe that is not there another sentence tells.
      if (typeof other !== 'object' || other === null || other.recipe !== edition.recipe) continue;
      expect(
        refused(() => apply(project, { kind: 'set-edition', edition: other })),
        JSON.stringify(other).slice(0, 400),
      ).toBe(!editionSchema.safeParse(other).success);
      tried++;
    }
    expect(tried).toBeGreaterThan(500);
  });

  it('should refuse of the making of films what a file could not hold, and nothing else', () => {
    let tried = 0;
    const others = ['squeegee', 'away', 'pdfs', 'svgs', 'A3', 'Letter', 'Tabloid', 5, -5, 5.1, 2, 1.9, 50, 50.1];
    for (const field of Object.keys(USUAL_FILMS))
      for (const value of [...VALUES, ...others]) {
        const films = { ...USUAL_FILMS, [field]: value };
        expect(
          refused(() => apply(project, { kind: 'set-films', films })),
          `${field} ${String(value).slice(0, 20)}`,
        ).toBe(!filmsSchema.safeParse(films).success);
        tried++;
      }
    const sheet = { widthMm: 700, heightMm: 500, acrossMm: [350], downMm: [], overlapMm: 6 };
    const many = (count: number) => Array.from({ length: count }, () => sheet);
    const places = [100, 101].map((count) => [{ ...sheet, downMm: Array.from({ length: count }, () => 9) }]);
    for (const cuts of [...mutants([sheet]), many(40), many(41), ...places]) {
      const films = { ...USUAL_FILMS, cuts };
      expect(
        refused(() => apply(project, { kind: 'set-films', films })),
        String(JSON.stringify(cuts)).slice(0, 80),
      ).toBe(!filmsSchema.safeParse(films).success);
      tried++;
    }
    expect(tried).toBeGreaterThan(500);
  });
});
