import { DEFECTS, type DefectId } from '$lib/engine';
import type { DrillKind } from './kind';
import { caseFiles } from './what-went-wrong/case-file';
import { causeOrder, firstOrder } from './what-went-wrong/cause-order';
import { nextTest } from './what-went-wrong/next-test';
import { drawCase } from './what-went-wrong/the-case';

const ALL = Object.keys(DEFECTS) as DefectId[];

export default {
	id: 'what-went-wrong',
	title: { en: 'What went wrong', es: 'Qué salió mal' },
	about: {
		en: 'a spoilt panel and half a record: which test to do next, and what it then points to',
		es: 'un panel echado a perder y medio registro: qué prueba hacer ahora y hacia dónde apunta después'
	},
	skill: 'C13',
	asks: ['next-test', 'cause-order'],
	needs: [],
	make(ticket, random) {
		for (const defect of random.some(ALL, ALL.length)) {
			const drawn = drawCase(defect, ticket, random);
			const order = drawn && causeOrder(drawn);
			if (!drawn || !order) continue;
			const [bare, tested] = caseFiles(drawn, ticket.plan, random);
			return {
				fields: [nextTest(drawn, random), order],
				steps: [
					{ station: 'inspection', fields: ['next-test'], figures: [bare] },
					{ station: 'inspection', fields: ['cause-order'], figures: [tested] }
				],
				filled: { 'cause-order': firstOrder(order, random) }
			};
		}
		return undefined;
	}
} as const satisfies DrillKind;
