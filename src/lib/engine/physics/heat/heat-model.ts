import { cite } from '../../sources/provenance';
import type { Conductivity, HeatTransfer, Metre } from '../../units/dimension';
import { biot } from './biot';
import { defineProcedure } from '../procedure';

/** From this Biot number on one temperature no longer stands for the whole part. */
export const LUMPED_BELOW = 0.1;

type Inputs = { heatTransfer: HeatTransfer; depth: Metre; conductivity: Conductivity };
type HeatModel = { readonly biot: number; readonly model: 'lumped' | 'conduction' };

/** Whether a part heats through as one, or whether its core has to be worked out by conduction. */
export const heatModel = defineProcedure<Inputs, HeatModel>({
	id: 'heat-model',
	title: { en: 'One temperature, or core and skin', es: 'Una temperatura, o núcleo y piel' },
	equation: 'lumped while Bi < 0.1',
	source: cite('holman-heat', 'ch. 4, lumped capacity', { read: 'as worked in example 4-1' }, 'handbook'),
	inputs: biot.inputs,
	validFor: biot.validFor,
	compute(part) {
		const number = biot.at(part);
		return { biot: number, model: number < LUMPED_BELOW ? 'lumped' : 'conduction' };
	}
});
