import { missesOfRest, quantile } from '../published/ink/overprint-sets.ts';

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
