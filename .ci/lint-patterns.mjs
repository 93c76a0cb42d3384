// A rule of oxlint: no regular expression takes time by the square of a text's length, or worse. What scslre
// does not see are alternatives within a repeat that overlap, as in (a|aa)+.
import { analyse } from 'scslre';

const SAID = {
  Self: 'its repeat meets itself',
  Trade: 'two of its repeats take each other’s signs',
  Move: 'it is tried anew from every place of a long run',
};

/** What makes a pattern slow on some text, in words; null when nothing does. */
export function slowness(pattern, flags) {
  const { reports } = analyse({ source: pattern, flags }, { reportTypes: { Move: true } });
  const worst = reports.find(({ exponential }) => exponential) ?? reports[0];
  return worst === undefined
    ? null
    : `${SAID[worst.type]}: a text like ${JSON.stringify(worst.character.literal.source)} repeated holds it up`;
}

const noSlowPattern = {
  create(context) {
    const look = (node, pattern, flags) => {
      const why = slowness(pattern, flags);
      if (why !== null)
        context.report({ node, message: `This pattern is slow (${why}). Read the text sign by sign, or bound its length.` });
    };
    const onCall = (node) => {
      if (node.callee.type !== 'Identifier' || node.callee.name !== 'RegExp') return;
      const [pattern, flags] = node.arguments;
      if (pattern?.type === 'Literal') look(node, String(pattern.value), String(flags?.value ?? ''));
      else context.report({ node, message: 'A pattern put together here cannot be looked at; write it out.' });
    };
    return {
      Literal(node) {
        if (node.regex) look(node, node.regex.pattern, node.regex.flags);
      },
      NewExpression: onCall,
      CallExpression: onCall,
    };
  },
};

export default { meta: { name: 'patterns' }, rules: { 'no-slow': noSlowPattern } };
