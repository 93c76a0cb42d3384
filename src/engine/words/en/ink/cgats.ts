import { plural, speak } from '../../language.ts';

export const say = speak('engine/ink/cgats', {
  moreFaultsLikeThese: (fileName: string, more: number) => `${fileName}: ${more} more faults like these are not listed.`,
  theseAreColourMatching:
    'These are colour-matching functions, how an eye sees, and no colours of a print; choose a file of measured patches.',
  thisIsLightOf:
    'This is the light of a lamp or a screen, not what a print throws back; measure the patches in reflectance and export that.',
  thisIsLightThat:
    'This is light that went through a film, not what a print throws back; measure the patches in reflectance and export that.',
  thereIsNoBEGIN: 'There is no BEGIN_DATA, so this is no CGATS text or it has no table; export them as CGATS.17 text with spectral data.',
  fileIsNotText: 'The file is not text; export the measurements as CGATS text.',
  fileHasMillionCharacters: (round: number, mostCgatsCharacters: number) =>
    `The file has ${round} million characters and at most ${mostCgatsCharacters} million are read; export fewer patches.`,
  fileHasMoreThan: (mostValues: number) => `The file has more than ${mostValues} million values; export fewer patches.`,
  thereIsCharacterThat:
    'There is a character that no text has, so this is another kind of file or a text in UTF-16; export it as plain CGATS text.',
  fileIsEmptyExport: 'The file is empty; export the measurements again.',
  tablesUpToThis: (mostFields: number) => `The tables up to this one have more than ${mostFields} fields`,
  itAndAllThat: (many: string) => `${many}; it and all that follow are left out, so export fewer tables to a file.`,
  tableHasNoWhole: 'The table has no whole row; export the measurements again.',
  tableHasNeitherSpectral:
    'The table has neither spectral columns such as SPECTRAL_380 nor LAB_L, LAB_A and LAB_B nor XYZ_X, XYZ_Y and XYZ_Z; export it with one of them.',
  xyzColumnsAreFor: (illuminant: string) =>
    `The XYZ columns are for illuminant ${illuminant}, under which the colour by day cannot be told; export them for D50, or export spectra.`,
  columnsAreForIlluminant: (lab: string, illuminant: string) =>
    `The ${lab} columns are for illuminant ${illuminant}, but are taken as D50; export them for D50, or export spectra.`,
  checkItAgainstPatch: (doubt: string) => `${doubt}; check it against a patch that you know.`,
  lMustBeNumber: 'L must be a number from 0 to 100',
  mustBeNumberFrom: (value: string) => `${value} must be a number from −200 to 200`,
  notRowsLabIs: (range: string, quote: string) => `${range}, not ${quote}; the row's Lab is left out.`,
  mustBeNumberFrom0: (value: string, most: number, quote: string) =>
    `${value} must be a number from 0 to ${most}, not ${quote}; the row is left out.`,
  tableHasNoData: 'The table has no data format before it, so its columns have no names; export it with BEGIN_DATA_FORMAT.',
  numberOFFIELDSIs: (value: number, fields: number) =>
    `NUMBER_OF_FIELDS is ${value}, but ${fields} fields are named and every row has as many values; the names are followed.`,
  numberOFFIELDSIsBut: (value: number, fields: number) =>
    `NUMBER_OF_FIELDS is ${value}, but ${fields} fields are named; correct the one or the other.`,
  fileSeemsToBe: 'the file seems to be cut off here',
  valueIsMissingOr: 'a value is missing, or a blank in a name needs quotes',
  thisRowHasValues: (row: number, n: number, why: string) =>
    `This row has ${row} value${plural(row, { one: '', other: 's' })} instead of ${n}: ${why}; the row is left out.`,
  someAreMissingSo: 'some are missing, so export the file again',
  correctNumber: 'correct the number',
  numberOFSETSIs: (value: number, found: number, mend: string) =>
    `NUMBER_OF_SETS is ${value}, but ${found} whole row${plural(found, { one: ' was', other: 's were' })} found: ${mend}.`,
  highestOfSpectralValues: (toPrecision: number) => `the highest of the spectral values is ${toPrecision}`,
  fileSaysThatIts: (found: string) => `The file says that its reflectances run from 0 to 1, but ${found}; they are read as percent`,
  fileSaysThatItsReflectances: (found: string) => `The file says that its reflectances are percent, but ${found}; they are read as 0 to 1`,
  fileDoesNotSay: (found: string) => `The file does not say how its reflectances are scaled; they are read as percent, as ${found}`,
  fileDoesNotSayHow: (found: string) =>
    `The file does not say how its reflectances are scaled; they are read as 0 to 1 although ${found}, as few are above 1`,
  spectrumHasValuesFrom: (nm: number, show: string, show2: string) =>
    `The spectrum has ${nm} values from ${show} to ${show2} nm, too few to tell a colour; measure at least 400 to 700 nm by 20 nm.`,
  spectraRunFromTo: (show: string, show2: string, firstNm: number, lastNm: number) =>
    `The spectra run from ${show} to ${show2} nm; beyond, as far as ${firstNm} and ${lastNm} nm, their outermost values are repeated.`,
  wavelengthsAreUpTo: (show: string, coarsestNm: number) =>
    `The wavelengths are up to ${show} nm apart, so that what lies between them is a guess; measure by ${coarsestNm} nm or finer.`,
  isEmpty: 'is empty',
  isNotNumber: 'is not a number',
  isMoreThanReflectance: (mostReflectance: number) => `is more than ${mostReflectance} % reflectance`,
  isReflectanceBelow0: 'is a reflectance below 0',
  andMoreOfRow: (worse: number) => `, and ${worse} more of the row ${plural(worse, { one: 'is', other: 'are' })} bad`,
  measurePatchAgainIts: (quote: string, what: string, others: string) =>
    `${quote} ${what}${others}; measure the patch again, its spectrum is left out.`,
  isReflectanceLittleBelow: (quote: string) => `${quote} is a reflectance a little below 0 and is read as 0; calibrate the instrument.`,
  isNoWavelengthFrom: (quote: string) => `${quote} is no wavelength from 250 to 1200 nm, or comes twice; the row's spectrum is left out.`,
  fileEndsBeforeEND: 'The file ends before END_DATA; the last rows may be missing, so export it again.',
  fileEndsInsideIts: 'The file ends inside its data format; export it again.',
  not: (quote: string) => `, not ${quote}`,
  mustBeFollowedBy: (word: string, found: string) => `${word} must be followed by a whole number${found}; the rows are counted instead.`,
  endDATAFORMATIs: 'END_DATA_FORMAT is missing before BEGIN_DATA; the fields are taken to end here.',
  hasNoBEGINBefore: (word: string) => `${word} has no BEGIN before it and is passed over.`,
  isMissingBeforeTable: (word: string, found: string) => `${word} is missing before ${found}; the table is taken to end here.`,
});
