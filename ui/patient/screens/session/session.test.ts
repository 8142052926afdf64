import { flushSync, mount, unmount } from 'svelte';
import { afterEach, describe, expect, it, vi } from 'vitest';
import type { Press, StageItemView, StageView } from '../../../generated/bridge';
import { say } from '../../../shared/words.svelte';
import Hurts from '../Hurts.svelte';
import Session from '../Session.svelte';
import Answer from './Answer.svelte';

const item: StageItemView = {
    item: 'raise',
    name: 'Lift your leg',
    side: 'Left',
    position: 'standing',
    position_said: 'Standing',
    set_up: 'Stand up.',
    how: 'Lift it.',
    feel: '',
    faults: 'Keep straight.',
    figure: { item: 'raise', easier: false, working: 'left', both: false },
    dose: 'Lift 10 times.',
    note: null,
    beside_you: false,
    standing: true,
};

function stageOf(changes: Partial<StageView> = {}): StageView {
    return {
        stage: 'running',
        item,
        count: 3,
        phase: 'Go',
        phase_left: null,
        motion: null,
        of_said: 'of 10',
        left_said: '12 minutes left',
        tally: [{ done: 2, of: 10 }],
        tally_said: '2 of 10 done.',
        next: null,
        waits_for: null,
        can_ready: false,
        asks_somebody: false,
        main_press: { press: 'pause' },
        helper: false,
        can_step: false,
        pace: 'prescribed',
        can_pause: true,
        can_go_on: false,
        can_go_on_now: false,
        can_hurts: true,
        can_fewer: true,
        fewer_most: null,
        can_easier: false,
        can_leave: true,
        said: [],
        asks_effort: false,
        as_told: false,
        ...changes,
    };
}

let mounted: Record<string, unknown> | undefined;

afterEach(async () => {
    if (mounted) await unmount(mounted);
    mounted = undefined;
    document.body.replaceChildren();
});

const labelOf = (button: Element) => button.textContent.trim();
const buttons = () => [...document.querySelectorAll('button')];
const main = () => [...document.querySelectorAll('.main')].map(labelOf);

function tap(label: string): void {
    buttons()
        .find((button) => labelOf(button) === label)
        ?.click();
    flushSync();
}

function space(target: EventTarget = window): boolean {
    const event = new KeyboardEvent('keydown', { code: 'Space', bubbles: true, cancelable: true });
    target.dispatchEvent(event);
    return event.defaultPrevented;
}

function shown(changes: Partial<StageView> = {}) {
    const onpress = vi.fn<(press: Press) => void>();
    window.scrollTo = () => undefined;
    const props = { stage: stageOf(changes), problem: null, onpress };
    mounted = mount(Session, { target: document.body, props });
    flushSync();
    return { onpress, pressed: () => onpress.mock.calls.map(([press]) => press) };
}

describe('the pace', () => {
    const paused = { stage: 'paused', can_pause: false, can_go_on: true } as const;
    const radios = () => [...document.querySelectorAll<HTMLInputElement>('input[type=radio]')];

    it('is chosen while paused, among four', () => {
        const { pressed } = shown(paused);
        expect(radios()).toEqual([]);
        tap(say('hearing-pace-choose'));
        expect(radios().map(({ checked }) => checked)).toEqual([true, false, false, false]);
        radios()[3]?.click();
        expect(pressed()).toEqual([{ press: 'pace', pace: 'by-hand' }]);
    });

    it('is chosen from a rest without the rest running out', () => {
        const { pressed } = shown({ stage: 'resting', can_go_on_now: true });
        tap(say('hearing-pace-choose'));
        expect(pressed()).toEqual([{ press: 'pause' }]);
    });

    it('that is slower says what it does to a hold', () => {
        shown({ ...paused, pace: 'slower' });
        tap(say('hearing-pace-choose'));
        expect(document.body.textContent).toContain(say('hearing-pace-hold'));
    });

    it('is not offered while moving', () => {
        shown();
        expect(buttons().map(labelOf)).toEqual([say('session-pause'), say('session-hurts')]);
    });

    it('by hand goes on with the large target, the space bar and a tap anywhere', () => {
        const { pressed } = shown({ pace: 'by-hand', can_step: true, main_press: { press: 'step-on' } });
        expect(main()).toEqual([say('session-step-on')]);
        tap(say('session-step-on'));
        expect(space()).toBe(true);
        document.querySelector<HTMLElement>('.now')?.click();
        expect(pressed()).toEqual([{ press: 'step-on' }, { press: 'step-on' }, { press: 'step-on' }]);
    });

    it('by hand can still be paused', () => {
        const { pressed } = shown({ pace: 'by-hand', can_step: true });
        tap(say('session-pause'));
        expect(pressed()).toEqual([{ press: 'pause' }]);
    });
});

describe('an exercise that nobody does alone', () => {
    const alone = { ...item, beside_you: true };
    const waits = {
        stage: 'prepare',
        item: alone,
        waits_for: 'ready',
        can_ready: true,
        asks_somebody: true,
        main_press: null,
        can_pause: false,
    } as const;

    it('is begun by saying that somebody is there', () => {
        const { pressed } = shown(waits);
        expect(main()).toEqual([say('session-beside-start')]);
        tap(say('session-beside-start'));
        expect(pressed()).toEqual([{ press: 'ready' }]);
    });

    it('is left where nobody is', () => {
        const { pressed } = shown(waits);
        tap(say('session-beside-nobody'));
        expect(pressed()).toEqual([{ press: 'leave' }]);
    });

    it('is not begun by the space bar, but on the button itself', () => {
        const { onpress } = shown(waits);
        expect(space()).toBe(true);
        expect(onpress).not.toHaveBeenCalled();
        const start = buttons().find((button) => labelOf(button) === say('session-beside-start'));
        expect(start && space(start)).toBe(false);
    });

    it('asks while one is still getting ready, too', () => {
        const { pressed } = shown({
            ...waits,
            stage: 'resting',
            waits_for: null,
            can_pause: true,
            main_press: { press: 'pause' },
        });
        expect(main()).toEqual([say('session-beside-start')]);
        space();
        expect(pressed()).toEqual([{ press: 'pause' }]);
    });

    it('asks no second time after the walk', () => {
        shown({ ...waits, stage: 'walking', waits_for: 'steps', asks_somebody: false });
        expect(main()).toEqual([say('session-walked')]);
    });

    it('is the only one that asks', () => {
        const { pressed } = shown({ ...waits, item, asks_somebody: false, main_press: { press: 'ready' } });
        expect(main()).toEqual([say('session-ready')]);
        space();
        expect(pressed()).toEqual([{ press: 'ready' }]);
    });
});

describe('what a helper sees', () => {
    function hurts(helper: boolean) {
        const onseen = vi.fn<(seen: string) => void>();
        const props = { helper, onseen, onanswer: () => undefined, onunwell: () => undefined };
        window.scrollTo = () => undefined;
        mounted = mount(Hurts, { target: document.body, props });
        flushSync();
        return onseen;
    }

    it('is said in place of a number', () => {
        const onseen = hurts(true);
        expect(document.querySelectorAll('.numbers button').length).toBe(11);
        for (const label of ['hurts-seen-none', 'hurts-seen-some', 'hurts-seen-much']) tap(say(label));
        expect(onseen.mock.calls.flat()).toEqual(['none', 'some', 'much']);
    });

    it('is not asked of the patient', () => {
        hurts(false);
        expect(document.body.textContent).not.toContain(say('hurts-seen'));
    });
});

describe('an answer that says to ring', () => {
    it('offers the clinic by day and out of hours', () => {
        const onring = vi.fn<(which: string) => void>();
        const pain = {
            answer: 'stop-exercise' as const,
            said: 'Leave this exercise.',
            nobody_sees: 'Ring them.',
            stepped: null,
        };
        const props = { pain, ring: 'Ring us: 555-0164', night: '555-0165', onring, ongoon: () => undefined };
        window.scrollTo = () => undefined;
        mounted = mount(Answer, { target: document.body, props });
        flushSync();
        tap('Ring us: 555-0164');
        const night = [...document.querySelectorAll('button')].find((one) =>
            one.textContent.includes('0165'),
        );
        night!.click();
        expect(onring.mock.calls.flat()).toEqual(['clinic', 'night']);
    });
});
