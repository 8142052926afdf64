import { flushSync, mount, unmount } from 'svelte';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import type { BeforeView, ContactsView, StartView } from '../../generated/bridge';
import { say } from '../../shared/words.svelte';
import type { Change, PainBefore } from '../host';
import Before from './Before.svelte';
import Problem from './Problem.svelte';
import Settings from './Settings.svelte';

let mounted: Record<string, unknown> | undefined;

beforeEach(() => {
    window.scrollTo = () => undefined;
});

afterEach(async () => {
    if (mounted) await unmount(mounted);
    mounted = undefined;
    document.body.replaceChildren();
});

const labelOf = (button: Element) => button.textContent.replace(/\s+/g, ' ').trim();
const buttons = () => [...document.querySelectorAll('button')];
const offers = (label: string) => buttons().some((button) => labelOf(button) === label);

function tap(label: string): void {
    buttons()
        .find((button) => labelOf(button) === label)
        ?.click();
    flushSync();
}

describe('pain at rest', () => {
    function asked(helper: boolean, changes: Partial<BeforeView> = {}) {
        const onanswer = vi.fn<(signs: string[], pain: PainBefore) => void>();
        const onhelper = vi.fn<(helper: boolean) => void>();
        const before: BeforeView = {
            confirm_date: null,
            questions: 'signs-and-pain',
            morning: false,
            signs: [],
            can_go_on: false,
            coming: [],
            minutes: 5,
            have_ready: [],
            beside_you: false,
            ...changes,
        };
        const props = {
            before,
            helper,
            answered: false,
            noted: null,
            morning: null,
            problem: null,
            onhelper,
            ondate: () => undefined,
            onanswer,
            onbegin: () => undefined,
            onback: () => undefined,
        };
        mounted = mount(Before, { target: document.body, props });
        flushSync();
        tap(say('before-nothing'));
        return { onanswer, onhelper };
    }

    it('can be answered by a helper with what they see', () => {
        const { onanswer } = asked(true);
        expect(offers(say('before-pain-go-on'))).toBe(false);
        tap(say('hurts-seen-some'));
        tap(say('before-pain-go-on'));
        expect(onanswer.mock.calls).toEqual([[[], { morning: null, now: null, seen: 'some' }]]);
    });

    it('is a number or what is seen, and not both', () => {
        const { onanswer } = asked(true);
        tap(say('hurts-seen-much'));
        tap('4');
        tap(say('before-pain-go-on'));
        expect(onanswer.mock.calls).toEqual([[[], { morning: null, now: 4, seen: null }]]);
    });

    it('is a number for the patient, who can still say that somebody helps', () => {
        const { onhelper } = asked(false);
        expect(document.body.textContent).not.toContain(say('hurts-seen'));
        document.querySelector<HTMLInputElement>('input[type=checkbox]')?.click();
        expect(onhelper).toHaveBeenCalledWith(true);
    });

    it('does not wait for a number of the morning that a helper cannot know', () => {
        const { onanswer } = asked(true, { morning: true });
        tap(say('after-skip'));
        tap(say('hurts-seen-none'));
        tap(say('before-pain-go-on'));
        expect(onanswer.mock.calls).toEqual([[[], { morning: null, now: null, seen: 'none' }]]);
    });
});

describe('a record that is shut', () => {
    const problem = {
        code: 'held',
        happened: 'It is open elsewhere.',
        to_do: 'Close it.',
        reasons: [],
        ring: null,
    };
    const contacts: ContactsView = {
        clinic: 'Hillside',
        phone: '555 0100',
        out_of_hours_phone: '555 0101',
        emergency_phone: '112',
        emergency_advice: 'Say that you had an operation.',
        signs: [
            { sign: 'chest', tier: 'emergency', text: 'Chest pain' },
            { sign: 'calf', tier: 'ring-today', text: 'A hot calf' },
            { sign: 'tired', tier: 'note', text: 'Very tired' },
        ],
        cautions: ['Nobody sees this.'],
    };

    function page(known: ContactsView | null) {
        const onring = vi.fn<(which: string) => void>();
        const props = { problem, contacts: known, onring, onretry: () => undefined };
        mounted = mount(Problem, { target: document.body, props });
        flushSync();
        return onring;
    }

    it('shows every warning sign under what it asks for', () => {
        page(contacts);
        const groups = [...document.querySelectorAll('section:has(li)')].map((section) => [
            labelOf(section.querySelector('h2') ?? section),
            [...section.querySelectorAll('li')].map(labelOf),
        ]);
        expect(groups).toEqual([
            [say('signs-emergency'), ['Chest pain']],
            [say('signs-ring-today'), ['A hot calf']],
            [say('signs-note'), ['Very tired']],
        ]);
    });

    it('has the emergency, the clinic and the evenings to ring', () => {
        const onring = page(contacts);
        for (const button of document.querySelectorAll<HTMLElement>('.ring')) button.click();
        expect(onring.mock.calls.flat()).toEqual(['emergency', 'clinic', 'night']);
        expect(offers(`${say('contacts-ring-night')} 555 0101`)).toBe(true);
    });

    it('names nobody it does not know', () => {
        page(null);
        expect(document.querySelectorAll('.ring').length).toBe(0);
    });
});

describe('the settings', () => {
    it('say how the count goes, and change it', () => {
        const onset = vi.fn<(change: Change) => void>();
        const start = {
            settings: {
                language: 'en',
                text: 100,
                theme: 'light',
                awake_from_min: 480,
                awake_to_min: 1260,
                awake_from: '08:00',
                awake_to: '21:00',
                hearing: { speech: true, tones: true, rate: 0, pitch: 0 },
                pace: 'slowest',
            },
            languages: [],
            reminding: null,
        } as unknown as StartView;
        const props = {
            start,
            problem: null,
            onset,
            ontry: () => Promise.resolve(''),
            onreminders: () => undefined,
            onback: () => undefined,
        };
        mounted = mount(Settings, { target: document.body, props });
        flushSync();
        tap(say('hearing-pace', { pace: 'slowest' }));
        expect(document.body.textContent).toContain(say('hearing-pace-hold'));
        document.querySelectorAll<HTMLInputElement>('input[type=radio]')[0]?.click();
        expect(onset).toHaveBeenCalledWith({ pace: 'prescribed' });
    });
});
