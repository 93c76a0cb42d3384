import { fixed } from '../../engine/words/language.ts';
import { say } from './en/phrases/inks.ts';

/** An expected error as people say it: '3 ΔE', below one with its decimal. */
function about(deltaE: number): string {
  return `${deltaE < 1 ? fixed(deltaE, 1) : Math.round(deltaE)} ΔE`;
}

/** 'within about 3 ΔE'. @param deltaE expected ΔE00 between print and prediction */
export function withinWords(deltaE: number): string {
  return say.withinAbout(about(deltaE));
}
