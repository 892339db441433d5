import { commonPractice } from '../../sources/provenance';
import type { Rule } from '../rule';

export default {
	id: 'no-open-chlorinated-dip',
	station: 'preparation',
	competency: 'safety',
	skill: 'C1',
	title: { en: 'No open chlorinated dip', es: 'Nada de inmersión abierta en solvente clorado' },
	why: {
		en: 'Chlorinated vapour numbs, harms the liver and can cause cancer; near an oven, flame or arc it turns into phosgene and acid. Only in an enclosed machine far from heat.',
		es: 'El vapor clorado adormece, daña el hígado y puede causar cáncer; cerca de horno, llama o arco se vuelve fosgeno y ácido. Solo en máquina cerrada, lejos del calor.'
	},
	severity: 'safety-stop',
	authority: 'shop',
	provenance: commonPractice,
	lesson: 'degreasing#no-open-chlorinated-dip',
	breaks: { wrong: ['solvent-crazing'] },
	outcome: {
		en: 'People breathe the vapour; plastics craze and titanium can crack later.',
		es: 'Todos lo respiran; fisura plásticos y puede agrietar titanio después.'
	},
	evidence: {
		en: 'Look for an open tray or bucket and read the label of what is in it.',
		es: 'Busque una bandeja o cubeta abierta y lea la etiqueta de lo que contiene.'
	},
	field: 'clean-method',
	applies: () => true,
	expects: () => ({ kind: 'none-of', options: ['chlorinated-dip'] })
} satisfies Rule;
