import { describe, expect, it } from 'vitest';
import { deltaE2000 } from '../../../../src/engine/colour/delta-e.ts';
import { sampleReadings } from '../../../../src/engine/ink/target/sample-readings.ts';
import { layOutTarget, PAGES } from '../../../../src/engine/ink/target/target-layout.ts';
import { type Target, targetSquares, withInk, withReadings } from '../../../../src/engine/ink/target/target.ts';
import { readingText, typedColour } from '../../../../src/engine/ink/target/typed-colour.ts';
import { pastedLines, typedReadings } from '../../../../src/engine/ink/target/typed-readings.ts';

const SQUARES = targetSquares(['tar', 'rust']);

describe('targetSquares', () => {
  it('should number every ink alone and every pair in both orders', () => {
    expect(SQUARES.map(({ first, over }) => [first, over])).toEqual([
      ['tar', null],
      ['tar', 'tar'],
      ['tar', 'rust'],
      ['rust', null],
      ['rust', 'tar'],
      ['rust', 'rust'],
    ]);
    expect(SQUARES.map(({ number }) => number)).toEqual([1, 2, 3, 4, 5, 6]);
  });
});

describe('layOutTarget', () => {
  it.each([
    [8, 'A4'],
    [24, 'A3'],
    [1, 'A4'],
  ] as const)('should keep the squares of %i inks on %s, apart from each other', (count, page) => {
    const inks = Array.from({ length: count }, (_, i) => `ink-${i}`);
    const { squares, sideMm } = layOutTarget(inks, page);
    expect(squares).toHaveLength(count * (count + 1));
    for (const { xMm, yMm } of squares) {
      expect(xMm).toBeGreaterThan(10);
      expect(yMm).toBeGreaterThan(10);
      expect(xMm + sideMm).toBeLessThanOrEqual(PAGES[page].widthMm - 10);
      expect(yMm + sideMm).toBeLessThanOrEqual(PAGES[page].heightMm - 10);
    }
    const lefts = [...new Set(squares.map(({ xMm }) => xMm))].sort((a, b) => a - b);
    for (let i = 1; i < lefts.length; i++) expect(lefts[i]! - lefts[i - 1]!).toBeGreaterThan(sideMm + 1);
  });

  it('should leave room to measure: 8 inks on A4, 24 on A3', () => {
    expect(layOutTarget(Array.from({ length: 8 }, String), 'A4').sideMm).toBeGreaterThan(14);
    expect(layOutTarget(Array.from({ length: 24 }, String), 'A3').sideMm).toBeGreaterThan(7);
  });
});

describe('typedColour', () => {
  it.each([
    ['52.1 -3 18.4', [52.1, -3, 18.4]],
    ['52,1 −3 18,4', [52.1, -3, 18.4]],
    ['52.1, -3, 18.4', [52.1, -3, 18.4]],
    ['52,1; -3; 18,4', [52.1, -3, 18.4]],
    ['L*=52.1 a*=-3 b*=18.4', [52.1, -3, 18.4]],
    ['52\t-3\t18', [52, -3, 18]],
    ['100 0 0', [100, 0, 0]],
  ])('should read %s', (text, lab) => {
    expect(typedColour(text)).toEqual({ lab, problem: '' });
  });

  // sRGB red in CIELAB D50: 54.29, 80.80, 69.89 (CSS Color 4 sample code gives 54.29 80.80 69.89; from memory).
  it('should read a hex as the screen colour that it is', () => {
    expect(deltaE2000(typedColour('#ff0000').lab!, [54.29, 80.8, 69.89])).toBeLessThan(0.1);
    expect(typedColour('ff0000').lab).toEqual(typedColour('#f00').lab);
  });

  it.each(['', '52', '52 -3', '52 a 3', '#12345', '1 2 3 4', 'NaN 0 0', '123', '1e9 0 0'])(
    'should refuse “%s” with what to write',
    (text) => {
      const { lab, problem } = typedColour(text);
      expect(lab).toBeNull();
      expect(problem).toMatch(/write L, a and b/);
    },
  );

  it('should refuse numbers that no colour has', () => {
    expect(typedColour('152 0 0').problem).toMatch(/L is 152, but goes from 0 to 100/);
    expect(typedColour('50 0 -500').problem).toMatch(/-500 is too far/);
  });

  it('should read what a field shows', () => {
    expect(typedColour(readingText([52.126, -3.5, 0])).lab).toEqual([52.13, -3.5, 0]);
  });
});

describe('pastedLines', () => {
  it('should fill the squares from the one it was pasted into', () => {
    const lines = pastedLines('50 1 2\n\n#aa3300\n40 0 0', SQUARES, 3);
    expect(lines.map(([{ number }, text]) => [number, text])).toEqual([
      [3, '50 1 2'],
      [4, '#aa3300'],
      [5, '40 0 0'],
    ]);
  });

  it('should go by numbers where lines have them', () => {
    expect(pastedLines('6 50 1 2\n2, 40, 0, 0', SQUARES, 1).map(([{ number }, text]) => [number, text])).toEqual([
      [6, '50 1 2'],
      [2, '40, 0, 0'],
    ]);
  });
});

describe('sampleReadings', () => {
  const curve = (value: number): Float64Array => new Float64Array(36).fill(value);

  it('should go by the ids, whatever stands before the number', () => {
    const { readings, remarks } = sampleReadings(
      [
        { id: '3', name: '', reflectance: curve(0.5) },
        { id: 'S01', name: '', lab: [50, 1, 2] },
      ],
      SQUARES,
    );
    expect(readings.map(([{ number }]) => number)).toEqual([1, 3]);
    expect(readings[0]![1]).toEqual({ lab: [50, 1, 2] });
    // A grey of 50 % has L 76.07 by the definition of L*.
    expect(readings[1]![1].lab[0]).toBeCloseTo(116 * Math.cbrt(0.5) - 16, 2);
    expect(remarks).toEqual([]);
  });

  it('should average what was measured twice and say so', () => {
    const { readings, remarks } = sampleReadings(
      [
        { id: '2', name: '', reflectance: curve(0.2) },
        { id: '2', name: '', reflectance: curve(0.4) },
      ],
      SQUARES,
    );
    expect(readings[0]![1].reflectance![10]).toBeCloseTo(0.3, 12);
    expect(remarks[0]).toMatch(/Square 2 was measured more than once/);
  });

  it('should leave out strange ids and name them', () => {
    const { readings, remarks } = sampleReadings(
      [
        { id: 'A', name: '', lab: [1, 0, 0] },
        { id: '7', name: '', lab: [1, 0, 0] },
        { id: '1.5', name: '', lab: [1, 0, 0] },
      ],
      SQUARES,
    );
    expect(readings).toEqual([]);
    expect(remarks[0]).toMatch(/^Samples A, 7, 1\.5 are no numbers of this target's squares, 1 to 6/);
  });
});

describe('withReadings', () => {
  it('should replace, add and take away', () => {
    const target: Target = {
      inks: ['tar', 'rust'],
      squares: [
        { first: 'tar', over: null, lab: [10, 0, 0] },
        { first: 'rust', over: 'tar', lab: [12, 0, 0] },
      ],
    };
    const next = withReadings(target, [
      [SQUARES[0]!, { lab: [11, 0, 0] }],
      [SQUARES[4]!, null],
      [SQUARES[5]!, { lab: [40, 0, 0] }],
    ]);
    expect(next.squares).toEqual([
      { first: 'tar', over: null, lab: [11, 0, 0] },
      { first: 'rust', over: 'rust', lab: [40, 0, 0] },
    ]);
  });
});

describe('typedReadings', () => {
  const target: Target = { inks: ['tar', 'rust'], squares: [{ first: 'tar', over: null, lab: [10.126, 0, 0] }] };
  it('should take new colours, empty fields and nothing that stays as it is shown', () => {
    expect(typedReadings(target, [[SQUARES[0]!, '10.13 0 0']]).readings).toEqual([]);
    expect(typedReadings(target, [[SQUARES[0]!, ' ']]).readings).toEqual([[SQUARES[0], null]]);
    expect(typedReadings(target, [[SQUARES[1]!, '']]).readings).toEqual([]);
    expect(typedReadings(target, [[SQUARES[1]!, '20 1 2']]).readings).toEqual([[SQUARES[1], { lab: [20, 1, 2] }]]);
  });
  it('should keep what is no colour with why', () => {
    const { readings, misread } = typedReadings(target, [[SQUARES[2]!, 'grey']]);
    expect(readings).toEqual([]);
    expect(misread.get(3)).toEqual({ text: 'grey', problem: expect.stringMatching(/“grey” is no colour/) });
  });
});

describe('withInk', () => {
  it('should put new inks last, so that a printed target keeps the numbers of its first row', () => {
    const target: Target = { inks: ['tar', 'rust'], squares: [{ first: 'rust', over: null, lab: [40, 0, 0] }] };
    expect(withInk(target, 'clay', true).inks).toEqual(['tar', 'rust', 'clay']);
    expect(withInk(target, 'tar', true)).toBe(target);
    expect(withInk(target, 'rust', false)).toEqual({ ...target, inks: ['tar'] });
  });
});
