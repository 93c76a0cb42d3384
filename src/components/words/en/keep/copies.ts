import { speak } from '../../../../engine/words/language.ts';

export const say = speak('keep/copies', {
  noProjectWasSaved: 'No project was saved as a file from this browser yet.',
  projectWasLastSaved: (day: string) => `A project was last saved as a file on ${day}.`,
  muchWasDoneSince: 'Much was done since a copy was last saved outside this browser: a file survives a lost tablet.',
  saveAsFile: 'Save as a file',
  bytes: 'bytes',
  browserKeepsItAlso: ' The browser keeps it also when space runs short.',
  pullstackTakesOfThat: (bytes: string, bytes2: string, kept: string) =>
    `Pullstack takes ${bytes} of the ${bytes2} that this browser gives.${kept}`,
});
