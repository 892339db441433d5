const en = {
	fault: (line: number) =>
		`Line ${line} of the record does not belong there. Everything before it still counts; nothing can be entered until your lead has put it right.`,
	repaired:
		'The last entry of the record was cut off, most likely when the power went. It had never been confirmed to anybody and was removed. Check whether the last thing you entered is there.'
};

const es = {
	fault: (line: number) =>
		`La línea ${line} del registro no corresponde. Todo lo anterior sigue valiendo; no se puede registrar nada hasta que su responsable lo corrija.`,
	repaired:
		'La última entrada del registro quedó cortada, probablemente al irse la luz. Nunca se le había confirmado a nadie y se quitó. Revise si lo último que registró está ahí.'
} satisfies typeof en;

/** What everyone has to know about the state of the record itself. */
export const recordState = { en, es };
