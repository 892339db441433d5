import { materialRow as row } from './material-row';
import { published } from './published';

export default published('crawford-plastics', 'Table 1.8: thermal properties of plastics', {
	of: ['materials'],
	unit: 'SI',
	read: 'stored page of the table',
	within: { relative: 0.12, because: 'grades of one plastic differ, and values are printed to two digits' },
	rows: [
		row('abs', 'density', 1040),
		row('abs', 'heat', 1300),
		row('polyamide', 'density', 1140),
		row('polyamide', 'heat', 1700),
		row('polyamide', 'conductivity', 0.24),
		row('polycarbonate', 'density', 1150),
		row('polycarbonate', 'conductivity', 0.2),
		row('polypropylene', 'heat', 2000),
		row('polypropylene', 'conductivity', 0.2),
		row('peek', 'density', 1300)
	]
});
