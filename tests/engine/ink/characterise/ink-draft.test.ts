import { describe, expect, it } from 'vitest';
import { freeName } from '../../../../src/engine/ink/characterise/ink-draft.ts';

describe('freeName', () => {
  it('should number a name that is taken', () => {
    expect(freeName('Mist', ['Rust'])).toBe('Mist');
    expect(freeName('Mist', ['Mist', 'Mist 2'])).toBe('Mist 3');
  });
});
