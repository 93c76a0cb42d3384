import { missesOfRest, quantile } from '../published/ink/overprint-sets.ts';
import { leftOutSets, mean, typedMisses } from '../published/ink/typed-misses.ts';

const show = (list: readonly number[]): string => `${quantile(list, 0.5).toFixed(2)} / ${quantile(list, 0.95).toFixed(2)}`;

console.log('Six published sets, films fitted to paper, solids and some overprints; ΔE00 of the rest, median / 95 %:');
for (const trained of [['CK'], ['MK'], ['YK'], ['CK', 'MK', 'YK'], ['CK', 'CYK'], ['CYK', 'MYK', 'CMYK']]) {
  const began = performance.now();
  const { pairs, cmy, more, looMeans } = missesOfRest(['CM', 'MY', ...trained]);
  const loo = looMeans.reduce((sum, mean) => sum + mean, 0) / looMeans.length;
  console.log(
    `CM, MY, ${trained.join(', ').padEnd(15)} two films ${show(pairs)}  CMY ${show(cmy)}  others of three and more ${show(more)}  left out ${loo.toFixed(2)}  ${((performance.now() - began) / 6).toFixed(0)} ms a set`,
  );
}

console.log('What overprints of typed inks are expected to miss by, chosen on five sets, and what the sixth does; ΔE00:');
for (const basis of ['drawdown', 'guess'] as const) {
  const left = leftOutSets(typedMisses(basis));
  const within = left.reduce((sum, set) => sum + set.within, 0);
  console.log(
    `${basis.padEnd(9)} ${left.map(({ expected, real }) => `${expected.toFixed(1)} for ${real.toFixed(1)}`).join(', ')}; off by ${(100 * mean(left.map(({ expected, real }) => Math.abs(expected / real - 1)))).toFixed(0)} % in the mean, ${within} of 24 within twice`,
  );
}
