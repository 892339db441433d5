import { coldestPart } from '../../plan/coldest-part';
import { cite } from '../../sources/provenance';
import type { Rule } from '../rule';

export default {
	id: 'surface-above-dew-point',
	station: 'spraying',
	competency: 'spraying',
	skill: 'C9',
	title: {
		en: 'The coldest part stays above the dew point',
		es: 'La pieza más fría queda por encima del punto de rocío'
	},
	why: {
		en: 'Near its dew point the air leaves a film of water on the part that nobody sees. The coating then lies on water, not on the part.',
		es: 'Cerca de su punto de rocío el aire deja en la pieza una película de agua que no se ve. El recubrimiento queda entonces sobre agua y no sobre la pieza.'
	},
	severity: 'quality',
	authority: 'shop',
	provenance: cite('iso-8502-4', 'margin above the dew point'),
	lesson: 'air-and-dew-point#surface-above-dew-point',
	breaks: { wrong: ['blushing', 'flaking', 'flash-rust'] },
	outcome: {
		en: 'Haze at once, peeling or rust later.',
		es: 'Velado enseguida; desprendimiento u óxido después.'
	},
	evidence: {
		en: 'Work out the dew point from the logged air and humidity and compare with the logged part temperature.',
		es: 'Calcule el punto de rocío con el aire y la humedad anotados y compárelo con la temperatura de pieza anotada.'
	},
	field: 'spray-go',
	applies: (seen) => seen.job.weather.part < coldestPart(seen).value,
	expects: () => ({ kind: 'one-of', options: ['no-go'] })
} satisfies Rule;
