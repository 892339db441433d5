const en = {
	code: {
		'journal-broken':
			'The record has a line that does not belong. Nothing can be entered until your lead has put it right.',
		malformed: 'Something in the form is not as it must be. Check what was entered.',
		'id-taken': 'This was entered already. Load the page again and look before you repeat it.',
		backdated: 'The day is in the past. What is entered here holds from today on, or from when it happened.',
		'in-the-future': 'That moment has not come yet.',
		'not-allowed': 'Your part in the shop does not include this act.',
		'unknown-person': 'There is no such person in the record.',
		'person-erased': 'The data of this person was erased; nothing more can be entered about them.',
		'own-record': 'Nobody decides, records or signs anything about their own work. Ask someone else.',
		'last-lead': 'The shop would be left without a lead. Make somebody else a lead first.',
		'already-founded': 'The shop was set up already.',
		'unknown-time-zone': 'This computer does not know that time zone.',
		'unknown-competency': 'There is no such competency.',
		'wrong-revision':
			'Somebody else saved a change in the meantime. Load the page again; theirs is not lost.',
		unchanged: 'Nothing in it is different from what is in force.',
		'ticket-seen-before': 'This ticket was met before. Ask for another one.',
		'unknown-run': 'There is no such proving run.',
		'other-persons-run': 'This belongs to another person.',
		'run-open': 'A proving run in this competency is open already. Finish that one.',
		'run-concluded': 'This proving run has its verdict; nothing can be added to it.',
		'already-passed': 'This was proven already. There is nothing to repeat.',
		'retest-too-early': (date: string) => `It is too early to try again. The next try may begin on ${date}.`,
		'retests-used-up': (date: string) =>
			`All tries are used up. From ${date} a lead can admit the person to training again.`,
		'lessons-not-redone': 'First do the lessons of this competency again, then try anew.',
		'safety-stopped':
			'The safety gate is shut. Proving goes on when the safety lessons were done again, or a lead has admitted the person anew.',
		'drill-open': 'A proving drill is open. Hand it in or give it up first.',
		'unknown-drill': 'There is no such drill.',
		'drill-settled': 'This drill was handed in or given up already.',
		'drill-lapsed': 'This drill was open longer than announced and counts as wrong.',
		'no-refresher-due': 'No refresher is due here.',
		'rules-not-covered': 'This ticket does not hold the rules of the refresher.',
		'not-witnessed': 'Only work that you watched yourself can be entered.',
		'gate-not-met': (gates: string) =>
			`It cannot be accepted while a gate was not met or not seen: ${gates}.`,
		'not-signed-for-it': (why: string) => `You cannot act as signer in this competency: ${why}.`,
		'parts-missing': (parts: string) => `Not everything is there yet: ${parts}.`,
		'unknown-sign-off': 'There is no such sign-off.',
		'wrong-state': 'The state of this competency does not allow this act.',
		'reason-missing': (what: string) =>
			`Give a reason that somebody else can follow later for passing over this: ${what}.`,
		'no-jobs': 'Name one job or more that was done in this competency.',
		'practical-missing': 'The gap is so long that a new practical is needed first.',
		'job-out-of-period': (jobs: string) => `Not within the period to be confirmed: ${jobs}.`,
		'same-signer': 'You signed this yourself. The second person has to be somebody else.',
		'signed-already': 'You have added your signature to this already.',
		'unknown-incident': 'There is no such incident.',
		'incident-decided': 'This incident was decided already.',
		'incident-undecided': 'This incident has not been decided yet.',
		'incident-closed': 'This incident is closed.',
		'refresher-open': 'A refresher is due here. It comes first.',
		'defect-came-back': 'The defect came back, so the incident stays open.'
	},
	detail: {
		lessons: 'lessons still to do',
		verdict: 'not yet proven in drills',
		'safety-gate': 'safety gate not passed',
		practical: 'no accepted practical',
		'signer-not-signed': 'you are not signed for it yourself',
		'signer-authorisation-expired': 'your own sign-off has lapsed or expired',
		'signer-suspended': 'your own sign-off is suspended',
		'conflict-declaration': 'the declaration is missing',
		'safety-misses-since-pass': 'safety stops in drills after the safety gate was passed',
		'practical-reading': 'a practical reading outside its limits that was accepted',
		'film-mean': 'mean of the film',
		'film-spots': 'a film spot'
	}
};

const es = {
	code: {
		'journal-broken':
			'El registro tiene una línea que no corresponde. No se puede anotar nada hasta que su responsable lo corrija.',
		malformed: 'Algo en el formulario no es como debe ser. Revise lo que se escribió.',
		'id-taken': 'Esto ya se anotó. Cargue la página otra vez y mire antes de repetirlo.',
		backdated: 'El día ya pasó. Lo que se anota aquí vale desde hoy, o desde que ocurrió.',
		'in-the-future': 'Ese momento todavía no llega.',
		'not-allowed': 'Su función en el taller no incluye este acto.',
		'unknown-person': 'Esa persona no está en el registro.',
		'person-erased': 'Los datos de esta persona se borraron; ya no se puede anotar nada sobre ella.',
		'own-record': 'Nadie decide, registra ni firma algo sobre su propio trabajo. Pídalo a otra persona.',
		'last-lead': 'El taller se quedaría sin responsable. Nombre primero a otro.',
		'already-founded': 'El taller ya está preparado.',
		'unknown-time-zone': 'Esta computadora no conoce esa zona horaria.',
		'unknown-competency': 'Esa competencia no existe.',
		'wrong-revision':
			'Otra persona guardó un cambio mientras tanto. Cargue la página otra vez; no se pierde.',
		unchanged: 'No hay nada distinto de lo vigente.',
		'ticket-seen-before': 'Esta orden ya se vio antes. Pida otra.',
		'unknown-run': 'Esa prueba no existe.',
		'other-persons-run': 'Esto es de otra persona.',
		'run-open': 'Ya hay una prueba abierta en esta competencia. Termine esa.',
		'run-concluded': 'Esta prueba ya tiene resultado; no se le puede agregar nada.',
		'already-passed': 'Esto ya quedó demostrado. No hay nada que repetir.',
		'retest-too-early': (date: string) =>
			`Es pronto para intentarlo otra vez. Puede empezar de nuevo el ${date}.`,
		'retests-used-up': (date: string) =>
			`Se usaron todos los intentos. Desde el ${date} un responsable puede admitir de nuevo a la persona.`,
		'lessons-not-redone': 'Primero repita las lecciones de esta competencia; luego intente de nuevo.',
		'safety-stopped':
			'El filtro de seguridad está cerrado. Las comprobaciones siguen cuando se repitan las lecciones de seguridad, o cuando un responsable admita de nuevo a la persona.',
		'drill-open': 'Hay un ejercicio de comprobación abierto. Entréguelo o abandónelo primero.',
		'unknown-drill': 'Ese ejercicio no existe.',
		'drill-settled': 'Este ejercicio ya se entregó o se abandonó.',
		'drill-lapsed': 'Este ejercicio estuvo abierto más de lo anunciado y cuenta como incorrecto.',
		'no-refresher-due': 'Aquí no hay repaso pendiente.',
		'rules-not-covered': 'Esta orden no contiene las reglas del repaso.',
		'not-witnessed': 'Solo se anota el trabajo que usted mismo vio.',
		'gate-not-met': (gates: string) =>
			`No se puede aceptar mientras un control no se cumplió o no se vio: ${gates}.`,
		'not-signed-for-it': (why: string) => `Usted no puede firmar en esta competencia: ${why}.`,
		'parts-missing': (parts: string) => `Todavía falta algo: ${parts}.`,
		'unknown-sign-off': 'Esa autorización no existe.',
		'wrong-state': 'El estado de esta competencia no permite este acto.',
		'reason-missing': (what: string) =>
			`Dé un motivo que otra persona pueda entender después para pasar esto por alto: ${what}.`,
		'no-jobs': 'Nombre por lo menos un trabajo hecho en esta competencia.',
		'practical-missing':
			'La interrupción es tan larga que primero hace falta una práctica supervisada nueva.',
		'job-out-of-period': (jobs: string) => `Fuera del período que se confirma: ${jobs}.`,
		'same-signer': 'Esto lo firmó usted. La segunda persona tiene que ser otra.',
		'signed-already': 'Usted ya agregó su firma aquí.',
		'unknown-incident': 'Ese incidente no existe.',
		'incident-decided': 'Este incidente ya se decidió.',
		'incident-undecided': 'Este incidente todavía no se decide.',
		'incident-closed': 'Este incidente está cerrado.',
		'refresher-open': 'Aquí hay un repaso pendiente. Eso va primero.',
		'defect-came-back': 'El defecto volvió, así que el incidente sigue abierto.'
	},
	detail: {
		lessons: 'faltan lecciones',
		verdict: 'todavía no está demostrado en ejercicios',
		'safety-gate': 'el filtro de seguridad no se ha superado',
		practical: 'no hay práctica supervisada aceptada',
		'signer-not-signed': 'usted mismo no está autorizado en ella',
		'signer-authorisation-expired': 'su propia autorización venció o se interrumpió',
		'signer-suspended': 'su propia autorización está suspendida',
		'conflict-declaration': 'falta la declaración',
		'safety-misses-since-pass': 'paros de seguridad en ejercicios después de superar el filtro',
		'practical-reading': 'una lectura de la práctica fuera de sus límites que se aceptó',
		'film-mean': 'promedio de la película',
		'film-spots': 'un sitio de la película'
	}
} satisfies typeof en;

/** Why an act was not done, by the record's own codes, and the words for what completes a reason. */
export const refusals = { en, es };
