import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { HOSTILE_LESSONS, HOSTILE_LINKS, HOSTILE_VISITS } from './hostile-visits.ts';
import type { ReaderName } from './readers.ts';

/** A file that ended a reader or held it up; kept so that it never does again. */
interface HostileFile {
  reader: ReaderName;
  what: string;
  text: string;
}

const kept = (name: string): unknown => JSON.parse(readFileSync(join('tests/files-from-before', name), 'utf8'));

const svg = (inside: string, attributes = ''): string =>
  `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 100 100" ${attributes}>${inside}</svg>`;
const blanks = ' '.repeat(60_000);
const digits = '1'.repeat(60_000);
const many = (count: number, one: (i: number) => string): string => Array.from({ length: count }, (_, i) => one(i)).join('');

const copies = (place: (i: number) => string): string =>
  svg(`<path id="a" d="M5 0C9 0 10 3 10 5S8 10 5 10 0 8 0 5 2 0 5 0"/>${many(5000, (i) => `<use href="#a" ${place(i)}/>`)}`);

const DRAWINGS: [what: string, text: string][] = [
  ['a curve to 1e308', '<svg xmlns="http://www.w3.org/2000/svg"><path d="M0 0C1e308 1e308 -1e308 1e308 9 9z"/></svg>'],
  ['a curve to 1e150', svg('<path d="M0 0C1e150 1e150 -1e150 1e150 9 9z"/>')],
  ['a parabola to 1e200', svg('<path d="M0 0Q1e200 1e200 9 9z"/>')],
  ['an arc of 1e300', svg('<path d="M0 0A1e300 1 0 0 1 9 9z"/>')],
  ['a circle of 1e300', svg('<circle r="1e300"/>')],
  [
    'clips within clips of 1e300',
    svg(
      '<clipPath id="a" clip-path="url(#b)"><circle r="50"/></clipPath><clipPath id="b"><path d="M0 0C1e300 1e300 -1e300 1e300 9 9z"/></clipPath><circle r="9" clip-path="url(#a)"/>',
    ),
  ],
  ['a scale of 1e300', svg('<g transform="scale(1e300)"><circle r="9"/></g>')],
  ['a viewBox of 1e-300', '<svg xmlns="http://www.w3.org/2000/svg" width="9" height="9" viewBox="0 0 1e-300 1e-300"><circle r="9"/></svg>'],
  ['blanks after url( in a fill', svg(`<rect width="9" height="9" fill="url(${blanks}x"/>`)],
  ['blanks after url("" in a fill', svg(`<rect width="9" height="9" fill="url(''${blanks}x"/>`)],
  ['digits after url( in a clip-path', svg(`<rect width="9" height="9" clip-path="url(${digits}"/>`)],
  ['blanks after url( in a clip-path', svg(`<rect width="9" height="9" clip-path="url(${blanks})${blanks}"/>`)],
  ['digits in a transform', svg(`<rect width="9" height="9" transform="scale(${digits})x"/>`)],
  ['digits and points in a transform', svg(`<rect width="9" height="9" transform="scale(${'1.'.repeat(30_000)})"/>`)],
  ['blanks in a transform', svg(`<rect width="9" height="9" transform="scale(1)${blanks}x"/>`)],
  ['blanks in points', svg(`<polygon points="0,0 9,0${blanks}x"/>`)],
  ['blanks in a width', svg(`<rect width="9${blanks}x" height="9"/>`)],
  ['digits in a width', svg(`<rect width="${digits}!" height="9"/>`)],
  ['digits in arcs', svg(`<path d="M0 0A${digits} x"/>`)],
  ['digits and blanks in arcs', svg(`<path d="M0 0A${'11 '.repeat(20_000)} x"/>`)],
  ['zeros in arcs', svg(`<path d="M0 0A${'0'.repeat(60_000)} x"/>`)],
  ['a long run that ends in junk', svg(`<path d="M0 0l${'1 1 '.repeat(100_000)}x"/>`)],
  ['a long run of leading zeros', svg(`<path d="M0 0l${'01 01 '.repeat(100_000)}z"/>`)],
  ['commas in a path', svg(`<path d="M0 0l${','.repeat(60_000)}z"/>`)],
  ['blanks in a colour', svg(`<rect width="9" height="9" fill="rgba(1,1,1,${blanks}x"/>`)],
  ['commas in a colour', svg(`<rect width="9" height="9" fill="rgba(${','.repeat(60_000)}"/>`)],
  ['blanks in media', svg(`<style media="${blanks}x">rect{fill:red}</style><rect width="9" height="9"/>`)],
  ['brackets in a fill', svg(`<rect width="9" height="9" fill="${'('.repeat(60_000)}"/>`)],
  ['brackets in a style', svg(`<style>rect{fill:${'('.repeat(60_000)}}</style><rect width="9" height="9"/>`)],
  [
    'a selector of many :not',
    svg(`<style>${':not('.repeat(20_000)}rect${')'.repeat(20_000)}{fill:red}</style><rect width="9" height="9"/>`),
  ],
  [
    '3,000 crossing stripes',
    svg(many(1500, (i) => `<rect x="${i / 16}" width="0.03" height="99"/><rect y="${i / 16}" height="0.03" width="99"/>`)),
  ],
  ['3,000 crossing stripes in one path', svg(`<path d="${many(1500, (i) => `M${i / 16} 0h.03v99h-.03zM0 ${i / 16}h99v.03h-99z`)}"/>`)],
  ['20,000 overlaps on one line', svg(many(20_000, (i) => `<rect x="${i / 300}" y="1" width="20" height="9"/>`))],
  ['20,000 overlaps on one line in one path', svg(`<path d="${many(20_000, (i) => `M${i / 300} 1h20v9h-20z`)}"/>`)],
  ['20,000 overlaps from one corner', svg(many(20_000, (i) => `<rect width="${1 + i / 300}" height="${99 - i / 300}"/>`))],
  ['a fan of 5,000', svg(many(5000, (i) => `<path d="M50 50L${i / 50} 0h.1z"/>`))],
  [
    'a star of 4,001 points',
    svg(
      `<polygon fill-rule="evenodd" points="${many(4001, (i) => `${50 + 49 * Math.cos((i * 2000 * 2 * Math.PI) / 4001)},${50 + 49 * Math.sin((i * 2000 * 2 * Math.PI) / 4001)} `)}"/>`,
    ),
  ],
  ['5,000 copies in one place', copies(() => '')],
  ['5,000 copies a hair apart', copies((i) => `x="${i / 1000}"`)],
  ['5,000 copies over each other in a row', copies((i) => `transform="translate(${i / 50} 0) scale(.01 1)"`)],
  [
    '180 clips within each other',
    svg(
      `${many(180, (i) => `<clipPath id="c${i}" clip-path="url(#c${i + 1})">${many(100, (k) => `<circle cx="${k}" cy="${k}" r="40"/>`)}</clipPath>`)}<circle r="50" clip-path="url(#c0)"/>`,
    ),
  ],
];

const header = 'CGATS.17\n';
const CHARTS: [what: string, text: string][] = [
  ['many quotes on a line', `${header}A ${' "a'.repeat(60_000)}\nBEGIN_DATA\nEND_DATA\n`],
  [
    'many quotes in a row of data',
    `${header}BEGIN_DATA_FORMAT\nSAMPLE_ID LAB_L LAB_A LAB_B\nEND_DATA_FORMAT\nBEGIN_DATA\n${" 'a".repeat(60_000)}\nEND_DATA\n`,
  ],
  [
    'a field name of 200,000 signs',
    `${header}BEGIN_DATA_FORMAT\n${'_'.repeat(200_000)}x LAB_L LAB_A LAB_B\nEND_DATA_FORMAT\nBEGIN_DATA\n1 50 0 0\nEND_DATA\n`,
  ],
  [
    'a field name of 200,000 digits',
    `${header}BEGIN_DATA_FORMAT\n${'0'.repeat(200_000)}x LAB_L LAB_A LAB_B\nEND_DATA_FORMAT\nBEGIN_DATA\n1 50 0 0\nEND_DATA\n`,
  ],
  ['a header before 20,000 empty tables', `${header}${many(3000, (i) => `KEYWORD_${i} "x"\n`)}${'BEGIN_DATA\nEND_DATA\n'.repeat(20_000)}`],
  ['a header that grows before 20,000 tables', many(20_000, (i) => `KEYWORD_${i} "x"\nBEGIN_DATA\nEND_DATA\n`)],
  [
    'many fields before 20,000 tables',
    `${header}BEGIN_DATA_FORMAT\n${many(20_000, (i) => `F${i} `)}\nEND_DATA_FORMAT\n${'BEGIN_DATA\n1\nEND_DATA\n'.repeat(20_000)}`,
  ],
  [
    'blanks between long words',
    `${header}BEGIN_DATA_FORMAT\nSAMPLE_ID LAB_L LAB_A LAB_B\nEND_DATA_FORMAT\nBEGIN_DATA\n${`${'a'.repeat(50)}${' '.repeat(5000)}`.repeat(100)}${'b'.repeat(100_000)}`,
  ],
  [
    'a word of 200,000 signs at the end',
    `${header}BEGIN_DATA_FORMAT\nSAMPLE_ID LAB_L LAB_A LAB_B\nEND_DATA_FORMAT\nBEGIN_DATA\n${'b '.repeat(100_000)}`,
  ],
  ['all tables on one line', `${header}${'BEGIN_DATA 1 END_DATA '.repeat(40_000)}`],
  [
    'many wavelengths',
    `${header}BEGIN_DATA_FORMAT\n${many(60_000, (i) => `NM_${400 + i / 1000} `)}\nEND_DATA_FORMAT\nBEGIN_DATA\n${'0.5 '.repeat(60_000)}\nEND_DATA\n`,
  ],
  [
    'one patch of 100,000 wavelengths',
    `${header}BEGIN_DATA_FORMAT\nSAMPLE_ID SPECTRAL_NM SPECTRAL_PCT\nEND_DATA_FORMAT\nBEGIN_DATA\n${many(100_000, (i) => `1 ${400 + i / 1000} 5\n`)}END_DATA\n`,
  ],
  [
    'wrapped rows of one value',
    `${header}BEGIN_DATA_FORMAT\n${many(30_000, (i) => `F${i} `)}LAB_L LAB_A LAB_B\nEND_DATA_FORMAT\nBEGIN_DATA\n${'1\n'.repeat(100_000)}END_DATA\n`,
  ],
  [
    'ten million values',
    `${header}BEGIN_DATA_FORMAT\nA LAB_L LAB_A LAB_B\nEND_DATA_FORMAT\nBEGIN_DATA\n${'1 1 1 1\n'.repeat(2_400_000)}END_DATA\n`,
  ],
  [
    'a family of columns a table',
    `${header}${many(20_000, (i) => `BEGIN_DATA_FORMAT\nQ${i}_400 Q${i}_500 Q${i}_600 Q${i}_700\nEND_DATA_FORMAT\nBEGIN_DATA\n.1 .2 .3 .4\nEND_DATA\n`)}`,
  ],
];

/** A document with something changed in it. */
function changed(name: string, change: (document: never) => void): string {
  const document = kept(name) as never;
  change(document);
  return JSON.stringify(document);
}

interface AnyRecipe {
  id: string;
  title: string;
  parent?: string;
  inks: { id: string; mix?: { ink: string; parts: number }[] }[];
  screens: { placed: unknown[] }[];
  pulls: { id: string }[];
}
interface AnyProject {
  recipes: AnyRecipe[];
  drawer: AnyRecipe;
  bench: { id: string }[];
  explore: { holds: unknown[]; apart?: unknown[]; neverOver?: unknown[] };
}
interface AnyLog {
  head: { recipes: AnyRecipe[]; sheets: unknown[] };
  events: unknown[];
}

const DOCUMENTS: [reader: 'recipe' | 'project' | 'log', what: string, text: () => string][] = [
  [
    'recipe',
    'lists a million deep',
    () => `{"format":"pullstack-recipe","version":1,"id":${'['.repeat(1_000_000)}${']'.repeat(1_000_000)}}`,
  ],
  [
    'recipe',
    'objects a million deep',
    () => `{"format":"pullstack-recipe","version":1,"lineage":${'{"parents":'.repeat(300_000)}1${'}'.repeat(300_000)}}`,
  ],
  [
    'recipe',
    '130,000 mixes of nothing',
    () =>
      changed('recipe.json', (recipe: AnyRecipe) => {
        const ink = recipe.inks[0]!;
        recipe.inks[0] = { ...ink, mix: [{ ink: 'gone', parts: 1 }] };
        const stock = { ...ink };
        delete stock.mix;
        for (let i = 0; i < 3000; i++)
          recipe.inks.push({ ...stock, id: `m${i}`, mix: Array.from({ length: 40 }, () => ({ ink: `gone${i}`, parts: 1 })) });
      }),
  ],
  [
    'recipe',
    '130,000 shapes that are gone',
    () =>
      changed('recipe.json', (recipe: AnyRecipe) => {
        const screen = recipe.screens[0]!;
        screen.placed = Array.from({ length: 130_000 }, () => ({ ...(screen.placed[0] as object), shape: 'gone' }));
      }),
  ],
  [
    'project',
    '4,000 holds',
    () =>
      changed('project.json', (project: AnyProject) => {
        project.explore.holds = Array.from({ length: 4000 }, (_, i) => ({
          kind: ['first', 'last', 'place'][i % 3],
          pull: project.bench[i % project.bench.length]!.id,
        }));
      }),
  ],
  [
    'project',
    '1,900 holds before',
    () =>
      changed('project.json', (project: AnyProject) => {
        const ids = project.bench.map(({ id }) => id);
        project.explore.holds = Array.from({ length: 1900 }, (_, i) => ({
          kind: 'before',
          pull: ids[i % ids.length],
          other: ids[(i * 7 + 1) % ids.length],
        }));
      }),
  ],
  [
    'project',
    '130,000 holds of what is gone',
    () =>
      changed('project.json', (project: AnyProject) => {
        project.explore.holds = Array.from({ length: 130_000 }, (_, i) => ({ kind: 'ink', pull: `gone${i}` }));
      }),
  ],
  [
    'project',
    'a hold on a name of 400,000 signs',
    () =>
      changed('project.json', (project: AnyProject) => {
        project.explore.holds = [{ kind: 'ink', pull: 'x'.repeat(400_000) }];
      }),
  ],
  ['project', 'a version of 400,000 signs', () => `{"format":"pullstack-project","version":"${'x'.repeat(400_000)}"}`],
  [
    'project',
    '60 recipes in a row',
    () =>
      changed('project.json', (project: AnyProject) => {
        const recipe = project.recipes[0]!;
        const light = { ...recipe };
        project.recipes = Array.from({ length: 60 }, (_, i) => ({ ...light, id: `r${i}`, parent: `r${i - 1}` }));
      }),
  ],
  [
    'log',
    'an undoing of 150,000 undoings',
    () =>
      changed('log.json', (log: AnyLog) => {
        log.events = Array.from({ length: 150_000 }, (_, i) => ({
          id: `u${i}`,
          atMs: 1.8e12 + i,
          device: 'd',
          sheet: 1,
          kind: 'undone',
          event: `u${i - 1}`,
        }));
      }),
  ],
  [
    'log',
    '200,000 bad events',
    () =>
      changed('log.json', (log: AnyLog) => {
        log.events = Array.from({ length: 200_000 }, () => 1);
      }),
  ],
];

const PHOTOS: [what: string, text: string][] = [
  ['a PNG that promises 30,000 × 30,000 pixels', '\u0089PNG\r\n\u001a\n\0\0\0\rIHDR\0\0\u0075\u0030\0\0\u0075\u0030'],
  ['a JPEG of a million segments without a length', `\u00ff\u00d8${'\u00ff\u00e0\0\0'.repeat(250_000)}`],
  ['a JPEG of filling', `\u00ff\u00d8${'\u00ff'.repeat(1_000_000)}`],
];

const TYPED: [what: string, text: string][] = [
  ['400,000 digits', '1'.repeat(400_000)],
  ['blanks before a fraction', `1${' '.repeat(100_000)}x`],
  ['thousands without end', `1${' 000'.repeat(100_000)}`],
  ['a colour of 100,000 blanks', `50${' '.repeat(100_000)}x`],
  ['an address of 400,000 signs', `#${'press'.repeat(80_000)}`],
];

/** Every hostile file that is known. */
export const HOSTILE: readonly HostileFile[] = [
  ...PHOTOS.map(([what, text]) => ({ reader: 'photo' as const, what, text })),
  ...TYPED.map(([what, text]) => ({ reader: 'typed' as const, what, text })),
  ...HOSTILE_VISITS.map(([what, text]) => ({ reader: 'visit' as const, what, text })),
  ...HOSTILE_LESSONS.map(([what, text]) => ({ reader: 'lesson' as const, what, text })),
  ...HOSTILE_LINKS.map(([what, text]) => ({ reader: 'link' as const, what, text })),
  { reader: 'svg', what: 'an element with a name of 5,000 signs', text: svg(`<pa${'-'.repeat(5000)}th/>`) },
  ...DRAWINGS.map(([what, text]) => ({ reader: 'svg' as const, what, text })),
  ...CHARTS.map(([what, text]) => ({ reader: 'cgats' as const, what, text })),
  ...DOCUMENTS.map(([reader, what, text]) => ({ reader, what, text: text() })),
];
