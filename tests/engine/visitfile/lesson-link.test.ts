import { readdirSync, readFileSync } from 'node:fs';
import { differenceCiede2000 } from 'culori';
import fc from 'fast-check';
import { deflateSync, strToU8 } from 'fflate';
import { describe, expect, it } from 'vitest';
import { goalSheet } from '../../../src/engine/lesson/goal-sheets.ts';
import type { LessonSheet } from '../../../src/engine/lesson/lesson-sheet.ts';
import { packLesson } from '../../../src/engine/lesson/packed-lesson.ts';
import { lettersOf, stepsOf } from '../../../src/engine/lesson/packed-steps.ts';
import { groupOrders } from '../../../src/engine/order/groups/group-orders.ts';
import { demoProject } from '../../../src/engine/project/demo.ts';
import { at64 } from '../../../src/engine/visitfile/base64url.ts';
import { LESSON_FRAGMENT } from '../../../src/engine/visitfile/fragments.ts';
import { lessonLink, readLessonFragment } from '../../../src/engine/visitfile/lesson-link.ts';
import { readCode } from '../../helpers/read-code.ts';

const folder = new URL('../../../shapes/', import.meta.url);
const files = readdirSync(folder)
  .filter((name) => name.endsWith('.svg'))
  .map((name) => ({ name, text: readFileSync(new URL(name, folder), 'utf8') }));
const { drawer, lesson, title } = demoProject(files);
const LIMITS = { minDeltaE: 1, minAreaMm2: 25 };
const SHEET: LessonSheet = { title, studio: drawer, pulls: lesson, inks: [{ ink: lesson[0]!.ink, opacity: -0.4 }], limits: LIMITS };
/** As many signs as the press's codes have. */
const MOST_IN_CODE = 2000;

const countOf = ({ pulls, studio, limits }: LessonSheet): number => groupOrders({ pulls }, studio, { ...limits, toleranceMm: 0.05 }).count;
const fragmentOf = (value: unknown): string => `${LESSON_FRAGMENT}${at64(deflateSync(strToU8(JSON.stringify(value))))}`;

describe('lettersOf', () => {
  it('should give back every step, small ones as one sign', () => {
    const steps = [0, 1, -1, 21, -22, 22, -23, 967, -968, 1_000_000, -1_000_000];
    expect(stepsOf(lettersOf(steps))).toEqual(steps);
    expect(lettersOf([0, -1, 1, 21, -22])).toHaveLength(5);
    expect(lettersOf([22, -23])).toHaveLength(4);
    fc.assert(
      fc.property(fc.array(fc.integer({ min: -5_000_000, max: 5_000_000 })), (any) =>
        stepsOf(lettersOf(any))!.every((step, i) => step === any[i]),
      ),
    );
    expect([stepsOf(' '), stepsOf('#P'), stepsOf('PPPPPP#')]).toEqual([null, null, null]);
  });
});

describe('a lesson in an address', () => {
  it('should come back with its words, its pulls and as many pictures', () => {
    const { fragment, toleranceMm } = lessonLink({ sheet: SHEET, goal: 'alike' }, 30_000)!;
    expect(toleranceMm).toBe(0.1);
    const { value, problems } = readLessonFragment(fragment);
    expect(problems).toEqual([]);
    expect(value).toMatchObject({ goal: 'alike', sheet: { title, limits: LIMITS, inks: [{ opacity: -0.4 }] } });
    const { sheet } = value!;
    const named = ({ studio, pulls }: LessonSheet) =>
      pulls.map((pull) => [
        studio.screens.find(({ id }) => id === pull.screen)!.name,
        studio.inks.find(({ id }) => id === pull.ink)!.name,
        pull.dxMm,
        pull.dyMm,
        pull.turnDeg,
        pull.strokes,
      ]);
    expect(named(sheet)).toEqual(named(SHEET));
    expect(countOf(sheet)).toBe(countOf(SHEET));
  });

  it('should keep the inks’ colours, by culori', () => {
    const { sheet } = readLessonFragment(lessonLink({ sheet: SHEET, goal: null }, 30_000)!.fragment).value!;
    const deltaE = differenceCiede2000();
    const lab = ([l, a, b]: readonly number[]) => ({ mode: 'lab65' as const, l: l!, a: a!, b: b! });
    for (const ink of sheet.studio.inks) {
      const own = drawer.inks.find(({ name }) => name === ink.name)!;
      expect(deltaE(lab(ink.overWhite), lab(own.overWhite))).toBeLessThan(0.15);
      expect(deltaE(lab(ink.overBlack), lab(own.overBlack))).toBeLessThan(0.15);
    }
  });

  it('should be read back from a QR code by another library, the demo’s lesson among them', () => {
    for (const sheet of [SHEET, goalSheet('one-picture')]) {
      const link = lessonLink({ sheet, goal: null }, MOST_IN_CODE)!;
      const address = `https://class.example/${link.fragment}`;
      const read = readCode(address, 'L', 3);
      expect(read).toBe(address);
      const found = readLessonFragment(new URL(read!).hash).value!;
      expect(found.sheet.pulls).toHaveLength(sheet.pulls.length);
      expect(countOf(found.sheet)).toBe(countOf(sheet));
    }
  });

  it('should give no link where there is no room for it', () => {
    expect(lessonLink({ sheet: SHEET, goal: null }, 300)).toBeNull();
  });

  it('should be refused in a sentence when it is none, cut off, changed, vast or no lesson', () => {
    const whole = lessonLink({ sheet: SHEET, goal: null }, 30_000)!.fragment;
    const sentence = (fragment: string): string => readLessonFragment(fragment).problems[0]!.message;
    expect(sentence('#lesson')).toBe('This address holds no lesson; open the link again, or have a new one made.');
    for (const bad of [whole.slice(0, -20), `${whole.slice(0, 30)}!${whole.slice(31)}`, LESSON_FRAGMENT, fragmentOf('x'.repeat(2_000_000))])
      expect(sentence(bad)).toMatch(/^This address is cut off or was changed/);
    const packed = packLesson({ sheet: SHEET, goal: null }, 2);
    expect(sentence(fragmentOf({ ...packed, goal: 'win' }))).toMatch(/^The address: goal is "win", but must be /);
    const [first, ...pulls] = packed.pulls;
    const [, ...rest] = first!;
    const impossible = [
      { ...packed, pulls: [[5, ...rest], ...pulls] },
      { ...packed, inks: packed.inks.map((ink) => ({ ...ink, kx: lettersOf(Array.from({ length: 36 }, () => -1)) })) },
      { ...packed, screens: packed.screens.map((screen) => ({ ...screen, rings: [lettersOf([0, 0, 9, 9, 9])] })) },
      { ...packed, screens: packed.screens.map((screen) => ({ ...screen, rings: [lettersOf([999_999, 0, 999_999, 9, 0, 9])] })) },
      { ...packed, screens: packed.screens.map((screen) => ({ ...screen, rings: ['"'] })) },
      { ...packed, paper: { ...packed.paper, reflectance: lettersOf(Array.from({ length: 36 }, () => 1000)) } },
    ];
    for (const each of impossible) expect(sentence(fragmentOf(each))).toMatch(/^Th(is|e) address.{5,300}\.$/su);
    expect(sentence(fragmentOf({ ...packed, pulls: packed.pulls.slice(0, 1) }))).toMatch(/^The address: pulls/);
  });

  it('should give a lesson or a sentence, whatever became of the address', () => {
    const whole = lessonLink({ sheet: goalSheet('alike'), goal: null }, 30_000)!.fragment;
    fc.assert(
      fc.property(fc.nat(whole.length - 1), fc.string({ maxLength: 3 }), fc.nat(4), (at, put, taken) => {
        const { value, problems } = readLessonFragment(whole.slice(0, at) + put + whole.slice(at + taken));
        return value !== null || (problems.length > 0 && problems.every(({ message }) => /^Th(is|e) address/.test(message)));
      }),
      { seed: 12, numRuns: 1000 },
    );
  });
});
