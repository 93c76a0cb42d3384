import { z } from 'zod';
import { MOST_SHEETS } from '../../base/limits.ts';
import { FATES } from './fates.ts';

const id = z.string().min(1).max(200);
const words = z.string().max(1000);
// 'edition.count' of checkEdition says in words what is wrong; here only what could not be read.
const count = z.int().min(0).max(MOST_SHEETS);

/** An edition as a project keeps it. */
export const editionSchema = z.object({
  recipe: id,
  counts: z.object({
    impressions: z.int().min(1).max(MOST_SHEETS),
    ap: count,
    pp: count,
    hc: count,
    bat: z.boolean(),
    variable: z.boolean(),
  }),
  words: z.object({
    artist: words,
    title: words,
    year: words,
    workshop: words,
    dates: words,
    rejects: words,
    approved: words,
    other: words,
  }),
  fates: z.array(z.object({ screen: id, fate: z.enum(FATES), by: words, when: words })).max(200),
  spares: count.optional(),
  visit: id.optional(),
  marks: z.array(z.object({ sheet: z.int().min(1).max(100_000), mark: z.string().max(40) })).max(MOST_SHEETS),
});
