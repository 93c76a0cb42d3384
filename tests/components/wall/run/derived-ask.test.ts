import { describe, expect, it } from 'vitest';
import { derivedAsk, MOST_STEPS, parentsOf, tasteAsk, withSteps } from '../../../../src/components/wall/run/derived-ask.ts';
import { lineageOf, rememberOrigin } from '../../../../src/components/wall/run/wall-origins.ts';
import type { Variant } from '../../../../src/engine/explore/types.ts';

const print = (index: number, seed = 'tide-3'): Variant => ({ id: `${seed}:${index}`, seed, index, pulls: [], key: `${seed}${index}` });

describe('derivedAsk', () => {
  it('should name the prints, in the order in which they were marked', () => {
    const ask = derivedAsk('between', [print(4), print(1)]);
    expect(ask.sentence).toBe('The way from no. 5 to no. 2 of wall “tide-3”.');
    expect(ask.request.parents.map(({ id }) => id)).toEqual(['tide-3:4', 'tide-3:1']);
  });

  it('should take the steps between two prints within reason', () => {
    const ask = derivedAsk('between', [print(4), print(1)]);
    expect(withSteps(ask, 3).request).toEqual({ ...ask.request, count: 3 });
    expect(withSteps(ask, 1000).request.count).toBe(MOST_STEPS);
    expect(withSteps(ask, 0).request.count).toBe(1);
  });

  it('should carry where its prints come from to the prints found', () => {
    const ask = derivedAsk('nearer', [print(11)]);
    const child: Variant = {
      ...print(2, '(tide-3:11) nearer'),
      lineage: { kind: 'nearer', parents: ['tide-3:11'], seed: '(tide-3:11) nearer' },
    };
    rememberOrigin(child, { parents: ask.parents } as never);
    expect(lineageOf(child)).toEqual({ seed: '(tide-3:11) nearer', index: 2, way: 'nearer', parents: [{ seed: 'tide-3', index: 11 }] });
    expect(derivedAsk('away', [child]).sentence).toBe('Prints unlike no. 3 of the prints near no. 12 of wall “tide-3”.');
  });

  it('should say what prints are found by, and give each those of many that it comes from, in their order', () => {
    const guide = { choices: [], scale: { middle: [], spread: [] }, relative: true, towards: 100, unsure: 20 };
    const ask = tasteAsk(guide, [print(4), print(1), print(7)], 'one in five');
    expect(ask.sentence).toBe(
      'Prints found by what you choose, from 3 prints of the wall; one in five is here because your choices say little of it.',
    );
    expect(tasteAsk({ ...guide, towards: -10, unsure: 0 }, [print(4)], '').sentence).toBe(
      'Prints found by what you never choose, from 1 print of the wall.',
    );
    const child = { ...print(0, 'as chosen'), lineage: { kind: 'taste' as const, parents: ['tide-3:7', 'tide-3:4'], seed: 'as chosen' } };
    expect(parentsOf(ask, child).map(({ name }) => name)).toEqual(['no. 8 of wall “tide-3”', 'no. 5 of wall “tide-3”']);
    expect(parentsOf(derivedAsk('away', [print(11)]), { ...child, lineage: { ...child.lineage, parents: ['tide-3:11'] } })).toHaveLength(1);
  });
});
