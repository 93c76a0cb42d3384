import { num } from '../../base/at.ts';
import { filmBands, overFilm } from '../film/film.ts';
import { realSurface } from '../film/printing.ts';
import type { Surface } from '../film/saunderson.ts';
import type { Ink } from '../types.ts';
import { CARD_BLACK, CARD_WHITE } from './card.ts';
import { filmFromReadings } from './characterise.ts';

/** Curves that differ by less, as a share, are the same: what is left is rounding. */
const SAME_SHARE = 1e-9;

/**
 * An ink as it is when its readings are taken to have been made through another surface: one stroke of it
 * shows over the card's white and black what it did, in every band; on other films it shows something else.
 * @param from the surface under which its curves were found
 * @param to the surface from now on
 * @returns the ink itself when both are one; bands in which it hides its ground keep only their hue
 */
export function reread(ink: Ink, from: Surface | undefined, to: Surface | undefined): Ink {
  const [was, is] = [realSurface(from), realSurface(to)];
  if (was?.k1 === is?.k1 && was?.k2 === is?.k2) return ink;
  const { measurements } = ink;
  return {
    ...ink,
    ...again(ink, was, is),
    ...(measurements === undefined ? {} : { measurements: measurements.map((each) => ({ ...each, ...again(each, was, is) })) }),
  };
}

function again(ink: Pick<Ink, 'kx' | 'sx'>, was: Surface | undefined, is: Surface | undefined): Pick<Ink, 'kx' | 'sx'> {
  const film = filmBands(ink.kx, ink.sx, 1, was);
  const over = (ground: readonly number[]): Float64Array => overFilm(film, ground, new Float64Array(ground.length));
  const { kx, sx } = filmFromReadings(over(CARD_WHITE), over(CARD_BLACK), { white: CARD_WHITE, black: CARD_BLACK, surface: is });
  return { kx: Array.from(kx), sx: Array.from(sx) };
}

/** Whether two inks have the same curves but for rounding. */
export function sameCurves(a: Pick<Ink, 'kx' | 'sx'>, b: Pick<Ink, 'kx' | 'sx'>): boolean {
  const near = (x: number, y: number): boolean => Math.abs(x - y) <= SAME_SHARE * Math.max(Math.abs(x), Math.abs(y), 1);
  return a.kx.every((k, band) => near(k, num(b.kx, band))) && a.sx.every((s, band) => near(s, num(b.sx, band)));
}
