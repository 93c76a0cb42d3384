import { speak } from '../../../../engine/words/language.ts';

export const say = speak('phrases/inks', {
  withinAbout: (about: string) => `within about ${about}`,
  mirroredFilmMadeHere:
    'Mirrored: a film made here is drawn mirrored and lies as any other. The unmirrored film turned over serves too, its printed side away from the emulsion, so that edges lose a little.',
  mirroredFilmOfIts: 'mirrored: a film of its own, or the unmirrored one turned over',
  mixPer100G: (stocks: string) => `Mix per 100 g: ${stocks}`,
});
