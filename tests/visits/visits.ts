import { type FaultyVisit, faultyVisit } from './faulty-visit.ts';

const count = Number(process.argv[2] ?? 200);
const visits: FaultyVisit[] = [];
for (let seed = 1; seed <= count; seed++) {
  const visit = faultyVisit(String(seed));
  visits.push(visit);
  for (const wrong of visit.wrong) console.log(`seed ${seed}: ${wrong}`);
}
const sum = (of: (visit: FaultyVisit) => number): number => visits.reduce((all, visit) => all + of(visit), 0);
console.log(
  `${count} visits, ${sum(({ replans }) => replans)} rests planned anew, ${sum(({ better }) => better)} of them better than going on; ` +
    `${sum(({ faults }) => faults.spoiled)} sheets spoiled, ${sum(({ faults }) => faults.replaced)} replaced by an over, ` +
    `${sum(({ faults }) => faults.otherwise)} pulled differently, ${sum(({ faults }) => faults.lateHours)} hours late; ` +
    `grams off at most ${Math.max(...visits.map(({ gramsOff }) => gramsOff)).toExponential(1)}; ${sum(({ wrong }) => wrong.length)} wrong.`,
);
if (visits.some(({ wrong }) => wrong.length > 0)) process.exitCode = 1;
