/**
 * Chance that a person gets a job right: 1 / (1 + e^-(skill - difficulty)).
 * Source: Rasch model, as in Pelánek 2016, Applications of the Elo rating system in adaptive educational systems,
 * Computers & Education (abstract read; formula from memory and as quoted in public source code).
 * @param skill in logits
 * @param difficulty in logits; equal to `skill` gives 0.5
 * @returns between 0 and 1
 */
export const expectedRight = (skill: number, difficulty: number): number =>
	1 / (1 + Math.exp(difficulty - skill));
