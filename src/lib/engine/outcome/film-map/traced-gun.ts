import { given, type Traced } from '../../plan/trace';
import type { Provenance } from '../../sources/provenance';
import { field, type FieldId } from '../../setup/fields';
import type { Dimension, Si } from '../../units/dimension';
import type { GunSettings } from './gun-controls';

const SET: Provenance = { origin: 'answer', verification: { read: 'gun' } };

const setIn = <D extends Dimension>(id: FieldId, dimension: D, value: Si<NoInfer<D>>): Traced<D> => ({
	...given(dimension, value, field(id).label, SET),
	origin: { kind: 'answer', field: id }
});

/** The settings of a gun as numbers that remember where they were set; no field of the sheet asks for the flow. */
export const tracedGun = (settings: GunSettings) => ({
	distance: setIn('gun-distance', 'length', settings['gun-distance']),
	fan: setIn('fan-width', 'length', settings['fan-width']),
	overlap: setIn('overlap', 'fraction', settings.overlap),
	speed: setIn('gun-speed', 'speed', settings['gun-speed']),
	coats: setIn('coats', 'count', settings.coats),
	flow: given(
		'flow',
		settings.flow,
		{ en: 'Paint through the tip', es: 'Pintura que sale por la boquilla' },
		SET
	)
});
