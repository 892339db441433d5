import { CAVITIES, FEATURES, FITTED, SHAPES, SUBSTRATES, SURFACES, type Text } from '$lib/engine';
import { benchCard } from '$lib/i18n';
import { choice, choices, either, hinted, onTicket, quantity, type Facts } from '../fact';

const LONGEST_NAME = 60;
const { label: en } = benchCard.en;
const { label: es } = benchCard.es;
const own = (name: 'name' | 'length' | 'width' | 'height' | 'humid'): Text => ({
	en: en[name],
	es: es[name]
});

const materials = {
	...Object.fromEntries(Object.entries(SUBSTRATES).map(([id, { name }]) => [id, name])),
	unknown: onTicket('unknownMaterial')
};
const magnet = { sticks: true, 'does-not': false, 'not-tried': null };

/** One line of the ticket: parts of one sort. Named below `parts.0`, `parts.1`, `parts.2`. */
export const partFacts: Facts = {
	name: { kind: 'text', label: own('name'), longest: LONGEST_NAME },
	count: quantity(onTicket('count'), 'count', 20),
	material: choice(onTicket('material'), materials),
	magnetSticks: choice(
		onTicket('magnet'),
		{ sticks: onTicket('sticks'), 'does-not': onTicket('doesNotStick'), 'not-tried': onTicket('notTried') },
		magnet
	),
	shape: choice(onTicket('shape'), SHAPES),
	length: quantity(own('length'), 'length', 0.1, hinted('length')),
	width: quantity(own('width'), 'length', 0.1, hinted('width')),
	height: quantity(own('height'), 'length', 0.1, hinted('height')),
	thickness: quantity(onTicket('thickness'), 'length', 0.003, hinted('thickness')),
	mass: quantity(onTicket('mass'), 'mass', 0.5),
	surface: choice(onTicket('surface'), SURFACES),
	cavity: choice(onTicket('cavity'), CAVITIES),
	porous: either(onTicket('porous'), 'porousYes'),
	features: choices(onTicket('features'), FEATURES, 'features'),
	masked: choices(onTicket('masked'), FEATURES, 'masked'),
	fitted: choices(onTicket('fitted'), FITTED, 'fitted'),
	blindHole: either(onTicket('blindHole')),
	tempered: quantity(onTicket('tempered'), 'temperature', 450, { ifEmpty: null, ...hinted('tempered') }),
	humidStore: either(own('humid'))
};
