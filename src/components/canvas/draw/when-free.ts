/** Lets the page answer before work goes on. */
export function nextTask(): Promise<void> {
  return new Promise((resolve) => setTimeout(resolve));
}
