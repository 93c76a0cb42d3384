/**
 * What `npm audit --json` found, in a sentence. A registry that knows no audits answers with an error, and
 * that is no clean bill: the sentence says so.
 * @param {{ stdout: string, stderr?: string }} asked
 */
export function auditSentence({ stdout, stderr = '' }) {
  let told;
  try {
    told = JSON.parse(stdout);
  } catch {
    told = {};
  }
  const found = told.metadata?.vulnerabilities;
  if (found === undefined) {
    const why = [told.message, told.error?.summary, told.error?.code, stderr.trim().split('\n')[0]].find((each) => each) ?? 'no answer';
    return {
      sentence: `npm audit: the registry of this machine tells nothing of known faults (${String(why).slice(0, 200)}); ask where the public registry answers.`,
      faulty: false,
    };
  }
  const grave = found.high + found.critical;
  if (grave === 0) return { sentence: `npm audit: no fault that is high or critical is known, ${found.total} lesser.`, faulty: false };
  const names = Object.values(told.vulnerabilities ?? {}).filter(({ severity }) => severity === 'high' || severity === 'critical');
  return { sentence: `npm audit: ${grave} faults are high or critical, in ${names.map(({ name }) => name).join(', ')}.`, faulty: true };
}
