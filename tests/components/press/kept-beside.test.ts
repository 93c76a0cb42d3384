import { describe, expect, it } from 'vitest';
import type { AppStore } from '../../../src/components/app-store.ts';
import { keepStock, openStock, readStock } from '../../../src/components/press/kept-beside.ts';
import type { StockSheet } from '../../../src/engine/visit/stencils/cut-list.ts';

const STOCK: StockSheet = { widthMm: 560, heightMm: 760, grain: 'width' };

describe('the paper as it is bought', () => {
  it('should be read back as it was kept, beside the order', async () => {
    const parts: Record<string, unknown> = { made: 'an order' };
    const saver = {
      openPress: () => Promise.resolve(parts),
      savePress: (changed: Record<string, unknown>) => Promise.resolve(void Object.assign(parts, structuredClone(changed))),
    } as unknown as AppStore['saver'];
    keepStock({ saver, tell: () => {} }, STOCK);
    expect(await openStock({ saver })).toEqual(STOCK);
    expect(parts['made']).toBe('an order');
  });

  it('should not take for paper what is none', () => {
    for (const stock of [undefined, null, 'A1', { ...STOCK, widthMm: 0 }, { ...STOCK, heightMm: Number.NaN }, { ...STOCK, grain: 'along' }])
      expect(readStock({ stock })).toBeNull();
  });

  it('should tell when it could not be kept', async () => {
    const told: string[] = [];
    const saver = { savePress: () => Promise.reject(new Error('full')) } as unknown as AppStore['saver'];
    keepStock({ saver, tell: (sentence) => told.push(sentence) }, STOCK);
    await Promise.resolve();
    await Promise.resolve();
    expect(told).toEqual([expect.stringMatching(/size of the paper could not be kept/)]);
  });
});
