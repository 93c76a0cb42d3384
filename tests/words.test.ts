import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';

const ROOT = fileURLToPath(new URL('..', import.meta.url));

/** A word that the app does not use, what it says instead, and the files that must know it all the same. */
interface Unused {
  word: RegExp;
  instead: string;
  /** Why a file may name it: mostly a field that saved files have. */
  except?: Readonly<Record<string, string>>;
}

const OLD_LOGS = 'logs of before say lucky where new ones say kept';

const UNUSED: readonly Unused[] = [
  { word: /calm/iu, instead: 'soften, softer; a veil' },
  { word: /restless/iu, instead: 'contrast of edges' },
  {
    word: /lucky/iu,
    instead: 'kept as it came',
    except: {
      'src/engine/log/types.ts': OLD_LOGS,
      'src/engine/log/log-schema.ts': OLD_LOGS,
      'src/engine/log/as-pulled.ts': OLD_LOGS,
      'src/components/ui/log/log-files.ts': OLD_LOGS,
      'src/components/words/log-words.ts': OLD_LOGS,
      'src/components/words/edition-words.ts': OLD_LOGS,
    },
  },
  { word: /accident(?!al)/iu, instead: 'kept as it came' },
  { word: /third.?colou?r/iu, instead: 'overprint colour' },
  { word: /maxThird/u, instead: 'overprint colour', except: { 'src/engine/explore/settings/limits.ts': 'a field of saved projects' } },
  { word: /busyness|less busy|how busy/iu, instead: 'contrast of edges' },
  { word: /paper.relative|relative to the paper/iu, instead: 'Show paper as white' },
  { word: /A\d, lying|\}, lying/u, instead: 'landscape' },
  { word: /like beside like/iu, instead: 'alike side by side' },
  { word: /(put|fold) away|do not add|>\s*previous\s*</iu, instead: 'Close, Fold, Cancel, Back' },
  { word: /otherwise…|otherwise than/iu, instead: 'pulled differently' },
  { word: /\b(unmark|mark (two|prints))\b|>\s*mark\s*</iu, instead: 'select' },
  { word: /go on from this/iu, instead: 'More from this print' },
  { word: />\s*another seed\s*<|>\s*seed\s*<|label: 'seed'/iu, instead: 'name of the wall' },
  { word: /\bshift up to|shifts (snap|go)\b/iu, instead: 'offset' },
  { word: />\s*put it down\s*</iu, instead: 'Add the pull, Add the veil' },
  { word: /register moves?\b/iu, instead: 'change of offset' },
  { word: /\.bad-lay\b|pull-shift/u, instead: 'offset' },
];

/** Text files that are read for words, named from the top. */
function filesToRead(): string[] {
  const sources = readdirSync(`${ROOT}/src`, { recursive: true, encoding: 'utf8' }).map((name) => `src/${name.replaceAll('\\', '/')}`);
  return [...sources, 'README.md', 'DEVELOPERS.md', 'index.html'].filter((name) => /\.(ts|css|html|md)$/u.test(name));
}

const files = filesToRead().map((name) => ({ name, lines: readFileSync(`${ROOT}/${name}`, 'utf8').split('\n') }));

/** Where a word stands: 'src/a.ts, line 3'. */
function placesOf(word: RegExp): { name: string; at: string }[] {
  return files.flatMap(({ name, lines }) =>
    lines.flatMap((line, i) => (word.test(line) ? [{ name, at: `${name}, line ${i + 1}: ${line.trim().slice(0, 90)}` }] : [])),
  );
}

describe('the words of the app', () => {
  it('should read the sources and the documents', () => {
    expect(files.length).toBeGreaterThan(300);
    expect(files.map(({ name }) => name)).toEqual(expect.arrayContaining(['README.md', 'DEVELOPERS.md', 'index.html']));
  });

  it.each(UNUSED)('should not be $word, but: $instead', ({ word, except = {} }) => {
    const places = placesOf(word);
    expect(places.filter(({ name }) => except[name] === undefined).map(({ at }) => at)).toEqual([]);
    // An exception that nothing needs any more is taken out.
    for (const name of Object.keys(except)) expect(places.map((place) => place.name)).toContain(name);
  });
});
