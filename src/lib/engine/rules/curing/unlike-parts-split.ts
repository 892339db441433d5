import { cureTemperature } from '../../plan/cure-window';
import { heatDepth } from '../../plan/heat-depth';
import type { Situation } from '../../plan/situation';
import { shopValue } from '../../shop/shop';
import { cite } from '../../sources/provenance';
import type { Rule } from '../rule';

/** The shop's materials differ less in heat capacity per volume than walls do in thickness, so depth alone tells. */
function unlike({ job, shop }: Situation) {
	const depths = job.parts.map(heatDepth);
	return Math.max(...depths) >= Math.min(...depths) * shopValue(shop, 'cure.unlike-walls').value;
}

export default {
	id: 'unlike-parts-split',
	station: 'curing',
	competency: 'curing',
	skill: 'C11',
	title: {
		en: 'Thin and thick parts do not share one clock',
		es: 'Piezas delgadas y gruesas no comparten reloj'
	},
	why: {
		en: 'A thick wall takes several times as long to heat through, so one time cannot suit both.',
		es: 'Una pared gruesa tarda varias veces más en calentarse; un solo tiempo no sirve para ambas.'
	},
	severity: 'quality',
	authority: 'shop',
	provenance: cite(
		'oven-cure-article',
		'oven curing: thick sections heat slowly, thin ones overheat',
		{ read: 'article' },
		'paper'
	),
	lesson: 'loading-the-oven#unlike-parts-split',
	breaks: { wrong: ['soft-film', 'over-cure', 'distorted-part'] },
	outcome: {
		en: 'The thick parts come out soft, or the thin ones brittle or bent.',
		es: 'Las piezas gruesas salen blandas, o las delgadas quebradizas o dobladas.'
	},
	evidence: {
		en: 'Rub one thick and one thin part of the same load and compare their curves on the oven chart.',
		es: 'Frote una pieza gruesa y una delgada de la misma carga y compare sus curvas en el registro del horno.'
	},
	field: 'mixed-rack',
	applies: (seen) => cureTemperature(seen) !== undefined && unlike(seen),
	expects: () => ({ kind: 'one-of', options: ['split'] })
} satisfies Rule;
