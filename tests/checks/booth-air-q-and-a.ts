import { boothFlow } from '../../src/lib/engine/physics/solvent/booth-flow';
import { feetPerMinute } from '../../src/lib/engine/units/construct';
import type { SquareMetre } from '../../src/lib/engine/units/dimension';
import { unitOf } from '../../src/lib/engine/units/units';
import { published } from './published';

export default published(
	'booth-air-q-and-a',
	'air of a booth with 1000 ft² of floor at 60 ft/min on average',
	{
		of: ['booth-flow'],
		unit: 'cfm',
		read: 'question and answer',
		within: { relative: 1e-9, because: 'round numbers' },
		rows: [
			{
				where: 'as the shop states it',
				expected: 60_000,
				actual: () => {
					const face = unitOf('area', 'ft²').toSi(1000) as SquareMetre;
					return unitOf('flow', 'cfm').fromSi(boothFlow.at({ velocity: feetPerMinute(60), face }));
				}
			}
		]
	}
);
