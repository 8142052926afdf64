import { flushSync, mount, unmount } from 'svelte';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import type {
    DayView,
    ProblemView,
    RemindingView,
    SettingsView,
    StartView,
    StopView,
} from '../generated/bridge';
import { say } from '../shared/words.svelte';
import { Flow, type Host } from './flow.svelte';
import { type RemindingChange, Refused } from './host';
import Reminders from './screens/Reminders.svelte';

const problem: ProblemView = {
    code: 'x',
    happened: 'It is full.',
    to_do: 'Make room.',
    reasons: [],
    ring: null,
};
const settings: SettingsView = {
    language: 'en',
    text: 100,
    theme: 'light',
    awake_from_min: 420,
    awake_to_min: 1320,
    awake_from: '07:00',
    awake_to: '22:00',
    hearing: { speech: true, tones: true, rate: -20, pitch: 0 },
    pace: 'prescribed',
};
const whyNot = { day: '2026-05-24', said: 'You said not today. Why?' };
const dayOf = (changes: Partial<DayView> = {}) =>
    ({
        date: '2026-05-25',
        due: [],
        not_yet: [],
        stop: null,
        can_go_on: false,
        why_not: null,
        ...changes,
    }) as unknown as DayView;
const startOf = (changes: Partial<StartView> = {}): StartView => ({
    settings,
    languages: [{ lang: 'en', name: 'English', rtl: false }],
    has_plan: true,
    first_time: false,
    problem: null,
    contacts: null,
    day: dayOf(),
    reminding: null,
    starts_at_login: true,
    ...changes,
});

/** Lets everything that waits for an answer have it. */
const settled = () => new Promise((resolve) => setTimeout(resolve));

describe('what was pressed on a reminder', () => {
    let answers: Record<string, () => unknown>;
    let asked: unknown[][];
    let signal: () => void;
    let flow: Flow;

    beforeEach(() => {
        asked = [];
        answers = {
            start: () => startOf(),
            day: () => dayOf({ can_go_on: true }),
            before: () => ({ questions: 'one-tap' }),
        };
        const host = new Proxy({} as Host, {
            get:
                (_, name: string) =>
                (...args: unknown[]): Promise<unknown> => {
                    asked.push([name, ...args]);
                    if (name === 'watchFiles') signal = args[0] as typeof signal;
                    return Promise.resolve().then(() => answers[name]?.() ?? null);
                },
        });
        flow = new Flow(host);
    });

    async function pressStart(): Promise<void> {
        let wanted = true;
        answers['takeBegin'] = () => {
            const taken = wanted;
            wanted = false;
            return taken;
        };
        signal();
        await settled();
    }

    async function opened(): Promise<void> {
        await flow.open();
        await flow.follow();
    }

    it('"start" leads to the questions, from the day as it is now', async () => {
        await opened();
        await flow.settings();
        await pressStart();
        expect(flow.page).toEqual({ at: 'before', only: null, goesOn: true });
        expect(asked.at(-2)).toEqual(['before', null, true]);
        // A file that waits behind it is still asked for.
        expect(asked.at(-1)).toEqual(['nextFile']);
    });

    it('"start" that opened the program leads there too', async () => {
        await flow.open();
        answers['takeBegin'] = () => true;
        await flow.follow();
        expect(flow.page.at).toBe('before');
    });

    it('"start" with nothing to begin says why on the day', async () => {
        await opened();
        answers['before'] = () => {
            throw new Refused(problem);
        };
        await pressStart();
        expect([flow.page.at, flow.notice]).toEqual(['day', 'It is full. Make room.']);
    });

    it('"start" breaks nothing off, and is not kept for later', async () => {
        const stop = { said: 'Stop.' } as StopView;
        await opened();
        for (const at of ['session', 'test', 'first', 'receive'] as const) {
            flow.go({ at });
            await pressStart();
            expect(flow.page.at).toBe(at);
            // The next call has nothing of it.
            await flow.backToDay();
            signal();
            await settled();
            expect(flow.page.at).toBe('day');
        }
        flow.go({ at: 'test-before', test: 'rise' });
        await pressStart();
        expect(flow.page.at).toBe('test-before');
        answers['day'] = () => dayOf({ stop });
        await flow.backToDay();
        await pressStart();
        expect([flow.page.at, flow.stop]).toEqual(['day', stop]);
        expect(asked.filter(([name]) => name === 'before')).toEqual([]);
    });

    it('"not today" is answered for once, and thanked for', async () => {
        answers['start'] = () => startOf({ day: dayOf({ why_not: whyNot }) });
        await opened();
        answers['notTodayBecause'] = () => ({ said: 'Thank you.', against: false });
        await Promise.all([flow.reminders.whyNot('tired'), flow.reminders.whyNot('tired')]);
        expect(asked.filter(([name]) => name === 'notTodayBecause')).toEqual([
            ['notTodayBecause', '2026-05-24', 'tired'],
        ]);
        expect([flow.day?.why_not, flow.notice]).toEqual([null, 'Thank you.']);
    });

    it('one that is sent says what came of it, or what went wrong, where it was asked for', async () => {
        await opened();
        answers['sendOne'] = () => ({ said: 'It is out.', against: false });
        expect(await flow.reminders.sendOne()).toBe('It is out.');
        answers['saveCalendar'] = () => {
            throw new Refused(problem);
        };
        expect(await flow.reminders.saveCalendar()).toBe('It is full.\nMake room.');
        flow.problem = problem;
        answers['saveCalendar'] = () => null;
        expect([await flow.reminders.saveCalendar(), flow.problem]).toEqual(['', problem]);
    });

    it('a break is said on the day; one that is refused stays on its page', async () => {
        await opened();
        flow.reminders.open();
        answers['declareBreak'] = () => {
            throw new Refused(problem);
        };
        await flow.reminders.takeBreak('2026-05-25', '2026-05-27', 'own', '');
        expect([flow.page.at, flow.problem]).toEqual(['reminders', problem]);
        answers['declareBreak'] = () => ({ said: 'A break.', against: false });
        await flow.reminders.takeBreak('2026-05-25', '2026-05-27', 'own', '');
        expect([flow.page.at, flow.notice]).toEqual(['day', 'A break.']);
        answers['endBreak'] = () => ({ said: 'It is over.', against: false });
        await flow.reminders.endBreak();
        expect([flow.page.at, flow.notice]).toEqual(['day', 'It is over.']);
    });
});

describe('the page of reminders', () => {
    let mounted: Record<string, unknown> | undefined;
    const onset = vi.fn<(change: RemindingChange) => void>();
    const onbreak = vi.fn();
    const onbreakend = vi.fn();
    const names = ['Monday', 'Tuesday', 'Wednesday', 'Thursday', 'Friday', 'Saturday', 'Sunday'] as const;
    const reminding: RemindingView = {
        on: true,
        today_said: '09:00 and 14:00',
        own_times: false,
        times_min: [540, 840],
        times: ['09:00', '14:00'],
        asks_most: 2,
        days_off: names.map((name) => ({
            day: name.toLowerCase() as Lowercase<typeof name>,
            name,
            off: name === 'Sunday',
        })),
        quiet_asleep: true,
        quiet_from_min: 1320,
        quiet_to_min: 420,
        quiet_from: '22:00',
        quiet_to: '07:00',
        sound: true,
        shows: 'little',
        break_said: null,
    };

    function show(changes: Partial<RemindingView> = {}, onsend = () => Promise.resolve('')): void {
        const props = {
            reminding: { ...reminding, ...changes },
            settings,
            startsAtLogin: null,
            today: '2026-05-25',
            problem: null,
            onset,
            onsend,
            onlogin: vi.fn(),
            oncalendar: () => Promise.resolve(''),
            onbreak,
            onbreakend,
            onback: vi.fn(),
        };
        mounted = mount(Reminders, { target: document.body, props });
        flushSync();
    }

    function press(words: string, nth = 0): void {
        const buttons = [...document.querySelectorAll('button')];
        const found = buttons.filter(
            (button) => button.innerText?.trim() === words || textOf(button) === words,
        );
        if (!found[nth]) throw new Error(`no button says ${words}: ${buttons.map(textOf).join(', ')}`);
        found[nth].click();
        flushSync();
    }
    const textOf = (element: Element) => element.textContent?.trim().replace(/\s+/gu, ' ');

    beforeEach(() => {
        vi.clearAllMocks();
        window.scrollTo = () => undefined;
    });
    afterEach(async () => {
        if (mounted) await unmount(mounted);
        document.body.replaceChildren();
    });

    it('says first when, and lets them be switched off', () => {
        show();
        expect(textOf(document.querySelector('h1')!)).toBe(say('remind-at', { times: '09:00 and 14:00' }));
        expect(document.body.textContent).not.toContain(say('remind-break-end'));
        press(say('remind-switch-off'));
        expect(onset).toHaveBeenCalledWith({ on: false });
    });

    it('that are off shows no more than how to have them, a break and the calendar', () => {
        show({ on: false });
        expect([...document.querySelectorAll('main button')].map(textOf)).toEqual(
            ['settings-back', 'remind-switch-on', 'remind-break', 'calendar-save'].map((id) => say(id)),
        );
    });

    it('makes the times the patient’s own with the first change', () => {
        show();
        press(`${say('remind-times')} 09:00 and 14:00`);
        expect(document.body.textContent).toContain(say('remind-times-by-plan'));
        press(say('settings-later'), 1);
        expect(onset).toHaveBeenLastCalledWith({ times_min: [540, 855] });
        press(say('remind-time-take', { time: '09:00' }));
        expect(onset).toHaveBeenLastCalledWith({ times_min: [840] });
        press(say('remind-time-add'));
        expect(onset).toHaveBeenLastCalledWith({ times_min: [540, 840, 1080] });
    });

    it('takes the plan’s times again, and not by taking the last one away', () => {
        show({ own_times: true, times_min: [540], times: ['09:00'] });
        press(`${say('remind-times')} 09:00`);
        expect(document.body.textContent).not.toContain(say('remind-time-take', { time: '09:00' }));
        press(say('remind-times-of-plan'));
        expect(onset).toHaveBeenLastCalledWith({ times_min: [] });
    });

    it('leaves days out', () => {
        show();
        press(say('remind-days-off', { days: 'Sunday' }));
        press('Monday');
        expect(onset).toHaveBeenLastCalledWith({ days_off: ['monday', 'sunday'] });
        press('Sunday');
        expect(onset).toHaveBeenLastCalledWith({ days_off: [] });
    });

    it('shows that one is being sent, then what came of it', async () => {
        let answer: (said: string) => void = () => undefined;
        const onsend = vi.fn(() => new Promise<string>((resolve) => (answer = resolve)));
        show({}, onsend);
        const status = document.querySelector('.first [role=status]')!;
        press(say('remind-now'));
        press(say('remind-now'));
        expect([onsend.mock.calls.length, status.textContent]).toEqual([1, say('remind-now-going')]);
        answer('It is out.');
        await settled();
        expect(status.textContent).toBe('It is out.');
    });

    it('ends a break that holds today', () => {
        show({ break_said: 'You have a break.' });
        press(say('remind-break-end'));
        expect(onbreakend).toHaveBeenCalledOnce();
    });

    it('notes a break of whole days', () => {
        show();
        press(say('remind-break'));
        press(say('remind-later-day'), 1);
        press(say('remind-later-day'), 0);
        press(say('remind-break-do'));
        expect(onbreak).toHaveBeenCalledWith('2026-05-26', '2026-05-27', 'own', '');
        for (let taps = 0; taps < 5; taps += 1) press(say('remind-earlier-day'), 1);
        press(say('remind-break-do'));
        expect(onbreak).toHaveBeenLastCalledWith('2026-05-26', '2026-05-26', 'own', '');
    });
});
