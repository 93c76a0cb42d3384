import { describe, expect, it } from 'vitest';
import { ringArea, shapeBounds } from '../../../../src/engine/geometry/rings.ts';
import { readShapes } from '../../../../src/engine/shapes/read/read-shapes.ts';
import { page, read } from '../area-of.ts';

/** Areas worked by hand, mm². A flattened circle falls short by less than 0.05 mm times its edge. */
const FILLED: [what: string, inside: string, areaMm2: number, off?: number][] = [
  ['a rect', '<rect x="10" y="10" width="30" height="20"/>', 600],
  ['a rect with one radius', '<rect width="40" height="20" rx="5"/>', 800 - (4 - Math.PI) * 25, 1],
  ['a rect with ry alone', '<rect width="40" height="20" ry="5"/>', 800 - (4 - Math.PI) * 25, 1],
  ['a rect with radii too big', '<rect width="40" height="20" rx="90" ry="90"/>', (Math.PI * 40 * 20) / 4, 2],
  ['a rect with radius auto', '<rect width="40" height="20" rx="auto" ry="4"/>', 800 - (4 - Math.PI) * 16, 1],
  ['a circle', '<circle cx="50" cy="50" r="20"/>', Math.PI * 400, 3],
  ['an ellipse', '<ellipse cx="50" cy="50" rx="20" ry="10"/>', Math.PI * 200, 2],
  ['an ellipse with ry auto', '<ellipse cx="50" cy="50" rx="20" ry="auto"/>', Math.PI * 400, 3],
  ['a polygon', '<polygon points="10,10 30,10 30,30"/>', 200],
  ['a polyline, closed by its fill', '<polyline points="10 10 30 10 30 30 10 30"/>', 400],
  ['a path in short form', '<path d="M.5.5h10v10h-1e1z"/>', 100],
  ['a path with leading zeros', '<path d="M007 007h010v010h-010z"/>', 100],
  ['a path in relative lines', '<path d="m10 10 20 0 0 10-20 0z"/>', 200],
  ['a path that goes on after z', '<path d="M10 10h10v10h-10zl-5 0 0 -5z"/>', 112.5],
  ['an arc with packed flags', '<path d="M10 50a20 20 0 0140 0z"/>', Math.PI * 200, 2],
  ['an arc with radii too small', '<path d="M10 50A1 1 0 0 1 50 50z"/>', Math.PI * 200, 2],
  ['a cubic', '<path d="M0 0C0 10 10 20 20 20L20 0z"/>', 305, 1],
  ['a smooth cubic', '<path d="M0 20C0 10 10 10 10 20S20 30 20 20z"/>', 120, 1],
  ['a quadratic', '<path d="M0 0Q20 30 40 0z"/>', (2 / 3) * 40 * 15, 1],
  ['a smooth quadratic', '<path d="M0 20Q10 0 20 20T40 20z"/>', (4 / 3) * 20 * 10, 1],
  ['evenodd', '<path fill-rule="evenodd" d="M0 0h30v30h-30zM10 10h10v10h-10z"/>', 800],
  ['nonzero', '<path d="M0 0h30v30h-30zM10 10h10v10h-10z"/>', 900],
  ['overlaps once', '<rect width="20" height="20"/><rect x="10" width="20" height="20"/>', 600],
  ['nested transforms', '<g transform="translate(10 10)"><g transform="scale(2,3)"><rect width="5" height="4" transform="rotate(30)"/></g></g>', 120],
  ['a matrix', '<rect width="10" height="10" transform="matrix(2 0 1 1 0 0)"/>', 200],
  ['a skew', '<rect width="10" height="10" transform="skewX(45)translate(5,5)"/>', 100],
  ['a style transform', '<rect width="10" height="10" style="transform:translate(20px,20px) rotate(45deg) scale(2)"/>', 400],
  ['a local use', '<defs><rect id="r" width="10" height="10"/></defs><use href="#r" x="5"/><use xlink:href="#r" y="20"/>', 200],
  ['a symbol to size', '<symbol id="s" viewBox="0 0 10 10"><rect width="10" height="10"/></symbol><use href="#s" x="5" y="5" width="30" height="20"/>', 400],
  ['a symbol that cuts', '<symbol id="s" viewBox="0 0 10 10"><rect x="5" width="10" height="10"/></symbol><use href="#s" width="20" height="20"/>', 200],
  ['a nested svg', '<svg x="10" y="10" width="40" height="20" viewBox="0 0 10 10" preserveAspectRatio="none"><rect width="5" height="10"/></svg>', 400],
  ['a nested svg that slices', '<svg width="40" height="20" viewBox="0 0 10 10" preserveAspectRatio="xMidYMid slice"><rect width="10" height="10"/></svg>', 800],
  ['percentages', '<rect width="50%" height="10%"/>', 500],
  ['units', '<rect width="1in" height="10"/>', 96 * 10],
  ['a clipping path', '<clipPath id="c"><rect width="10" height="10"/></clipPath><g clip-path="url(#c)"><rect x="5" width="20" height="20"/></g>', 50],
  ['a group and a link', '<g><a><rect width="10" height="10"/></a></g>', 100],
  ['the first child of a switch', '<switch><foreignObject requiredExtensions="x"/><g><rect width="10" height="10"/></g><rect width="50" height="50"/></switch>', 100],
  ['a transparent paint as nothing', '<rect width="10" height="10"/><rect width="50" height="50" fill="transparent"/><rect width="50" height="50" fill="#12345600"/>', 100],
  ['a fill through currentColor', '<g color="red"><rect width="10" height="10" fill="currentColor"/></g>', 100],
  ['an unreadable fill as the one inherited', '<g fill="none"><rect width="50" height="50" fill="banana"/></g><rect width="10" height="10"/>', 100],
  ['what is hidden as nothing', '<rect width="10" height="10"/><g display="none"><rect width="50" height="50"/></g><g visibility="hidden"><rect width="50" height="50"/><rect y="60" width="10" height="10" visibility="visible"/></g><rect width="50" height="50" opacity="0"/><rect width="50" height="50" fill-opacity="0%"/>', 200],
  ['style over attribute', '<rect width="50" height="50" fill="red" style="fill:none"/><rect width="10" height="10"/>', 100],
  ['a style sheet', '<style>.no{fill:none} #yes{fill:red} g > rect{fill:none}</style><rect class="a no" width="50" height="50"/><rect class="no" id="yes" width="10" height="10"/><g><rect width="60" height="60"/></g>', 100],
  ['!important', '<style><![CDATA[rect{fill:none !important}]]></style><rect width="50" height="50" style="fill:red"/><circle cx="50" cy="50" r="10"/>', Math.PI * 100, 2],
  ['a media rule for others as nothing', '<style>@media (max-width:10px){rect{fill:none}}</style><rect width="10" height="10"/>', 100],
];

describe('readShapes', () => {
  it.each(FILLED)('should fill %s', (_, inside, areaMm2, off = 1e-3) => {
    // Units in the page are mm only by its viewBox; '1in' is 96 of them.
    const found = read(page(inside));
    expect(found.codes).toEqual([]);
    expect(Math.abs(found.areaMm2 - areaMm2)).toBeLessThan(off);
  });

  it('should name the shape after the file and measure its extent', () => {
    const { shapes, problems } = readShapes(page('<rect x="10" y="20" width="30" height="40"/>'), 'a/b/cleat.v2.svg');
    expect(problems).toEqual([]);
    expect(shapes).toHaveLength(1);
    expect(shapes[0]).toMatchObject({ name: 'cleat.v2', fillRule: 'nonzero', widthMm: 30, heightMm: 40 });
    expect(shapes[0]!.rings[0]).toBeInstanceOf(Float64Array);
    expect(shapeBounds(shapes[0]!.rings)).toEqual({ xMm: 10, yMm: 20, widthMm: 30, heightMm: 40 });
    expect(ringArea(shapes[0]!.rings[0]!)).toBe(1200);
  });

  it.each([
    ['width="10mm" height="20mm" viewBox="0 0 1 2"', 200],
    ['width="1cm" height="2cm" viewBox="0 0 1 2"', 200],
    ['width="1in" height="2in" viewBox="0 0 1 2"', 2 * 25.4 ** 2],
    ['width="72pt" height="144pt" viewBox="0 0 1 2"', 2 * 25.4 ** 2],
    ['width="6pc" height="12pc" viewBox="0 0 1 2"', 2 * 25.4 ** 2],
    ['width="96" height="192px" viewBox="0 0 1 2"', 2 * 25.4 ** 2],
    ['width="40Q" height="80Q" viewBox="0 0 1 2"', 200],
    ['viewBox="0 0 1 2"', 2 * (25.4 / 96) ** 2],
    ['width="10mm" viewBox="0 0 1 2"', 200],
    ['width="100%" height="100%" viewBox="0 0 1 2"', 2 * (25.4 / 96) ** 2],
    ['width="1em" height="2em" viewBox="0 0 1 2"', 2 * (25.4 / 96) ** 2],
    ['width="50vw" height="20mm" viewBox="0 0 1 2"', 200],
  ])('should take the page %s', (attributes, areaMm2) => {
    const svg = `<svg xmlns="http://www.w3.org/2000/svg" ${attributes}><rect width="1" height="2"/></svg>`;
    const found = read(svg);
    expect(found.codes).toEqual([]);
    expect(Math.abs(found.areaMm2 / areaMm2 - 1)).toBeLessThan(2e-3);
  });

  it('should read prefixed elements and skip those of other vocabularies', () => {
    const svg = `<?xml version="1.0"?><!DOCTYPE svg PUBLIC "-//W3C//DTD SVG 1.1//EN" "http://www.w3.org/Graphics/SVG/1.1/DTD/svg11.dtd">
      <s:svg xmlns:s="http://www.w3.org/2000/svg" xmlns:o="urn:other" width="10mm" height="10mm" viewBox="0 0 10 10">
      <o:view><s:rect width="10" height="10"/></o:view><s:rect width="5" height="10"/></s:svg>`;
    expect(read(svg)).toEqual({ areaMm2: 50, codes: [] });
  });

  it('should read a drawing that was copied out of a web page, without a namespace', () => {
    const svg = '<svg width="10mm" height="10mm" viewBox="0 0 10 10"><o:x/><rect width="5" height="10"/></svg>';
    expect(read(svg)).toEqual({ areaMm2: 50, codes: [] });
  });

  it('should cut off what lies beyond the page and say so', () => {
    const found = read(page('<rect x="90" y="90" width="20" height="20"/>'));
    expect(found.areaMm2).toBeCloseTo(100, 6);
    expect(found.codes).toEqual(['shape.outside']);
  });
});
