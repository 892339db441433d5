import { cite } from '../../sources/provenance';
import type { Rule } from '../rule';
import { has } from './hazards';

export default {
	id: 'bonded-pouring',
	station: 'mixing',
	competency: 'safety',
	skill: 'C3',
	title: {
		en: 'Flammable liquid is poured between bonded, earthed metal cans',
		es: 'Lo inflamable se vierte entre latas metálicas unidas y a tierra'
	},
	why: {
		en: 'Liquid running out of a drum charges itself. A plastic jug or an insulated bench keeps the charge until it sparks in the vapour.',
		es: 'El líquido que sale del tambor se carga de electricidad. Una jarra plástica o un banco aislado guardan la carga hasta que salta la chispa en el vapor.'
	},
	severity: 'safety-stop',
	authority: 'law',
	provenance: cite('osha-1910-106', '(e)(6)(ii)', { read: 'the rule as quoted' }),
	lesson: 'hazards-and-labels#bonded-pouring',
	breaks: {},
	outcome: {
		en: 'A spark at the spout sets the vapour alight.',
		es: 'Una chispa en la boca enciende el vapor.'
	},
	evidence: {
		en: 'Look for bonding clamps on drum and can and for the earth cable.',
		es: 'Busque las pinzas de unión en tambor y lata y el cable a tierra.'
	},
	field: 'pouring',
	applies: (seen) => has(seen, 'flammable'),
	expects: () => ({ kind: 'one-of', options: ['bonded'] })
} satisfies Rule;
