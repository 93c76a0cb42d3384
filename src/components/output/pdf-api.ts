import type { Edition } from '../../engine/log/edition/edition.ts';
import type { OutPage } from '../../engine/output/film/page.ts';
import type { Recipe } from '../../engine/recipe/types.ts';
import type { EditionPdfOptions } from './edition-pdf.ts';
import type { FilmPictureRequest, FilmsFile, FilmsRequest } from './films/films-file.ts';
import type { HandoutOptions } from './handout-pdf.ts';
import type { MadePlan } from './made-plan.ts';
import type { PageName } from './page-writer.ts';
import type { PdfFile, PullSheetOptions } from './pull-sheet-pdf.ts';

/** Papers of a visit to be made, with a PNG of each state that it shows, by `stateKey`. */
export interface PullSheetRequest extends Omit<PullSheetOptions, 'picture' | 'onProgress'> {
  made: MadePlan;
  pictures: ReadonlyMap<string, Uint8Array>;
}

/** A documentation sheet to be made. */
export interface EditionRequest extends Omit<EditionPdfOptions, 'dayOf' | 'size'> {
  recipe: Recipe;
  edition: Edition;
  size: PageName;
}

/** What the worker that makes PDFs does. */
export interface PdfApi {
  /** @param onProgress gets the share that is done, 0–1 */
  pullSheet(request: PullSheetRequest, onProgress: (share: number) => void): Promise<PdfFile>;
  edition(request: EditionRequest): Promise<PdfFile>;
  handout(request: HandoutOptions): Promise<PdfFile>;
  filmPicture(request: FilmPictureRequest): Promise<OutPage[]>;
  films(request: FilmsRequest, onProgress: (share: number) => void): Promise<FilmsFile>;
}
