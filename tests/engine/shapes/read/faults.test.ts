import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readShapes } from '../../../../src/engine/shapes/read/read-shapes.ts';
import { page } from '../area-of.ts';

const bomb = `<!DOCTYPE svg [<!ENTITY a "ha">${Array.from({ length: 30 }, (_, i) => `<!ENTITY a${i} "&a;&a;">`).join('')}]><svg xmlns="http://www.w3.org/2000/svg">&a29;</svg>`;
const doublings = Array.from({ length: 40 }, (_, i) => `<g id="u${i + 1}"><use href="#u${i}"/><use href="#u${i}"/></g>`).join('');

const REFUSED: [what: string, text: string, code: string][] = [
  ['an empty file', '', 'shape.empty'],
  ['blanks only', ' \n\t ', 'shape.empty'],
  ['binary', '\u0089PNG\r\n\u001a\n\0\0', 'shape.binary'],
  ['SVG with a NUL', page('<rect width="5" height="5"/>').replace('rect', 'r\0ct'), 'shape.binary'],
  ['plain text', 'hello', 'shape.binary'],
  ['JSON', '{"a":1}', 'shape.binary'],
  ['HTML', '<html><body/></html>', 'shape.root'],
  ['a truncated file', page('<rect width="5" height="5"/>').slice(0, -10), 'shape.xml'],
  ['crossed tags', page('<g><a></g></a>'), 'shape.xml'],
  ['an unknown entity', page('&sea;'), 'shape.xml'],
  ['an entity bomb', bomb, 'shape.entities'],
  ['nothing filled', page(''), 'shape.no-area'],
  ['a filled line of no area', page('<path d="M0 0L50 50"/>'), 'shape.no-area'],
  ['no page', '<svg xmlns="http://www.w3.org/2000/svg" width="0" height="5"><rect width="5" height="5"/></svg>', 'shape.size'],
  ['an empty viewBox', '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 0 5"><rect width="5" height="5"/></svg>', 'shape.size'],
  ['a shape of 90 m', '<svg xmlns="http://www.w3.org/2000/svg"><rect width="90000mm" height="5"/></svg>', 'shape.size'],
  ['a shape of 1 µm', '<svg xmlns="http://www.w3.org/2000/svg"><rect width="0.001mm" height="0.001mm"/></svg>', 'shape.size'],
  ['NaN in a rect', page('<rect width="NaN" height="5"/>'), 'shape.number'],
  ['an unknown unit', page('<rect width="5furlong" height="5"/>'), 'shape.number'],
  ['NaN in points', page('<polygon points="0,0 5,NaN 5,5"/>'), 'shape.number'],
  ['NaN in a path', page('<path d="M0 0L NaN 5 5 5z"/>'), 'shape.path'],
  ['an endless number in a path', page('<path d="M0 0L1e999 5 5 5z"/>'), 'shape.path'],
  ['an endless number in a rect', page('<rect width="1e999" height="5"/>'), 'shape.number'],
  ['a broken transform', page('<rect width="5" height="5" transform="rotate(a)"/>'), 'shape.transform'],
  ['elements too deep', page(`${'<g>'.repeat(500)}${'</g>'.repeat(500)}`), 'shape.too-deep'],
  ['too many elements', page('<g/>'.repeat(100_001)), 'shape.too-many'],
  ['doublings by use', page(`<g id="u0"><rect width="5" height="5"/></g>${doublings}`), 'shape.too-many'],
  ['too many lines', page(`<path d="M0 0${'l1 1'.repeat(300_001)}z"/>`), 'shape.too-many'],
  ['styles without end', page(`<rect width="5" height="5" style="${'fill:red;'.repeat(200_000)}"/>`), 'shape.too-many'],
  ['rules that search every sibling', page(`<style>${'g:nth-child(2n) rect{fill:red}'.repeat(200)}</style>${'<g><rect/></g>'.repeat(5000)}`), 'shape.too-many'],
  ['a tangle', page(`<path d="M0 0L${Array.from({ length: 20_000 }, (_, i) => `${(i * 7919) % 97} ${(i * 104729) % 101}`).join(' ')}z"/>`), 'shape.too-many'],
];

function good(text: string): void {
  const { shapes, problems } = readShapes(text, 'x.svg');
  expect(shapes.length > 0 || problems.length > 0).toBe(true);
  for (const shape of shapes) {
    for (const ring of shape.rings) expect(ring.every(Number.isFinite)).toBe(true);
  }
}

describe('files that cannot be used', () => {
  it.each(REFUSED)('should refuse %s with one sentence', (_, text, code) => {
    const { shapes, problems } = readShapes(text, 'bollard.svg');
    expect(shapes).toEqual([]);
    expect(problems.map((problem) => problem.code)).toEqual([code]);
    expect(problems[0]!.message).toMatch(/^bollard\.svg: [^\n]{10,250}\.$/u);
  });

  it('should refuse 50 MB without reading it', () => {
    const { shapes, problems } = readShapes('<'.repeat(50_000_000), 'big.svg');
    expect(shapes).toEqual([]);
    expect(problems[0]!.code).toBe('shape.too-large');
  });

  it('should say only once why an unprintable drawing is empty', () => {
    const { shapes, problems } = readShapes(page('<image href="a.png"/>'), 'a.svg');
    expect(shapes).toEqual([]);
    expect(problems.map((problem) => problem.code)).toEqual(['shape.image']);
  });

  it('should never throw: any text, any cut, any change of a letter', () => {
    const whole = page(
      '<style>.a{fill:red}g rect{fill:none!important}</style><clipPath id="c"><circle r="9"/></clipPath><g clip-path="url(#c)" transform="rotate(30 5 5) scale(2)"><path class="a" d="M.5.5a3 4 30 0110 0q5 5-5 5S1 2 3 4t5 6z"/><rect rx="3" width="9" height="8" style="fill:url(#g) red"/></g><symbol id="s" viewBox="0 0 5 5"><polygon points="0,0 5,0 5,5"/></symbol><use href="#s" x="5" width="20%"/>',
    );
    fc.assert(fc.property(fc.string({ unit: 'binary', maxLength: 300 }), good), { numRuns: 300, seed: 1 });
    fc.assert(
      fc.property(fc.nat(whole.length), (end) => good(whole.slice(0, end))),
      { numRuns: 300, seed: 2 },
    );
    fc.assert(
      fc.property(fc.nat(whole.length), fc.string({ maxLength: 3 }), fc.nat(4), (at, put, drop) =>
        good(whole.slice(0, at) + put + whole.slice(at + drop)),
      ),
      { numRuns: 1500, seed: 3 },
    );
  });
});
