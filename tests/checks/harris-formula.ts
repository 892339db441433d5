import { airLineDrop } from '../../src/lib/engine/physics/air/air-line-drop';
import { metres, psi } from '../../src/lib/engine/units/construct';
import type { CubicMetrePerSecond } from '../../src/lib/engine/units/dimension';
import { published } from './published';

const CFM = 0.3048 ** 3 / 60;

/** The page writes the formula with one constant of its own: Δp = L·Q²/(2390·P·d^5.31), in ft, scfm, psia and inches. */
const onThePage = (feet: number, cfm: number, psia: number, inches: number) =>
	(feet * cfm ** 2) / (2390 * psia * inches ** 5.31);

const line = (feet: number, cfm: number, gauge: number, inches: number) => ({
	where: `${feet} ft, ${cfm} cfm, ${gauge} psig, ${inches} in`,
	expected: onThePage(feet, cfm, gauge + 14.7, inches),
	actual: () =>
		airLineDrop.at({
			length: metres(feet * 0.3048),
			air: (cfm * CFM) as CubicMetrePerSecond,
			gauge: psi(gauge),
			bore: metres(inches * 0.0254)
		}) / psi(1)
});

export default published('harris-formula', 'the formula in its other form', {
	of: ['air-line-drop'],
	unit: 'psi',
	read: 'formula on the page, evaluated here',
	within: { relative: 0.002, because: 'the constant 2390 is rounded to three digits' },
	rows: [line(50, 20, 90, 0.5), line(100, 50, 100, 1.049)]
});
