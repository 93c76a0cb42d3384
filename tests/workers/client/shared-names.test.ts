import { describe, expect, it } from 'vitest';
import { SharedNames } from '../../../src/workers/client/shared-names.ts';

describe('SharedNames', () => {
  it('should leave every name as it was, whichever came before', () => {
    const names = new SharedNames();
    for (const list of [
      ['a', 'b', 'a'],
      ['b', 'c', ''],
      ['c', 'b', 'a', ''],
    ]) {
      const sent = structuredClone(list);
      names.share(sent);
      expect(sent).toEqual(list);
    }
  });
});
