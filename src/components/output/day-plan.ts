import { entryAt } from '../../engine/base/at.ts';
import { srgbHexFromLab } from '../../engine/colour/screen-colour.ts';
import type { PressPlan } from '../../engine/visit/visit.ts';
import { counted } from '../ui/words.ts';
import { waitWords } from '../words/drying-words.ts';
import { setUpTags, wallClock } from '../words/plan-words.ts';
import type { PageWriter } from './page-writer.ts';
import { PDF_COLOURS } from './pdf-colours.ts';

const HEIGHT_OF = { print: 20, wait: 4, mount: 11, register: 11, mix: 6, wash: 6 } as const;

/** The days: a bar by the clock, then its set-ups with a box to tick. */
export function dayPlanPages(out: PageWriter, plan: PressPlan): void {
  out.newPage();
  out.heading('Days');
  const closes = plan.clock.workMinutes + (plan.clock.lunch?.minutes ?? 0);
  const length = plan.parts.reduce((most, part) => Math.max(most, part.toMinute), closes);
  const beds = plan.parts.reduce((most, part) => Math.max(most, part.bed + 1), 1);
  // What is left of a visit begins on the day on which it is.
  const first = plan.parts.reduce((least, part) => Math.min(least, part.day), plan.daysNeeded);
  for (let day = first; day <= plan.daysNeeded; day++) {
    for (let bed = 0; bed < beds; bed++) {
      const turn = { day, bed };
      out.need(110);
      out.paragraph(`Day ${day}${beds > 1 ? `, bed ${bed + 1}` : ''}`, { size: 15, bold: true });
      dayBar(out, plan, turn, length);
      setUpRows(out, plan, turn);
    }
  }
}

/** A day at one bed. */
interface Turn {
  day: number;
  bed: number;
}

/** @param length minutes that the bar spans */
function dayBar(out: PageWriter, plan: PressPlan, turn: Turn, length: number): void {
  const width = out.right - out.left;
  const at = (minute: number): number => out.left + (width * minute) / length;
  const floor = out.y + 24;
  const { lunch, startMinute } = plan.clock;
  for (const part of plan.parts) {
    if (part.day !== turn.day || part.bed !== turn.bed) continue;
    const height = HEIGHT_OF[part.kind];
    const hex =
      part.kind === 'print'
        ? srgbHexFromLab(entryAt(plan.cards, part.setUp).ink.ink.overWhite)
        : part.kind === 'wait'
          ? PDF_COLOURS.wait
          : PDF_COLOURS.edge;
    out.rectangle(
      { x: at(part.fromMinute), y: floor - height, width: at(part.toMinute) - at(part.fromMinute), height },
      { hex, edge: part.kind === 'print' },
    );
  }
  if (lunch !== null) {
    out.rectangle(
      { x: at(lunch.fromMinute), y: floor - 20, width: at(lunch.fromMinute + lunch.minutes) - at(lunch.fromMinute), height: 20 },
      { hex: PDF_COLOURS.lunch, edge: true },
    );
    out.line('lunch', { x: at(lunch.fromMinute) + 3, y: floor - 14 }, { size: 8, soft: true });
  }
  out.rule({ y: floor });
  for (let hour = Math.ceil(startMinute / 60) * 60 - startMinute; hour < length; hour += 60) {
    out.line(wallClock(plan, hour), { x: at(hour) - 8, y: floor + 3 }, { size: 8, soft: true });
  }
  out.y = floor + 20;
}

function setUpRows(out: PageWriter, plan: PressPlan, turn: Turn): void {
  for (const [index, time] of plan.times.entries()) {
    if (time.day !== turn.day || time.bed !== turn.bed) continue;
    const card = entryAt(plan.cards, index);
    out.need(time.waitMinutes >= 1 ? 38 : 22);
    if (time.waitMinutes >= 1) {
      out.line(waitWords(plan, index, false), { x: out.left + 20, y: out.y }, { size: 10, soft: true, most: out.right - out.left - 20 });
      out.y += 16;
    }
    out.box({ x: out.left, y: out.y + 1 }, 12);
    out.line(wallClock(plan, time.startMinute), { x: out.left + 20, y: out.y });
    out.line(`${card.number}`, { x: out.left + 62, y: out.y }, { bold: true });
    out.line(`${card.screen.key} ${card.screen.name}`, { x: out.left + 88, y: out.y }, { bold: true, most: 150 });
    out.line(card.ink.key, { x: out.left + 244, y: out.y }, { most: 88 });
    out.line(counted(card.sheets.length, 'sheet'), { x: out.left + 338, y: out.y });
    out.line(
      setUpTags(plan, index).join(', '),
      { x: out.left + 396, y: out.y },
      { size: 10, soft: true, most: out.right - out.left - 396 },
    );
    out.y += 20;
  }
  out.y += 12;
}
