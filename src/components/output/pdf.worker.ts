import { serve } from '../../workers/api/serve.ts';
import { dayOf } from '../words/edition-words.ts';
import { editionPdf } from './edition-pdf.ts';
import { filmPicture, filmsFile } from './films/films-file.ts';
import { handoutPdf } from './handout-pdf.ts';
import type { PdfApi } from './pdf-api.ts';
import { pullSheetPdf } from './pull-sheet-pdf.ts';
import { stateKey } from './state-key.ts';

const api: PdfApi = {
  pullSheet({ made, pictures, ...options }, onProgress) {
    return pullSheetPdf(made, {
      ...options,
      onProgress,
      picture: (recipe, pulls) => Promise.resolve(pictures.get(stateKey(recipe, pulls)) ?? null),
    });
  },
  filmPicture,
  films: filmsFile,
  handout: (request) => handoutPdf(request),
  edition: ({ recipe, edition, ...options }) => editionPdf(recipe, edition, { ...options, dayOf }),
};

serve(api, async () => (await import('../words/de/german.ts')).german);
