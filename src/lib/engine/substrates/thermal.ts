import type { Traced } from '../plan/trace';
import { cite, type Provenance } from '../sources/provenance';
import type { Text } from '../text';
import type { Dimension, Si } from '../units/dimension';
import { SUBSTRATES, type SubstrateId } from './substrates';

/** kg/m³, J/(kg·K) and W/(m·K) near room temperature, through the thickness where a material has a grain. */
type Thermal = {
	readonly density: Sourced;
	readonly heat: Sourced;
	readonly conductivity: Sourced;
};
type Sourced = readonly [value: number, provenance: Provenance];

const HANDBOOK: Provenance = { origin: 'handbook', verification: 'memory' };
const tabulated = (where: string) =>
	cite('en-12524', where, { read: 'table as held in an open-source heat-transfer library' });
const nist = (where: string) =>
	cite('nist-cryogenic', where, { read: 'coefficients as held in open-source engineering codes' });
const cengel = (where: string) => cite('cengel-heat', where, { read: 'text of example 4-5' }, 'handbook');
const crawford = (where: string) =>
	cite('crawford-plastics', `Table 1.8, ${where}`, { read: 'stored page' }, 'handbook');
const laminate = cite('jnm-2019-cfrp', 'Table 2, unmodified laminates', { read: 'table' }, 'paper');

const STEEL: Thermal = {
	density: [7830, HANDBOOK],
	heat: [450, tabulated('steel')],
	conductivity: [50, tabulated('steel')]
};
const ALUMINIUM_6061: Thermal = {
	density: [2700, HANDBOOK],
	heat: [896, HANDBOOK],
	conductivity: [155, nist('6061-T6 aluminium, at 300 K')]
};

/** An oxide a few hundredths of a millimetre thick does not change what a part of aluminium stores or conducts. */
const THERMAL: Readonly<Record<SubstrateId, Thermal>> = {
	'carbon-steel': STEEL,
	'spring-steel': STEEL,
	'stainless-steel': {
		density: [7900, cengel('stainless steel 304')],
		heat: [477, cengel('stainless steel 304')],
		conductivity: [14.9, cengel('stainless steel 304')]
	},
	'aluminium-6061': ALUMINIUM_6061,
	'aluminium-7075': {
		density: [2810, HANDBOOK],
		heat: [960, HANDBOOK],
		conductivity: [130, HANDBOOK]
	},
	'aluminium-casting': {
		density: [2680, HANDBOOK],
		heat: [880, tabulated('aluminium alloys')],
		conductivity: [160, tabulated('aluminium alloys')]
	},
	'anodised-aluminium': ALUMINIUM_6061,
	magnesium: {
		density: [1770, HANDBOOK],
		heat: [990, HANDBOOK],
		conductivity: [100, HANDBOOK]
	},
	titanium: {
		density: [4420, HANDBOOK],
		heat: [560, HANDBOOK],
		conductivity: [7.4, nist('Ti-6Al-4V, at 293 K')]
	},
	brass: {
		density: [8400, tabulated('brass')],
		heat: [380, tabulated('brass')],
		conductivity: [120, tabulated('brass')]
	},
	'zinc-die-cast': {
		density: [6700, HANDBOOK],
		heat: [380, tabulated('zinc')],
		conductivity: [110, tabulated('zinc')]
	},
	abs: {
		density: [1050, HANDBOOK],
		heat: [1300, crawford('ABS')],
		conductivity: [0.25, crawford('ABS')]
	},
	polycarbonate: {
		density: [1200, tabulated('polycarbonates')],
		heat: [1200, tabulated('polycarbonates')],
		conductivity: [0.2, tabulated('polycarbonates')]
	},
	polyamide: {
		density: [1150, tabulated('polyamide (nylon)')],
		heat: [1600, tabulated('polyamide (nylon)')],
		conductivity: [0.25, tabulated('polyamide (nylon)')]
	},
	polypropylene: {
		density: [905, crawford('polypropylene')],
		heat: [1800, tabulated('polypropylene')],
		conductivity: [0.22, tabulated('polypropylene')]
	},
	peek: {
		density: [1300, crawford('PEEK')],
		heat: [1340, HANDBOOK],
		conductivity: [0.25, HANDBOOK]
	},
	'carbon-laminate': {
		density: [1550, HANDBOOK],
		heat: [1000, HANDBOOK],
		conductivity: [0.7, laminate]
	},
	'glass-laminate': {
		density: [1850, HANDBOOK],
		heat: [1000, nist('G-10 CR, at 300 K')],
		conductivity: [0.6, nist('G-10 CR across the layers, at 300 K')]
	}
};

const LABELS = {
	density: { en: 'Density', es: 'Densidad' },
	heat: { en: 'Specific heat', es: 'Calor específico' },
	conductivity: { en: 'Heat conductivity', es: 'Conductividad térmica' }
} as const satisfies Record<keyof Thermal, Text>;

function property<D extends Dimension>(id: SubstrateId, path: keyof Thermal, dimension: D): Traced<D> {
	const [value, provenance] = THERMAL[id][path];
	const { en, es } = SUBSTRATES[id].name;
	return {
		value: value as Si<D>,
		dimension,
		label: { en: `${LABELS[path].en}, ${en}`, es: `${LABELS[path].es}, ${es}` },
		origin: { kind: 'substrate', id, path },
		provenance,
		inputs: {}
	};
}

/** What heat-up depends on of a material, with where each number comes from. */
export const thermal = (id: SubstrateId) => ({
	density: property(id, 'density', 'density'),
	heat: property(id, 'heat', 'specific-heat'),
	conductivity: property(id, 'conductivity', 'conductivity')
});
