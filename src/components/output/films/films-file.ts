import { EngineError } from '../../../engine/base/error.ts';
import { filmPages, reachBeyondSheet } from '../../../engine/output/film/film.ts';
import { pageSvg } from '../../../engine/output/film/page-svg.ts';
import type { OutPage } from '../../../engine/output/film/page.ts';
import type { FilmSettings } from '../../../engine/output/film/settings.ts';
import type { FilmScreen, FilmWays } from '../../../engine/output/film/ways.ts';
import { type FileToPack, zipFiles } from '../../../engine/visitfile/zip-files.ts';
import { fileNameOf } from '../../ui/download.ts';
import type { PageFonts } from '../../ui/page-fonts.ts';
import { say } from '../../words/en/output/films.ts';
import { pagesPdf } from './films-pdf.ts';

export type FilmsAs = FilmSettings['as'];

/** Films to be made. */
export interface FilmsRequest {
  films: readonly FilmScreen[];
  /** All screens that are to register with them, whose reach beyond the sheet moves the marks. */
  among: readonly FilmScreen[];
  ways: FilmWays;
  as: FilmsAs;
  fonts: PageFonts;
}

/** A file of films. */
export interface FilmsFile {
  bytes: Uint8Array;
  ending: 'pdf' | 'svg' | 'zip';
  pages: number;
  /** Signs that the letters of the PDF lack. */
  missing: readonly string[];
}

/** The share of the work after which all pages are drawn. */
const DRAWN = 0.6;

/**
 * Makes the films of screens; a step at a time, so that it can be told how far it is.
 * @throws EngineError as `filmPages`, 'film.none' without screens
 */
export async function filmsFile({ films, among, ways, as, fonts }: FilmsRequest, onProgress: (share: number) => void): Promise<FilmsFile> {
  if (films.length === 0) throw new EngineError('film.none', say.noScreenIsChosen);
  const reach = reachBeyondSheet(among);
  const pages: OutPage[] = [];
  for (const [i, film] of films.entries()) {
    pages.push(...filmPages(film, ways, reach));
    await told(onProgress, (DRAWN * (i + 1)) / films.length);
  }
  if (as === 'pdf') {
    const { bytes, missing } = await pagesPdf(pages, ways.title, fonts);
    return { bytes, ending: 'pdf', pages: pages.length, missing };
  }
  const files: FileToPack[] = [];
  const missing = new Set<string>();
  for (const [i, page] of pages.entries()) {
    if (as === 'svgs') files.push({ name: fileNameOf(page.name, 'svg'), bytes: new TextEncoder().encode(pageSvg(page)), packed: false });
    else {
      const pdf = await pagesPdf([page], page.name, fonts);
      for (const sign of pdf.missing) missing.add(sign);
      files.push({ name: fileNameOf(page.name, 'pdf'), bytes: pdf.bytes, packed: true });
    }
    await told(onProgress, DRAWN + ((1 - DRAWN) * (i + 1)) / pages.length);
  }
  const [only] = files;
  if (files.length === 1 && only !== undefined) {
    return { bytes: only.bytes, ending: as === 'svgs' ? 'svg' : 'pdf', pages: 1, missing: [...missing] };
  }
  return { bytes: zipFiles(files), ending: 'zip', pages: pages.length, missing: [...missing] };
}

/** Tells how far it is, and lets what waits have its turn. */
async function told(onProgress: (share: number) => void, share: number): Promise<void> {
  onProgress(share);
  await new Promise((resolve) => setTimeout(resolve, 0));
}

/** What one film is asked for, to be looked at. */
export interface FilmPictureRequest extends Pick<FilmsRequest, 'among' | 'ways'> {
  film: FilmScreen;
}

/** The pages of one film as they would go out; throws as `filmPages`. */
export function filmPicture({ film, among, ways }: FilmPictureRequest): OutPage[] {
  return filmPages(film, ways, reachBeyondSheet(among));
}
