/** The shop's words that several screens share; a screen takes them from here so that a thing has one name. */
const en = {
	station: {
		intake: 'Intake',
		preparation: 'Preparation',
		mixing: 'Mixing',
		spraying: 'Spraying',
		curing: 'Curing',
		inspection: 'Inspection',
		safety: 'Safety'
	},
	role: { trainee: 'trainee', supervisor: 'supervisor', lead: 'lead', auditor: 'auditor' },
	severity: { 'safety-stop': 'Safety stop', quality: 'Quality', cost: 'Cost' },
	zone: { green: 'In the window', amber: 'Amber: just outside', red: 'Outside the window' },
	jobTicket: 'Job ticket',
	dataSheet: 'Data sheet',
	shopValues: 'Shop values',
	setUpSheet: 'Set-up sheet',
	skillPanel: 'Skill panel',
	practical: 'Practical',
	signOff: 'Sign-off',
	refresher: 'Refresher',
	findings: 'Findings',
	practiceDrill: 'Practice drill',
	provingDrill: 'Proving drill'
};

const es = {
	station: {
		intake: 'Recepción',
		preparation: 'Preparación',
		mixing: 'Mezcla',
		spraying: 'Aplicación',
		curing: 'Curado',
		inspection: 'Inspección',
		safety: 'Seguridad'
	},
	role: { trainee: 'aprendiz', supervisor: 'supervisor', lead: 'responsable', auditor: 'auditor' },
	severity: { 'safety-stop': 'Paro de seguridad', quality: 'Calidad', cost: 'Costo' },
	zone: { green: 'Dentro de la ventana', amber: 'Ámbar: apenas fuera', red: 'Fuera de la ventana' },
	jobTicket: 'Orden de trabajo',
	dataSheet: 'Hoja técnica',
	shopValues: 'Valores del taller',
	setUpSheet: 'Hoja de ajuste',
	skillPanel: 'Panel de habilidad',
	practical: 'Práctica supervisada',
	signOff: 'Autorización',
	refresher: 'Repaso',
	findings: 'Hallazgos',
	practiceDrill: 'Ejercicio de práctica',
	provingDrill: 'Ejercicio de comprobación'
} satisfies typeof en;

export const terms = { en, es };
