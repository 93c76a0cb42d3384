import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { htmlTexts } from './helpers/html-texts.ts';

const SRC = fileURLToPath(new URL('../src', import.meta.url));

/** Folders of catalogues: English ones in en/, translations beside it. */
const HOMES = ['components/words', 'engine/words'];

function filesIn(folder: string): string[] {
  if (!existsSync(join(SRC, folder))) return [];
  const names = readdirSync(join(SRC, folder), { recursive: true, encoding: 'utf8' }).map((name) => name.replaceAll('\\', '/'));
  return names.filter((name) => name.endsWith('.ts')).sort();
}

/** Attributes whose values are read, by eye or aloud. */
const READ = /^\.?(aria-label|aria-valuetext|label|title|words|note|placeholder|heading|hint|alt|stop|caption)$/u;
/** Units, marks and names that are the same in every language. */
const SAME = /^(mm|cm|cm³|m|m²|µm|ΔE|ΔE00|g|kg|h|min|px|dpi|lpi|hex|A3|A4|PDF|SVG|PNG|QR|L|a|b|A|B|x|y|k1|k2|Lab|nbsp|Pullstack)$/u;

function isText(text: string): boolean {
  return (text.match(/\p{L}[\p{L}\d]*/gu) ?? []).some((word) => !SAME.test(word));
}

/** The catalogue that a file of words holds, and the text it is written in. */
async function catalogue(home: string, language: string, name: string): Promise<Record<string, unknown>> {
  const { say } = (await import(join(SRC, home, language, name))) as { say: Record<string, unknown> };
  return say;
}

/** What a catalogue's sentence says when its places are filled with marks: which of them it used. */
function marksUsed(entry: unknown): string {
  if (typeof entry !== 'function') return '';
  // A place of a number is found in it, too; places are told apart by their values.
  const marks = Array.from({ length: Math.max(entry.length, 1) }, (_, i) => 7001 + i);
  const named = new Proxy({}, { get: (_, key) => `‹${String(key)}›`, has: () => true });
  const filled: unknown = String(entry).startsWith('({') ? entry(named) : entry(...marks);
  const text = (Array.isArray(filled) ? filled.map(String).join('') : String(filled)).replace(/(?<=\d)[.,](?=\d)/gu, '');
  return [...new Set([...(text.match(/700\d/gu) ?? []), ...(text.match(/‹\w+›/gu) ?? [])])].sort().join(' ');
}

describe('catalogues', () => {
  it('should be named in their files by where they stand', () => {
    const odd = HOMES.flatMap((home) =>
      filesIn(`${home}/en`).filter((name) => {
        const called = `${home === 'engine/words' ? 'engine/' : ''}${name.slice(0, -'.ts'.length)}`;
        return !readFileSync(join(SRC, home, 'en', name), 'utf8').includes(`speak('${called}', {`);
      }),
    );
    expect(odd).toEqual([]);
    expect(filesIn(`${HOMES[0]!}/en`).length).toBeGreaterThan(3);
  });

  it('should each have their German beside the English', () => {
    for (const home of HOMES) {
      expect(filesIn(`${home}/de`).filter((name) => name !== 'german.ts')).toEqual(filesIn(`${home}/en`));
    }
  });

  it('should use in a translation the same places as in English', async () => {
    const odd: string[] = [];
    for (const home of HOMES) {
      for (const name of filesIn(`${home}/de`).filter((each) => each !== 'german.ts')) {
        const [english, german] = [await catalogue(home, 'en', name), await catalogue(home, 'de', name)];
        for (const key of Object.keys(english)) {
          if (marksUsed(english[key]) !== marksUsed(german[key])) odd.push(`${home}/de/${name}: ${key}`);
        }
      }
    }
    expect(odd).toEqual([]);
  });
});

describe('what templates say', () => {
  const sources = filesIn('components')
    .filter((name) => !name.startsWith('words/') && !name.endsWith('kit-page.ts'))
    .map((name) => ({ name, texts: htmlTexts(readFileSync(join(SRC, 'components', name), 'utf8')) }));

  it('should be read', () => {
    expect(htmlTexts('const a = html`<p title="Of ${n === 1 ? html`<b>One</b>` : \'x`\'} left">Two &nbsp; <i>${3}</i> more</p>`;')).toEqual(
      expect.arrayContaining([
        { attribute: '', text: 'One', line: 1 },
        { attribute: '', text: 'more', line: 1 },
        { attribute: 'title', text: 'Of   left', line: 1 },
      ]),
    );
    expect(sources.flatMap(({ texts }) => texts).length).toBeGreaterThan(500);
  });

  it('should stand in a catalogue', () => {
    const found = sources.flatMap(({ name, texts }) =>
      texts
        .filter(({ attribute, text }) => (attribute === '' || READ.test(attribute)) && isText(text))
        .map(({ line, text }) => `${name}, line ${line}: ${text}`),
    );
    expect(found).toEqual([]);
  });
});
