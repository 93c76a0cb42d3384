import { describe, expect, it } from 'vitest';
import { checkProject } from '../../../src/engine/project/read.ts';
import { wholeFigures } from '../../../src/engine/visit/visit-figures.ts';
import { smallProject } from '../../helpers/small-project.ts';

const said = (change: object): string =>
  checkProject({ ...smallProject(), ...change }, 'tide.json')
    .problems.map(({ message }) => message)
    .join(' ');
const press = smallProject().press;

describe('the press of a project', () => {
  it('should open without the figures that came later, at what is common practice', () => {
    const { safety: _, proofs: __, ...older } = { ...press, safety: 0, proofs: 0 };
    const { value } = checkProject({ ...smallProject(), press: older }, 'tide.json');
    expect(wholeFigures(value!.press)).toMatchObject({ safety: 0.1, proofs: 1, beds: 1 });
    const kept = checkProject({ ...smallProject(), press: { ...press, safety: 0.25, proofs: 3 } }, 'tide.json').value!;
    expect(kept.press).toMatchObject({ safety: 0.25, proofs: 3 });
  });

  it('should name the file and the figure that no visit can be made with', () => {
    for (const [change, figure] of [
      [{ press: { ...press, hoursPerDay: 0 } }, 'hoursPerDay'],
      [{ press: { ...press, proofs: 1.5 } }, 'proofs'],
      [{ press: { ...press, safety: -1 } }, 'safety'],
      [{ press: { ...press, rackPlaces: -2 } }, 'rackPlaces'],
      [{ visit: [{ recipe: 'a', sheets: 10_000 }] }, 'sheets'],
    ] as const) {
      const sentence = said(change);
      expect(sentence).toContain('tide.json');
      expect(sentence).toContain(figure);
    }
  });
});
