import { describe, expect, it } from 'vitest';
import { hexOfText } from '../../../src/engine/colour/hex-text.ts';

describe('hexOfText', () => {
  it('should take a colour as it is typed', () => {
    expect(hexOfText(' #A63C20 ')).toBe('#a63c20');
    expect(hexOfText('a52')).toBe('#aa5522');
  });
  it('should refuse what is none', () => {
    for (const text of ['', '#12', 'red', '#12345g', '#1234567']) expect(hexOfText(text)).toBeNull();
  });
});
