// Asks the registry when each package of package.json was last released, writes and prints the table of all, and says
// what `npm audit` knows of them: `npm run supply`.
import { spawnSync } from 'node:child_process';
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { auditSentence } from './audit-sentence.mjs';
import { ROOT } from './install.mjs';

const read = (path) => JSON.parse(readFileSync(join(ROOT, path), 'utf8'));
const { dependencies, devDependencies } = read('package.json');
const { packages } = read('package-lock.json');
const reasons = read('.ci/reasons.json');

/** When the latest version of a package was released by the registry's account, as YYYY-MM. */
function lastRelease(name) {
  const asked = spawnSync('npm', ['view', name, 'time', 'dist-tags', '--json'], { encoding: 'utf8' });
  if (asked.status !== 0) throw new Error(`the registry does not tell when ${name} was released: ${asked.stderr}`);
  const { time, 'dist-tags': tags } = JSON.parse(asked.stdout);
  return time[tags.latest].slice(0, 7);
}

function rows(names) {
  return Object.keys(names).map((name) => {
    const { version, license } = packages[`node_modules/${name}`];
    const { reason, old } = reasons[name];
    return `| ${name} | ${version} | ${license} | ${lastRelease(name)} | ${reason}${old === undefined ? '' : `; settled, kept without releases: ${old}`} |`;
  });
}

const head = ['| package | version | licence | last release | what for |', '| --- | --- | --- | --- | --- |'];
const text = `# Decisions: packages

Made by \`npm run supply\` on ${new Date().toISOString().slice(0, 10)}, dates as the registry of the day gives them (a mirror may give its own); reasons stand in \`reasons.json\`. A package without a release for three years stays only with a reason. None that ships runs anything when it is installed (\`tests/project/supply.test.ts\`).

## In the app
${[...head, ...rows(dependencies)].join('\n')}

## In builds and tests
${[...head, ...rows(devDependencies)].join('\n')}
`;
writeFileSync(join(ROOT, '.ci/DECISIONS.md'), text);
console.log(text);
const { sentence, faulty } = auditSentence(spawnSync('npm', ['audit', '--audit-level=high', '--json'], { cwd: ROOT, encoding: 'utf8' }));
console.log(sentence);
process.exit(faulty ? 1 : 0);
