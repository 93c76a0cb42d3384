import { speak } from '../../language.ts';

export const say = speak('engine/explore/places', {
  screensMayLieUp: (placeMm: number, offsetSnapMm: number) =>
    `Screens may lie up to ${placeMm} mm from where they were drawn, but in steps of ${offsetSnapMm} mm; let them lie further off, or in finer steps.`,
  mirroredFilmsAreAsked:
    'Mirrored films are asked for, but no screen in the Drawer mirrors another; let the wall do without, then ask for them again to add them.',
  screensMayLieElsewhere: 'Screens may lie elsewhere, turn or be pulled again, but every pull lies as it does; let one of them move.',
  screensMayLieElsewhereBut: (share: string) =>
    `Screens may lie elsewhere, but none has room to while ${share} of it stays on the sheet; let less of it stay, or take a larger sheet.`,
  screensMayTurnBy: (share: string) =>
    `Screens may turn by 90°, but none fits the sheet so while ${share} of it stays on it; let less of it stay, or turn by 180° only.`,
});
