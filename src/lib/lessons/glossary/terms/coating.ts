import type { Term } from '../term';

export const coatingTerms = [
	{
		id: 'coating',
		term: { en: 'coating', es: 'recubrimiento' },
		meaning: {
			en: 'The material in the can, and the layer it becomes on the part.',
			es: 'El material de la lata, y la capa en que se convierte sobre la pieza.'
		},
		lesson: 'ticket-and-sheet'
	},
	{
		id: 'film',
		term: { en: 'film', es: 'película' },
		meaning: {
			en: 'One whole layer of coating on the part, wet or dry.',
			es: 'Una capa entera de recubrimiento sobre la pieza, húmeda o seca.'
		},
		lesson: 'wet-film'
	},
	{
		id: 'coat',
		term: { en: 'coat', es: 'mano' },
		meaning: {
			en: 'What is laid down in one go before waiting. Several coats can make one film.',
			es: 'Lo que se aplica de una vez antes de esperar. Varias manos pueden formar una película.'
		},
		lesson: 'second-coat'
	},
	{
		id: 'binder',
		term: { en: 'binder', es: 'ligante' },
		meaning: {
			en: 'The part of a coating that hardens and holds all the rest together.',
			es: 'La parte del recubrimiento que endurece y sujeta todo lo demás.'
		}
	},
	{
		id: 'pigment',
		term: { en: 'pigment', es: 'pigmento' },
		meaning: {
			en: 'Fine solid grains that give colour and hide what is below. They sink in the can.',
			es: 'Granos sólidos finos que dan color y tapan lo de abajo. Se asientan en la lata.'
		},
		lesson: 'lot-and-can'
	},
	{
		id: 'filler',
		term: { en: 'filler', es: 'carga del recubrimiento' },
		meaning: {
			en: 'Solid grains added for body, wear or slip. Too fine a strainer takes them out.',
			es: 'Granos sólidos añadidos para dar cuerpo, desgaste o deslizamiento. Un colador muy fino los quita.'
		},
		lesson: 'thinning'
	},
	{
		id: 'solvent',
		term: { en: 'solvent', es: 'solvente' },
		meaning: {
			en: 'The liquid that keeps a coating fluid and leaves it again as vapour. Most solvents burn.',
			es: 'El líquido que mantiene fluido el recubrimiento y sale como vapor. La mayoría arde.'
		},
		lesson: 'hazards-and-labels'
	},
	{
		id: 'thinner',
		term: { en: 'thinner', es: 'diluyente' },
		meaning: {
			en: 'A solvent added to make a coating flow. Only the one the data sheet names.',
			es: 'Solvente que se agrega para que el recubrimiento fluya. Solo el que nombra la hoja técnica.'
		},
		lesson: 'thinning'
	},
	{
		id: 'volume-solids',
		term: { en: 'volume solids', es: 'sólidos en volumen' },
		meaning: {
			en: 'The share of the liquid that stays on the part as dry film.',
			es: 'La parte del líquido que se queda en la pieza como película seca.'
		},
		lesson: 'wet-film'
	},
	{
		id: 'two-part',
		term: { en: 'two-part coating', es: 'recubrimiento de dos partes' },
		meaning: {
			en: 'Base and hardener in two cans. Mixed, they begin to react and cannot be stopped.',
			es: 'Base y endurecedor en dos latas. Mezclados, empiezan a reaccionar y ya no se detienen.'
		},
		lesson: 'measuring'
	},
	{
		id: 'base',
		term: { en: 'base', es: 'base' },
		meaning: {
			en: 'The larger of the two parts; it carries colour and filler.',
			es: 'La mayor de las dos partes; lleva el color y las cargas.'
		},
		lesson: 'measuring'
	},
	{
		id: 'hardener',
		term: { en: 'hardener', es: 'endurecedor' },
		meaning: {
			en: 'The part that makes the base set. Damp air spoils it, and it may harm your lungs.',
			es: 'La parte que hace fraguar la base. El aire húmedo la echa a perder y puede dañarle los pulmones.'
		},
		lesson: 'measuring'
	},
	{
		id: 'isocyanate',
		term: { en: 'isocyanate', es: 'isocianato' },
		meaning: {
			en: 'A substance in some hardeners. Its mist and vapour can cause asthma that stays for life.',
			es: 'Sustancia de algunos endurecedores. Su neblina y vapor pueden causar un asma de por vida.'
		},
		lesson: 'breathing-protection'
	},
	{
		id: 'epoxy',
		term: { en: 'epoxy', es: 'epóxico' },
		meaning: {
			en: 'A family of coatings that holds well and is often cured by an amine. It can irritate skin.',
			es: 'Familia de recubrimientos que agarra bien y muchas veces cura con una amina. Puede irritar la piel.'
		}
	}
] as const satisfies readonly Term[];
