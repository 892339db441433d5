import type { SubstrateId } from '../../src/lib/engine/substrates/substrates';
import { materialRow, type HeatProperty } from './material-row';
import { published } from './published';

const row = (where: string, id: SubstrateId, property: HeatProperty, expected: number) =>
	materialRow(id, property, expected, `${where}, ${property}`);

export default published('en-12524', 'tabulated values of metals and plastics', {
	of: ['materials'],
	unit: 'SI',
	read: 'table as held in an open-source heat-transfer library',
	within: { relative: 0.05, because: 'design values for whole families of alloys, rounded' },
	rows: [
		row('steel', 'carbon-steel', 'density', 7800),
		row('steel', 'carbon-steel', 'heat', 450),
		row('steel', 'spring-steel', 'conductivity', 50),
		row('stainless steel', 'stainless-steel', 'density', 7900),
		row('stainless steel', 'stainless-steel', 'heat', 460),
		row('aluminium alloys', 'aluminium-6061', 'density', 2800),
		row('aluminium alloys', 'aluminium-6061', 'heat', 880),
		row('aluminium alloys', 'anodised-aluminium', 'conductivity', 160),
		row('aluminium alloys', 'aluminium-7075', 'density', 2800),
		row('aluminium alloys', 'aluminium-casting', 'density', 2800),
		row('brass', 'brass', 'density', 8400),
		row('brass', 'brass', 'conductivity', 120),
		row('zinc', 'zinc-die-cast', 'heat', 380),
		row('polycarbonates', 'polycarbonate', 'heat', 1200),
		row('polyamide (nylon)', 'polyamide', 'density', 1150),
		row('polyamide (nylon)', 'polyamide', 'conductivity', 0.25),
		row('polypropylene', 'polypropylene', 'density', 910),
		row('polypropylene', 'polypropylene', 'heat', 1800)
	]
});
