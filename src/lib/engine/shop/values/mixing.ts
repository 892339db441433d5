import { cite } from '../../sources/provenance';
import { fraction, hours, percent } from '../../units/construct';
import { defaultNumber, defaultWindow } from '../define';

/** Shop values the rules of this station lean on. */
export const mixingValues = {
	'mix.warm-up': defaultNumber(
		'duration',
		hours(24),
		'A can from a cold store stands at shop temperature for',
		'Una lata de un almacén frío se deja a la temperatura del taller durante',
		cite('ufc-3-190-06', 'storage', { read: '24 h warm-up of cold material' }, 'handbook')
	),
	'mix.hardener-tolerance': defaultNumber(
		'fraction',
		percent(3),
		'Hardener may be off by, where the sheet’s band is not tighter',
		'El endurecedor puede desviarse en, si la banda de la hoja no es más estrecha'
	),
	'mix.batch-reserve': defaultNumber(
		'fraction',
		percent(25),
		'Coating mixed beyond what the parts need, at most',
		'Recubrimiento mezclado de más sobre lo que piden las piezas, como máximo'
	),
	'mix.pot-life-share': defaultWindow(
		'fraction',
		fraction(0.5),
		fraction(0.75),
		'Latest age of a mix, as a share of its pot life',
		'Edad máxima de una mezcla, como parte de su vida'
	)
} as const;
