import type { Fitted } from '../../job/part';
import { cite, type Provenance } from '../../sources/provenance';
import type { SubstrateId } from '../../substrates/substrates';
import { celsius, degrees } from '../../units/construct';
import { defaultNumber } from '../define';

const cap = (degreesCelsius: number, en: string, es: string, provenance?: Provenance) =>
	defaultNumber(
		'temperature',
		celsius(degreesCelsius),
		`Highest part temperature: ${en}`,
		`Temperatura máxima de la pieza: ${es}`,
		provenance
	);

const REHEATED_6061 = cite(
	'reheated-6061',
	'no loss of strength at 177 °C up to 64 h, loss after 16 h at 199 °C',
	{ read: 'results as stored' },
	'paper'
);
const CRAZED_OXIDE = cite(
	'anodise-heat',
	'crazing reported from 80 to 120 °C, thick and sealed oxide first',
	{ read: 'pages of trade and blog quality' },
	'common-practice'
);

/**
 * Highest part temperature by substrate and fitted item, the lower end where the trade gives a span,
 * save for 6061, whose upper end a study backs, and castings, whose bake-out has to run hotter than their cure. A limit
 * the customer writes replaces those of the substrates.
 */
export const partLimits = {
	'cap.carbon-steel': cap(200, 'carbon or alloy steel', 'acero al carbono o aleado'),
	'cap.spring-steel': cap(
		200,
		'hardened spring steel, unless its temper is lower',
		'acero de resorte templado, salvo revenido menor'
	),
	'cap.stainless-steel': cap(260, 'stainless steel', 'acero inoxidable'),
	'cap.aluminium-6061': cap(177, 'aluminium 6061-T6', 'aluminio 6061-T6', REHEATED_6061),
	'cap.aluminium-7075': cap(120, 'aluminium 7075-T6', 'aluminio 7075-T6'),
	'cap.aluminium-casting': cap(200, 'aluminium casting', 'aluminio fundido'),
	'cap.anodised-aluminium': cap(80, 'anodised aluminium', 'aluminio anodizado', CRAZED_OXIDE),
	'cap.magnesium': cap(120, 'magnesium', 'magnesio'),
	'cap.titanium': cap(200, 'titanium', 'titanio'),
	'cap.brass': cap(150, 'copper, brass or bronze', 'cobre, latón o bronce'),
	'cap.zinc-die-cast': cap(150, 'zinc die casting', 'zinc fundido a presión'),
	'cap.abs': cap(60, 'ABS', 'ABS'),
	'cap.polycarbonate': cap(90, 'polycarbonate', 'policarbonato'),
	'cap.polyamide': cap(120, 'polyamide', 'poliamida'),
	'cap.polypropylene': cap(70, 'polypropylene', 'polipropileno'),
	'cap.peek': cap(150, 'PEEK', 'PEEK'),
	'cap.carbon-laminate': cap(80, 'carbon-fibre laminate', 'laminado de fibra de carbono'),
	'cap.glass-laminate': cap(80, 'glass-fibre laminate', 'laminado de fibra de vidrio'),
	'cap.bearing': cap(80, 'greased bearing', 'rodamiento engrasado'),
	'cap.rubber-seal': cap(100, 'rubber seal', 'sello de goma'),
	'cap.bonded-abs-knob': cap(60, 'bonded ABS knob', 'perilla de ABS pegada'),
	'cap.magnet': cap(80, 'bonded magnet', 'imán pegado'),
	'cap.below-temper': defaultNumber(
		'temperature-difference',
		degrees(25),
		'Hardened parts: stay below the tempering temperature by',
		'Piezas templadas: quedarse por debajo de la temperatura de revenido en'
	)
} as const satisfies Record<`cap.${SubstrateId | Fitted | 'below-temper'}`, object>;
