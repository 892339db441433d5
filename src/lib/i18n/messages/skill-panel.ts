const en = {
	finish: {
		bare: 'Bare',
		prepared: 'Prepared',
		coated: 'Coated',
		cured: 'Cured',
		signed: 'Signed'
	},
	finishMeans: {
		bare: 'lessons still open',
		prepared: 'lessons done',
		coated: 'proven in drills',
		cured: 'practical accepted',
		signed: 'signed off'
	},
	standing: {
		signed: 'Signed off',
		lapsed: 'Continuity lapsed',
		suspended: 'Suspended',
		withdrawn: 'Withdrawn',
		expired: 'Expired',
		'refresher-due': 'Refresher due',
		'in-training': 'In training again',
		eligible: 'Ready to be signed'
	}
};

const es = {
	finish: {
		bare: 'Metal desnudo',
		prepared: 'Preparado',
		coated: 'Recubierto',
		cured: 'Curado',
		signed: 'Firmado'
	},
	finishMeans: {
		bare: 'faltan lecciones',
		prepared: 'lecciones hechas',
		coated: 'demostrado en ejercicios',
		cured: 'práctica aceptada',
		signed: 'autorizado con firma'
	},
	standing: {
		signed: 'Autorizado',
		lapsed: 'Continuidad vencida',
		suspended: 'Suspendido',
		withdrawn: 'Retirado',
		expired: 'Vencido',
		'refresher-due': 'Repaso pendiente',
		'in-training': 'Otra vez en formación',
		eligible: 'Listo para la firma'
	}
} satisfies typeof en;

/** How far a skill panel is finished, and what its strip says. */
export const skillPanel = { en, es };
