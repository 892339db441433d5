/**
 * Spearman–Brown: reliability of a form made `times` as long with items like those it has.
 *   α′ = m·α / (1 + (m − 1)·α)
 * @param alpha reliability of the form as it is, 0 to below 1
 * @param times above 0; below 1 for a shorter form
 * @throws RangeError outside of these
 */
export function lengthened(alpha: number, times: number): number {
	if (!(alpha >= 0 && alpha < 1)) throw new RangeError(`0 <= alpha < 1, got ${alpha}`);
	if (!(times > 0)) throw new RangeError(`times > 0, got ${times}`);
	return (times * alpha) / (1 + (times - 1) * alpha);
}
