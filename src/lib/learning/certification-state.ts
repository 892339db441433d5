import type { Text } from '$lib/engine';

export type CertificationState =
	| 'none'
	| 'in-training'
	| 'eligible'
	| 'signed'
	| 'suspended'
	| 'continuity-lapsed'
	| 'expired'
	| 'withdrawn';

/** The state of one person in one competency, in the words of the screens; they qualify "competency". */
export const certificationStates: Readonly<Record<CertificationState, Text>> = {
	none: { en: 'not started', es: 'sin empezar' },
	'in-training': { en: 'in training', es: 'en formación' },
	eligible: { en: 'ready to be signed', es: 'lista para firmar' },
	signed: { en: 'signed', es: 'firmada' },
	suspended: { en: 'suspended', es: 'suspendida' },
	'continuity-lapsed': { en: 'continuity lapsed', es: 'continuidad interrumpida' },
	expired: { en: 'expired', es: 'vencida' },
	withdrawn: { en: 'withdrawn', es: 'retirada' }
};
