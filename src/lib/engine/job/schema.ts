import * as v from 'valibot';
import type { Dimension, Si } from '../units/dimension';

const numberIn = <D extends Dimension>(low: number, high: number) =>
	v.pipe(
		v.number(),
		v.finite(),
		v.minValue(low),
		v.maxValue(high),
		v.transform((value) => value as Si<D>)
	);

/** Bounds are SI and inclusive; they say what can exist, not what is right. */
export const temperatureSchema = (low: number, high: number) => numberIn<'temperature'>(low, high);
export const lengthSchema = (low: number, high: number) => numberIn<'length'>(low, high);
export const massSchema = (low: number, high: number) => numberIn<'mass'>(low, high);
export const durationSchema = (low: number, high: number) => numberIn<'duration'>(low, high);
export const pressureSchema = (low: number, high: number) => numberIn<'pressure'>(low, high);
export const volumeSchema = (low: number, high: number) => numberIn<'volume'>(low, high);
export const speedSchema = (low: number, high: number) => numberIn<'speed'>(low, high);
export const flowSchema = (low: number, high: number) => numberIn<'flow'>(low, high);
export const fractionSchema = (low: number, high: number) => numberIn<'fraction'>(low, high);

export const dateSchema = v.pipe(v.string(), v.isoDate());

/** One of the keys of a table. */
export const keyOf = <T extends Record<string, unknown>>(table: T) =>
	v.picklist(Object.keys(table) as (keyof T & string)[]);
