import { speak } from '../../../../engine/words/language.ts';

export const say = speak('inks/printing', {
  sharesOfYourOwn: 'shares of your own, below',
  howInksWereMeasured: 'How inks were measured',
  instrumentOrEye: 'Instrument, or eye',
  lightIsThrownBack:
    'Light is thrown back at a print’s surface, outside and inside, before it has gone through all the ink. Taking that into account, every ink goes on showing what it shows alone; overprints and further strokes come out another colour. Projects from before have no surface.',
  twoShares: 'The two shares',
  thrownBackOutsideK1: 'Thrown back outside (k1)',
  thrownBackInsideK2: 'Thrown back inside (k2)',
  sharesOfLightAfter:
    'Shares of the light, after Saunderson (1942). Outside about 4 % where the gloss is measured too, else none; inside 40 to 60 % of prints (from memory). A fit to a pulled target finds your own.',
  filmOnFilm: 'A film on a film',
  trappingAsThickAs: 'Trapping: as thick as on the paper',
  whereItIsNot: (trappingSource: string) =>
    `${trappingSource} Where it is not 100 %, two inks that only absorb no longer print alike in both orders. Projects from before have 100 %.`,
  inkThatIsGone: 'an ink that is gone',
  pairsWithTrappingOf: 'Pairs with a trapping of their own',
  noneNumberAboveHolds: 'None: the number above holds for every ink on every other.',
  on: (name: string, name2: string) => `${name} on ${name2}`,
  onAsAllOthers: (name: string, name2: string) => `${name} on ${name2}: as all others`,
  asAllOthers: 'As all others',
  ink: 'Ink',
  laidOn: 'laid on',
  giveThisPairIts: 'Give this pair its own',
});
