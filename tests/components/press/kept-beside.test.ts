import { describe, expect, it } from 'vitest';
import type { AppStore } from '../../../src/components/app-store.ts';
import { keepStock, keepWeek, type KeptWeek, openStock, openWeek, readStock } from '../../../src/components/press/kept-beside.ts';
import type { StockSheet } from '../../../src/engine/visit/stencils/cut-list.ts';

const STOCK: StockSheet = { widthMm: 560, heightMm: 760, grain: 'width' };

/** Keeps what is saved as a database does: as a copy, part by part. */
function press(parts: Record<string, unknown>): { saver: AppStore['saver']; parts: Record<string, unknown> } {
  const saver = {
    openPress: () => Promise.resolve(structuredClone(parts)),
    savePress: (changed: Record<string, unknown>) => Promise.resolve(void Object.assign(parts, structuredClone(changed))),
  } as unknown as AppStore['saver'];
  return { saver, parts };
}

describe('the paper as it is bought', () => {
  it('should be read back as it was kept, beside the order', async () => {
    const { saver, parts } = press({ made: 'an order' });
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

describe('the visits of a week', () => {
  const ebb = { id: 'a', title: 'Ebb', firstDay: 20_784, days: [{ day: 1, bed: 0, fromMinute: 570, toMinute: 900, setUps: 9 }] };
  const WEEK: KeptWeek = { week: { own: { id: 'open', firstDay: 20_783 }, others: [ebb] }, aside: [] };

  it('should be read back as they were kept, beside the order and the paper', async () => {
    const { saver, parts } = press({ made: 'an order', stock: STOCK });
    keepWeek({ saver, tell: () => {} }, WEEK);
    expect(await openWeek({ saver, tell: (sentence) => expect.fail(sentence) })).toEqual(WEEK);
    expect(parts).toMatchObject({ made: 'an order', stock: STOCK });
  });

  it('should put aside what cannot be read, tell it once, and lose nothing', async () => {
    const bad = { ...ebb, days: 'Monday' };
    const { saver } = press({ week: { own: null, others: [ebb, bad] }, weekAside: ['from before'] });
    const told: string[] = [];
    const tell = (sentence: string): void => void told.push(sentence);
    const kept = { week: { own: null, others: [ebb] }, aside: ['from before', bad] };
    expect(await openWeek({ saver, tell })).toEqual(kept);
    expect(told).toEqual([expect.stringMatching(/others\[1\].*put aside.*saved as a file/)]);
    expect(await openWeek({ saver, tell })).toEqual(kept);
    expect(told).toHaveLength(1);
  });

  it('should tell when they could not be kept', async () => {
    const told: string[] = [];
    const saver = { savePress: () => Promise.reject(new Error('full')) } as unknown as AppStore['saver'];
    keepWeek({ saver, tell: (sentence) => told.push(sentence) }, WEEK);
    await new Promise((resolve) => setTimeout(resolve));
    expect(told).toEqual([expect.stringMatching(/visits on this press could not be kept/)]);
  });
});
