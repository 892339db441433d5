import { BREATHING } from '../../job/bench';
import type { Station } from '../../station';
import { fieldsOf } from '../field';

const at = (station: Station) => fieldsOf({ station, competency: 'safety' });

/** Protective equipment a person can put on. */
export const GEAR = {
	goggles: { en: 'goggles', es: 'gafas cerradas' },
	'face-shield': { en: 'face shield', es: 'careta' },
	'nitrile-gloves': { en: 'chemical gloves as the SDS says', es: 'guantes químicos según la HDS' },
	'heat-gloves': { en: 'heat gloves', es: 'guantes térmicos' },
	'long-sleeves': { en: 'long sleeves or apron', es: 'manga larga o delantal' },
	'hooded-suit': { en: 'hooded suit, cuffs taped', es: 'traje con capucha, puños sellados' },
	'ear-protection': { en: 'hearing protection', es: 'protección auditiva' },
	sandals: { en: 'light shoes', es: 'calzado ligero' }
} as const;

export const safetyFields = {
	'ppe-degrease': at('preparation').choices(
		GEAR,
		'What do you put on for degreasing?',
		'¿Qué se pone para desengrasar?'
	),
	'cabinet-action': at('preparation').choice(
		{
			blast: { en: 'blast: the cabinet is fit', es: 'granallar: la cabina está bien' },
			'dust-mask': { en: 'blast with a dust mask on', es: 'granallar con mascarilla para polvo' },
			repair: { en: 'stop: have it repaired first', es: 'parar: que la reparen primero' }
		},
		'The blast cabinet as found today: what do you do?',
		'La cabina de granallado como está hoy: ¿qué hace?'
	),
	'ppe-blast': at('preparation').choices(
		GEAR,
		'What do you put on for cabinet blasting and blow-off?',
		'¿Qué se pone para granallar en cabina y sopletear?'
	),
	'blow-off-pressure': at('preparation').quantity(
		'pressure',
		'Blow-off pressure, nozzle blocked',
		'Presión de sopleteo, boquilla tapada'
	),
	rags: at('preparation').choice(
		{
			'open-bin': { en: 'open bin', es: 'bote abierto' },
			'metal-can': {
				en: 'closed metal can, emptied each shift',
				es: 'bote metálico cerrado, vaciado cada turno'
			},
			bench: { en: 'on the bench to dry', es: 'en el banco a secar' }
		},
		'Where do solvent rags go?',
		'¿Dónde van los trapos con solvente?'
	),
	'ppe-mix': at('mixing').choices(
		GEAR,
		'What do you put on for measuring and mixing?',
		'¿Qué se pone para medir y mezclar?'
	),
	pouring: at('mixing').choice(
		{
			plastic: { en: 'into a plastic jug on the bench', es: 'a una jarra plástica sobre el banco' },
			bonded: { en: 'metal cans, bonded and earthed', es: 'latas metálicas, unidas y a tierra' }
		},
		'How do you pour flammable liquid from the drum?',
		'¿Cómo vierte líquido inflamable del tambor?'
	),
	'left-over-waste': at('mixing').choice(
		{
			'closed-can': { en: 'lid on and into the bin', es: 'con tapa y a la basura' },
			'open-pan': {
				en: 'open pan under exhaust until reacted and cold, then closed waste',
				es: 'charola abierta bajo extracción hasta que reaccione y enfríe, luego residuo cerrado'
			},
			drain: { en: 'down the drain with thinner', es: 'por el drenaje con diluyente' }
		},
		'Where does left-over two-part mix go?',
		'¿Dónde va el sobrante de mezcla de dos partes?'
	),
	'mix-breathing': at('mixing').choice(
		{ ...BREATHING, none: { en: 'none, exhaust proven', es: 'ninguno, extracción comprobada' } },
		'Breathing protection while mixing',
		'Protección respiratoria al mezclar'
	),
	'ppe-spray': at('spraying').choices(GEAR, 'What do you put on for spraying?', '¿Qué se pone para aplicar?'),
	'spray-breathing': at('spraying').choice(
		{ ...BREATHING, none: { en: 'none', es: 'ninguno' } },
		'Breathing protection at the gun',
		'Protección respiratoria al aplicar'
	),
	'wearer-action': at('spraying').choice(
		{
			spray: {
				en: 'this person may wear protection that fits the hazard, and spray',
				es: 'esta persona puede usar protección acorde al peligro, y aplicar'
			},
			stop: { en: 'this person may not spray today', es: 'esta persona no puede aplicar hoy' }
		},
		'The person at the gun and the protection on hand, as the ticket describes: may they spray today?',
		'La persona que aplica y la protección disponible, según la orden: ¿puede aplicar hoy?'
	),
	'booth-action': at('spraying').choice(
		{
			spray: { en: 'spray: the booth is fit', es: 'aplicar: la cabina está bien' },
			stop: { en: 'stop: tell the supervisor', es: 'parar: avisar al supervisor' }
		},
		'Booth air speed as read today: what do you do?',
		'Velocidad de aire de la cabina de hoy: ¿qué hace?'
	),
	'clearance-wait': at('spraying').quantity(
		'duration',
		'How long does breathing protection stay on after the last pass?',
		'¿Cuánto queda puesta la protección tras la última pasada?'
	),
	'ppe-oven': at('curing').choices(
		GEAR,
		'What do you put on to load and unload the oven?',
		'¿Qué se pone para cargar y descargar el horno?'
	),
	'oven-wet-volume': at('curing').quantity(
		'volume',
		'Most wet coating in one oven load',
		'Máximo de recubrimiento húmedo por carga de horno'
	),
	'oven-start': at('curing').order(
		{
			'fan-on': { en: 'exhaust fan on', es: 'extractor encendido' },
			purge: { en: 'purge finished', es: 'purga terminada' },
			load: { en: 'load the flashed parts', es: 'cargar las piezas evaporadas' },
			heat: { en: 'heat on', es: 'calor encendido' }
		},
		'Put the oven start in order',
		'Ponga en orden el arranque del horno'
	)
} as const;
