import { srgbHexFromLab } from '../../colour/screen-colour.ts';
import { ringPath, xmlText } from '../../output/svg-text.ts';
import type { Recipe } from '../../recipe/types.ts';
import { pullRings } from '../../shapes/place/placed.ts';
import { carriedText } from './carried-recipe.ts';

/**
 * A recipe as a drawing in mm, a layer a pull, first down first, with the recipe itself in it. Each layer has the
 * colour of one stroke over white and multiplies what lies below: near for clear inks, and no measured overprint.
 * Source: Scalable Vector Graphics 2 (W3C); 'mix-blend-mode', Compositing and Blending Level 1 (W3C).
 * @throws EngineError 'screen.unknown-shape' when a placed shape is not in the recipe
 */
export function printSvg(recipe: Recipe): string {
  const { paper, pulls, screens, inks, shapes, title } = recipe;
  const size = `${paper.widthMm} ${paper.heightMm}`;
  const layers = pulls.flatMap((pull, i) => {
    const screen = screens.find(({ id }) => id === pull.screen);
    const ink = inks.find(({ id }) => id === pull.ink);
    if (screen === undefined || ink === undefined) return [];
    const { rings, fillRule } = pullRings(screen, shapes, pull, paper);
    const name = `${i + 1}: screen ${screen.number} ${screen.name}, ${ink.name}`;
    const path = rings.map((ring) => ringPath(ring, 3)).join('');
    return [
      `<g style="mix-blend-mode:multiply"><title>${xmlText(name)}</title><path fill="${srgbHexFromLab(ink.overWhite)}" fill-rule="${fillRule}" d="${path}"/></g>`,
    ];
  });
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${paper.widthMm}mm" height="${paper.heightMm}mm" viewBox="0 0 ${size}">`,
    `<metadata>${carriedText(recipe)}</metadata>`,
    `<title>${xmlText(title)}</title>`,
    `<rect width="${paper.widthMm}" height="${paper.heightMm}" fill="#ffffff"/>`,
    ...layers,
    '</svg>\n',
  ].join('\n');
}
