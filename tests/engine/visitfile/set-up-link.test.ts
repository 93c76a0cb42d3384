import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { at64, from64 } from '../../../src/engine/visitfile/base64url.ts';
import { readSetUpFragment, type SetUpOnPhone, setUpFragment } from '../../../src/engine/visitfile/set-up-link.ts';
import { readCode } from '../../helpers/read-code.ts';

const SET_UP: SetUpOnPhone = {
  version: 1,
  project: 'Slack tide, Żółw',
  title: 'Set-up 12',
  tags: 'mount, new ink',
  screen: '7 reef',
  ink: 'Foam, 24 g',
  hex: '#a63c20',
  lines: [
    '2.0 mm right, 1.0 mm up; 2 strokes',
    'Mesh 90/cm, thread 48 µm',
    'Day 2, 9:30 to 10:15',
    'Foam dries 20 min: print over the last sheet from 10:35.',
  ],
  paper: { widthMm: 560, heightMm: 760 },
  offset: { dxMm: 2, dyMm: -1, turnDeg: 0 },
  parts: [{ title: 'A Ebb', sheets: Array.from({ length: 40 }, (_, i) => String(i + 1)) }],
};

describe('at64', () => {
  it('should write as RFC 4648, 10 shows it, and as Node does', () => {
    const plain = (text: string): string => at64(new TextEncoder().encode(text));
    expect(['', 'f', 'fo', 'foo', 'foob', 'fooba', 'foobar'].map(plain)).toEqual([
      '',
      'Zg',
      'Zm8',
      'Zm9v',
      'Zm9vYg',
      'Zm9vYmE',
      'Zm9vYmFy',
    ]);
    for (let length = 0; length < 40; length++) {
      const bytes = Uint8Array.from({ length }, (_, i) => (i * 167 + length * 31) % 256);
      expect(at64(bytes)).toBe(Buffer.from(bytes).toString('base64url'));
      expect(from64(at64(bytes))).toEqual(bytes);
    }
    expect([from64('a'), from64('ab+=')]).toEqual([null, null]);
  });
});

describe('a set-up in an address', () => {
  it('should be read back from a QR code by another library', () => {
    const address = `https://press.example/app/${setUpFragment(SET_UP)}`;
    expect(address.length).toBeLessThan(900);
    const read = readCode(address, 'M', 4);
    expect(read).toBe(address);
    expect(readSetUpFragment(new URL(read!).hash)).toEqual({ value: SET_UP, problems: [] });
  });

  it('should be refused in a sentence when it is none, cut off, changed or vast', () => {
    const whole = setUpFragment(SET_UP);
    const sentence = (fragment: string): string => readSetUpFragment(fragment).problems[0]!.message;
    expect(sentence('#press')).toBe('This address holds no set-up; scan the code again, or have a new one made.');
    for (const bad of [whole.slice(0, -20), `${whole.slice(0, 30)}!${whole.slice(31)}`, '#set-up=', `#set-up=${at64(new Uint8Array(40))}`])
      expect(sentence(bad)).toMatch(/^This address is cut off or was changed/);
    expect(sentence(setUpFragment({ ...SET_UP, hex: 'red' }))).toBe(
      'The address: hex is "red", but must be a colour such as #a63c20; mend that field and read the file again.',
    );
    const vast = setUpFragment({ ...SET_UP, lines: ['x'.repeat(1_000_000)] });
    expect(vast.length).toBeLessThan(2000);
    expect(sentence(vast)).toMatch(/^This address is cut off or was changed/);
  });

  it('should give a set-up or a sentence, whatever became of the address', () => {
    const whole = setUpFragment(SET_UP);
    fc.assert(
      fc.property(fc.nat(whole.length - 1), fc.string({ maxLength: 3 }), fc.nat(4), (at, put, taken) => {
        const { value, problems } = readSetUpFragment(whole.slice(0, at) + put + whole.slice(at + taken));
        return value !== null || (problems.length > 0 && problems.every(({ message }) => /^Th(is|e) address/.test(message)));
      }),
      { seed: 12, numRuns: 2000 },
    );
  });
});
