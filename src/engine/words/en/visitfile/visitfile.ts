import { speak } from '../../language.ts';

export const say = speak('engine/visitfile/visitfile', {
  holdsNoLesson: 'holds no lesson',
  isCutOffOr: 'is cut off or was changed',
  theAddress: 'The address',
  holdsLessonThatCannot: 'holds a lesson that cannot be printed',
  thisAddressOpenLink: (sentence: string) => `This address ${sentence}; open the link again, or have a new one made.`,
  isButThereAre: (fileName: string, where: string, at: number, count: number) =>
    `${fileName}: ${where} is ${at}, but there are ${count}; save the visit again where it was made.`,
  saveVisitAgainWhere: (fileName: string, message: string) => `${fileName}: ${message}; save the visit again where it was made.`,
  planTimesHasEntries: (times: number, cards: number) => `plan.times has ${times} entries for ${cards} set-ups`,
  planCardsNumberIs: (c: number, number: number, number2: number) => `plan.cards[${c}].number is ${number}, not ${number2}`,
  namesRecipeOrPull: (where: string) => `${where} names a recipe or pull that is not there`,
  namesSheetThatIts: (where: string) => `${where} names a sheet that its recipe does not have`,
  planCardsTestNames: (c: number) => `plan.cards[${c}].test names a sheet or pull that is not there`,
  planCardsSheetsNames: (c: number) => `plan.cards[${c}].sheets names a sheet that is not there`,
  planPartsSetUpIs: (p: number, setUp: number, cards: number) => `plan.parts[${p}].setUp is ${setUp}, but there are ${cards} set-ups`,
  colourSuchAsA63c20: 'a colour such as #a63c20',
  thisAddressScanCode: (sentence: string) => `This address ${sentence}; scan the code again, or have a new one made.`,
  holdsNoSetUp: 'holds no set-up',
  thereIsNoIn: (project: string) => `there is no ${project} in it, so this is no visit; choose a file that was saved here as a visit`,
  thereIsButNo: (plan: string, log: string) => `there is a ${plan} but no ${log} in it; save the visit again where it was made`,
  thereIsNoLog: 'there is no log in it; choose a visit in which something was planned',
  thisIsNoZip: 'this is no zip; choose a file that was saved here as a visit',
  fileHasBytesOver: (bytes: number, mostPacked: number) =>
    `the file has ${bytes} bytes, over the ${mostPacked} that a visit may have; choose another file`,
  zipIsCutOff: 'the zip is cut off or damaged; save the visit again, or copy the file anew',
  isInZipTwice: (name: string) => `${name} is in the zip twice; save the visit again`,
  hasBytesUnpackedOver: (name: string, originalSize: number, mostUnpacked: number) =>
    `${name} has ${originalSize} bytes unpacked, over the ${mostUnpacked} that it may have; choose another file`,
  isLargerThanIts: (name: string) => `${name} is larger than its packed bytes can hold; save the visit again, or copy the file anew`,
  weekOnThisPress: 'The week on this press: others is no list of visits; add their files again.',
  weekOnThisPressWhere: (where: string) => `The week on this press, ${where}`,
});
