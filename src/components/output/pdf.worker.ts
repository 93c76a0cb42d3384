import { serve } from '../../workers/api/serve.ts';
import type { PdfApi } from './pdf-api.ts';

const deeds = async (): Promise<PdfApi> => (await import('./pdf-deeds.ts')).deeds;

const api: PdfApi = {
  pullSheet: async (request, onProgress) => (await deeds()).pullSheet(request, onProgress),
  edition: async (request) => (await deeds()).edition(request),
  handout: async (request) => (await deeds()).handout(request),
  filmPicture: async (request) => (await deeds()).filmPicture(request),
  films: async (request, onProgress) => (await deeds()).films(request, onProgress),
};

serve(api, async () => (await import('../words/de/german.ts')).german);
