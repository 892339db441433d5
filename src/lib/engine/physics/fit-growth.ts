import { arithmetic } from '../sources/provenance';
import { defineFormula } from './formula';

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
 * What a film adds to a fit. A diameter grows by a film on either side; the pitch diameter of a 60° thread by four films,
 * because each is measured square to a flank and there are two flanks on either side.
 */
export const fitGrowth = {
	diameter: growth('fit-growth-diameter', 'Diameter growth', 'Aumento del diámetro', 'Δ⌀ = 2 · DFT', 2),
	thread: growth(
		'fit-growth-thread',
		'Pitch-diameter growth',
		'Aumento del diámetro primitivo',
		'Δ⌀ = 4 · DFT',
		4
	)
};
