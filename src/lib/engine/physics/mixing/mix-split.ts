import { arithmetic } from '../../sources/provenance';
import type { Text } from '../../text';
import { defineFormula } from '../formula';

const SOURCE = arithmetic('parts A to one part B');
const RATIO: [number, number] = [0.05, 200];

const part = <D extends 'volume' | 'mass'>(
	basis: D,
	id: string,
	title: Text,
	equation: string,
	share: (ratio: number) => number
) =>
	defineFormula({
		id: `mix-${id}-by-${basis}`,
		title,
		equation,
		source: SOURCE,
		inputs: { batch: basis, ratio: 'ratio' },
		gives: basis,
		validFor: { batch: [0, 1], ratio: RATIO },
		compute: ({ batch, ratio }) => batch * share(ratio)
	});

const PART_A: Text = { en: 'Part A (base)', es: 'Parte A (base)' };
const PART_B: Text = { en: 'Part B (hardener)', es: 'Parte B (endurecedor)' };

const of = <D extends 'volume' | 'mass'>(basis: D) => ({
	base: part(basis, 'base', PART_A, 'A = batch · r/(r + 1)', (r) => r / (r + 1)),
	hardener: part(basis, 'hardener', PART_B, 'B = batch · 1/(r + 1)', (r) => 1 / (r + 1))
});

/**
 * What to pour or weigh of each component for a batch (up to 1 m³ or 1000 kg is far above any shop's) mixed r parts A to
 * one part B. The basis must be the one the sheet gives its ratio in: volume and weight ratios differ.
 */
export const mixSplit = { volume: of('volume'), mass: { ...of('mass') } };
