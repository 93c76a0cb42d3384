import type { SettingNoted } from '../../engine/log/settings.ts';
import { mmText } from '../ui/words.ts';
import { say } from './en/phrases/plan.ts';

/** Profiles of a squeegee's edge as the log keeps them, each in words. */
export const PROFILES: ReadonlyMap<string, string> = new Map([
  ['square', say.square],
  ['rounded', say.rounded],
  ['bevelled', say.bevelled],
]);

/** A profile in words; one that is none of the known as it was written. */
export function profileWords(profile: string): string {
  return PROFILES.get(profile) ?? profile;
}

/** 'snap-off 3.0 mm, squeegee 75 Shore A, square, at 75°, register within 0.3 mm; note'. */
function settingWords({ how, note }: Pick<SettingNoted, 'how' | 'note'>): string {
  const { snapOffMm, shoreA, profile = '', angleDeg, registerMm } = how;
  const squeegee = [
    shoreA === undefined ? '' : say.shoreA(shoreA),
    profileWords(profile),
    angleDeg === undefined ? '' : say.at(angleDeg),
  ].filter((part) => part !== '');
  const parts = [
    snapOffMm === undefined ? '' : say.snapOffMm(mmText(snapOffMm)),
    squeegee.length === 0 ? '' : say.squeegee(squeegee.join(', ')),
    registerMm === undefined ? '' : say.registerWithinMm(mmText(registerMm)),
  ].filter((part) => part !== '');
  return [parts.join(', '), note].filter((part) => part !== '').join('; ');
}

/** 'Last time in Rust, 12 Nov 2026: snap-off 3.0 mm'. @param time the day in words */
export function lastTimeWords(noted: SettingNoted, day: string): string {
  return say.lastNotedIn(noted.ink, day, settingWords(noted));
}
