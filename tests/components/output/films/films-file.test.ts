import { Resvg } from '@resvg/resvg-js';
import { strFromU8, unzipSync } from 'fflate';
import { describe, expect, it } from 'vitest';
import { filmsFile, type FilmsAs } from '../../../../src/components/output/films/films-file.ts';
import type { FilmScreen, FilmWays } from '../../../../src/engine/output/film/ways.ts';
import type { Shape } from '../../../../src/engine/shapes/types.ts';
import { pageFonts as fonts } from '../../../helpers/page-fonts.ts';
import { popplerGrey, popplerPages, popplerText } from '../../../helpers/poppler.ts';

type Grey = ReturnType<typeof popplerGrey>;

const DPI = 600;
const PX = DPI / 25.4;
/** Enough to see where a thing lies. */
const COARSE = 300;
const COARSE_PX = COARSE / 25.4;

const square = (side: number): number[] => [0, 0, side, 0, side, side, 0, side];
/** 20 × 20 mm without the 10 × 10 mm in its middle. */
const frame: Shape = {
  id: 'f',
  name: 'Frame',
  rings: [square(20), [5, 5, 15, 5, 15, 15, 5, 15]],
  fillRule: 'evenodd',
  widthMm: 20,
  heightMm: 20,
};
const film = (number: number, name: string, xMm = 30): FilmScreen => ({
  key: String(number),
  screen: {
    number,
    name,
    placed: [{ shape: 'f', xMm, yMm: 20, turnDeg: 0, scale: 1 }],
    mesh: { threadsPerCm: 90, threadUm: 48 },
  },
  shapes: [frame],
  paper: { widthMm: 60, heightMm: 40 },
});
const ways: FilmWays = {
  title: 'Slack tide',
  spreadMm: 0,
  side: 'paper',
  printed: 'against',
  registerMarks: true,
  lays: true,
  cuts: { acrossMm: [], downMm: [] },
  tile: null,
};
const made = async (films: FilmScreen[], change: Partial<FilmWays> = {}, as: FilmsAs = 'pdf') =>
  filmsFile({ films, among: films, ways: { ...ways, ...change }, as, fonts }, () => {});

/** Where a page's sheet lies, mm: in the middle across, below the room for marks. */
const [PAGE_MM, SHEET_X, SHEET_Y] = [170, 55, 20];

/** Black of a painted page within a window, mm: how much, and the box about it. */
function black(page: Grey, [x0, y0, x1, y1]: readonly [number, number, number, number], px = COARSE_PX) {
  let [area, left, top, right, bottom] = [0, Infinity, Infinity, -Infinity, -Infinity];
  for (let y = Math.round(y0 * px); y < Math.round(y1 * px); y++) {
    for (let x = Math.round(x0 * px); x < Math.round(x1 * px); x++) {
      const ink = 255 - page.grey[y * page.widthPx + x]!;
      area += ink / 255;
      if (ink < 128) continue;
      [left, top] = [Math.min(left, x), Math.min(top, y)];
      [right, bottom] = [Math.max(right, x + 1), Math.max(bottom, y + 1)];
    }
  }
  return { areaMm2: area / px / px, leftMm: left / px, topMm: top / px, widthMm: (right - left) / px, heightMm: (bottom - top) / px };
}

describe('film positives', () => {
  it('should be black at their size in the eyes of poppler at 600 dpi: image, spread, place on the sheet and bar', async () => {
    const { bytes, missing, pages } = await made([film(7, 'Kelp')], { spreadMm: 0.5 });
    expect([pages, missing]).toEqual([1, []]);
    const page = popplerGrey(bytes, DPI);
    expect(page.widthPx / PX).toBeCloseTo(PAGE_MM, 1);
    const image = black(page, [SHEET_X, SHEET_Y, SHEET_X + 60, SHEET_Y + 40], PX);
    // 20² + 80 · 0.5 + π · 0.5² without (10 − 1)²; an edge may lie a tenth of a millimetre off along 80 and 36 mm.
    expect(Math.abs(image.areaMm2 - (400 + 40 + Math.PI * 0.25 - 81))).toBeLessThan(0.1 * (84 + 36) * 0.1);
    expect(image.widthMm).toBeCloseTo(21, 1);
    expect(image.heightMm).toBeCloseTo(21, 1);
    expect(image.leftMm).toBeCloseTo(SHEET_X + 19.5, 1);
    expect(image.topMm).toBeCloseTo(SHEET_Y + 9.5, 1);
    const bar = black(page, [19, 101.5, 120.5, 106], PX);
    expect(Math.abs(bar.widthMm - 100)).toBeLessThan(0.1);
    expect(bar.heightMm).toBeCloseTo(2, 1);
  });

  it('should say on each page what it is, with its register marks off the sheet', async () => {
    const framed: FilmScreen = { ...film(7, 'Kelp'), frame: { widthMm: 480, heightMm: 610.5 } };
    const { bytes } = await made([framed, film(8, 'Foam')], { spreadMm: -0.25 });
    const [first, second] = popplerText(bytes) as [string, string];
    expect(first).toContain('Screen 7 Kelp');
    for (const words of [
      'Mesh 90/cm, 48 µm',
      'frame 480 × 610.5 mm inside',
      'choke 0.25 mm',
      'Right-reading: printed side against the emulsion',
      'Sheet 60 × 40 mm',
      'Slack tide',
      '100 mm at 100 %',
    ])
      expect(first).toContain(words);
    expect(second).toContain('Screen 8 Foam');
    expect(second).not.toContain('frame');
    const page = popplerGrey(bytes, 150);
    // A cross 12 mm to the right of the sheet's middle, 0.2 mm thick, and white paper beside it.
    const grey = (xMm: number, yMm: number): number =>
      page.grey[Math.round((yMm * 150) / 25.4) * page.widthPx + Math.round((xMm * 150) / 25.4)]!;
    const across = [-2, -1, 0, 1, 2].map((at) => grey(SHEET_X + 60 + 12 + 4, SHEET_Y + 20 + (at * 25.4) / 150));
    expect(Math.min(...across)).toBeLessThan(128);
    expect(grey(SHEET_X + 60 + 12 + 4, SHEET_Y + 20 + 2)).toBe(255);
  });

  it('should be turned over as a whole when it is wrong-reading', async () => {
    const right = await made([film(7, 'Kelp', 20)]);
    const wrong = await made([film(7, 'Kelp', 20)], { printed: 'away' });
    const at = (bytes: Uint8Array): number => {
      const page = popplerGrey(bytes, COARSE);
      return black(page, [SHEET_X, SHEET_Y, SHEET_X + 60, SHEET_Y + 40]).leftMm;
    };
    expect(at(right.bytes)).toBeCloseTo(SHEET_X + 10, 1);
    expect(at(wrong.bytes)).toBeCloseTo(SHEET_X + 60 - 10 - 20, 1);
    expect(popplerText(wrong.bytes)[0]).not.toContain('Right-reading');
  });

  it.each([
    // By hand, a film below the screen and one inside it, each way up: what faces the squeegee reads as the print does.
    ['paper', 'against', 'Right-reading: printed side against the emulsion, paper side', false],
    ['paper', 'away', 'Wrong-reading: printed side away from the emulsion, paper side', true],
    ['squeegee', 'against', 'Wrong-reading: printed side against the emulsion, squeegee side', true],
    ['squeegee', 'away', 'Right-reading: printed side away from the emulsion, squeegee side', false],
  ] as const)('should read as it must to lie on the %s side, printed side %s the emulsion', async (side, printed, words, over) => {
    const one = film(7, 'Kelp', 20);
    const { bytes } = await made([one], { side, printed, lays: true });
    const page = popplerGrey(bytes, 150);
    const across = over ? PAGE_MM - (SHEET_X + 10) - 20 : SHEET_X + 10;
    expect(black(page, [SHEET_X, SHEET_Y, SHEET_X + 60, SHEET_Y + 40], 150 / 25.4).leftMm).toBeCloseTo(across, 0);
    // The side lay of a landscape sheet stands at its left; its 18 mm are on the other side of a film turned over.
    const lay = (left: number): number => black(page, [left, SHEET_Y + 22, left + 5, SHEET_Y + 38], 150 / 25.4).areaMm2;
    const [here, there] = over ? [SHEET_X + 60.5, SHEET_X - 5.5] : [SHEET_X - 5.5, SHEET_X + 60.5];
    expect(lay(here)).toBeGreaterThan(0);
    expect(lay(there)).toBe(0);
    // A text that runs from right to left is not put together again by poppler.
    if (!over) expect(popplerText(bytes)[0]).toContain(words);
    const svg = strFromU8((await made([one], { side, printed }, 'svgs')).bytes);
    expect(svg).toContain(words);
    const { pixels, width } = new Resvg(svg, { fitTo: { mode: 'width', value: 1700 }, font: { loadSystemFonts: false } }).render();
    const ink = (xMm: number): number => pixels[4 * (Math.round((SHEET_Y + 12) * 10) * width + Math.round(xMm * 10)) + 3]!;
    expect([ink(across + 1), ink(across - 1), ink(across + 19), ink(across + 21)]).toEqual([255, 0, 255, 0]);
  });

  it('should say so when the image of its screen is mirrored, however the film reads', async () => {
    const one = film(7, 'Kelp', 20);
    const mirrored: FilmScreen = {
      ...one,
      screen: { ...one.screen, placed: one.screen.placed.map((each) => ({ ...each, mirrored: true })) },
    };
    for (const [printed, words] of [
      ['against', 'Right-reading, image mirrored: printed side against the emulsion, paper side'],
      ['away', 'Wrong-reading, image mirrored: printed side away from the emulsion, paper side'],
    ] as const)
      expect(strFromU8((await made([mirrored], { printed }, 'svgs')).bytes)).toContain(words);
  });

  it('should go over the pages of a small printer and be whole again when they are laid mark on mark', async () => {
    const wide: FilmScreen = { ...film(7, 'Kelp', 150), paper: { widthMm: 300, heightMm: 40 } };
    const tile = { widthMm: 210, heightMm: 297, overlapMm: 10 };
    const { bytes, pages } = await made([wide], { tile });
    expect(pages).toBe(popplerPages(bytes));
    expect(pages).toBe(2);
    // A4 has a window of 186 mm: the second page begins 176 mm on, and 340 mm of film end on it.
    const [one, two] = [1, 2].map((page) => popplerGrey(bytes, COARSE, page)) as [Grey, Grey];
    expect(Math.abs(one.widthPx / COARSE_PX - 210)).toBeLessThan(0.1);
    const top = 12 + SHEET_Y;
    const image = black(one, [12 + 20 + 130, top, 12 + 20 + 165, top + 40]);
    expect(Math.abs(image.areaMm2 - 300)).toBeLessThan(1.2);
    // 4 mm of its right side are in the strip that both pages have.
    expect(Math.abs(black(two, [12, top, 60, top + 39]).areaMm2 - 80)).toBeLessThan(0.8);
    // Marks in the middle of the strip of 10 mm: 5 mm before the end of one window and behind the start of the next.
    expect(black(one, [12 + 186 - 6, 8, 12 + 186 - 4, 11]).leftMm).toBeCloseTo(12 + 186 - 5 - 0.1, 1);
    expect(black(two, [12 + 4, 8, 12 + 6, 11]).leftMm).toBeCloseTo(12 + 5 - 0.1, 1);
    expect(popplerText(bytes)[1]).toContain('row 1 of 1, column 2 of 2');
  });

  it('should be as large in an SVG, in the eyes of another renderer (resvg), a file a screen in one zip', async () => {
    const { bytes, ending } = await made([film(7, 'Kelp'), film(8, 'Kelp')], { spreadMm: 0.5 }, 'svgs');
    expect(ending).toBe('zip');
    const files = unzipSync(bytes);
    expect(Object.keys(files)).toEqual(['screen-7-kelp.svg', 'screen-8-kelp.svg']);
    const svg = strFromU8(files['screen-7-kelp.svg']!);
    expect(svg).toContain('width="170mm"');
    const { pixels: alpha, width } = new Resvg(svg, { fitTo: { mode: 'width', value: 1700 }, font: { loadSystemFonts: false } }).render();
    let ink = 0;
    for (let y = SHEET_Y * 10; y < (SHEET_Y + 40) * 10; y++)
      for (let x = SHEET_X * 10; x < (SHEET_X + 60) * 10; x++) ink += alpha[4 * (y * width + x) + 3]! / 255;
    expect(Math.abs(ink / 100 - (400 + 40 + Math.PI * 0.25 - 81))).toBeLessThan(1.2);
  });

  it('should be a file each, with the sections of a sheet apart and none for an empty one', async () => {
    const cut = await made([film(7, 'Kelp')], { cuts: { acrossMm: [30], downMm: [] } }, 'pdfs');
    const files = unzipSync(cut.bytes);
    expect(Object.keys(files)).toEqual(['screen-7-kelp-section-1.pdf', 'screen-7-kelp-section-2.pdf']);
    const first = files['screen-7-kelp-section-1.pdf']!;
    expect(popplerText(first)[0]).toContain('section 1 of 2, row 1, column 1');
    const page = popplerGrey(first, COARSE);
    const half = black(page, [(PAGE_MM - 30) / 2, SHEET_Y, (PAGE_MM + 30) / 2, SHEET_Y + 40]);
    expect(Math.abs(half.areaMm2 - 150)).toBeLessThan(0.6);
    expect(half.leftMm + half.widthMm).toBeCloseTo((PAGE_MM + 30) / 2, 1);
    const empty = await made([film(7, 'Kelp', 15)], { cuts: { acrossMm: [30], downMm: [] } });
    expect(empty.pages).toBe(1);
  });

  it('should widen sections that overlap, and mark off the sheet where they are trimmed', async () => {
    const cuts = { acrossMm: [30], downMm: [], overlapMm: 10 };
    const files = unzipSync((await made([film(7, 'Kelp')], { cuts, lays: false }, 'pdfs')).bytes);
    const page = popplerGrey(files['screen-7-kelp-section-1.pdf']!, COARSE);
    // 0 to 35 mm of the sheet, in the middle of the page: 15 mm of the frame, less 10 × 10 of its hole.
    const left = (PAGE_MM - 35) / 2;
    const image = black(page, [left, SHEET_Y, left + 35.5, SHEET_Y + 40]);
    expect(Math.abs(image.areaMm2 - 200)).toBeLessThan(0.8);
    expect(image.leftMm + image.widthMm).toBeCloseTo(left + 35, 1);
    const trim = (of: Grey, at: number) => black(of, [at - 0.5, SHEET_Y - 11, at + 0.5, SHEET_Y - 3]);
    expect(trim(page, left + 30).heightMm).toBeCloseTo(8, 0);
    expect(trim(page, left + 30).leftMm + trim(page, left + 30).widthMm / 2).toBeCloseTo(left + 30, 1);
    // A print that is itself a section carries its joints; another has none.
    const own = { ...film(7, 'Kelp'), joints: { acrossMm: [12], downMm: [] } };
    expect(trim(popplerGrey((await made([own])).bytes, COARSE), SHEET_X + 12).heightMm).toBeCloseTo(8, 0);
    expect(trim(popplerGrey((await made([film(7, 'Kelp')])).bytes, COARSE), SHEET_X + 12).areaMm2).toBe(0);
  });

  it.each([
    ['film.empty', { placed: [] }, {}, 'There is nothing on screen 7, Kelp; add a shape to it, or leave it out.'],
    [
      'film.choked',
      {},
      { spreadMm: -3 },
      'A choke of 3 mm leaves nothing of screen 7, Kelp, which is nowhere wider than 6 mm; choke less.',
    ],
    ['film.spread', {}, { spreadMm: 9 }, 'A spread of 9 mm cannot be made; give -5 to 5 mm, below 0 for a choke.'],
    [
      'film.cut',
      {},
      { cuts: { acrossMm: [55], downMm: [] } },
      'A cut at 55 mm from the left leaves less than 20 mm of the sheet, which is 60 mm wide; move or drop it.',
    ],
    [
      'film.cut',
      {},
      { cuts: { acrossMm: [], downMm: [40] } },
      'A cut at 40 mm from the top does not lie on the sheet, which is 40 mm high; move or drop it.',
    ],
    ['film.tile', {}, { tile: { widthMm: 210, heightMm: 297, overlapMm: 90 } }, 'An overlap of 90 mm cannot be made; give 2 to 50 mm.'],
  ] as const)('should be refused in a sentence: %s', async (code, screen, change, message) => {
    const one = film(7, 'Kelp');
    const asked = made(
      [{ ...one, screen: { ...one.screen, ...screen, placed: 'placed' in screen ? [] : one.screen.placed } }],
      change as Partial<FilmWays>,
    );
    await expect(asked).rejects.toMatchObject({ code, message });
  });

  it('should move the marks of all films out when something is printed beyond the sheet', async () => {
    const { bytes } = await made([film(7, 'Kelp', 62)]);
    // The frame reaches 12 mm beyond the sheet: the marks stand 20 mm farther out.
    const page = popplerGrey(bytes, COARSE);
    expect(Math.abs(page.heightPx / COARSE_PX - (40 + 2 * 40 + 36))).toBeLessThan(0.1);
  });
});
