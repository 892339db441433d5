import type { Job } from '../../job/job';
import { fromJob, workedOut, type Traced } from '../../plan/trace';
import { shopWindow } from '../../shop/shop';
import { commonPractice } from '../../sources/provenance';
import type { Text } from '../../text';
import type { Rule } from '../rule';

function narrowest({ parts }: Job) {
	const at = parts.reduce((least, { width }, index) => (width < parts[least]!.width ? index : least), 0);
	return fromJob(`parts.${at}.width`, 'length', parts[at]!.width, {
		en: 'Width of the narrowest part',
		es: 'Ancho de la pieza más angosta'
	});
}

export default {
	id: 'fan-width',
	station: 'spraying',
	competency: 'spraying',
	skill: 'C9',
	title: { en: 'Fan a little wider than the part', es: 'Abanico algo más ancho que la pieza' },
	why: {
		en: 'A fan somewhat wider than the part lets every stroke run out over its edge. Much wider only feeds the filters.',
		es: 'Un abanico algo más ancho que la pieza deja que cada pasada salga por el borde. Mucho más ancho solo alimenta los filtros.'
	},
	severity: 'quality',
	authority: 'shop',
	provenance: commonPractice,
	lesson: 'gun-set-up#fan-width',
	breaks: { low: ['banding', 'fat-edges'], high: ['dry-spray', 'thin-edges'] },
	outcome: {
		en: 'Too narrow: stripes and thick edges. Too wide: overspray and thin film.',
		es: 'Muy angosto: bandas y bordes gruesos. Muy ancho: niebla y película delgada.'
	},
	evidence: {
		en: 'Spray the fan on pattern paper and lay a rule on it.',
		es: 'Aplique el abanico en papel y mídalo con regla.'
	},
	field: 'fan-width',
	applies: () => true,
	expects(seen) {
		const part = narrowest(seen.job);
		const gun = shopWindow(seen.shop, 'gun.fan');
		const beyond = shopWindow(seen.shop, 'gun.fan-beyond');
		// Where the gun cannot go wider or narrower, the window keeps its proportion instead of shrinking to one value.
		const span = (1 + beyond.max.value) / (1 + beyond.min.value);
		const fan = (share: Traced<'fraction'>, least: number, most: number, label: Text) =>
			workedOut(
				'fan-width',
				'length',
				Math.min(Math.max(part.value * (1 + share.value), least), most),
				label,
				{
					part,
					share,
					...gun
				}
			);
		return {
			kind: 'range',
			min: fan(beyond.min, gun.min.value, gun.max.value / span, {
				en: 'Narrowest fan',
				es: 'Abanico mínimo'
			}),
			max: fan(beyond.max, gun.min.value * span, gun.max.value, { en: 'Widest fan', es: 'Abanico máximo' }),
			amber: 0.015
		};
	}
} satisfies Rule;
