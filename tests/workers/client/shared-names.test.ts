import { describe, expect, it } from 'vitest';
import type { Pull } from '../../../src/engine/stack/types.ts';
import { SharedNames } from '../../../src/workers/client/shared-names.ts';
import { smallProject } from '../../helpers/small-project.ts';

const { bench } = smallProject();

describe('SharedNames', () => {
  it('should leave every pull as it was, whichever stacks came before', () => {
    const names = new SharedNames();
    const sent = (pulls: readonly Pull[]): Pull[] => structuredClone([...pulls]);
    for (const pulls of [bench, bench.toReversed(), bench.map((pull, i) => ({ ...pull, id: pull.screen, screen: `${pull.ink}${i}` }))]) {
      const stack = sent(pulls);
      names.share(stack);
      expect(stack).toEqual(pulls);
    }
  });
});
