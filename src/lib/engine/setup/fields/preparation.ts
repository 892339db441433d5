import { MEDIA, NOZZLES } from '../../job/bench';
import { fieldsOf } from '../field';

const { quantity, choice, order } = fieldsOf({ station: 'preparation', competency: 'preparation' });

export const preparationFields = {
	'handling-gloves': choice(
		{
			bare: { en: 'bare clean hands', es: 'manos limpias sin guantes' },
			'powdered-latex': { en: 'powdered latex', es: 'látex con polvo' },
			'powder-free-nitrile': { en: 'powder-free nitrile', es: 'nitrilo sin polvo' },
			'work-leather': { en: 'leather work gloves', es: 'guantes de cuero de trabajo' }
		},
		'Gloves for touching parts after cleaning',
		'Guantes para tocar piezas ya limpias'
	),
	'clean-method': choice(
		{
			'solvent-immersion': {
				en: 'solvent degreaser, then two-cloth wipe',
				es: 'desengrasante solvente y luego dos paños'
			},
			aqueous: { en: 'hot alkaline wash, two rinses', es: 'lavado alcalino caliente, dos enjuagues' },
			'mild-detergent': {
				en: 'mild detergent or approved alcohol wipe',
				es: 'detergente suave o paño con alcohol aprobado'
			},
			'ketone-wipe': { en: 'ketone wipe', es: 'paño con cetona' },
			'chlorinated-dip': { en: 'open chlorinated dip', es: 'inmersión abierta en solvente clorado' }
		},
		'How do you clean it?',
		'¿Cómo la limpia?'
	),
	'preparation-order': order(
		{
			degrease: { en: 'degrease', es: 'desengrasar' },
			'water-break': { en: 'water-break check', es: 'prueba de película de agua' },
			mask: { en: 'mask', es: 'enmascarar' },
			blast: { en: 'blast or scuff', es: 'granallar o lijar' },
			'blow-off': { en: 'blow off', es: 'sopletear' },
			coat: { en: 'coat', es: 'recubrir' }
		},
		'Put the steps in working order',
		'Ponga los pasos en orden de trabajo'
	),
	'water-break-hold': quantity(
		'duration',
		'How long must the water film stay whole?',
		'¿Cuánto debe quedar entera la película de agua?'
	),
	'blast-media': choice(
		{ ...MEDIA, scuff: { en: 'no blasting: scuff by hand', es: 'sin granallar: lijar a mano' } },
		'What do you roughen it with?',
		'¿Con qué le da rugosidad?'
	),
	'blast-pressure': quantity(
		'pressure',
		'Blast pressure at the nozzle',
		'Presión de granallado en la boquilla'
	),
	'blast-nozzle': choice(
		{
			...NOZZLES,
			none: { en: 'none of them: tell the supervisor', es: 'ninguna: avisar al supervisor' }
		},
		'Which nozzle do you fit for the highest pressure of this job?',
		'¿Qué boquilla monta para la presión más alta de este trabajo?'
	),
	'blast-standoff': quantity('length', 'Nozzle stand-off', 'Distancia de la boquilla de granallado'),
	'profile-limit': quantity(
		'length',
		'Deepest profile allowed (peak to valley)',
		'Perfil más profundo permitido (pico a valle)'
	),
	'scuff-grit': choice(
		{
			p80: { en: 'P80', es: 'P80' },
			p180: { en: 'P180', es: 'P180' },
			p320: { en: 'P320', es: 'P320' },
			p400: { en: 'P400', es: 'P400' },
			p1500: { en: 'P1500', es: 'P1500' }
		},
		'Paper for scuffing',
		'Lija para dar mordiente'
	),
	'blast-to-coat': quantity(
		'duration',
		'Longest time from blasting to coating',
		'Tiempo máximo entre granallar y recubrir'
	),
	'overdue-action': choice(
		{
			coat: { en: 'coat them as they are', es: 'recubrirlas como están' },
			wipe: { en: 'wipe with solvent, then coat', es: 'pasar paño con solvente y recubrir' },
			restart: { en: 'degrease and blast again', es: 'desengrasar y granallar de nuevo' }
		},
		'These parts were blasted earlier. What now?',
		'Estas piezas se granallaron antes. ¿Ahora qué?'
	),
	'bake-out-temperature': quantity(
		'temperature',
		'Bake-out: part temperature',
		'Desgasificado: temperatura de la pieza'
	),
	'bake-out-time': quantity(
		'duration',
		'Bake-out: time at temperature',
		'Desgasificado: tiempo a temperatura'
	),
	'residue-action': choice(
		{
			coat: { en: 'wipe it off and coat', es: 'limpiarlo con paño y recubrir' },
			repeat: { en: 'clean, blast and bake out again', es: 'limpiar, granallar y desgasificar de nuevo' },
			'tell-supervisor': { en: 'stop and tell the supervisor', es: 'parar y avisar al supervisor' }
		},
		'Residue shows after the bake-out. What now?',
		'Tras el desgasificado aparece residuo. ¿Ahora qué?'
	),
	'drying-time': quantity(
		'duration',
		'Drying time before coating, at the shop’s drying temperature',
		'Tiempo de secado antes de recubrir, a la temperatura de secado del taller'
	),
	'rack-hole': choice(
		{
			up: { en: 'opening up', es: 'abertura hacia arriba' },
			down: { en: 'opening down, blown out', es: 'abertura hacia abajo, soplada' },
			any: { en: 'as it comes', es: 'como venga' }
		},
		'How does the blind hole hang on the rack?',
		'¿Cómo cuelga el agujero ciego en el bastidor?'
	)
} as const;
