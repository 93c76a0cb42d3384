import { describe, expect, it } from 'vitest';
import { licenceText, lockedPackages, nameOf, noticesText, shippedPackages } from '../../.ci/notices.ts';

/** Licences that ask for no more than their text and their author's name, or that only concern what runs in tests and builds. */
const SHIPPED = new Set(['MIT', 'ISC', 'BSD-2-Clause', 'BSD-3-Clause', 'Apache-2.0', 'BSL-1.0', '0BSD', 'CC0-1.0', '(MIT AND Zlib)']);
// Weak copyleft, by the file: never in the page.
const TOOLS = new Set([...SHIPPED, 'MPL-2.0']);
/** The fonts' licence has no SPDX name: Bitstream Vera and Arev, free to embed and pass on. */
const BY_NAME = new Map([['dejavu-fonts-ttf', 'SEE LICENSE IN README.md AND LICENSE']]);

describe('licences', () => {
  it('should be on the list for every package of the lockfile', () => {
    const packages = lockedPackages();
    expect(packages.length).toBeGreaterThan(100);
    const shipped = new Set(shippedPackages().map(([folder]) => folder));
    const others = packages.filter(
      ([folder, { license = 'none' }]) => !(shipped.has(folder) ? SHIPPED : TOOLS).has(license) && BY_NAME.get(nameOf(folder)) !== license,
    );
    expect(others.map(([folder, { license }]) => `${folder}: ${license ?? 'none'}`)).toEqual([]);
  });

  it('should be written out, with whose they are, for all that the page is built from and for the letters', () => {
    const text = noticesText();
    expect(text).toMatch(/^Pullstack\n\nMIT License\n\nCopyright \(c\) 2026 the Pullstack authors\n/);
    for (const [folder, { version, license }] of shippedPackages()) {
      expect(text).toContain(`${nameOf(folder)} ${version ?? ''} (`);
      const words = licenceText(folder, license);
      expect(words, folder).toMatch(/copyright|public domain|CC0/i);
      expect(words.length, folder).toBeGreaterThan(400);
    }
    for (const name of ['lit', 'pixi.js', 'clipper2-ts', 'dejavu-fonts-ttf', 'seedrandom', 'saxes']) expect(text).toContain(`\n${name} `);
    expect(text).toContain('Bitstream Vera');
  });
});
