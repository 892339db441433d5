import type { View } from '../request';
import type { Text } from '../text';
import { NOTHING_SEEN } from './nothing-seen';

/** A film with nothing wrong. */
export const SOUND: Record<View, Text> = {
	plain: {
		en: 'An even film of one colour; the lamp lies in it as one soft band.',
		es: 'Una película pareja de un solo color; la lámpara se refleja como una franja suave.'
	},
	...NOTHING_SEEN
};
