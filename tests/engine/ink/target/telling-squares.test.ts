import { describe, expect, it } from 'vitest';
import { deltaE2000 } from '../../../../src/engine/colour/delta-e.ts';
import { labD50 } from '../../../../src/engine/colour/lab.ts';
import { demoInks } from '../../../../src/engine/ink/demo/demo-inks.ts';
import { filmBands, overFilm } from '../../../../src/engine/ink/film/film.ts';
import { fitFilms } from '../../../../src/engine/ink/fit/fit-stacks.ts';
import { tellingSquares } from '../../../../src/engine/ink/target/telling-squares.ts';

const paper = { reflectance: new Array<number>(36).fill(0.86) };
const inks = demoInks().slice(0, 4);

describe('tellingSquares', () => {
  it('should give every ink alone, then as many different overprints as were asked for', () => {
    const squares = tellingSquares(inks, paper, 12);
    expect(squares).toHaveLength(12);
    expect(squares.slice(0, 4)).toEqual(inks.map(({ id }) => [id]));
    expect(new Set(squares.map((films) => films.join())).size).toBe(12);
    for (const films of squares.slice(4)) expect(films.length).toBeGreaterThan(1);
    expect(tellingSquares(inks.slice(0, 2), paper, 50)).toHaveLength(2 + 4);
    expect(tellingSquares(inks, paper, 12)).toEqual(squares);
  });

  // Films of the demo inks with a trapping of 0.7 and no surface: a press that the fit does not know beforehand.
  it('should let the fit predict what it was not shown better than as many squares that tell little', () => {
    const lab = (films: readonly string[]): [number, number, number] => {
      const shown = Float64Array.from(paper.reflectance);
      films.forEach((id, at) => {
        const ink = inks.find((each) => each.id === id)!;
        overFilm(filmBands(ink.kx, ink.sx, at === 0 ? 1 : 0.7), shown, shown);
      });
      return labD50(shown);
    };
    const all = inks.flatMap(({ id: first }) => inks.map(({ id: over }) => [first, over]));
    const missOf = (squares: readonly (readonly string[])[]): number => {
      const fit = fitFilms({ samples: squares.map((films) => ({ films: [...films], lab: lab(films) })), paper });
      const rest = all.filter((films) => !squares.some((square) => square.join() === films.join()));
      return rest.reduce((sum, films) => sum + deltaE2000(fit.predict(films), lab(films)), 0) / rest.length;
    };
    const chosen = missOf(tellingSquares(inks, paper, 10));
    const alone = missOf([...inks.map(({ id }) => [id]), ...inks.slice(0, 1).map(({ id }) => [id, id])]);
    expect(chosen).toBeLessThan(alone);
    expect(chosen).toBeLessThan(1.5);
  });
});
