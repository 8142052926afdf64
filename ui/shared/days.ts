/** Days that a person picks. What depends on the plan or on the time is said by the host. */
import { say, spoken } from './words.svelte';

/** A date, `YYYY-MM-DD`, so many days later. */
export function daysLater(date: string, days: number): string {
    const moved = new Date(`${date}T00:00:00Z`);
    moved.setUTCDate(moved.getUTCDate() + days);
    return moved.toISOString().slice(0, 10);
}

/** How many days lie between two dates. */
export function daysBetween(from: string, to: string): number {
    return Math.round((Date.parse(to) - Date.parse(from)) / 86_400_000);
}

/** The regions whose names of months and days the host says too. */
const regions: Record<string, string> = { ar: 'ar-EG', de: 'de-DE', en: 'en-GB', es: 'es-ES' };

/** A date as people say it, in the host's words: "Monday 25 May". */
export function sayDay(date: string): string {
    const moment = new Date(`${date}T00:00:00Z`);
    const part = (options: Intl.DateTimeFormatOptions) =>
        new Intl.DateTimeFormat(regions[spoken()] ?? spoken(), { ...options, timeZone: 'UTC' }).format(
            moment,
        );
    return say('date-day', {
        weekday: part({ weekday: 'long' }),
        day: String(moment.getUTCDate()),
        month: part({ month: 'long' }),
    });
}
