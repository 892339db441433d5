import type { Term } from '../term';

export const safetyTerms = [
	{
		id: 'safety-data-sheet',
		term: { en: 'safety data sheet (SDS)', es: 'hoja de datos de seguridad (HDS)' },
		meaning: {
			en: 'The paper that says what a product can do to you, what to wear and what to do after an accident.',
			es: 'El papel que dice qué le puede hacer un producto, qué ponerse y qué hacer tras un accidente.'
		},
		lesson: 'hazards-and-labels'
	},
	{
		id: 'signal-word',
		term: { en: 'signal word', es: 'palabra de advertencia' },
		meaning: {
			en: 'The word on a label that says how badly a hazard can hurt.',
			es: 'La palabra de una etiqueta que dice qué tan grave puede ser el daño.'
		},
		lesson: 'hazards-and-labels'
	},
	{
		id: 'respirator',
		term: { en: 'respirator', es: 'respirador' },
		meaning: {
			en: 'Gear over nose and mouth that cleans or supplies the air you breathe.',
			es: 'Equipo sobre nariz y boca que limpia o suministra el aire que respira.'
		},
		lesson: 'breathing-protection'
	},
	{
		id: 'cartridge',
		term: { en: 'cartridge', es: 'cartucho' },
		meaning: {
			en: 'The part of a respirator that catches vapour. It fills up and is changed on a written schedule.',
			es: 'La parte del respirador que atrapa vapor. Se satura y se cambia según un programa escrito.'
		},
		lesson: 'breathing-protection'
	},
	{
		id: 'air-fed',
		term: { en: 'air-fed respirator', es: 'respirador con aire suministrado' },
		meaning: {
			en: 'A respirator that brings clean air through a hose.',
			es: 'Respirador que trae aire limpio por una manguera.'
		},
		lesson: 'breathing-protection'
	},
	{
		id: 'fit-test',
		term: { en: 'fit test', es: 'prueba de ajuste' },
		meaning: {
			en: 'A check that a tight mask seals on your own face. A beard breaks the seal.',
			es: 'Prueba de que una máscara ajustada sella en su propia cara. Una barba rompe el sello.'
		},
		lesson: 'breathing-protection'
	},
	{
		id: 'seal-check',
		term: { en: 'seal check', es: 'revisión de sello' },
		meaning: {
			en: 'The quick check of the seal each time you put the mask on.',
			es: 'La revisión rápida del sello cada vez que se pone la máscara.'
		},
		lesson: 'breathing-protection'
	},
	{
		id: 'clearance-time',
		term: { en: 'clearance time', es: 'tiempo de despeje' },
		meaning: {
			en: 'How long the booth must run after spraying before masks may come off.',
			es: 'Cuánto debe seguir la cabina después de aplicar antes de quitarse la máscara.'
		},
		lesson: 'breathing-protection'
	},
	{
		id: 'bonding',
		term: { en: 'bonding and earthing', es: 'unión y puesta a tierra' },
		meaning: {
			en: 'Wires that join metal cans and lead to earth, so that no spark jumps while you pour.',
			es: 'Cables que unen las latas de metal y van a tierra, para que no salte chispa al verter.'
		},
		lesson: 'hazards-and-labels'
	},
	{
		id: 'flammable',
		term: { en: 'flammable', es: 'inflamable' },
		meaning: {
			en: 'Gives off vapour that a spark can light.',
			es: 'Suelta un vapor que una chispa puede prender.'
		},
		lesson: 'fire-and-booth'
	},
	{
		id: 'ventilation',
		term: { en: 'exhaust', es: 'extracción' },
		meaning: {
			en: 'A fan that draws vapour and mist away from where people breathe.',
			es: 'Ventilador que se lleva vapor y neblina de donde se respira.'
		},
		lesson: 'fire-and-booth'
	},
	{
		id: 'silica',
		term: { en: 'silica', es: 'sílice' },
		meaning: {
			en: 'What common sand is made of. Its dust scars the lungs for good.',
			es: 'De lo que está hecha la arena común. Su polvo deja cicatrices en los pulmones.'
		},
		lesson: 'blasting-safely'
	},
	{
		id: 'closed-can',
		term: { en: 'closed waste can', es: 'bote cerrado de residuos' },
		meaning: {
			en: 'A metal can with a lid that shuts by itself, for rags with solvent.',
			es: 'Bote de metal con tapa que cierra sola, para trapos con solvente.'
		},
		lesson: 'cleaning-and-waste'
	},
	{
		id: 'nitrile-gloves',
		term: { en: 'nitrile gloves', es: 'guantes de nitrilo' },
		meaning: {
			en: 'Thin gloves, powder-free, for touching clean parts. The SDS says whether they stop a solvent.',
			es: 'Guantes delgados sin polvo para tocar piezas limpias. La HDS dice si detienen un solvente.'
		},
		lesson: 'handling'
	}
] as const satisfies readonly Term[];
