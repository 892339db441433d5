import { field, isFieldId, type FieldId } from '$lib/engine';
import { optionsOf } from './answer-text';
import type { Offered } from './read-entries';

/**
 * Applies an Up/Down button pressed without JavaScript (`move=<field>:<option>:up|down`) to the posted order.
 * Undefined where no such button can have been pressed.
 */
export function movedOrder(
	pressed: string,
	form: FormData,
	offered: Offered = {}
): { field: FieldId; options: string[] } | undefined {
	const [id, option, way] = pressed.split(':');
	if (!id || !isFieldId(id) || !option || (way !== 'up' && way !== 'down')) return undefined;
	if (field(id).kind !== 'order') return undefined;
	const options = form.getAll(id).map(String);
	const at = options.indexOf(option);
	if (at < 0 || options.length !== Object.keys(optionsOf(id, offered[id])).length) return undefined;
	const to = Math.min(Math.max(at + (way === 'up' ? -1 : 1), 0), options.length - 1);
	options.splice(to, 0, ...options.splice(at, 1));
	return { field: id, options };
}
