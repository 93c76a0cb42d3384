import type { say as english } from '../../en/phrases/inks.ts';

export const say: typeof english = {
  withinAbout: (about) => `auf etwa ${about} genau`,
  mirroredFilmMadeHere:
    'Gespiegelt: ein Film, der hier entsteht, wird gespiegelt gezeichnet und liegt wie jeder andere. Der ungespiegelte Film, umgedreht, tut es auch, seine bedruckte Seite von der Kopierschicht weg, so dass Kanten ein wenig verlieren.',
  mirroredFilmOfIts: 'gespiegelt: ein eigener Film oder der ungespiegelte umgedreht',
  mixPer100G: (stocks) => `Mischung je 100 g: ${stocks}`,
};
