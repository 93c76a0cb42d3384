import { roundTo } from '../../base/units.ts';
import { linePath, ringPath, xmlText } from '../svg-text.ts';
import type { Drawn, OutPage, PageText } from './page.ts';

/** A tenth of a micrometre. */
const DIGITS = 4;

/**
 * A page as an SVG file at its size: a unit is a millimetre, everything is black.
 * Source: SVG 1.1 §7.2 (viewBox and units).
 */
export function pageSvg({ widthMm, heightMm, parts, name }: OutPage): string {
  const clips = parts.flatMap(({ clip }, i) =>
    clip === undefined
      ? []
      : [
          `<clipPath id="w${i}"><rect x="${text(clip.xMm)}" y="${text(clip.yMm)}" width="${text(clip.widthMm)}" height="${text(clip.heightMm)}"/></clipPath>`,
        ],
  );
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${text(widthMm)}mm" height="${text(heightMm)}mm" viewBox="0 0 ${text(widthMm)} ${text(heightMm)}">`,
    `<title>${xmlText(name)}</title>`,
    clips.length === 0 ? '' : `<defs>${clips.join('')}</defs>`,
    ...parts.map(({ drawn, clip }, i) => `<g${clip === undefined ? '' : ` clip-path="url(#w${i})"`}>${drawnSvg(drawn)}</g>`),
    '</svg>',
    '',
  ]
    .filter((line, at, all) => line !== '' || at === all.length - 1)
    .join('\n');
}

function drawnSvg({ filled, lines, texts }: Drawn): string {
  const rings = filled.filter((ring) => ring.length >= 6);
  return [
    rings.length === 0 ? '' : `<path d="${rings.map((ring) => ringPath(ring, DIGITS)).join('')}"/>`,
    ...lines.map(
      ({ points, widthMm }) => `<path d="${linePath(points, DIGITS)}" fill="none" stroke="#000" stroke-width="${text(widthMm)}"/>`,
    ),
    ...texts.map(textSvg),
  ].join('');
}

function textSvg({ text: words, xMm, yMm, sizeMm, bold, mirrored }: PageText): string {
  const place = mirrored ? `transform="translate(${text(xMm)} ${text(yMm)}) scale(-1 1)"` : `x="${text(xMm)}" y="${text(yMm)}"`;
  return `<text ${place} font-family="sans-serif" font-size="${text(sizeMm)}"${bold ? ' font-weight="bold"' : ''}>${xmlText(words)}</text>`;
}

/** A length to a tenth of a micrometre. */
function text(mm: number): string {
  return String(roundTo(mm, DIGITS));
}
