import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import type { Project } from '../../../src/engine/project/types.ts';
import { writeProject } from '../../../src/engine/project/write.ts';
import { recipeOf } from '../../../src/engine/recipe/write.ts';
import { pullOf, smallProject } from '../../helpers/small-project.ts';
import type { Studio } from '../harness.ts';

/** Opens a project as a file through the project menu, from the room of an address. */
export async function openProject(page: Page, studio: Studio, project: Project, room: string): Promise<void> {
  await page.goto(`${studio.url}#${room}`);
  await page.locator('project-menu button.open').click();
  const [chooser] = await Promise.all([page.waitForEvent('filechooser'), page.getByRole('button', { name: 'Open a file…' }).click()]);
  await chooser.setFiles([{ name: 'small.json', mimeType: 'application/json', buffer: Buffer.from(writeProject(project)) }]);
}

/** Three overlapping films and a fourth beside two of them, which needs no wall to be found and few set-ups to be pulled. */
export function smallRecipeProject(): Project {
  const project = smallProject();
  const pulls = [...project.bench, pullOf('p4', 's1', 'tar', { dxMm: 8 })];
  return { ...project, recipes: [recipeOf(pulls, project.drawer, { id: 'r1', title: 'Three rectangles' })] };
}

/** Waits for a pull order that stands. */
export async function orderFound(page: Page): Promise<void> {
  const print = page.getByRole('button', { name: 'Print the pull sheet' });
  await expect.poll(() => print.isEnabled().catch(() => false), { timeout: 60_000 }).toBe(true);
}

/** Plans so many sheets of a small recipe in the Press. */
export async function planSmallVisit(page: Page, studio: Studio, sheets: number): Promise<void> {
  await openProject(page, studio, smallRecipeProject(), 'press');
  const count = page.getByRole('spinbutton', { name: /^Sheets of/ });
  await expect.poll(() => count.count()).toBe(1);
  await count.fill(String(sheets));
  await count.press('Tab');
  await page.getByRole('button', { name: 'Find the pull order' }).click();
  await orderFound(page);
}
