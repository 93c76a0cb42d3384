import { num } from '../../base/at.ts';
import { roundTo } from '../../base/units.ts';
import { ringPath, xmlText } from '../svg-text.ts';

/** What is cut on one sheet of material, mm from its top left. */
export interface CutSheet {
  name: string;
  widthMm: number;
  heightMm: number;
  /** Closed single contours. */
  rings: readonly Float64Array[];
  /** What the screen of each contour is called, where a sheet holds pieces of several. */
  screens?: readonly string[];
}

/** A tenth of a micrometre. */
const DIGITS = 4;
/** Width of a hairline, mm: cutters follow lines that are next to nothing. Common practice, no source. */
const HAIRLINE_MM = 0.01;

/** A sheet as an SVG file at its size, each contour a closed hairline without a fill, of the class of
 * its screen where there are several. Source: SVG 1.1 §7.2. */
export function plateSvg({ name, widthMm, heightMm, rings, screens }: CutSheet): string {
  const classOf = (i: number): string => (screens === undefined ? '' : `class="screen-${plain(screens[i] ?? '')}" `);
  const paths = rings.map((ring, i) => `<path ${classOf(i)}d="${ringPath(ring, DIGITS)}"/>`).join('\n');
  return `<svg xmlns="http://www.w3.org/2000/svg" width="${widthMm}mm" height="${heightMm}mm" viewBox="0 0 ${widthMm} ${heightMm}">
<title>${xmlText(name)}</title>
<g fill="none" stroke="#000" stroke-width="${HAIRLINE_MM}">
${paths}
</g>
</svg>
`;
}

/**
 * A sheet as an ASCII DXF file of release 12, in mm with y upwards: each contour a closed polyline on the layer CUT,
 * or on CUT_ and its screen where there are several.
 * Source: group codes of the open exchange format, from memory; read back in tests by another library.
 */
export function plateDxf({ heightMm, rings, screens }: CutSheet): string {
  const at = (value: number): string => String(roundTo(value, DIGITS));
  const point = (x: number, y: number): string[] => ['10', at(x), '20', at(heightMm - y), '30', '0'];
  const lines = [
    '0',
    'SECTION',
    '2',
    'HEADER',
    '9',
    '$ACADVER',
    '1',
    'AC1009',
    '9',
    '$INSUNITS',
    '70',
    '4',
    '0',
    'ENDSEC',
    '0',
    'SECTION',
    '2',
    'ENTITIES',
  ];
  for (const [i, ring] of rings.entries()) {
    const layer = screens === undefined ? 'CUT' : `CUT_${plain(screens[i] ?? '')}`;
    lines.push('0', 'POLYLINE', '8', layer, '66', '1', '70', '1', '10', '0', '20', '0', '30', '0');
    for (let at = 0; at + 1 < ring.length; at += 2) lines.push('0', 'VERTEX', '8', layer, ...point(num(ring, at), num(ring, at + 1)));
    lines.push('0', 'SEQEND', '8', layer);
  }
  lines.push('0', 'ENDSEC', '0', 'EOF', '');
  return lines.join('\n');
}

/** A screen's key in letters that classes and layers may have. */
function plain(key: string): string {
  return key.replaceAll(/[^A-Za-z0-9]+/g, '-');
}
