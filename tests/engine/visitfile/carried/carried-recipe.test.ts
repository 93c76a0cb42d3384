import { deflateRawSync } from 'node:zlib';
import { createCanvas, loadImage } from '@napi-rs/canvas';
import { Resvg } from '@resvg/resvg-js';
import { describe, expect, it } from 'vitest';
import { recipeOf, studioOfRecipe } from '../../../../src/engine/recipe/write.ts';
import { carriedText, mayCarry, readCarried } from '../../../../src/engine/visitfile/carried/carried-recipe.ts';
import { printSvg } from '../../../../src/engine/visitfile/carried/print-svg.ts';
import { printPng } from '../../../../src/workers/jobs/print-png.ts';
import { smallProject } from '../../../helpers/small-project.ts';

const base = smallProject();
const recipe = recipeOf(base.bench, base.drawer, { id: 'a', title: 'Ebb & “flow” <3>\u0000' });

async function png(print = recipe, widthMm = 60, dpi = 40): Promise<Uint8Array> {
  const size = { widthMm, dpi, relative: true };
  const blob = await printPng({ studio: studioOfRecipe(print), pulls: print.pulls, size, recipe: print }, () => true);
  return new Uint8Array(await blob!.arrayBuffer());
}

async function pixelsOf(bytes: Uint8Array) {
  const image = await loadImage(Buffer.from(bytes));
  const context = createCanvas(image.width, image.height).getContext('2d');
  context.drawImage(image, 0, 0);
  return context.getImageData(0, 0, image.width, image.height);
}

describe('a picture that carries its recipe', () => {
  it('should be a PNG that another library opens, and give the recipe back', async () => {
    const bytes = await png();
    expect((await pixelsOf(bytes)).width).toBe(94);
    expect(mayCarry(bytes)).toBe(true);
    expect(readCarried(bytes, 'ebb.png')).toEqual({ value: recipe, problems: [] });
  });

  it('should be an SVG whose layers cover, in the eyes of another renderer (resvg), what the pulls cover', async () => {
    const svg = printSvg(recipe);
    const bytes = new TextEncoder().encode(svg);
    expect(readCarried(bytes, 'ebb.svg').value).toEqual(recipe);
    // One pull alone, against the outline of its screen: the white sheet less what is inked.
    const [pull] = recipe.pulls;
    const alone = { ...recipe, pulls: [pull!] };
    const picture = new Resvg(printSvg(alone), { fitTo: { mode: 'width', value: 300 } }).render();
    const ours = await pixelsOf(await png(alone, 76.2, 100));
    expect([ours.width, ours.height]).toEqual([picture.width, picture.height]);
    const isInked = (pixels: ArrayLike<number>, i: number): boolean => [0, 1, 2].some((k) => pixels[i * 4 + k]! < 247);
    // A getter that copies all of them at each call.
    const theirs = picture.pixels;
    let [inked, differ] = [0, 0];
    for (let i = 0; i < ours.width * ours.height; i++) {
      const here = isInked(ours.data, i);
      if (here) inked++;
      if (here !== isInked(theirs, i)) differ++;
    }
    expect(inked).toBeGreaterThan(1000);
    // Edges alone, where each renderer mixes ink and paper in its own way.
    expect(differ / inked).toBeLessThan(0.03);
  });

  it('should say in a sentence when there is none, or when it was cut', async () => {
    const bytes = await png();
    const text = (content: string) => new TextEncoder().encode(content);
    expect(readCarried(text('<svg xmlns="http://www.w3.org/2000/svg"/>'), 'a.svg').problems[0]!.message).toMatch(
      /^a\.svg: this picture carries no recipe; choose a PNG or SVG that was saved here/,
    );
    const half = carriedText(recipe).slice(0, 400);
    expect(readCarried(text(`<svg><metadata>${half}</metadata></svg>`), 'a.svg').problems[0]!.message).toMatch(/cut off or damaged/);
    expect(readCarried(bytes.subarray(0, 300), 'b.png').value).toBeNull();
    expect(readCarried(new Uint8Array(0), 'c.png').value).toBeNull();
    expect(mayCarry(text(' {"format": 1}'))).toBe(false);
  });

  it('should read nothing that unpacks to more than a recipe may have', () => {
    const text = JSON.stringify({ ...recipe, note: 'x'.repeat((1 << 26) + 10) });
    const bomb = `pullstack-recipe=${deflateRawSync(text).toString('base64url')}`;
    expect(bomb.length).toBeLessThan(1 << 20);
    expect(readCarried(new TextEncoder().encode(`<svg>${bomb}</svg>`), 'bomb.svg').value).toBeNull();
  });
});
