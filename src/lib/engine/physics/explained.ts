/**
 * A refusal with the reason why the range ends there; anything but a RangeError comes back as it was. For the few limits
 * where the numbers alone would look arbitrary.
 */
export const explained = (refusal: unknown, reason: string): unknown =>
	refusal instanceof RangeError
		? new RangeError(`${refusal.message}: ${reason}`, { cause: refusal })
		: refusal;
