import { thermal } from '../../src/lib/engine/substrates/thermal';
import { published } from './published';

export default published('incropera-heat', 'Table A.1: steel AISI 1010', {
	of: ['materials'],
	unit: 'SI',
	read: 'as used in example 5.4, worked in an open textbook-companion project',
	within: { relative: 0.05, because: 'one plain steel for all' },
	rows: [
		{ where: 'density', expected: 7832, actual: () => thermal('carbon-steel').density.value },
		{ where: 'specific heat', expected: 434, actual: () => thermal('carbon-steel').heat.value }
	]
});
