import type { Hazard } from '../../coatings/traits';
import type { Situation } from '../../plan/situation';

/** Whether the coating's sheet names this hazard. */
export const has = ({ sheet }: Situation, hazard: Hazard) => sheet.hazards.includes(hazard);
