import { expect, test } from 'vitest';
import { levelled, levelledAll } from './marks';

test('a joiner follows a mark at the end of a word, and nothing else', () => {
    expect(levelled('استرخِ')).toBe('استرخِ\u200C');
    expect(levelled('أبقِ ظهرك مستقيمًا.')).toBe('أبقِ\u200C ظهرك مستقيمًا.');
    expect(levelled('3 ثوانٍ.')).toBe('3 ثوانٍ\u200C.');
    expect(levelled(levelled('شدًّ'))).toBe('شدًّ\u200C');
    expect(levelled('Keep your back straight.')).toBe('Keep your back straight.');
});

test('every text of a view is levelled, and the rest stays as it is', () => {
    const view = { phase: 'استرخِ', seconds: 3, next: null, tally: [{ said: 'قِ' }] };
    expect(levelledAll(view)).toEqual({
        phase: 'استرخِ\u200C',
        seconds: 3,
        next: null,
        tally: [{ said: 'قِ\u200C' }],
    });
});
