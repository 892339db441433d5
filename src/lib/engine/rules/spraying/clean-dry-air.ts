import { cite } from '../../sources/provenance';
import type { Rule } from '../rule';

export default {
	id: 'clean-dry-air',
	station: 'spraying',
	competency: 'spraying',
	skill: 'C9',
	title: { en: 'No spraying on unproven or oily air', es: 'Sin aplicar con aire no probado o con aceite' },
	why: {
		en: 'Oil and water from the compressor ride in the spray. A white collector held in the air stream for a minute shows them; any mark counts.',
		es: 'El aceite y el agua del compresor viajan en el rociado. Un colector blanco puesto un minuto en el chorro los muestra; cualquier marca cuenta.'
	},
	severity: 'quality',
	authority: 'shop',
	provenance: cite('astm-d4285', '§§4 to 7', {
		read: 'collector within 24 in, at least 1 min, any oil or water rejects the air'
	}),
	lesson: 'air-and-dew-point#clean-dry-air',
	breaks: { wrong: ['fisheyes', 'air-line-spits', 'pinholes'] },
	outcome: {
		en: 'Pits with a raised rim, spits of oil or water along the gun’s path.',
		es: 'Cráteres con reborde, salpicaduras de aceite o agua en el recorrido de la pistola.'
	},
	evidence: {
		en: 'Repeat the blotter test at the gun hose before anything is drained or changed.',
		es: 'Repita la prueba del papel en la manguera de la pistola antes de drenar o cambiar nada.'
	},
	field: 'spray-go',
	applies: ({ job }) => job.bench.blotter !== 'clean',
	expects: () => ({ kind: 'one-of', options: ['no-go'] })
} satisfies Rule;
