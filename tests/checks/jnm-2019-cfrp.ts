import { thermal } from '../../src/lib/engine/substrates/thermal';
import { published } from './published';

export default published('jnm-2019-cfrp', 'Table 2: carbon-fibre laminates across their layers', {
	of: ['materials'],
	unit: 'W/(m·K)',
	read: 'table',
	within: { relative: 0.1, because: 'laminates of some sixty percent fibre; other lay-ups scatter more' },
	rows: [
		{ where: 'T300, one direction', expected: 0.65 },
		{ where: 'TR50S, cross-ply, low pressure', expected: 0.729 },
		{ where: 'T300, plain weave', expected: 0.77 }
	].map(({ where, expected }) => ({
		where,
		expected,
		actual: () => thermal('carbon-laminate').conductivity.value
	}))
});
