/** Whether a version of Node is one of a package's engines. */
export function nodeServes(version: string, engines: string): boolean;
