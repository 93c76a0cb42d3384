import type { StockSheet } from '../../engine/visit/stencils/cut-list.ts';
import type { AppStore } from '../app-store.ts';

/** The part of the press's database that holds the paper as it is bought. */
const STOCK = 'stock';

/**
 * The paper as it is bought, as a part of what the press keeps.
 * @returns null when none was kept, or what is no size of paper
 */
export function readStock(parts: Record<string, unknown>): StockSheet | null {
  const { widthMm, heightMm, grain } = (parts[STOCK] ?? {}) as Partial<Record<keyof StockSheet, unknown>>;
  const side = (mm: unknown): mm is number => typeof mm === 'number' && Number.isFinite(mm) && mm > 0;
  return side(widthMm) && side(heightMm) && (grain === 'width' || grain === 'height') ? { widthMm, heightMm, grain } : null;
}

/** The paper as it was kept; null when none was, or when it cannot be read. */
export async function openStock({ saver }: Pick<AppStore, 'saver'>): Promise<StockSheet | null> {
  try {
    return readStock((await saver.openPress?.()) ?? {});
  } catch {
    // The pull order beside it cannot be read either, which is told where that is opened.
    return null;
  }
}

/** Keeps the paper beside the pull order, and tells when it could not. */
export function keepStock({ saver, tell }: { saver: AppStore['saver']; tell: (sentence: string) => void }, stock: StockSheet): void {
  saver
    .savePress?.({ [STOCK]: stock })
    .catch(() => tell('The size of the paper could not be kept in this browser; choose it again after a reload.'));
}
