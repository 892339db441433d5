import { shopValue, shopWindow, type Shop } from '../../shop/shop';
import { commonPractice } from '../../sources/provenance';
import { bar } from '../../units/construct';
import type { Rule } from '../rule';
import { blastings, toBlast } from './blasting';

type PressureId = NonNullable<ReturnType<typeof blastings>>[number]['pressure'];
type MostId = Extract<PressureId, `blast.pressure-most.${string}`>;

const isMost = (id: PressureId): id is MostId => id.startsWith('blast.pressure-most.');
const amber = bar(0.3);

const limitOf = (shop: Shop, id: PressureId) =>
	isMost(id)
		? { kind: 'at-most' as const, max: shopValue(shop, id), amber }
		: { kind: 'range' as const, ...shopWindow(shop, id), amber };

export default {
	id: 'blast-pressure',
	station: 'preparation',
	competency: 'preparation',
	skill: 'C7',
	title: { en: 'Pressure by the softest part', es: 'La presión según la pieza más blanda' },
	why: {
		en: 'Too much pressure warps thin parts and drives grain into soft metal; too little leaves shiny patches the film lets go of. With several materials on the ticket the most delicate one sets the gauge.',
		es: 'Demasiada presión deforma piezas delgadas y clava grano en metal blando; muy poca deja zonas brillantes de las que la película se suelta. Con varios materiales en la orden, el más delicado fija el manómetro.'
	},
	severity: 'quality',
	authority: 'shop',
	provenance: commonPractice,
	lesson: 'surface-preparation#blast-pressure',
	breaks: { low: ['flaking'], high: ['grit-inclusion', 'pinpoint-rust', 'distorted-part'] },
	outcome: {
		en: 'Low: shiny patches and flaking. High: embedded grain, deep profile, warped sheet.',
		es: 'Baja: zonas brillantes y desprendimiento. Alta: grano clavado, perfil profundo, lámina deformada.'
	},
	evidence: {
		en: 'Read the cabinet gauge with the nozzle open, in the unit it is marked in.',
		es: 'Lea el manómetro de la cabina con la boquilla abierta, en la unidad que marca.'
	},
	field: 'blast-pressure',
	applies: toBlast,
	expects(seen) {
		const limits = blastings(seen)!.map(({ pressure }) => limitOf(seen.shop, pressure));
		return limits.reduce((softest, one) => (softest.max.value <= one.max.value ? softest : one));
	}
} satisfies Rule;
