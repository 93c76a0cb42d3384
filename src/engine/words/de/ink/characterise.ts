import type { say as english } from '../../en/ink/characterise.ts';

export const say: typeof english = {
  and: (runs, runs2) => `${runs} und ${runs2}`,
  fourCurvesMustHave: (bands, band) => `Die vier Kurven müssen gleich viele Bänder haben, eines oder mehr; sie haben ${bands} und ${band}.`,
  reflectanceMustBeFrom: (mostReflectance, band, value) => `Remission muss von 0 bis ${mostReflectance} sein; Band ${band} hat ${value}.`,
  cardsWhiteMustBe: (leastContrast, band, gw, gb) =>
    `Das Weiß der Karte muss um ${leastContrast} oder mehr heller sein als ihr Schwarz; Band ${band} hat ${gw} und ${gb}.`,
  inkCannotBeBrighter: (band) => `Eine Farbe kann über Schwarz nicht heller sein als über Weiß; Band ${band} hat `,
  overBlackAndOver: (rb, rw) => `${rb} über Schwarz und ${rw} über Weiß. Sind die beiden Messungen vertauscht?`,
  theInk: 'Die Farbe',
  ink: (name) => `Farbe „${name}“`,
  inkNeedsName: 'Die Farbe braucht einen Namen.',
  hasDryingTimeOf: (called, dryMinutes) => `${called} hat eine Trockenzeit von ${dryMinutes}: Minuten angeben, 0 oder mehr.`,
  hasDensityOfGive: (called, densityGPerCm3, least, most) =>
    `${called} hat eine Dichte von ${densityGPerCm3}: g/cm³ angeben, von ${least} bis ${most}.`,
  overWhite: 'über Weiß',
  overBlack: 'über Schwarz',
  hasNoColourGive: (called, over) => `${called} hat keinen Farbton ${over}: L von 0 bis 100, a und b angeben.`,
  isLighterOverBlack: (called, overBlack) => `${called} ist über Schwarz (L ${overBlack}) heller als über Weiß `,
  lSwapTwoOr: (overWhite) => `(L ${overWhite}): die beiden tauschen oder den Wert über Schwarz senken.`,
  cannotHaveBothColours: (called) => `${called} kann nicht beide Farbtöne haben; `,
  overWhiteItWill: (whereIsOverWhite) => `${whereIsOverWhite ? 'über Weiß' : 'über Schwarz'} druckt sie `,
  asLB: (shown) => `als L, a, b ${shown}.`,
  whitePatch: 'Das weiße Messfeld',
  blackPatch: 'Das schwarze Messfeld',
  inkOverWhite: 'Die Farbe über Weiß',
  inkOverBlack: 'Die Farbe über Schwarz',
  red: 'Rot',
  green: 'Grün',
  blue: 'Blau',
  needsRedGreenAnd: (called) => `${called} braucht Rot, Grün und Blau von 0 bis 255; noch einmal aufnehmen.`,
  blackPatchIsAs: (channels) =>
    `Das schwarze Messfeld ist in ${channels} so hell wie das weiße oder fast; das blanke Weiß und das blanke Schwarz der Karte aufnehmen oder das Foto besser beleuchten.`,
  isLighterThanCards: (called) => `${called} ist heller als das blanke Weiß der Karte; nach Glanz sehen oder eine andere Stelle aufnehmen.`,
  inkIsLighterOver: 'Die Farbe ist über Schwarz heller als über Weiß; sind die beiden Messfelder vertauscht?',
  barePaper: 'Das blanke Papier',
  thisPatch: 'Dieses Messfeld',
  blackPatchIsAsLight: (channels) =>
    `Das schwarze Messfeld ist in ${channels} so hell wie das blanke Papier oder fast; blankes Papier und etwas Schwarzes aufnehmen oder das Foto besser beleuchten.`,
  isOverexposedInSo: (called, channels) =>
    `${called} ist in ${channels} überbelichtet, die wahre Helligkeit also verloren; das Foto dunkler aufnehmen.`,
  thisPatchIsLighter:
    'Dieses Messfeld ist heller als das blanke Papier; nach Glanz sehen, falls die Farbe nicht ein dunkleres Papier deckt.',
  blackPatchIsUnderexposed:
    'Das schwarze Messfeld ist ganz unterbelichtet, dunkle Farben werden also zu hell geschätzt; das Foto heller aufnehmen.',
  inkCannotBeOpaque: (opacity, least, most) => `Eine Farbe kann nicht zu ${opacity} % decken; ${least} bis ${most} % angeben.`,
  sameSampleIsChosen: 'Über Weiß und über Schwarz ist dieselbe Probe gewählt; die beiden Messungen einer Farbe wählen.',
  readingOverWhite: 'Die Messung über Weiß',
  readingOverBlack: 'Die Messung über Schwarz',
  bareWhite: 'Das blanke Weiß',
  bareBlack: 'Das blanke Schwarz',
  hasBandsItNeeds: (called, curve, bands) => `${called} hat ${curve} Bänder; nötig sind ${bands}, 380 bis 730 nm.`,
  isNoReflectanceAt: (called, band) => `${called} ist bei ${band} keine Remission: noch einmal messen.`,
  inkIsBrighterOver: (band) => `Die Farbe ist bei ${band} über Schwarz heller als über Weiß: sind die beiden Messungen vertauscht?`,
  whiteAndBlackAre: (band) =>
    `Weiß und Schwarz sind bei ${band} zu ähnlich, um Deckkraft von Farbton zu unterscheiden: das blanke Weiß und Schwarz der Karte wählen.`,
  pictureHasPixelsMore: (width, height, mostPixels) =>
    `das Bild hat ${width} × ${height} Pixel, mehr als ${mostPixels} Millionen; verkleinern und noch einmal wählen.`,
};
