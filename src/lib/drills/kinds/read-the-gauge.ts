import { field, STATIONS } from '$lib/engine';
import type { DrillKind } from './kind';
import { airGauges } from './read-the-gauge/air-gauges';
import { cupWatch } from './read-the-gauge/cup-watch';
import { filmGauge } from './read-the-gauge/film-gauge';
import type { Asked } from './read-the-gauge/instrument';
import { blastGauge, capGauge } from './read-the-gauge/pressure';

/** In working order. */
const INSTRUMENTS = [blastGauge, cupWatch, capGauge, airGauges, filmGauge];
const ASKED = 3;

const stationOf = ({ fields: [first] }: Asked) => first && field(first.field).station;

export default {
	id: 'read-the-gauge',
	title: { en: 'Read the gauge', es: 'Leer el instrumento' },
	about: {
		en: 'gauges in mixed units: what they read now, and whether that is right for this job',
		es: 'instrumentos en unidades mezcladas: qué marcan ahora y si eso sirve para este trabajo'
	},
	skill: 'C9',
	asks: [
		'blast-gauge-reads',
		'blast-gauge-stands',
		'cup-watch-reads',
		'cup-watch-stands',
		'cap-gauge-reads',
		'cap-gauge-stands',
		'surface-minimum',
		'film-gauge-reads',
		'film-gauge-stands'
	],
	needs: [],
	make(ticket, random) {
		const known = INSTRUMENTS.flatMap((make) => make(ticket, random) ?? []);
		if (known.length < ASKED) return undefined;
		const picked = random.some(known, ASKED);
		const asked = known.filter((one) => picked.includes(one));
		const steps = STATIONS.map((station) => ({
			station,
			here: asked.filter((one) => stationOf(one) === station)
		}))
			.filter(({ here }) => here.length > 0)
			.map(({ station, here }) => ({
				station,
				fields: here.flatMap(({ fields }) => fields.map((planned) => planned.field)),
				figures: [
					{ kind: 'gauge-panel' as const, instruments: here.flatMap(({ instruments }) => instruments) }
				]
			}));
		return { fields: asked.flatMap(({ fields }) => fields), steps };
	}
} as const satisfies DrillKind;
