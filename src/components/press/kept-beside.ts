import type { StockSheet } from '../../engine/visit/stencils/cut-list.ts';
import { EMPTY_WEEK, readWeek, type Week } from '../../engine/visitfile/week.ts';
import type { AppStore } from '../app-store.ts';
import { say } from '../words/en/press/room.ts';

/** The parts of the press's database that hold the paper as it is bought, the visits of a week, and what of those could not be read. */
const [STOCK, WEEK, WEEK_ASIDE] = ['stock', 'week', 'weekAside'];

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
  saver.savePress?.({ [STOCK]: stock }).catch(() => tell(say.sizeOfPaperCould));
}

/** The visits of a week as they were kept, and what was put aside of them because it could not be read. */
export interface KeptWeek {
  week: Week;
  aside: unknown[];
}

/**
 * The visits of a week as they were kept. What cannot be read of them is put aside, which is told, and
 * stays there until it was saved as a file and thrown away by hand.
 */
export async function openWeek(store: Pick<AppStore, 'saver'> & { tell: (sentence: string) => void }): Promise<KeptWeek> {
  let parts: Record<string, unknown>;
  try {
    parts = (await store.saver.openPress?.()) ?? {};
  } catch {
    // The pull order beside it cannot be read either, which is told where that is opened.
    return { week: EMPTY_WEEK, aside: [] };
  }
  const before: unknown[] = Array.isArray(parts[WEEK_ASIDE]) ? parts[WEEK_ASIDE] : [];
  const { week, bad, sentence } = readWeek(parts[WEEK]);
  const aside = [...before, ...bad];
  if (sentence !== null) {
    store.tell(say.whatCouldNotBe(sentence));
    await store.saver.savePress?.({ [WEEK]: week, [WEEK_ASIDE]: aside }).catch(() => undefined);
  }
  return { week, aside };
}

/** Keeps the visits of a week and what was put aside of them, and tells when it could not. */
export function keepWeek({ saver, tell }: Pick<AppStore, 'saver'> & { tell: (sentence: string) => void }, { week, aside }: KeptWeek): void {
  saver.savePress?.({ [WEEK]: week, [WEEK_ASIDE]: aside }).catch(() => tell(say.visitsOnThisPress));
}
