import { arithmetic } from '../../sources/provenance';
import { defineFormula } from '../formula';

const INCH = 0.0254;

/**
 * Clear opening of square woven cloth from its wires to the inch and their thickness. Cloth of one mesh is woven of
 * many wires, so a mesh without its wire has no opening. Throws where the wire fills the pitch.
 */
export const meshOpening = defineFormula({
	id: 'mesh-opening',
	title: { en: 'Opening of woven cloth', es: 'Abertura de una tela tejida' },
	equation: 'w = 25.4 mm / mesh − d',
	source: arithmetic('pitch less wire'),
	inputs: { mesh: 'count', wire: 'length' },
	gives: 'length',
	validFor: { mesh: [1, 640], wire: [10e-6, 6e-3] },
	compute({ mesh, wire }) {
		const pitch = INCH / mesh;
		if (wire >= pitch)
			throw new RangeError(
				`mesh-opening: a wire of ${wire} m leaves no opening; allowed is under ${pitch} m`
			);
		return pitch - wire;
	}
});
