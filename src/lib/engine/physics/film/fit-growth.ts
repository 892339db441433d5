import { arithmetic } from '../../sources/provenance';
import { defineFormula } from '../formula';

const growth = (id: string, en: string, es: string, equation: string, times: number) =>
	defineFormula({
		id,
		title: { en, es },
		equation,
		source: arithmetic('geometry; thread flanks at 60°'),
		inputs: { dry: 'length' },
		gives: 'length',
		validFor: { dry: [0, 1e-3] },
		compute: ({ dry }) => dry * times
	});

/**
 * What a film adds to a fit. A shaft grows by a film on either side and a bore shrinks by as much; the pitch diameter of a 60°
 * thread changes by four films, outward on a bolt and inward in a nut, because each film lies square to a flank: seen along
 * the radius it is t/sin(α/2) thick, α the angle between the flanks, and there is one on either side. So 55° threads change by
 * 4.33 films and 29° ones by 8. Angle 10° to 120°.
 */
export const fitGrowth = {
	diameter: growth('fit-growth-diameter', 'Diameter growth', 'Aumento del diámetro', 'Δ⌀ = 2 · DFT', 2),
	bore: growth('fit-growth-bore', 'Change of a bore', 'Cambio de un agujero', 'Δ⌀ = −2 · DFT', -2),
	thread: growth(
		'fit-growth-thread',
		'Pitch-diameter growth',
		'Aumento del diámetro primitivo',
		'Δ⌀ = 4 · DFT',
		4
	),
	flanks: defineFormula({
		id: 'fit-growth-flanks',
		title: {
			en: 'Pitch-diameter growth, any thread angle',
			es: 'Aumento del diámetro primitivo, cualquier ángulo'
		},
		equation: 'Δ⌀ = 2 · DFT/sin(α/2)',
		source: arithmetic('geometry; a film square to each flank'),
		inputs: { dry: 'length', angle: 'angle' },
		gives: 'length',
		validFor: { dry: [0, 1e-3], angle: [Math.PI / 18, (2 * Math.PI) / 3] },
		compute: ({ dry, angle }) => (2 * dry) / Math.sin(angle / 2)
	})
};
