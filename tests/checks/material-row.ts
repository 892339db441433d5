import { thermal } from '../../src/lib/engine/substrates/thermal';
import type { SubstrateId } from '../../src/lib/engine/substrates/substrates';
import type { Row } from './published';

/** How a material heats, in SI. */
export type HeatProperty = 'density' | 'heat' | 'conductivity';

/** A published property of a material beside what the engine holds. */
export const materialRow = (
	material: SubstrateId,
	property: HeatProperty,
	expected: number,
	where = `${material}, ${property}`
): Row => ({ where, expected, actual: () => thermal(material)[property].value });
