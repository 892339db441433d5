import { CHART_VERDICTS, type ChartVerdict } from '$lib/engine';
import type { Random } from '../random';
import type { DrillKind, DrillTicket, MadeDrill } from './kind';
import { drawsOf } from './read-the-oven-chart/heating';
import { loadOf } from './read-the-oven-chart/load';
import { STORIES, type Story } from './read-the-oven-chart/stories';
import { recordersFor, told } from './read-the-oven-chart/told';

const VERDICTS = Object.keys(CHART_VERDICTS) as ChartVerdict[];

/** Each verdict as likely first as another, and each of its stories. */
const inRandomOrder = (random: Random): readonly Story[] =>
	random.some(VERDICTS, VERDICTS.length).flatMap((verdict) => {
		const stories = STORIES.filter((story) => story.verdict === verdict);
		return random.some(stories, stories.length);
	});

function make(ticket: DrillTicket, random: Random): MadeDrill | undefined {
	const load = loadOf(ticket, random);
	if (!load) return undefined;
	const draws = drawsOf(random);
	const recorders = recordersFor(load);
	for (const story of inRandomOrder(random)) {
		const found = told(recorders, draws, story, ticket.job.bench.ovenUnit);
		if (!found) continue;
		const { figure, fields } = found;
		const step = { station: 'curing', fields: fields.map(({ field }) => field), figures: [figure] } as const;
		return { fields, steps: [step] };
	}
	return undefined;
}

export default {
	id: 'read-the-oven-chart',
	title: { en: 'Read the oven chart', es: 'Leer el registro del horno' },
	about: {
		en: 'two thermocouples of one load: when the soak starts and ends, and what to do with the load',
		es: 'dos termopares de una carga: cuándo empieza y termina el curado, y qué hacer con la carga'
	},
	skill: 'C11',
	asks: ['soak-starts', 'soak-ends', 'chart-verdict'],
	needs: ['cure-temperature', 'cure-hold', 'heat-up', 'clock-starts'],
	make
} as const satisfies DrillKind;
