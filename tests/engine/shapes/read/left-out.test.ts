import { describe, expect, it } from 'vitest';
import { outlineArea } from '../../../../src/engine/geometry/booleans.ts';
import { readShapes } from '../../../../src/engine/shapes/read/read-shapes.ts';
import { page, read } from '../area-of.ts';

const KEPT = '<rect width="10" height="10"/>';

/** What one ink cannot print: code and how many sentences. */
const LEFT_OUT: [what: string, inside: string, code: string][] = [
  ['an image', '<image href="data:image/png;base64,AA" width="9" height="9"/>', 'shape.image'],
  ['text', '<text x="5" y="5">sea<tspan>weed</tspan></text>', 'shape.text'],
  ['a gradient', '<linearGradient id="g"/><circle r="40" fill="url(#g)"/>', 'shape.gradient'],
  ['a gradient in a style', '<radialGradient id="g"/><circle r="40" style="fill:url(\'#g\') red"/>', 'shape.gradient'],
  ['a pattern', '<pattern id="p"/><circle r="40" fill="url(#p)"/>', 'shape.pattern'],
  ['a missing paint', '<circle r="40" fill="url(#p)"/>', 'shape.paint'],
  ['a paint in another file', '<circle r="40" fill="url(http://example.org/a.svg#p)"/>', 'shape.external'],
  ['a use of another file', '<use href="file:///a.svg#x"/>', 'shape.external'],
  ['a use of data', '<use href="data:image/svg+xml,abc#x"/>', 'shape.external'],
  ['a use of nothing', '<use href="#gone"/>', 'shape.use'],
  ['a style sheet in another file', '<style>@import "a.css";</style>', 'shape.external'],
  ['a script', '<script>alert(1)</script>', 'shape.script'],
  ['a script in defs', '<defs><script href="http://example.org/a.js"/></defs>', 'shape.script'],
  ['a foreign object', '<foreignObject width="9" height="9"/>', 'shape.foreign'],
  ['an animation', '<g><animate attributeName="x"/></g>', 'shape.animation'],
  ['a mask', '<mask id="m"/><circle r="40" mask="url(#m)"/>', 'shape.mask'],
  ['a filter', `<filter id="f"/><g filter="url(#f)">${KEPT}</g>`, 'shape.filter'],
  ['a clip by its box', '<clipPath id="c" clipPathUnits="objectBoundingBox"/><circle r="40" clip-path="url(#c)"/>', 'shape.clip'],
  ['an unknown element', '<blob/>', 'shape.unknown'],
  ['a negative size', '<rect width="-5" height="5"/>', 'shape.negative'],
];

describe('what cannot print', () => {
  it.each(LEFT_OUT)('should leave out %s with one sentence', (_, inside, code) => {
    const { shapes, problems } = readShapes(page(`${KEPT}${inside}`), 'cleat.svg', { fades: false });
    expect(problems.map((problem) => problem.code)).toEqual([code]);
    expect(problems[0]!.message).toMatch(/^cleat\.svg: (?:one |arrowheads )[^<>]+(?:left out|taken as none)[^<>]*\.$/u);
    expect(problems[0]!.where).toMatch(/line 1, column \d+/u);
    expect(shapes).toHaveLength(1);
    expect(outlineArea(shapes[0]!)).toBeCloseTo(100, 3);
  });

  it('should take fades and patterns by their outline unless they are not wanted', () => {
    const inside = '<linearGradient id="g"/><pattern id="p"/><rect x="20" width="5" height="4" fill="url(#g)"/><path d="M40 1h10" stroke="url(#p)" stroke-width="2"/>';
    expect(read(page(KEPT + inside))).toEqual({ areaMm2: expect.closeTo(140, 3), codes: ['shape.gradient', 'shape.pattern'] });
  });

  it('should name the line', () => {
    const svg = page(`\n${KEPT}\n\n  <image\n  href="a.png"/>`);
    expect(readShapes(svg, 'cleat.svg').problems[0]).toEqual({
      code: 'shape.image',
      message: 'cleat.svg: one picture was left out, since a picture has no outlines; trace it to outlines first.',
      where: '<image> at line 4, column 3',
    });
  });

  it('should say nothing of what is hidden or never drawn', () => {
    const inside = '<g display="none"><text>a</text></g><defs><image/></defs><path d="M0 0h5" fill="none" stroke="red" stroke-width="0"/>';
    expect(read(page(KEPT + inside)).codes).toEqual([]);
  });

  it('should break circles of use and of clipping paths', () => {
    for (const circle of [
      '<g id="a"><use href="#a"/></g>',
      '<g id="a"><use href="#b"/></g><g id="b"><use href="#a"/></g>',
      '<clipPath id="c"><rect width="5" height="5" clip-path="url(#c)"/></clipPath><rect width="5" height="5" clip-path="url(#c)"/>',
    ]) {
      const found = read(page(KEPT + circle));
      expect(new Set(found.codes)).toEqual(new Set(['shape.use-cycle']));
      expect(found.areaMm2).toBeCloseTo(100, 3);
    }
  });

  it('should say a thousand of one kind in one sentence', () => {
    const { problems } = readShapes(page(KEPT + '<text/>'.repeat(1000)), 'a.svg');
    expect(problems.map(({ message }) => message)).toEqual([
      'a.svg: 1000 texts were left out, since letters are not outlines yet; turn text into outlines first.',
    ]);
  });
});
