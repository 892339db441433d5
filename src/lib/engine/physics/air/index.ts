import type { FormulaNote } from '../formula-note';
import { absolutePressure } from './absolute-pressure';
import { airLineDrop } from './air-line-drop';
import { blastNozzleAir } from './blast-nozzle-air';
import { chokedAirFlow } from './choked-air-flow';
import { compressorDelivery } from './compressor-delivery';
import { compressorPower } from './compressor-power';
import { criticalPressureRatio } from './critical-pressure-ratio';
import { deliveryNeeded } from './delivery-needed';
import { freeAir } from './free-air';
import { handbookOrificeFlow } from './handbook-orifice-flow';
import { subcriticalAirFlow } from './subcritical-air-flow';
import { wornNozzleAir } from './worn-nozzle-air';

/** In the order they are shown. */
export const airFormulas: readonly FormulaNote[] = [
	absolutePressure,
	criticalPressureRatio,
	chokedAirFlow,
	subcriticalAirFlow,
	handbookOrificeFlow,
	freeAir,
	blastNozzleAir,
	wornNozzleAir,
	deliveryNeeded,
	compressorDelivery,
	compressorPower,
	airLineDrop
];
