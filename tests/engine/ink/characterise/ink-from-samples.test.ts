import { describe, expect, it } from 'vitest';
import { deltaE2000 } from '../../../../src/engine/colour/delta-e.ts';
import { labD50 } from '../../../../src/engine/colour/lab.ts';
import type { CgatsSample } from '../../../../src/engine/ink/cgats/read-cgats.ts';
import { inkFromSamples, inkName } from '../../../../src/engine/ink/characterise/ink-from-samples.ts';
import { guessRoles, STANDARD_CARD } from '../../../../src/engine/ink/characterise/sample-roles.ts';
import { filmBands, overFilm } from '../../../../src/engine/ink/film/film.ts';

const flat = (value: number): Float64Array => new Float64Array(36).fill(value);
const kx = Float64Array.from({ length: 36 }, (_, band) => 0.1 + 1.5 * Math.exp(-(((band - 14) / 6) ** 2)));
const sx = flat(0.2);
const over = (ground: Float64Array): Float64Array => overFilm(filmBands(kx, sx), ground, new Float64Array(36));
const sample = (id: string, name: string, reflectance: Float64Array): CgatsSample => ({ id, name, reflectance });

const card = { white: flat(0.85), black: flat(0.04) };
const samples = [
  sample('1', 'Card white', card.white),
  sample('2', 'Card black', card.black),
  sample('3', 'Heron over white', over(card.white)),
  sample('4', 'Heron over black', over(card.black)),
];
const roles = { overWhite: 2, overBlack: 3, white: 0, black: 1 };

describe('guessRoles', () => {
  it('should go by names', () => {
    expect(guessRoles(samples)).toEqual(roles);
    expect(guessRoles([samples[3]!, samples[2]!])).toEqual({ overWhite: 1, overBlack: 0, white: STANDARD_CARD, black: STANDARD_CARD });
  });
  it('should go by lightness where names say nothing', () => {
    const found = guessRoles([sample('1', 'A1', over(card.black)), sample('2', 'A2', over(card.white))]);
    expect(found).toMatchObject({ overWhite: 1, overBlack: 0 });
  });
  it('should take a sample called paper for the bare white', () => {
    expect(guessRoles([...samples.slice(2), sample('9', 'Paper', card.white)]).white).toBe(2);
  });
  it('should take samples called by a ground alone for the bare card', () => {
    const named = [
      sample('White', 'White', card.white),
      sample('Black', 'Black', card.black),
      sample('Fern_over_white', 'Fern_over_white', over(card.white)),
      sample('Fern_over_black', 'Fern_over_black', over(card.black)),
    ];
    expect(guessRoles(named)).toEqual(roles);
    expect(guessRoles([named[2]!, named[0]!, named[3]!, named[1]!])).toEqual({ overWhite: 0, overBlack: 2, white: 1, black: 3 });
    expect(guessRoles([named[1]!, named[0]!])).toMatchObject({ overWhite: 1, overBlack: 0 });
  });
  it('should cope with a single sample', () => {
    expect(guessRoles([samples[2]!])).toMatchObject({ overWhite: 0, overBlack: 0 });
  });
});

describe('inkFromSamples', () => {
  it('should find the film again that the readings came from', () => {
    const { draft, problem, moved, fromLab } = inkFromSamples(samples, roles);
    expect(problem).toBe('');
    expect(moved).toEqual([]);
    expect(fromLab).toBe(false);
    expect(draft).toMatchObject({ basis: 'measured', name: 'Heron' });
    const film = filmBands(draft!.kx, draft!.sx);
    expect(deltaE2000(labD50(overFilm(film, card.black, new Float64Array(36))), labD50(over(card.black)))).toBeLessThan(0.01);
  });
  it('should say by how much an impossible band was moved', () => {
    const dark = over(card.black);
    dark[0] = dark[0]! / 20;
    const { moved, draft } = inkFromSamples([...samples.slice(0, 3), sample('4', 'dark', dark)], roles);
    expect(draft).not.toBeNull();
    expect(moved.map(({ band }) => band)).toEqual([0]);
    expect(moved[0]!.overBlack).toBeGreaterThan(0);
  });
  it('should count Lab alone as a drawdown', () => {
    const labs = samples.map(({ id, name, reflectance }) => ({ id, name, lab: labD50(reflectance!) }));
    const { draft, fromLab } = inkFromSamples(labs, roles);
    expect(fromLab).toBe(true);
    expect(draft?.basis).toBe('drawdown');
  });
  it('should refuse swapped and doubled readings in a sentence', () => {
    expect(inkFromSamples(samples, { ...roles, overWhite: 3, overBlack: 2 })).toMatchObject({
      draft: null,
      problem: expect.stringMatching(/brighter over black/),
    });
    expect(inkFromSamples(samples, { ...roles, overBlack: 2 })).toMatchObject({
      draft: null,
      problem: expect.stringMatching(/same sample/),
    });
    expect(inkFromSamples(samples, { ...roles, white: 1 })).toMatchObject({ draft: null, problem: expect.stringMatching(/too alike/) });
  });
});

describe('inkName', () => {
  it('should take what both names begin with', () => {
    expect(inkName('Heron over white', 'Heron over black')).toBe('Heron');
    expect(inkName('grey-teal_W', 'grey-teal_K')).toBe('grey-teal');
    expect(inkName('Foam (white)', 'Foam (black)')).toBe('Foam');
    expect(inkName('A1', 'B1')).toBe('A1');
  });
});
