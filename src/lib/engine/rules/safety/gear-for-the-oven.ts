import { cureTemperature } from '../../plan/cure-window';
import { commonPractice } from '../../sources/provenance';
import type { Rule } from '../rule';
import { listedGear, wearsListed } from './listed-gear';

export default {
	id: 'gear-for-the-oven',
	station: 'curing',
	competency: 'safety',
	skill: 'C3',
	title: {
		en: 'Gear for the oven, as the shop lists it',
		es: 'Equipo para el horno, según la lista del taller'
	},
	why: {
		en: 'Racks and parts burn on touch, and hot air meets your face at the door. The list is the least your employer’s hazard assessment asks; stand clear of the door, and leave if there is smoke.',
		es: 'Bastidores y piezas queman; el aire caliente da en la cara al abrir. La lista es lo mínimo de la evaluación de peligros del empleador; apártese de la puerta y salga si hay humo.'
	},
	severity: 'safety-stop',
	authority: 'shop',
	provenance: commonPractice,
	lesson: 'fire-and-booth#gear-for-the-oven',
	breaks: {},
	outcome: {
		en: 'Burned hands, forearms or face.',
		es: 'Manos, antebrazos o cara quemados.'
	},
	evidence: {
		en: 'Ask what was worn at the door, and look at the heat gloves for holes.',
		es: 'Pregunte qué se usó en la puerta y revise si los guantes térmicos tienen agujeros.'
	},
	field: 'ppe-oven',
	applies: (seen) => cureTemperature(seen) !== undefined && listedGear(seen, 'oven').length > 0,
	expects: (seen) => wearsListed(seen, 'oven')
} satisfies Rule;
