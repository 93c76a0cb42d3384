/** What `npm audit --json` found, in a sentence; faulty when something high or critical is known. */
export function auditSentence(asked: { stdout: string; stderr?: string }): { sentence: string; faulty: boolean };
