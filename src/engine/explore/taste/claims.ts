import { entryAt, f64, num } from '../../base/at.ts';
import { type Candidate, type Choices, clearest } from './by-chance.ts';
import type { Taste } from './taste.ts';
import { type TraitKey, TRAITS } from './traits.ts';

/** Something that a taste has learnt, or tends to: more or less of a trait, or the middle of it. */
export interface Claim {
  trait: TraitKey;
  way: 'more' | 'less' | 'middle';
  /** How often choices made by chance would make some trait as clear, 0–1. */
  chance: number;
  /** Whether it is told as known, or as a perhaps. */
  sure: boolean;
}

/** Up to this chance a claim is told as known: small, since it is looked at again and again. */
const SURE = 0.02;
/** Up to this one it is told as a perhaps, with the chance beside it. */
const PERHAPS = 0.25;
/** With fewer choices not even a perhaps is told; a choice of ours. */
const LEAST_CHOICES = 6;
const MOST_CLAIMS = 3;
/** The middle of a trait is told of only where it is clearer than an end by this (squared standard deviations; a choice of ours). */
const MIDDLE_COSTS = 2;

/**
 * What choices go by: at most three claims, the clearest first, of which the last may be a perhaps. Each is judged
 * beside those before it alone, so that traits that go together do not hide each other, and a second is told of
 * only for what the first leaves unsaid.
 */
export function claimsOf(taste: Taste): Claim[] {
  const { scale } = taste;
  const choices = eachOnce(taste);
  const claims: Claim[] = [];
  if (new Set(choices.of).size < LEAST_CHOICES) return claims;
  const known: number[] = [];
  const left = new Set(TRAITS.flatMap((_, i) => (num(scale.spread, i) > 0 ? [i] : [])));
  while (claims.length < MOST_CLAIMS) {
    const candidates = [...left].flatMap((i): Candidate[] => [
      { column: i, lessOnly: 0 },
      { column: TRAITS.length + i, lessOnly: MIDDLE_COSTS },
    ]);
    const found = clearest(choices, known, candidates, PERHAPS);
    if (found === null || found.chance > PERHAPS) break;
    const { column, lessOnly } = entryAt(candidates, found.at);
    const trait = column % TRAITS.length;
    const claim: Claim = {
      trait: entryAt(TRAITS, trait),
      way: lessOnly > 0 ? 'middle' : found.more ? 'more' : 'less',
      chance: found.chance,
      sure: found.chance <= SURE,
    };
    claims.push(claim);
    if (!claim.sure) break;
    left.delete(trait);
    known.push(...(claim.way === 'middle' ? [trait, column] : [trait]));
  }
  return claims;
}

/** Pairs and the choices that they are of; a print that was selected, then pinned, then kept was chosen once. */
function eachOnce({ pairs: { size, differences, counts }, chosen }: Taste): Choices {
  const last = new Map(chosen.flatMap((pair) => (pair.direct ? [] : [[pair.chosen.key, pair.of]])));
  const rows = chosen.flatMap((pair, row) => (pair.direct || last.get(pair.chosen.key) === pair.of ? [row] : []));
  const part = new Float64Array(rows.length * size);
  rows.forEach((row, at) => part.set(differences.subarray(row * size, (row + 1) * size), at * size));
  return {
    pairs: { size, differences: part, counts: Float64Array.from(rows, (row) => f64(counts, row)) },
    of: rows.map((row) => entryAt(chosen, row).of),
  };
}
