import { describe, expect, it } from 'vitest';
import { randomFrom } from '../../../src/engine/base/random.ts';
import { checkPlan } from '../../../src/engine/pullorder/check-plan.ts';
import { planPulls } from '../../../src/engine/pullorder/planner.ts';
import type { PlanSheet } from '../../../src/engine/pullorder/types.ts';
import published from './supersequences.json' with { type: 'json' };

/** A sheet on which every pull overlaps every other, so that its order is a word. */
function sheetOf(word: string): PlanSheet {
  const overlaps: [number, number][] = [];
  for (let b = 0; b < word.length; b++) for (let a = 0; a < b; a++) overlaps.push([a, b]);
  return { pulls: [...word].map((screen) => ({ screen, ink: `ink ${screen}` })), overlaps };
}

function permutations(letters: string): string[] {
  if (letters.length <= 1) return [letters];
  return [...letters].flatMap((first) => permutations(letters.replace(first, '')).map((rest) => first + rest));
}

/** The textbook table. */
function longestCommonSubsequence(a: string, b: string): number {
  const table = Array.from({ length: a.length + 1 }, () => new Array<number>(b.length + 1).fill(0));
  for (let i = 1; i <= a.length; i++) {
    for (let j = 1; j <= b.length; j++) {
      table[i]![j] = a[i - 1] === b[j - 1] ? table[i - 1]![j - 1]! + 1 : Math.max(table[i - 1]![j]!, table[i]![j - 1]!);
    }
  }
  return table[a.length]![b.length]!;
}

/** No letter twice in a row: such a word has no fewer mounts than set-ups. */
function randomWord(seed: string, length: number, alphabet: number): string {
  const random = randomFrom(seed);
  let word = '';
  while (word.length < length) {
    const letter = 'abcdefgh'[random.int(alphabet)]!;
    if (letter !== word.at(-1)) word += letter;
  }
  return word;
}

describe('planPulls against shortest common supersequences', () => {
  it.each(published.permutations)('should print all orders of $letters fully overlapping pulls in $shortest set-ups', (row) => {
    const problem = { sheets: permutations('abcd'.slice(0, row.letters)).map(sheetOf) };
    const plan = planPulls(problem, { budgetMs: 1500, seed: 1 });
    expect(checkPlan(problem, plan)).toEqual([]);
    expect(plan.setUps).toHaveLength(row.shortest);
    expect(plan.mounts).toBe(row.shortest);
    expect(plan.bound).toEqual({ setUps: row.shortest, mounts: row.shortest });
  });

  it.each(published.worked)('should give the worked example $a, $b', ({ a, b, longestCommonSubsequence: lcs, shortest }) => {
    expect(longestCommonSubsequence(a, b)).toBe(lcs);
    const plan = planPulls({ sheets: [sheetOf(a), sheetOf(b)] }, { budgetMs: 200, seed: 1 });
    expect(plan.setUps).toHaveLength(shortest);
    expect(plan.bound.setUps).toBe(shortest);
  });

  it('should need |a| + |b| − LCS set-ups for two fully overlapping sheets, and know it', () => {
    const { cases, longest, alphabets } = published.twoSheets;
    for (let i = 0; i < cases; i++) {
      const random = randomFrom(`two sheets ${i}`);
      const alphabet = random.pick(alphabets);
      const [a, b] = ['a', 'b'].map((x) => randomWord(`${i} ${x}`, 1 + random.int(longest), alphabet)) as [string, string];
      const problem = { sheets: [sheetOf(a), sheetOf(b)] };
      const shortest = a.length + b.length - longestCommonSubsequence(a, b);
      const plan = planPulls(problem, { budgetMs: 300, seed: i });
      expect(checkPlan(problem, plan)).toEqual([]);
      expect(plan.setUps.length, `${a} ${b}`).toBe(shortest);
      expect(plan.mounts, `${a} ${b}`).toBe(shortest);
      expect(plan.bound, `${a} ${b}`).toEqual({ setUps: shortest, mounts: shortest });
    }
  });
});
