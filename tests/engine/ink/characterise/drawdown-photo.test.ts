import * as culori from 'culori';
import { describe, expect, it } from 'vitest';
import { deltaE2000 } from '../../../../src/engine/colour/delta-e.ts';
import { labD50, type Lab } from '../../../../src/engine/colour/lab.ts';
import { CARD_BLACK, CARD_WHITE } from '../../../../src/engine/ink/characterise/card.ts';
import { coloursFromPhoto, drawdownFromPhoto, type PatchRgb } from '../../../../src/engine/ink/characterise/drawdown-photo.ts';
import { demoInks } from '../../../../src/engine/ink/demo/demo-inks.ts';
import { DEMO_PAPER } from '../../../../src/engine/ink/demo/demo-paper.ts';
import { stackReflectance } from '../../../../src/engine/ink/film/film.ts';

// The photo is made with culori, not with the code under test: Lab D50 to linear light, then exposure,
// the colour of the light and haze a channel, then encoded and rounded as a camera's JPEG is.
const EXPOSURE = [0.62, 0.7, 0.55];
const HAZE = [0.012, 0.01, 0.016];
const linear = culori.converter('lrgb');
const encoded = culori.converter('rgb');
function photographed(lab: Readonly<Lab>): PatchRgb {
  const { r, g, b } = linear({ mode: 'lab', l: lab[0], a: lab[1], b: lab[2] });
  const [lr, lg, lb] = [r, g, b].map((value, i) => value * EXPOSURE[i]! + HAZE[i]!) as [number, number, number];
  const rgb = encoded({ mode: 'lrgb', r: lr, g: lg, b: lb });
  return [rgb.r, rgb.g, rgb.b].map((value) => Math.round(2550 * Math.max(0, value)) / 10) as unknown as PatchRgb;
}
const card = { white: photographed(labD50(CARD_WHITE)), black: photographed(labD50(CARD_BLACK)) };

describe('drawdownFromPhoto', () => {
  it('should take exposure, the colour of the light and haze out of a photo', () => {
    for (const ink of demoInks()) {
      const overWhite = labD50(stackReflectance([ink], CARD_WHITE));
      const overBlack = labD50(stackReflectance([ink], CARD_BLACK));
      const { colours, problems } = drawdownFromPhoto({ ...card, overWhite: photographed(overWhite), overBlack: photographed(overBlack) });
      expect(problems).toEqual([]);
      expect(deltaE2000(colours!.overWhite, overWhite)).toBeLessThan(0.25);
      expect(deltaE2000(colours!.overBlack, overBlack)).toBeLessThan(0.25);
    }
  });

  it('should say what is wrong with a photo', () => {
    const good = { white: [220, 215, 205], black: [40, 38, 44], overWhite: [190, 90, 60], overBlack: [90, 60, 50] } as const;
    const codes = (more: Partial<Record<keyof typeof good, PatchRgb>>): string[] =>
      drawdownFromPhoto({ ...good, ...more }).problems.map(({ code, where }) => `${code} ${where}`);
    expect(codes({})).toEqual([]);
    expect(codes({ white: [255, 250, 240] })).toEqual(['drawdown.clipped white']);
    expect(codes({ overWhite: [255, 90, 60] })).toEqual(['drawdown.clipped overWhite']);
    expect(codes({ overWhite: [240, 238, 230] })).toEqual(['drawdown.above-white overWhite']);
    expect(codes({ black: [0, 0, 4] })).toEqual(['drawdown.clipped black']);
    expect(codes({ white: good.black, black: good.white })).toEqual(['drawdown.no-contrast black']);
    expect(codes({ white: good.overBlack, black: good.overBlack })).toEqual(['drawdown.no-contrast black']);
    expect(codes({ overWhite: good.overBlack, overBlack: good.overWhite })).toEqual(['drawdown.over-black-brighter overBlack']);
    expect(codes({ black: [NaN, 0, 0] })).toEqual(['drawdown.bad-patch black']);
    expect(drawdownFromPhoto({ ...good, white: good.black, black: good.white }).colours).toBeNull();
  });
});

describe('coloursFromPhoto', () => {
  const bare = { white: photographed(labD50(DEMO_PAPER.reflectance)), black: card.black };

  it('should read overprints by the bare paper and a black patch', () => {
    const [a, b] = demoInks();
    const prints = [[a!], [b!], [a!, b!], [b!, a!]].map((films) => labD50(stackReflectance(films, DEMO_PAPER.reflectance)));
    const { labs, problems } = coloursFromPhoto(bare, prints.map(photographed), DEMO_PAPER.reflectance);
    expect(problems).toEqual([]);
    labs!.forEach((lab, i) => expect(deltaE2000(lab, prints[i]!)).toBeLessThan(0.3));
  });

  it('should say which patch is wrong, and give no colours without a scale', () => {
    const codes = (...args: Parameters<typeof coloursFromPhoto>): string[] =>
      coloursFromPhoto(...args).problems.map(({ code, where }) => `${code} ${where}`);
    const paper = DEMO_PAPER.reflectance;
    expect(
      codes(
        bare,
        [
          [120, 80, 60],
          [255, 80, 60],
        ],
        paper,
      ),
    ).toEqual(['photo.clipped 1']);
    expect(codes(bare, [[250, 250, 250]], paper)).toEqual(['photo.above-white 0']);
    for (const bad of [
      [120, NaN, 60],
      [120, -1, 60],
      [120, 256, 60],
      [120, 60],
    ])
      expect(codes(bare, [bad as unknown as PatchRgb], paper)).toEqual(['photo.bad-patch 0']);
    // No light in a channel is a colour; a patch as light as the paper is not lighter; and one that is clipped is not told twice.
    expect(codes(bare, [[0, 120, 60], bare.white], paper)).toEqual([]);
    expect(codes(bare, [[255, 250, 250]], paper)).toEqual(['photo.clipped 0']);
    expect(coloursFromPhoto({ white: bare.black, black: bare.white }, [[120, 80, 60]], paper)).toMatchObject({
      labs: null,
      problems: [{ code: 'photo.no-contrast', where: 'black' }],
    });
  });
});
