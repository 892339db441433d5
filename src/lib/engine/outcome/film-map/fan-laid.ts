import { workedOut, type Traced } from '../../plan/trace';
import type { Window } from '../../plan/window-of';
import { TEACHING_GUN } from './teaching-gun';

/**
 * Width of the fan as it reaches the panel. A fan is set on pattern paper at the distance the gun is held, as far as the
 * job allows that distance; nearer or farther than allowed it closes or opens in proportion. Teaching model: a straight
 * cone, carried on to half and twice an allowed distance.
 * @param allowed distances the job allows, SI
 */
export function fanLaid(
	fan: Traced<'length'>,
	distance: Traced<'length'>,
	allowed: Pick<Window, 'min' | 'max'>
): Traced<'length'> {
	const { nearest, farthest } = TEACHING_GUN;
	const paper = Math.min(Math.max(distance.value, allowed.min), allowed.max);
	const opened = Math.min(Math.max(distance.value / paper, nearest.value), farthest.value);
	return workedOut(
		'gun-distance',
		'length',
		fan.value * opened,
		{ en: 'Fan as it reaches the panel', es: 'Abanico al llegar al panel' },
		{ fan, distance, nearest, farthest }
	);
}
