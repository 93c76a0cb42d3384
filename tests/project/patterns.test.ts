import { describe, expect, it } from 'vitest';
import { slowness } from '../../.ci/lint-patterns.mjs';

describe('the lint rule against slow patterns', () => {
  // The first two are the evil patterns of the OWASP page 'Regular expression Denial of Service', from memory.
  it.each(['^(a+)+$', '^([a-zA-Z]+)*$', 'url\\(\\s*\\s*x', '\\d*\\d*x', '\\s+$', ' *,? *x'])('should find /%s/', (pattern) => {
    expect(slowness(pattern, 'u')).toMatch(/repeated holds it up$/u);
  });

  it.each(['^[+-]?\\d{1,3}(?:,\\d{3})+$', '^\\s+', '\\d', '^\\D*(\\d+)$', '[^\\p{L}\\p{N}]+'])('should let /%s/ pass', (pattern) => {
    expect(slowness(pattern, 'u')).toBeNull();
  });
});
