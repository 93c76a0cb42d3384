// Runs a mutation tester over folders of src in a copy of the project outside it, and says what no test noticed:
// `npm run mutate -- src/engine/log`. Sampled: `--every 3`. Only what survived in a report: `--again report.json`;
// by some tests alone: `--tests tests/engine/log/rest.test.ts`.
import { execFileSync } from 'node:child_process';
import { cpSync, existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { parseArgs } from 'node:util';
import { ROOT, run } from './install.mjs';

const STRYKER = '10.1.1';
const NODE_OF_STRYKER = 22;
const HOME = join(tmpdir(), 'pullstack-mutate');
const COPY = join(HOME, 'project');

/** Tests that plan or search for many seconds: run for every mutant they reach, they would take days. */
const TOO_SLOW = ['ink/mix/match', 'visit/same-plan', 'log/rest-never-worse', 'workers/jobs/embed'];

/**
 * The sample: functions at the top of a file (and methods of its classes) that begin on a line whose number
 * `every` divides. Messages are not mutated, as their words have tests of their own, nor are tables that a
 * module builds as it loads, as each of those would need every test.
 */
const SAMPLE = `import { declareValuePlugin, PluginKind } from '@stryker-mutator/api/plugin';
const every = Number(process.env.MUTATE_EVERY);
const isOut = (path) => path.isFunction() && path.getFunctionParent() === null && path.node.loc.start.line % every !== 0;
const shouldIgnore = (path) => (isOut(path) ? 'not of the sample' : undefined);
export const strykerPlugins = [declareValuePlugin(PluginKind.Ignore, 'sample', { shouldIgnore })];
`;

const { values, positionals } = parseArgs({
  allowPositionals: true,
  options: {
    every: { type: 'string', default: '1' },
    again: { type: 'string' },
    tests: { type: 'string' },
    workers: { type: 'string', default: '1' },
  },
});
const every = Number(values.every);
const wrong = positionals.find((folder) => !folder.startsWith('src/') || !existsSync(join(ROOT, folder)));
if (positionals.length === 0 || wrong !== undefined || !(every >= 1)) {
  console.error('Name folders of src to mutate, such as: npm run mutate -- src/engine/log src/workers --every 2');
  process.exit(1);
}

/** Copies what git knows of, and installs the packages of the lockfile and the tester beside it. */
function prepare() {
  const list = execFileSync('git', ['ls-files', '-z', '--cached', '--others', '--exclude-standard'], { cwd: ROOT, encoding: 'utf8' });
  for (const file of list.split('\0')) {
    if (file === '' || !existsSync(join(ROOT, file))) continue;
    mkdirSync(dirname(join(COPY, file)), { recursive: true });
    cpSync(join(ROOT, file), join(COPY, file));
  }
  const inCopy = { cwd: COPY };
  if (!existsSync(join(COPY, 'node_modules/@stryker-mutator/core'))) {
    const tools = [`@stryker-mutator/core@${STRYKER}`, `@stryker-mutator/vitest-runner@${STRYKER}`];
    run('npm', ['ci', '--ignore-scripts', '--no-audit', '--no-fund'], inCopy);
    run('npm', ['install', '--no-save', '--ignore-scripts', '--no-audit', '--no-fund', ...tools], inCopy);
  }
  writeFileSync(join(COPY, 'sample.mjs'), SAMPLE);
}

/** A Node new enough for the tester: this one, else one fetched from npm beside the copy. */
function nodeForTester() {
  if (Number(process.versions.node.split('.')[0]) >= NODE_OF_STRYKER) return process.execPath;
  const binary = join(HOME, 'node/node_modules/node/bin/node');
  if (!existsSync(binary)) {
    mkdirSync(join(HOME, 'node'), { recursive: true });
    run('npm', ['install', '--prefix', join(HOME, 'node'), '--no-audit', '--no-fund', `node@${NODE_OF_STRYKER}`]);
  }
  return binary;
}

/** The tests of a folder of src: those that mirror it, and its published checks; or those that were named. */
function writeTestConfig(folder) {
  const part = folder.replace(/^src\//, '').replace(/\/$/, '');
  const own = [`tests/${part}`, `tests/${part.replace(/^engine/, 'published')}`].map((path) => `${path}/**/*.test.ts`);
  const include = values.tests === undefined ? own : [values.tests];
  const test = { include, exclude: TOO_SLOW.map((name) => `**/${name}.test.ts`), testTimeout: 60_000 };
  const text = `import app from './vite.config.ts';\nexport default { plugins: app.plugins.slice(0, 1), test: ${JSON.stringify(test)} };\n`;
  writeFileSync(join(COPY, 'vitest.mutate.config.ts'), text);
}

const isLeft = (mutant) => mutant.status === 'Survived' || mutant.status === 'NoCoverage';

/** The places of the mutants that survived in a report, as the tester takes them. */
function placesAgain(report, folder) {
  const found = Object.entries(JSON.parse(readFileSync(report, 'utf8')).files).filter(([file]) => file.startsWith(folder));
  return found.flatMap(([file, { mutants }]) =>
    mutants.filter(isLeft).map(({ location: { start, end } }) => `${file}:${start.line}:${start.column - 1}-${end.line}:${end.column - 1}`),
  );
}

function writeTesterConfig(folder, report) {
  const config = {
    testRunner: 'vitest',
    vitest: { configFile: 'vitest.mutate.config.ts', related: false },
    plugins: ['@stryker-mutator/vitest-runner', './sample.mjs'],
    ignorers: ['sample'],
    mutate: values.again === undefined ? [`${folder}/**/*.ts`] : placesAgain(values.again, folder),
    mutator: { excludedMutations: ['StringLiteral'] },
    coverageAnalysis: 'perTest',
    ignoreStatic: true,
    concurrency: Number(values.workers),
    timeoutMS: 12_000,
    dryRunTimeoutMinutes: 30,
    tsconfigFile: 'none.json',
    reporters: ['json', 'progress-append-only'],
    jsonReporter: { fileName: report },
    allowConsoleColors: false,
  };
  writeFileSync(join(COPY, 'stryker.config.json'), JSON.stringify(config));
}

const mutantsOf = (report, folder) =>
  Object.entries(JSON.parse(readFileSync(report, 'utf8')).files).flatMap(([file, { mutants }]) =>
    file.startsWith(folder) ? mutants.map((mutant) => ({ file, ...mutant })) : [],
  );
const keyOf = ({ file, location, mutatorName, replacement }) => JSON.stringify([file, location, mutatorName, replacement]);

/** All mutants of a run; of one that tried again what was left, those of the report it goes by with what is known now. */
function mutantsNow(report, folder) {
  const all = mutantsOf(report, folder);
  if (values.again === undefined) return all;
  const now = new Map(all.map((mutant) => [keyOf(mutant), mutant]));
  return mutantsOf(values.again, folder).map((before) => (isLeft(before) ? (now.get(keyOf(before)) ?? before) : before));
}

/** Prints score, counts and survivors by place. The score is what was noticed of all that was tried, in percent. */
function tell(folder, report) {
  const all = mutantsNow(report, folder);
  const count = (...statuses) => all.filter((mutant) => statuses.includes(mutant.status)).length;
  const killed = count('Killed', 'Timeout');
  const left = all.filter(isLeft).toSorted((a, b) => a.file.localeCompare(b.file) || a.location.start.line - b.location.start.line);
  for (const { file, location, status, mutatorName, replacement } of left) {
    const shown = (replacement ?? '').replaceAll(/\s+/g, ' ').slice(0, 100);
    console.log(`${file}:${location.start.line}:${location.start.column} ${status} ${mutatorName} → ${shown}`);
  }
  const score = ((100 * killed) / (killed + left.length)).toFixed(1);
  const parts = [
    `${killed} killed`,
    `${count('Survived')} survived`,
    `${count('NoCoverage')} no coverage`,
    `${count('RuntimeError')} broken`,
  ];
  console.log(`\n${folder}: score ${score} % (${parts.join(', ')}); report ${report}`);
}

prepare();
const node = nodeForTester();
for (const folder of positionals.map((path) => path.replace(/\/$/, ''))) {
  const name = folder.replaceAll('/', '-') + (values.again === undefined ? '' : '-again');
  const report = join(HOME, `${name}.json`);
  writeTestConfig(folder);
  writeTesterConfig(folder, report);
  const env = { ...process.env, MUTATE_EVERY: String(values.again === undefined ? every : 1) };
  run(node, [join(COPY, 'node_modules/@stryker-mutator/core/bin/stryker.js'), 'run'], { cwd: COPY, env, shell: false });
  tell(folder, report);
}
