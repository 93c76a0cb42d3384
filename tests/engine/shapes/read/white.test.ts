import { describe, expect, it } from 'vitest';
import { outlineArea } from '../../../../src/engine/geometry/booleans.ts';
import { readShapes } from '../../../../src/engine/shapes/read/read-shapes.ts';
import { isWhite } from '../../../../src/engine/shapes/read/paint/colours.ts';

const SHEET = 'xmlns="http://www.w3.org/2000/svg" width="560mm" height="760mm" viewBox="0 0 560 760"';
const BOARD = '<rect width="560" height="760" fill="#fff"/>';

/** Areas worked by hand, mm². */
function area(inside: string): { areaMm2: number; codes: string[] } {
  const { shapes, problems } = readShapes(`<svg ${SHEET}>${inside}</svg>`, 'sheet.svg');
  return {
    areaMm2: shapes.reduce((sum, shape) => sum + outlineArea(shape), 0),
    codes: problems.map(({ code }) => code),
  };
}

const CASES: [what: string, inside: string, areaMm2: number, codes: string[]][] = [
  ['a white artboard as the paper', `${BOARD}<rect x="30" y="40" width="100" height="200"/>`, 20_000, ['shape.page']],
  ['an artboard drawn as a path', '<path fill="snow" d="M0 0h560v760H0z"/><rect width="10" height="10"/>', 100, ['shape.page']],
  ['an artboard beyond the page', '<rect x="-5" y="-5" width="570" height="770" fill="rgb(250, 250, 250)"/><rect width="10" height="10"/>', 100, ['shape.page']],
  ['white over something as a hole', '<rect width="20" height="20"/><rect x="5" y="5" width="5" height="5" fill="white"/>', 375, ['shape.white']],
  ['white half over something', '<rect width="20" height="20"/><rect x="15" y="5" width="10" height="10" fill="white"/>', 350, ['shape.white']],
  ['ink over white over ink', '<rect width="20" height="20"/><rect x="2" y="2" width="16" height="16" fill="white"/><rect x="4" y="4" width="5" height="5"/>', 169, ['shape.white']],
  ['white beneath ink as nothing', '<circle cx="50" cy="50" r="40" fill="white"/><rect x="45" y="45" width="10" height="10"/>', 100, ['shape.white']],
  ['an artboard in the midst, over all before it', `<rect width="50" height="50"/>${BOARD}<rect width="10" height="10"/>`, 100, ['shape.page']],
  ['white alone as the ink', '<rect width="10" height="10" fill="#ffffff"/>', 100, ['shape.all-white']],
  ['white on a white artboard as the ink', `${BOARD}<rect width="10" height="10" fill="#fffe"/>`, 100, ['shape.page', 'shape.all-white']],
  ['a light colour as ink', '<rect width="20" height="20"/><rect x="30" width="10" height="10" fill="#f0e8d0"/>', 500, []],
  ['a coloured background with a word', '<rect width="560" height="760" fill="navy"/><rect width="10" height="10"/>', 560 * 760, ['shape.sheet']],
  ['a flood by itself without a word', '<rect width="560" height="760" fill="navy"/>', 560 * 760, []],
  ['white on a coloured background as holes', '<rect width="560" height="760" fill="navy"/><rect x="9" y="9" width="10" height="10" fill="white"/>', 560 * 760 - 100, ['shape.white']],
];

describe('white', () => {
  it.each(CASES)('should read %s', (_, inside, areaMm2, codes) => {
    const found = area(inside);
    expect(found.areaMm2).toBeCloseTo(areaMm2, 2);
    expect(found.codes).toEqual(codes);
  });

  it.each([
    ['a hole', 'paper', 375],
    ['ink', 'ink', 400 + 100],
    ['nothing', 'nothing', 400],
  ] as const)('should be read as %s where that is asked for', (_, white, areaMm2) => {
    // A square of 20 mm with a white one of 5 mm in it, and a white one of 10 mm beside it on a white artboard.
    const inside = `${BOARD}<rect width="20" height="20"/><rect x="5" y="5" width="5" height="5" fill="white"/><rect x="50" width="10" height="10" fill="#fff"/>`;
    const { shapes, problems } = readShapes(`<svg ${SHEET}>${inside}</svg>`, 'sheet.svg', { white });
    expect(shapes.reduce((sum, shape) => sum + outlineArea(shape), 0)).toBeCloseTo(areaMm2, 2);
    expect(problems.map(({ code }) => code)).toEqual(['shape.page', 'shape.white']);
  });

  it('should refuse a white page alone with one sentence that says how to print it', () => {
    const { shapes, problems } = readShapes(`<svg ${SHEET}>${BOARD}</svg>`, 'flood.svg');
    expect(shapes).toEqual([]);
    expect(problems.map(({ message }) => message)).toEqual([
      'flood.svg: a white rectangle as large as the page is taken as the paper and left out; give it another fill to print it.',
    ]);
  });

  it('should fold four hundred turns between white and ink to the rings that are left', () => {
    // Squares inside each other from 500 mm, each 0.4 mm narrower: ink and white in turn.
    const sides = Array.from({ length: 400 }, (_, i) => 500 - i * 0.4);
    const squares = sides.map((side, i) => `<rect x="${250 - side / 2}" y="${250 - side / 2}" width="${side}" height="${side}" fill="${i % 2 === 0 ? 'black' : 'white'}"/>`);
    const left = sides.reduce((sum, side, i) => sum + (i % 2 === 0 ? side * side : -side * side), 0);
    expect(area(squares.join('')).areaMm2).toBeCloseTo(left, 0);
  });

  it.each(['white', '#FFF', '#f5f5f5', '#ffff', '#fefefe80', 'rgb(255 255 255 / 0.9)', 'rgb(98%, 99%, 100%)', 'hsl(0 0% 98%)', 'WhiteSmoke'])('should take %s as white', (color) => {
    expect(isWhite(color)).toBe(true);
  });

  it.each(['ivory', '#eee', '#ffff00', '#f4f5f5', 'rgb(255, 255, 200)', 'rgb(255)', 'hsl(60 100% 50%)', 'black', 'color(srgb 1 1 1)'])('should take %s as ink', (color) => {
    expect(isWhite(color)).toBe(false);
  });
});
