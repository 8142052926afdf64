import { describe, expect, it } from 'vitest';
import { fillBlanks, normaliseCode, splitCode } from './code';

describe('a code', () => {
    it.each([
        ['km7q-2xpd-9wrt', 'KM7Q2XPD9WRT'],
        [' KM7Q 2XPD 9WRT ', 'KM7Q2XPD9WRT'],
        ['KM7Q–2XPD·9WRT', 'KM7Q2XPD9WRT'],
        ['KM7Q2XPD9WRTEXTRA', 'KM7Q2XPD9WRT'],
        ['', ''],
    ])('%j is compared as %j', (typed, code) => {
        expect(normaliseCode(typed)).toBe(code);
    });

    it('stands in three blanks of four', () => {
        expect(splitCode('KM7Q2X')).toEqual(['KM7Q', '2X', '']);
    });

    it('fills every blank wherever it is pasted whole', () => {
        expect(fillBlanks(['', 'AB', ''], 1, 'km7q-2xpd-9wrt')).toEqual(['KM7Q', '2XPD', '9WRT']);
    });

    it('flows on into the next blank and leaves the earlier ones alone', () => {
        expect(fillBlanks(['KM7Q', '', ''], 1, '2xpd9w')).toEqual(['KM7Q', '2XPD', '9W']);
    });

    it('leaves the later blanks alone while one is corrected', () => {
        expect(fillBlanks(['KM7Q', '2XPD', '9WRT'], 0, 'KM7')).toEqual(['KM7', '2XPD', '9WRT']);
    });
});
