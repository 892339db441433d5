import { teaching } from '../../outcome/teaching';
import type { Traced } from '../../plan/trace';
import { fraction } from '../../units/construct';
import type { Fit } from '../fit';
import type { TestEnd } from './by-eye';

const share = (value: number, en: string, es: string) => teaching('fraction', fraction(value), en, es);

/** How well a cause fits before any test of it: what tests show is evidence, not a fit. */
export type UntestedFit = Exclude<Fit, 'shown' | 'excluded'>;

/** How often a rule was broken, by what is known of it. */
const BROKEN_WHERE: Readonly<Record<UntestedFit, Traced<'fraction'>>> = {
	recorded: share(
		0.6,
		'how often a rule was broken that the record says was broken',
		'con qué frecuencia se rompió una regla que el registro da por rota'
	),
	unchecked: share(
		0.15,
		'how often a rule was broken of which nothing is written',
		'con qué frecuencia se rompió una regla de la que nada se anotó'
	),
	unknown: share(
		0.15,
		'how often a rule was broken where no job is known',
		'con qué frecuencia se rompió una regla cuando no se conoce el trabajo'
	),
	kept: share(
		0.05,
		'how often a rule was broken that the record says was kept',
		'con qué frecuencia se rompió una regla que el registro da por cumplida'
	),
	silent: share(
		0.01,
		'how often a rule mattered that said nothing of the job',
		'con qué frecuencia importó una regla que nada decía del trabajo'
	)
};

/** How often a test says a rule was broken: where it was, and where it was kept. */
const TEST: Readonly<Record<TestEnd, Readonly<Record<'sensitivity' | 'falseAlarm', Traced<'fraction'>>>>> = {
	reading: {
		sensitivity: share(
			0.9,
			'how often a measured or read test finds a broken rule',
			'con qué frecuencia una prueba medida o leída halla una regla rota'
		),
		falseAlarm: share(
			0.05,
			'how often a measured or read test blames a rule that was kept',
			'con qué frecuencia una prueba medida o leída culpa a una regla cumplida'
		)
	},
	eye: {
		sensitivity: share(
			0.75,
			'how often a look or a question finds a broken rule',
			'con qué frecuencia una mirada o una pregunta halla una regla rota'
		),
		falseAlarm: share(
			0.15,
			'how often a look or a question blames a rule that was kept',
			'con qué frecuencia una mirada o una pregunta culpa a una regla cumplida'
		)
	}
};

/**
 * Rates of the diagnosis network: a teaching model. They put what is known in an order that can be reasoned about; they
 * were measured in no shop, and decide no incident: `diagnose` ranks by fit alone.
 */
export const DIAGNOSIS_TEACHING = {
	brokenWhere: BROKEN_WHERE,
	strength: share(
		0.7,
		'how often a broken rule brings about a defect it can bring about',
		'con qué frecuencia una regla rota produce un defecto que puede producir'
	),
	leak: share(
		0.05,
		'how often the defect comes from something outside the list',
		'con qué frecuencia el defecto viene de algo fuera de la lista'
	),
	test: TEST
} as const;
