import type { ShopValue } from '../define';
import { curingValues } from './curing';
import { inspectionValues } from './inspection';
import { intakeValues } from './intake';
import { mixingValues } from './mixing';
import { partLimits } from './part-limits';
import { practicalValues } from './practical';
import { preparationValues } from './preparation';
import { safetyValues } from './safety';
import { sprayingValues } from './spraying';

/** Every number the shop may change, with what it is until somebody does. */
export const SHOP_VALUES = {
	...partLimits,
	...intakeValues,
	...preparationValues,
	...mixingValues,
	...sprayingValues,
	...curingValues,
	...inspectionValues,
	...practicalValues,
	...safetyValues
} as const satisfies Record<string, ShopValue>;

export type ShopValueId = keyof typeof SHOP_VALUES;
