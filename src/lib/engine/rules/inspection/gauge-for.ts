import type { Material } from '../../job/part';
import { substrate } from '../../substrates/substrates';

/**
 * What reads the film on one material: a magnetic gauge on steel that a magnet holds to, an eddy-current gauge on other
 * metals, mass gain where no gauge reads true. Undefined where nobody has said what the part is.
 */
export function gaugeFor(material: Material) {
	if (material === 'unknown') return undefined;
	if (material === 'anodised-aluminium') return 'eddy-on-anodised';
	const { class: kind, magnetic } = substrate(material);
	if (kind !== 'metal') return 'foil-mass';
	return magnetic ? 'magnetic' : 'eddy';
}
