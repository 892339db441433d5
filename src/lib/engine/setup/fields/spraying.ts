import { fieldsOf } from '../field';

const { quantity, choice, order } = fieldsOf({ station: 'spraying', competency: 'spraying' });

export const sprayingFields = {
	'spray-go': choice(
		{
			go: { en: 'go: spray now', es: 'adelante: aplicar ahora' },
			'no-go': { en: 'no-go: wait or put it right first', es: 'alto: esperar o corregir primero' }
		},
		'Air, part and compressed air as read today: go or no-go?',
		'Con el aire, la pieza y el aire comprimido de hoy: ¿adelante o alto?'
	),
	'surface-minimum': quantity(
		'temperature',
		'Lowest part temperature that the dew point of this air allows',
		'Temperatura mínima de la pieza que permite el punto de rocío de este aire'
	),
	'pressure-read-at': choice(
		{
			handle: { en: 'gauge on the gun handle', es: 'manómetro en el mango de la pistola' },
			wall: { en: 'wall regulator', es: 'regulador de pared' },
			cap: { en: 'test cap at the air cap', es: 'boquilla de prueba con manómetro' }
		},
		'Where do you read the cap pressure?',
		'¿Dónde lee la presión de la boquilla?'
	),
	'cap-pressure': quantity('pressure', 'Pressure at the air cap', 'Presión en la boquilla de aire'),
	'gun-distance': quantity('length', 'Gun to part', 'De la pistola a la pieza'),
	'fan-width': quantity(
		'length',
		'Fan width for the narrowest part',
		'Ancho del abanico para la pieza más angosta'
	),
	overlap: quantity('fraction', 'Overlap of the passes', 'Traslape de las pasadas'),
	'gun-speed': quantity('speed', 'Gun speed', 'Velocidad de la pistola'),
	coats: quantity('count', 'How many coats?', '¿Cuántas manos?'),
	'wet-film': quantity(
		'length',
		'Wet film per coat, unthinned, for the middle of the wanted dry film in the fewest coats of the sheet',
		'Película húmeda por mano, sin diluir, para el centro de la película seca pedida con el mínimo de manos de la hoja'
	),
	'coat-interval': quantity('duration', 'Wait between coats', 'Espera entre manos'),
	'spray-order': order(
		{
			'show-face': { en: 'show face', es: 'cara visible' },
			edges: { en: 'edges and holes', es: 'bordes y agujeros' },
			recesses: { en: 'recesses and inside corners', es: 'huecos y esquinas interiores' },
			faces: { en: 'other faces', es: 'las demás caras' }
		},
		'In which order do you spray?',
		'¿En qué orden aplica?'
	)
} as const;
