import type { say as english } from '../../en/pullorder/pullorder.ts';

export const say: typeof english = {
  printsNothingLeaveIt: 'druckt nichts; weglassen.',
  sheetHasNoPull: (s, p) => `Bogen ${s} hat keinen Druckgang ${p}.`,
  pullOfSheetIs: (p, s) => `Druckgang ${p} von Bogen ${s} hat ein anderes Sieb, eine andere Farbe oder einen anderen Versatz.`,
  pullOfSheetWas: (p, s) => `Druckgang ${p} von Bogen ${s} ist schon gedruckt.`,
  pullOfSheetMust: (p, s, a) => `Druckgang ${p} von Bogen ${s} muss auf Druckgang ${a} warten.`,
  isNeverPrinted: 'wird nie gedruckt.',
  couldHaveBeenPrinted: (i, at) => `hätte in Einrichtung ${i} gedruckt werden können, wartet aber bis ${at}.`,
  isCounted: (key, plan, count) => `${key} ist ${plan}, gezählt sind ${count}.`,
  boundOnSetUps: 'die Schranke der Einrichtungen liegt über dem Plan.',
  boundOnMountsIs: 'die Schranke der Siebwechsel liegt über dem Plan.',
  problemMustHaveList: 'Die Aufgabe braucht eine Liste von Bögen.',
  visitHasSheetsMore: (sheets, maxSheets) => `Der Besuch hat ${sheets} Bögen, mehr als ${maxSheets}: ihn in Teilen planen.`,
  mustHaveListOf: (where) => `${where} braucht eine Liste von Druckgängen.`,
  mustHaveListOfOverlaps: (where) => `${where} braucht eine Liste von Überlappungen.`,
  hasPullsMoreThan: (where, pulls, maxPullsASheet) => `${where} hat ${pulls} Druckgänge, mehr als ${maxPullsASheet}: den Stapel teilen.`,
  pullMustNameIts: (where, p) => `${where}, Druckgang ${p} muss Sieb, Farbe und (oder auch nicht) Versatz als Text nennen.`,
  overlapIsGiveTwo: ({ where, i, a, b, pulls }) =>
    `${where}, Überlappung ${i} ist [${a}, ${b}]: zwei Plätze von 0 bis ${pulls} angeben, den früheren zuerst.`,
  moreThanDifferentSheets: (maxDistinctSheets) => `mehr als ${maxDistinctSheets} verschiedene Bögen`,
  pullsOnDifferentSheets: (pulls, maxDistinctPulls) => `${pulls} Druckgänge auf verschiedenen Bögen, mehr als ${maxDistinctPulls}`,
  pullOrderHasPlan: (found) => `Die Druckfolge hat ${found}: weniger Rezepte auf einmal planen oder von jedem mehr Bögen drucken.`,
  timeToPlanIn: (budgetMs) => `Die Zeit zum Planen ist ${budgetMs} ms: eine Zahl angeben, 0 oder mehr.`,
  seedIsGiveNumber: (seed) => `Der Startwert ist ${seed}: eine Zahl oder einen Text angeben.`,
};
