import { u32 } from '../../base/at.ts';

/**
 * The grey at which dark and light part best: those below it are dark. Best is where the variance between
 * the two is greatest; of several such greys the middle one.
 * @param counts how often each grey stands there, from black on
 * @returns from 1 to `counts.length − 1`; null where there is only one grey
 * Source: Otsu (1979), IEEE Transactions on Systems, Man, and Cybernetics 9(1), 62–66.
 */
export function otsuThreshold(counts: Uint32Array): number | null {
  let [all, sum] = [0, 0];
  counts.forEach((count, grey) => {
    all += count;
    sum += grey * count;
  });
  let [dark, darkSum, best] = [0, 0, 0];
  let found: number[] = [];
  for (let grey = 1; grey < counts.length; grey++) {
    const count = u32(counts, grey - 1);
    dark += count;
    darkSum += (grey - 1) * count;
    if (dark === 0 || dark === all) continue;
    const between = (dark / all) * (1 - dark / all) * (darkSum / dark - (sum - darkSum) / (all - dark)) ** 2;
    if (between > best) [best, found] = [between, [grey]];
    else if (between === best && found.length > 0) found.push(grey);
  }
  return found[Math.floor((found.length - 1) / 2)] ?? null;
}
