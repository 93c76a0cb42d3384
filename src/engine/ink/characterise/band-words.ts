import { num } from '../../base/at.ts';
import { WAVELENGTHS_NM } from '../../colour/weights.ts';
import { say } from '../../words/en/ink/characterise.ts';

/**
 * Bands as a printer reads them: runs of neighbours, “400–430 nm and 560 nm”.
 * @param bands rising, from 0
 */
export function bandWords(bands: readonly number[]): string {
  const runs: string[] = [];
  for (let i = 0; i < bands.length;) {
    let end = i;
    while (bands[end + 1] === num(bands, end) + 1) end++;
    const first = num(WAVELENGTHS_NM, num(bands, i));
    runs.push(end === i ? `${first}` : `${first}–${num(WAVELENGTHS_NM, num(bands, end))}`);
    i = end + 1;
  }
  return `${runs.length < 2 ? runs.join('') : say.and(runs.slice(0, -1).join(', '), runs.at(-1) ?? '')} nm`;
}
