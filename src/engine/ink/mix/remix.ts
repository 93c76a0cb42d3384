import { defined, num } from '../../base/at.ts';
import { sameMesh } from '../film/mesh.ts';
import type { Surface } from '../film/saunderson.ts';
import type { Ink } from '../types.ts';
import { mixInks, type InkPart } from './mix.ts';

/** Curves this near, as a share of the larger, came from the same mix; the parts may have been rounded since. */
const SAME_SHARE = 1e-6;

/**
 * The mixes that follow when the inks they are weighed from change. A mix follows if it was as its
 * inks gave it; one that was fitted to real prints, or named another mesh, keeps its own curves.
 * @param before all inks of a drawer before the change
 * @param after the same ids after it
 * @param surface that their colours are seen through; left out, there is none
 * @returns those mixes anew: curves, colours, basis, density, solids and mesh; names and drying times stay
 */
export function remixed(before: readonly Ink[], after: readonly Ink[], surface?: Surface): Ink[] {
  const old = new Map(before.map((ink) => [ink.id, ink]));
  const now = new Map(after.map((ink) => [ink.id, ink]));
  return after.flatMap((ink): Ink[] => {
    const changed = ink.mix?.some((part) => !samePaint(old.get(part.ink), now.get(part.ink)));
    if (ink.mix === undefined || changed !== true) return [];
    const [was, is] = [mixed(ink, old, surface), mixed(ink, now, surface)];
    if (was === null || is === null || !sameCurves(was, ink) || !sameMesh(was.mesh, ink.mesh)) return [];
    const { mesh: _, solids: __, ...kept } = ink;
    const { kx, sx, overWhite, overBlack, basis, densityGPerCm3, solids, mesh } = is;
    return [
      {
        ...kept,
        kx,
        sx,
        overWhite,
        overBlack,
        basis,
        densityGPerCm3,
        ...(solids === undefined ? {} : { solids }),
        ...(mesh === undefined ? {} : { mesh }),
      },
    ];
  });
}

/** The mixes that an ink is weighed into. */
export function mixesOf(inks: readonly Ink[], id: string): Ink[] {
  return inks.filter((ink) => ink.mix?.some((part) => part.ink === id));
}

function mixed({ id, name, mix }: Ink, inks: ReadonlyMap<string, Ink>, surface: Surface | undefined): Ink | null {
  const parts: InkPart[] = [];
  for (const part of defined(mix)) {
    const ink = inks.get(part.ink);
    if (ink === undefined) return null;
    parts.push({ ink, parts: part.parts });
  }
  return mixInks(parts, { id, name }, surface);
}

function samePaint(a: Ink | undefined, b: Ink | undefined): boolean {
  if (a === b || a === undefined || b === undefined) return a === b;
  return (
    a.densityGPerCm3 === b.densityGPerCm3 &&
    a.solids === b.solids &&
    a.basis === b.basis &&
    sameMesh(a.mesh, b.mesh) &&
    a.kx.every((k, band) => k === b.kx[band]) &&
    a.sx.every((s, band) => s === b.sx[band])
  );
}

function sameCurves(a: Pick<Ink, 'kx' | 'sx'>, b: Pick<Ink, 'kx' | 'sx'>): boolean {
  const near = (x: number, y: number): boolean => Math.abs(x - y) <= SAME_SHARE * Math.max(Math.abs(x), Math.abs(y), 1e-6);
  return a.kx.every((k, band) => near(k, num(b.kx, band))) && a.sx.every((s, band) => near(s, num(b.sx, band)));
}
