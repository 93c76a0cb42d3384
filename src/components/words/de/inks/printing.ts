import type { say as english } from '../../en/inks/printing.ts';

export const say: typeof english = {
  sharesOfYourOwn: 'eigene Anteile, unten',
  howInksWereMeasured: 'Wie Farben gemessen wurden',
  instrumentOrEye: 'Messgerät oder Auge',
  lightIsThrownBack:
    'An der Oberfläche eines Drucks wird Licht zurückgeworfen, außen und innen, bevor es durch alle Farbe gegangen ist. Wird das mitgerechnet, zeigt jede Farbe weiter, was sie allein zeigt; Überdrucke und weitere Rakelzüge bekommen einen anderen Farbton. Ältere Projekte haben keine Oberfläche.',
  twoShares: 'Die zwei Anteile',
  thrownBackOutsideK1: 'Außen zurückgeworfen (k1)',
  thrownBackInsideK2: 'Innen zurückgeworfen (k2)',
  sharesOfLightAfter:
    'Anteile des Lichts, nach Saunderson (1942). Außen etwa 4 %, wenn der Glanz mitgemessen wird, sonst keiner; innen bei Drucken 40 bis 60 % (aus dem Gedächtnis). Ein Abgleich mit einer gedruckten Testform findet die eigenen.',
  filmOnFilm: 'Eine Schicht auf einer Schicht',
  trappingAsThickAs: 'Farbannahme: so dick wie auf dem Papier',
  whereItIsNot: (trappingSource) =>
    `${trappingSource} Wo sie nicht 100 % ist, drucken zwei Farben, die nur schlucken, in beiden Reihenfolgen nicht mehr gleich. Ältere Projekte haben 100 %.`,
  inkThatIsGone: 'eine Farbe, die fehlt',
  pairsWithTrappingOf: 'Paare mit eigener Farbannahme',
  noneNumberAboveHolds: 'Keine: die Zahl oben gilt für jede Farbe auf jeder anderen.',
  on: (name, name2) => `${name} auf ${name2}`,
  onAsAllOthers: (name, name2) => `${name} auf ${name2}: wie alle anderen`,
  asAllOthers: 'Wie alle anderen',
  ink: 'Farbe',
  laidOn: 'gelegt auf',
  giveThisPairIts: 'Diesem Paar eine eigene geben',
};
