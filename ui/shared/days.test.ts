import { afterEach, describe, expect, it } from 'vitest';
import { daysBetween, daysLater, sayDay } from './days';
import { listed, say, speak } from './words.svelte';

afterEach(() => speak('en'));

describe('a day', () => {
    it('comes after the last of a month and of a year', () => {
        expect(daysLater('2028-02-28', 1)).toBe('2028-02-29');
        expect(daysLater('2026-12-31', 1)).toBe('2027-01-01');
        expect(daysLater('2026-03-01', -1)).toBe('2026-02-28');
        expect(daysBetween('2026-03-28', '2026-03-30')).toBe(2);
    });

    it('is said as the host says it', () => {
        const said = ['en', 'es', 'de', 'ar'].map((lang) => {
            speak(lang);
            return sayDay('2026-05-25');
        });
        expect(said).toEqual(['Monday 25 May', 'lunes 25 de mayo', 'Montag, 25. Mai', 'الاثنين 25 مايو']);
    });
});

describe('several things', () => {
    it('are said as a list', () => {
        expect([[], ['a'], ['a', 'b'], ['a', 'b', 'c']].map(listed)).toEqual([
            '',
            'a',
            'a and b',
            'a, b and c',
        ]);
    });
});

describe('a number', () => {
    it('has the same digits in every language', () => {
        speak('ar');
        expect(say('first-leaf', { n: 12, of: 30 })).toContain('12');
        expect(say('first-leaf', { n: 12, of: 30 })).toContain('30');
    });
});
