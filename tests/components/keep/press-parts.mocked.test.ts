import { beforeEach, describe, expect, it, vi } from 'vitest';
import { AppStore } from '../../../src/components/app-store.ts';
import { keepHere } from '../../../src/components/keep/handover.ts';
import { orderOnly, orderParts } from '../../../src/components/keep/order-parts.ts';
import { bringing } from '../../../src/components/keep/replace-project.ts';
import { keepStock, openStock } from '../../../src/components/press/kept-beside.ts';
import { AutoSaver } from '../../../src/components/saver.ts';
import type { StockSheet } from '../../../src/engine/visit/stencils/cut-list.ts';
import { smallProject } from '../../helpers/small-project.ts';

/** What stands on the disk, for all tabs. */
const disk: Record<string, unknown> = {};

vi.mock('../../../src/workers/client/client.ts', async (original) => ({
  ...(await original<object>()),
  // As the worker does it: parts are put one by one, and read as copies.
  openStorage: () => ({
    openPress: () => Promise.resolve(structuredClone(disk)),
    savePress: (parts: Record<string, unknown>) => Promise.resolve(void Object.assign(disk, structuredClone(parts))),
    open: () => Promise.resolve({ project: null }),
    replace: () => Promise.resolve(),
    keep: () => Promise.resolve(),
  }),
}));

const SMALL: StockSheet = { widthMm: 500, heightMm: 700, grain: 'width' };
const LARGE: StockSheet = { widthMm: 700, heightMm: 1000, grain: 'height' };

/** Two tabs on one project: the first saves, the second may not. */
function tabs(): { first: AppStore; second: AppStore; held: AutoSaver } {
  const [saver, held] = [new AutoSaver(), new AutoSaver()];
  held.hold('elsewhere');
  return { first: new AppStore(smallProject(), saver), second: new AppStore(smallProject(), held), held };
}

const stockIn = (store: AppStore): Promise<StockSheet | null> => openStock(store);
const keep = async (store: AppStore, stock: StockSheet): Promise<void> => {
  keepStock({ saver: store.saver, tell: (sentence) => expect.fail(sentence) }, stock);
  await Promise.resolve();
};

describe('what the press keeps, in two tabs', () => {
  beforeEach(() => {
    for (const part of Object.keys(disk)) delete disk[part];
  });

  it('should be written part by part: neither tab overwrites what the other kept', async () => {
    const { first, second, held } = tabs();
    await first.saver.savePress!({ made: 'an order', week: 'first' });
    await keep(second, SMALL);
    // Not on the disk while the first saves, but over what is there in the tab itself.
    expect(disk).toEqual({ made: 'an order', week: 'first' });
    expect(await stockIn(second)).toEqual(SMALL);
    await first.saver.savePress!({ week: 'changed' });
    expect(await second.saver.openPress!()).toEqual({ made: 'an order', week: 'changed', stock: SMALL });
    await keepHere(second, held);
    expect(disk).toEqual({ made: 'an order', week: 'changed', stock: SMALL });
    await keep(second, LARGE);
    expect(disk).toEqual({ made: 'an order', week: 'changed', stock: LARGE });
  });

  it('should show the paper and week of the disk beside an order that a tab holds', async () => {
    const { first, second } = tabs();
    await keep(first, LARGE);
    await second.saver.savePress!(orderParts(null, null));
    expect(await second.saver.openPress!()).toMatchObject({ made: null, stock: LARGE });
  });

  it('should leave paper and week as they are when a project with its order is put aside and brought back', async () => {
    const { first } = tabs();
    const aside = { ...orderParts(null, null), made: 'an order', digest: 'of it', stock: SMALL, week: 'of then' };
    await first.saver.savePress!({ week: 'of now' });
    await keep(first, LARGE);
    await bringing(first, aside)!();
    expect(disk).toMatchObject({ made: 'an order', digest: 'of it', stock: LARGE, week: 'of now' });
  });

  it('should empty the digest that an order lacks, so that none of another makes it unreadable', () => {
    expect(orderOnly({ version: 3, made: 'old', head: 'h', stock: SMALL })).toEqual({
      version: 3,
      made: 'old',
      head: 'h',
      digest: undefined,
    });
  });
});
