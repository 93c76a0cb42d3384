import { readdirSync, readFileSync } from 'node:fs';
import svgpath from 'svgpath';
import { describe, expect, it } from 'vitest';
import { pathSegments } from '../../../../src/engine/shapes/read/path-data.ts';

/** Peer: the npm package svgpath, absolute and with smooth curves written out. */
function byPeer(data: string): unknown[] {
  const segments: unknown[] = [];
  svgpath(data)
    .abs()
    .unshort()
    .iterate(([command, ...n], _, x, y) => {
      if (command === 'H') segments.push(['L', n[0], y]);
      else if (command === 'V') segments.push(['L', x, n[0]]);
      else if (command === 'A') segments.push(['A', n[0], n[1], n[2], n[3] === 1, n[4] === 1, n[5], n[6]]);
      else segments.push([command.toUpperCase(), ...n]);
    });
  return segments;
}

function alike(own: unknown, peer: unknown): boolean {
  if (Array.isArray(own) && Array.isArray(peer)) return own.length === peer.length && own.every((each, i) => alike(each, peer[i]));
  return typeof own === 'number' && typeof peer === 'number' ? Math.abs(own - peer) < 1e-9 : own === peer;
}

const icons = new URL('../../../../node_modules/bootstrap-icons/icons/', import.meta.url);
const paths = readdirSync(icons)
  .filter((name) => name.endsWith('.svg'))
  .flatMap((name) => [...readFileSync(new URL(name, icons), 'utf8').matchAll(/ d="([^"]*)"/gu)].map(([, data]) => data!));

describe('path data', () => {
  it('should be read as another reader reads it: all paths of an icon package', () => {
    expect(paths.length).toBeGreaterThan(2000);
    const differ = paths.filter((data) => !alike(pathSegments(data), byPeer(data)));
    expect(differ).toEqual([]);
  });

  it.each(['M1 2 3 4zm1 1 2 2h5v-3H1V2', 'm.5.5-.5-.5', 'M0 0a1 2 30 0110 0 3 3 0 11-1-1z', 'M0 0S1 1 2 2s3 3 4 4T5 5t1 1Q1 1 2 2t3 3', 'M1e1,1E+1,2-2', 'M0 0C1 2 3 4 5 6S9 9 1 1L3 3S1 2 3 4'])(
    'should be read as another reader reads it: %s',
    (data) => {
      expect(pathSegments(data)).toEqual(byPeer(data));
    },
  );

  it.each(['L1 1', 'M', 'M1', 'M1 1L2', 'M1,,1', 'M1 1,', 'M1 1 x', 'M1 1A1 1 0 2 0 3 3', 'M1 1r2', 'M1 1z 5', 'M. 1', 'M1e 1', 'M1e999 1', 'M1 1C1e308 0 0 0 1e308 0c0 0 1e308 1e308 1e308 0'])(
    'should be refused with the place: %s',
    (data) => {
      expect(pathSegments(data)).toMatchObject({ fault: expect.stringMatching(/command|begin|range/u) as string });
    },
  );

  it('should be read where numbers begin with 0, as SVG allows', () => {
    expect(pathSegments('M007 01.5L00 1')).toEqual([['M', 7, 1.5], ['L', 0, 1]]);
  });
});
