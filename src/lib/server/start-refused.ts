/** The program cannot start as things are; the message tells whoever starts it what to do. Shown without a stack. */
export class StartRefused extends Error {
	override name = 'StartRefused';
}
