import { PROTECTION_FACTORS } from '../../src/lib/engine/physics/exposure/protection-factors';
import { published } from './published';

const { 'air-purifying': filter, powered } = PROTECTION_FACTORS;

export default published('osha-1910-134', 'Table 1: assigned protection factors', {
	of: ['smallest-protection-share', 'smallest-protection-mass', 'maximum-use-share', 'maximum-use-mass'],
	unit: '',
	read: 'these rows of the table, and footnote 4, as quoted on public pages',
	within: { absolute: 1e-9, because: 'factors are whole numbers' },
	rows: [
		{ where: 'air-purifying, quarter mask', expected: 5, actual: () => filter.factors.quarter },
		{ where: 'air-purifying, half mask', expected: 10, actual: () => filter.factors.half },
		{ where: 'air-purifying, full facepiece', expected: 50, actual: () => filter.factors.full },
		{ where: 'powered, hood without the maker’s proof', expected: 25, actual: () => powered.factors.hood },
		{ where: 'powered, loose-fitting facepiece', expected: 25, actual: () => powered.factors.loose }
	]
});
