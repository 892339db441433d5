const en = {
	signal: { danger: 'DANGER', warning: 'WARNING', caution: 'CAUTION', notice: 'NOTICE' },
	limitsTitle: 'What this tool does not do',
	limits: [
		'It teaches and keeps the record. It does not choose your protective equipment, clear anybody medically, fit-test a respirator or license any work.',
		'For that, these come first: law and local code, the safety data sheet, and your employer’s hazard assessment.',
		'Medical clearance and fit test before any respirator. Licensed people for electrical, gas and fire-protection work.'
	]
};

const es = {
	signal: { danger: 'PELIGRO', warning: 'ADVERTENCIA', caution: 'ATENCIÓN', notice: 'AVISO' },
	limitsTitle: 'Lo que esta herramienta no hace',
	limits: [
		'Enseña y lleva el registro. No elige su equipo de protección, no da aptitud médica a nadie, no hace la prueba de ajuste del respirador ni autoriza legalmente ningún trabajo.',
		'Para eso mandan primero la ley y las normas locales, la hoja de datos de seguridad y la evaluación de riesgos de su empleador.',
		'Aptitud médica y prueba de ajuste antes de usar cualquier respirador. Personal con licencia para trabajos eléctricos, de gas y contra incendios.'
	]
} satisfies typeof en;

export const safety = { en, es };
