import { defined } from '../../base/at.ts';
import svgpath from 'svgpath';
import type { PathSegment } from '../../geometry/flatten.ts';

/** Longest path data read, characters; each character costs about half a microsecond. */
const MAX_DATA = 6_000_000;

/** Runs of one command longer than this are cut, because the parser takes time by their square. */
const LONG_RUN = 4_000;

const NUMBER = '[+-]?(?:\\d+\\.?\\d*|\\.\\d+)(?:[eE][+-]?\\d+)?';
const GAP = '[\\s,]*';
const RUNS = /[a-df-z][^a-df-z]*/giu;
const PLAIN = new RegExp(NUMBER, 'gu');
const ARC = new RegExp([NUMBER, NUMBER, NUMBER, '[01]', '[01]', NUMBER, NUMBER].map((part) => GAP + part).join(''), 'gu');
const TAKES: Readonly<Record<string, number>> = { m: 2, l: 2, h: 1, v: 1, c: 6, s: 4, q: 4, t: 2, a: 1 };

/** What was wrong with path data. */
export interface PathFault {
  fault: string;
}

/**
 * Reads path data into absolute lines, curves and arcs, smooth ones written out.
 * @param data the attribute, with all the short forms that SVG 1.1 §8.3 allows
 * @returns no segments when the path is empty or 'none'; a fault when it breaks the grammar
 */
export function pathSegments(data: string): PathSegment[] | PathFault {
  const text = data.trim();
  if (text === '' || text === 'none') return [];
  if (text.length > MAX_DATA) return { fault: `it is longer than ${MAX_DATA} characters` };
  const parsed = parse(cutLongRuns(text));
  if ('fault' in parsed) return parsed;
  const segments: PathSegment[] = [];
  let fault = '';
  parsed.path.iterate((segment, index, x, y) => {
    if (fault !== '') return;
    for (let i = 1; i < segment.length; i++) {
      if (!Number.isFinite(segment[i])) fault = `number ${i} of command ${index + 1} is out of range`;
    }
    switch (segment[0]) {
      case 'M':
      case 'L':
      case 'Q':
      case 'C':
        segments.push(segment);
        break;
      case 'H':
        segments.push(['L', segment[1], y]);
        break;
      case 'V':
        segments.push(['L', x, segment[1]]);
        break;
      case 'A':
        segments.push(['A', segment[1], segment[2], segment[3], segment[4] === 1, segment[5] === 1, segment[6], segment[7]]);
        break;
      case 'Z':
      case 'z':
        segments.push(['Z']);
        break;
      default:
        fault = `command ${index + 1} is '${segment[0]}', which SVG does not know`;
    }
  });
  return fault === '' ? segments : { fault };
}

function parse(text: string): { path: ReturnType<typeof svgpath> } | PathFault {
  let rest = text;
  for (let tries = 0; tries < 1000; tries++) {
    if (/r/iu.test(rest)) return { fault: "it has the command 'r', which SVG does not know" };
    const path = svgpath(rest);
    const error = (path as unknown as { err: string }).err;
    if (error === '') return { path: path.abs().unshort() };
    // SVG allows '007'; the parser does not.
    const zero = /started with `0`.*at pos (\d+)/u.exec(error);
    if (zero === null) return { fault: error.replace(/^SvgPath: /u, '').replaceAll('`', "'") };
    const from = Number(zero[1]);
    rest = rest.slice(0, from) + rest.slice(from).replace('0', '');
  }
  return { fault: 'too many of its numbers start with 0' };
}

/** 'L1 1 2 2 …' to 'L1 1 … L…': the same outline in shorter runs. */
function cutLongRuns(text: string): string {
  if (text.length <= LONG_RUN) return text;
  return text.replaceAll(RUNS, (run) => {
    if (run.length <= LONG_RUN) return run;
    const command = defined(run[0]);
    const takes = TAKES[command.toLowerCase()];
    if (takes === undefined) return run;
    const body = run.slice(1);
    const pattern = takes === 1 && /a/iu.test(command) ? ARC : PLAIN;
    // Anything else between the numbers is the parser's to name.
    if (/[^\s,]/u.test(body.replaceAll(pattern, ' ')) || /,\s*,/u.test(body)) return run;
    const parts = body.match(pattern) ?? [];
    let out = '';
    let next = command;
    for (let i = 0; i < parts.length; i += takes * 100) {
      out += next + parts.slice(i, i + takes * 100).join(' ');
      if (command === 'M') next = 'L';
      if (command === 'm') next = 'l';
    }
    return out;
  });
}
