// Installs what the tests need and runs everything: types, lint, unit and published checks, real browser.
import { spawnSync } from 'node:child_process';
import { mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { countTests, findBrowser, findPoppler, installPackages, ROOT, run } from './install.mjs';

installPackages();
process.env.CHROMIUM_PATH = await findBrowser();
findPoppler();

const bin = (path) => join(ROOT, 'node_modules', path);
const node = process.execPath;
run(node, [bin('typescript/bin/tsc'), '--noEmit', '-p', 'tsconfig.json']);
run(node, [bin('typescript/bin/tsc'), '--noEmit', '-p', 'src/engine/tsconfig.json']);
run(node, [bin('oxlint/bin/oxlint'), '--deny-warnings']);
run(node, [bin('oxfmt/bin/oxfmt'), '--check', '.']);
run(node, [bin('knip/bin/knip.js')]);
run(node, [bin('vite/bin/vite.js'), 'build']);

const reports = mkdtempSync(join(tmpdir(), 'pullstack-tests-'));
const total = { passed: 0, failed: 0, skipped: 0 };
let status = 0;
for (const projects of [['unit', 'mocked'], ['browser']]) {
  const file = join(reports, `${projects[0]}.json`);
  const args = [
    bin('vitest/vitest.mjs'),
    'run',
    ...projects.flatMap((project) => ['--project', project]),
    '--reporter=default',
    '--reporter=json',
    `--outputFile.json=${file}`,
    // A worker a core: browsers wait half their time.
    '--maxWorkers=100%',
  ];
  console.log(`\n› vitest run, ${projects.join(' and ')}`);
  const done = spawnSync(node, args, { cwd: ROOT, stdio: 'inherit' });
  status ||= done.status ?? 1;
  const counts = countTests(file);
  for (const key of Object.keys(total)) total[key] += counts[key];
}
console.log(`\n${total.passed} passed, ${total.failed} failed, ${total.skipped} skipped`);
process.exit(status);
