/** Raised by every change that could grade the same answers differently; stored with each attempt. */
export const ENGINE_VERSION = '1.1.0';
