import { randomInt, timingSafeEqual } from 'node:crypto';

// without letters and digits that are mistaken for each other when read off a console
const SIGNS = '23456789ABCDEFGHJKMNPQRSTUVWXYZ';
const LENGTH = 10;

/** A code for the first visitor, about 49 bits, in two groups of five. */
export const createSetupCode = (): string => {
	const signs = Array.from({ length: LENGTH }, () => SIGNS[randomInt(SIGNS.length)]).join('');
	return `${signs.slice(0, LENGTH / 2)}-${signs.slice(LENGTH / 2)}`;
};

const bare = (text: string): Buffer => Buffer.from(text.toUpperCase().replace(/[^0-9A-Z]/g, ''));

/** Whether what was typed is the code; letter case, spaces and dashes do not matter. */
export const isSetupCode = (typed: string, code: string): boolean => {
	const [sent, right] = [bare(typed), bare(code)];
	return sent.length === right.length && timingSafeEqual(sent, right);
};
