import { EngineError } from '../../base/error.ts';
import { DEFAULT_DENSITY_G_PER_CM3 } from '../../ink/characterise/make-ink.ts';
import { filmThickness } from '../../ink/film/thickness.ts';
import { say } from '../../words/en/visit/quantities.ts';
import type { InkNeed, InkRun, InkSettings } from './types.ts';

/**
 * Wet ink to mix for a visit, per ink: printed area × what the mesh carries × transfer × strokes ×
 * (sheets and proofs) × density, once per ink what stays in screen and bucket, and a share of it all for
 * safety.
 * @returns in the order in which the inks first appear
 * @throws EngineError 'quantities.bad-number' naming the figure and the ink
 * 1 m² at 1 cm³/m² is 1 cm³.
 */
export function inkGrams(runs: readonly InkRun[], settings: InkSettings): InkNeed[] {
  const { transfer, strokeGain, lossMl, densityGPerCm3, safety = 0 } = settings;
  if (!(transfer > 0 && transfer <= 1)) throw bad('transfer', transfer, say.moreThan0At);
  if (!(lossMl >= 0 && lossMl < Infinity)) throw bad('loss', lossMl, '0 mL or more');
  if (!(safety >= 0 && safety < Infinity)) throw bad(say.safetyMargin, safety, say.n0OrMore);
  const needs = new Map<string, InkNeed>();
  for (const run of runs) {
    const of = say.ofInk(run.ink);
    if (!(run.areaMm2 >= 0 && run.areaMm2 < Infinity)) throw bad(say.printedArea(of), run.areaMm2, say.n0MmOrMore);
    if (!(Number.isInteger(run.sheets) && run.sheets >= 0)) throw bad(say.numberOfSheets(of), run.sheets, say.wholeNumber);
    const { proofs = 0 } = run;
    if (!(Number.isInteger(proofs) && proofs >= 0)) throw bad(say.numberOfProofs(of), proofs, say.wholeNumber);
    if (!(run.volumeCm3PerM2 > 0 && run.volumeCm3PerM2 < Infinity)) throw bad(say.meshVolume(of), run.volumeCm3PerM2, say.moreThan0Cm);
    const density = densityGPerCm3[run.ink] ?? DEFAULT_DENSITY_G_PER_CM3;
    if (!(density > 0 && density < Infinity)) throw bad(`density${of}`, density, say.moreThan0G);
    const sheetM2 = run.areaMm2 / 1e6;
    const sheetG = sheetM2 * run.volumeCm3PerM2 * transfer * filmThickness(run.strokes, strokeGain) * density;
    const need = needs.get(run.ink) ?? { ink: run.ink, areaM2: 0, printedG: 0, proofsG: 0, lossG: lossMl * density, safetyG: 0, totalG: 0 };
    need.areaM2 += sheetM2 * (run.sheets + proofs);
    need.printedG += sheetG * run.sheets;
    need.proofsG += sheetG * proofs;
    const wanted = need.printedG + need.proofsG + need.lossG;
    need.safetyG = wanted * safety;
    need.totalG = wanted + need.safetyG;
    needs.set(run.ink, need);
  }
  return [...needs.values()];
}

/**
 * Splits mixed inks into the stock inks they are weighed from.
 * @param mixes for each ink, parts by weight; an ink without a mix is a stock ink itself
 * @returns grams by stock ink
 * @throws EngineError 'quantities.bad-number' when parts are negative or all zero
 */
export function stockGrams(
  needs: readonly Pick<InkNeed, 'ink' | 'totalG'>[],
  mixes: Readonly<Record<string, readonly { stock: string; parts: number }[]>>,
): Map<string, number> {
  const grams = new Map<string, number>();
  for (const { ink, totalG } of needs) {
    const mix = mixes[ink] ?? [{ stock: ink, parts: 1 }];
    const all = mix.reduce((sum, { parts }) => sum + (parts >= 0 ? parts : Number.NaN), 0);
    if (!(all > 0 && all < Infinity)) throw bad(say.sumOfPartsIn(ink), all, say.moreThan0No);
    for (const { stock, parts } of mix) grams.set(stock, (grams.get(stock) ?? 0) + (totalG * parts) / all);
  }
  return grams;
}

function bad(name: string, found: number, allowed: string): EngineError {
  return new EngineError('quantities.bad-number', say.isGive(name, found, allowed));
}
