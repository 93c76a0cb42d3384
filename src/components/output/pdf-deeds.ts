import { dayOf } from '../words/edition-words.ts';
import { editionPdf } from './edition-pdf.ts';
import { filmPicture, filmsFile } from './films/films-file.ts';
import { handoutPdf } from './handout-pdf.ts';
import type { PdfApi } from './pdf-api.ts';
import { pullSheetPdf } from './pull-sheet-pdf.ts';
import { stateKey } from './state-key.ts';

/** What the worker does; a module of its own, loaded when the page's language is known, as its words stand in constants too. */
export const deeds: PdfApi = {
  pullSheet({ made, pictures, ...options }, onProgress) {
    return pullSheetPdf(made, {
      ...options,
      onProgress,
      picture: (recipe, pulls) => Promise.resolve(pictures.get(stateKey(recipe, pulls)) ?? null),
    });
  },
  filmPicture: (request) => Promise.resolve(filmPicture(request)),
  films: filmsFile,
  handout: (request) => handoutPdf(request),
  edition: ({ recipe, edition, ...options }) => editionPdf(recipe, edition, { ...options, dayOf }),
};
