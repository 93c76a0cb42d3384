import type { Pull } from '../../engine/stack/types.ts';
import type { Studio } from '../../engine/studio/studio.ts';
import type { SheetOptions, SheetPrint } from '../jobs/contact-sheet.ts';
import type { Picture } from './engine-api.ts';

export type { SheetOptions, SheetPrint } from '../jobs/contact-sheet.ts';

/** Two prints' difference: light where they are alike, dark where they are not. */
export interface DifferencePicture {
  picture: Picture;
  /** Mean ΔE00 over the sheet. */
  mean: number;
  /** Greatest ΔE00 of any area. */
  greatest: number;
  /** Share of the sheet over the ΔE asked for, 0–1. */
  share: number;
}

/** What is done with the prints of a wall, away from the page. Progress is a share from 0 to 1. */
export interface WallToolsApi {
  cancel(job: string): void;
  /** @returns points × 2, 0 to 1; null when cancelled */
  embed(
    job: string,
    points: Float32Array,
    dimensions: number,
    seed: string,
    onProgress: (share: number) => void,
  ): Promise<Float32Array | null>;
  difference(drawer: Studio, a: readonly Pull[], b: readonly Pull[], heightPx: number, overDeltaE: number): DifferencePicture;
  /**
   * @param typeface a TrueType file for a PDF; null for a PNG
   * @returns null when cancelled
   */
  sheet(
    job: string,
    drawer: Studio,
    prints: readonly SheetPrint[],
    typeface: Uint8Array | null,
    options: SheetOptions,
    onProgress: (share: number) => void,
  ): Promise<Blob | null>;
  /** @returns null when cancelled */
  print(
    job: string,
    drawer: Studio,
    pulls: readonly Pull[],
    size: { widthMm: number; dpi: number; relative: boolean },
    onProgress: (share: number) => void,
  ): Promise<Blob | null>;
}
