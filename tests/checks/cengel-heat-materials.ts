import { materialRow as row } from './material-row';
import { published } from './published';

export default published('cengel-heat', 'Table A-3: brass and stainless steel 304', {
	of: ['materials'],
	unit: 'SI',
	read: 'as stated in examples 4-4 and 4-5',
	within: { relative: 0.1, because: 'brasses of different copper content differ' },
	rows: [
		row('brass', 'density', 8530),
		row('brass', 'heat', 380),
		row('brass', 'conductivity', 110),
		row('stainless-steel', 'density', 7900),
		row('stainless-steel', 'heat', 477)
	]
});
