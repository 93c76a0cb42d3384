/** Whether a file is a whole project by its name, so that it opens wherever it is dropped. */
export function isProjectFile({ name }: Pick<File, 'name'>): boolean {
  return /\.zip$|\.pullstack\.json$/i.test(name);
}
