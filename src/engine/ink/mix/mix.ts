import { entryAt, num } from '../../base/at.ts';
import { EngineError } from '../../base/error.ts';
import { say } from '../../words/en/ink/mix.ts';
import { CARD_BLACK, CARD_WHITE } from '../characterise/card.ts';
import { coloursOn } from '../characterise/characterise.ts';
import { DEFAULT_SOLIDS } from '../film/dry-film.ts';
import { stackMinutesOf } from '../film/drying.ts';
import { meshRatio } from '../film/film-factor.ts';
import type { Surface } from '../film/saunderson.ts';
import { type Ink, INK_BASES, type MixPart } from '../types.ts';

/** An ink and how much of it goes into a mix. */
export interface InkPart {
  ink: Ink;
  /** By weight, 0 or more. */
  parts: number;
}

/**
 * The ink that a weighed mix gives: K = Σ c·K, S = Σ c·S, with c the shares by volume, which follow
 * from weights and densities.
 * @param stocks at least one with parts above 0; an ink that is itself a mix counts as what it is
 *   mixed from
 * @param head the new ink's id and name
 * @param surface that its two colours are seen through; left out, there is none
 * @returns an ink with its mix; curves for the first mesh that an ink names, its two colours on the invented
 *   contrast card, basis that of the least trusted ink, drying time that of the slowest
 * @throws EngineError 'ink.bad-mix' when parts are negative or all 0, 'ink.bad-mesh'
 * Source: Duncan (1940), Proc. Phys. Soc. 52, 390: coefficients of a mixture add in proportion.
 */
export function mixInks(stocks: readonly InkPart[], head: { id: string; name: string }, surface?: Surface): Ink {
  const used = stocks.filter(({ parts }) => parts !== 0);
  const bad = used.find(({ parts }) => !(parts > 0 && parts < Infinity));
  if (used.length === 0 || bad !== undefined) {
    throw new EngineError(
      'ink.bad-mix',
      bad === undefined ? say.mixHasNothingIn(head.name) : say.mixHasPartsOf(head.name, bad.parts, bad.ink.name),
    );
  }
  const first = entryAt(used, 0).ink;
  const mesh = used.find(({ ink }) => ink.mesh !== undefined)?.ink.mesh;
  const volumes = used.map(({ ink, parts }) => parts / ink.densityGPerCm3);
  const volume = volumes.reduce((sum, v) => sum + v, 0);
  const weight = used.reduce((sum, { parts }) => sum + parts, 0);
  const kx = new Array<number>(first.kx.length).fill(0);
  const sx = new Array<number>(first.sx.length).fill(0);
  used.forEach(({ ink }, i) => {
    const share = (num(volumes, i) / volume) * meshRatio(mesh, ink.mesh);
    for (let band = 0; band < kx.length; band++) {
      kx[band] = num(kx, band) + share * num(ink.kx, band);
      sx[band] = num(sx, band) + share * num(ink.sx, band);
    }
  });
  return {
    id: head.id,
    name: head.name,
    // A mix is to be trusted as little as the least trusted ink in it.
    basis: INK_BASES.find((basis) => used.some(({ ink }) => ink.basis === basis)) ?? first.basis,
    ...coloursOn({ kx, sx }, CARD_WHITE, CARD_BLACK, surface),
    kx,
    sx,
    dryMinutes: Math.max(...used.map(({ ink }) => ink.dryMinutes)),
    ...(used.some(({ ink }) => ink.stackMinutes !== undefined)
      ? { stackMinutes: Math.max(...used.map(({ ink }) => stackMinutesOf(ink))) }
      : {}),
    densityGPerCm3: weight / volume,
    ...(used.some(({ ink }) => ink.solids !== undefined)
      ? { solids: used.reduce((sum, { ink }, i) => sum + (num(volumes, i) / volume) * (ink.solids ?? DEFAULT_SOLIDS), 0) }
      : {}),
    ...(mesh === undefined ? {} : { mesh }),
    mix: mixOf(used),
  };
}

/**
 * An ink let down with transparent base.
 * @param parts parts of base to one part of ink, by weight, 0 or more
 * @param head id and name, by default the ink's name with the letdown, as in “Rust 1:4”; and the surface
 *   that its colours are seen through
 * @throws EngineError 'ink.bad-mix'
 */
export function letDown(ink: Ink, base: Ink, parts: number, head?: { id?: string; name?: string; surface?: Surface | undefined }): Ink {
  const named = { id: head?.id ?? `${ink.id}-1-${parts}`, name: head?.name ?? `${ink.name} 1:${parts}` };
  return mixInks(
    [
      { ink, parts: 1 },
      { ink: base, parts },
    ],
    named,
    head?.surface,
  );
}

/** Inks that are choices of colour for a pull: all but the stock inks. */
export function printInks(inks: readonly Ink[]): Ink[] {
  return inks.filter((ink) => ink.stock !== true);
}

/** Inks that mixes are weighed from, transparent base among them. */
export function stockInks(inks: readonly Ink[]): Ink[] {
  return inks.filter((ink) => ink.stock === true);
}

/** The transparent base of a drawer, the first if there are several. */
export function baseOf(inks: readonly Ink[]): Ink | undefined {
  return inks.find((ink) => ink.role === 'base');
}

/** Parts by stock ink, mixes taken apart, in the order of first use. */
function mixOf(used: readonly InkPart[]): MixPart[] {
  const sums = new Map<string, number>();
  const add = (ink: string, parts: number): void => void sums.set(ink, (sums.get(ink) ?? 0) + parts);
  for (const { ink, parts } of used) {
    if (ink.mix === undefined) add(ink.id, parts);
    else {
      const all = ink.mix.reduce((sum, part) => sum + part.parts, 0);
      for (const part of ink.mix) add(part.ink, (parts * part.parts) / all);
    }
  }
  return [...sums].map(([ink, parts]) => ({ ink, parts }));
}
