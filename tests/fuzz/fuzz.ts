// Changes real files at random and reads them, 100,000 for each reader: `npm run fuzz`, or `npm run fuzz -- svg 5000 7`
// for one reader, so many and from which seed.
import { guarded } from './guard.ts';
import { mutated } from './mutations.ts';
import { READERS, type ReaderName } from './readers.ts';
import { realFiles } from './seeds.ts';

/** What one text may take of the processor's time. */
const MOST_MS = 2000;

/** A long run tells how far it is each so many texts. */
const TOLD_EVERY = 10_000;

/** Texts that one worker is given; a worker that has read many has a full memory of its own. */
const A_WORKER = 2000;

const [only, count = '100000', seed = '1'] = process.argv.slice(2);
const readers = only === undefined || only === 'all' ? READERS : READERS.filter((name) => name === only);
if (readers.length === 0) {
  console.error(`No reader is called ${only}; there are ${READERS.join(', ')} and all.`);
  process.exit(1);
}
let bad = 0;
for (const reader of readers) bad += await fuzz(reader, Number(count), Number(seed));
process.exit(bad === 0 ? 0 : 1);

async function fuzz(reader: ReaderName, all: number, first: number): Promise<number> {
  const files = realFiles(reader);
  const began = Date.now();
  let found = 0;
  for (let done = 0; done < all; done += A_WORKER) {
    const changed = { seed: first + done, count: Math.min(A_WORKER, all - done) };
    for (const { index, what } of await guarded({ reader, files, changed, mostMs: MOST_MS })) {
      const text = [...mutated(files, changed.seed, index + 1)].at(-1)!;
      // The first text of a worker pays for its start; what is slow is slow again.
      const again = await guarded({ reader, files: [text], changed: null, mostMs: MOST_MS });
      if (again.length === 0) continue;
      found++;
      console.log(
        `${reader}, seed ${changed.seed}, number ${index}: ${what}\n  ${JSON.stringify(text.slice(0, 300))}… (${text.length} signs)`,
      );
    }
    if (done > 0 && done % TOLD_EVERY === 0) console.log(`${reader}: ${done} so far, ${found} not borne`);
  }
  console.log(`${reader}: ${all} changed files, ${found} not borne, ${Math.round((Date.now() - began) / 1000)} s`);
  return found;
}
