import { expect, it } from 'vitest';
import { localInstant } from '$lib/server/standing/local-instant';

it.each([
	['2026-07-01', '14:30', 'America/Denver', '2026-07-01T20:30:00.000Z'],
	['2026-01-15', '7:05', 'America/Denver', '2026-01-15T14:05:00.000Z'],
	['2026-01-15', '00:00', 'Pacific/Kiritimati', '2026-01-14T10:00:00.000Z'],
	['2026-01-15', '23:59', 'Pacific/Pago_Pago', '2026-01-16T10:59:00.000Z'],
	['2026-01-15', '12:15', 'Asia/Kathmandu', '2026-01-15T06:30:00.000Z'],
	['2026-01-15', '12:00', 'UTC', '2026-01-15T12:00:00.000Z']
])('%s %s in %s', (day, time, zone, instant) => expect(localInstant(day, time, zone)).toBe(instant));

it('takes the first of two when clocks are set back', () =>
	expect(localInstant('2026-11-01', '01:30', 'America/Denver')).toBe('2026-11-01T07:30:00.000Z'));

it('knows no moment for a time that was skipped', () =>
	expect(localInstant('2026-03-08', '02:30', 'America/Denver')).toBeNull());

it.each(['', '25:00', '12:60', '12', 'noon', '-1:00', '12:00:00'])('takes no time from "%s"', (time) =>
	expect(localInstant('2026-01-15', time, 'UTC')).toBeNull()
);
