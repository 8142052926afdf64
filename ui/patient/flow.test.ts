import { beforeEach, describe, expect, it } from 'vitest';
import type { DayView, OfferView, ProblemView, StartView, StopView, Told } from '../generated/bridge';
import { Flow, type Host } from './flow.svelte';
import { Refused } from './host';

const problem: ProblemView = {
    code: 'not-yet',
    happened: 'Not yet.',
    to_do: 'Ask your clinic.',
    reasons: ['Set by A.'],
    ring: null,
};
const stop: StopView = {
    tier: 'ring-today',
    said: 'Stop for today.',
    advice: null,
    nobody_sees: 'Nobody sees this.',
    clinic: 'Hillside',
    phone: '555-0100',
    out_of_hours_phone: '555-0101',
    emergency_phone: '112',
};
const day = { due: [], not_yet: [], stop: null } as unknown as DayView;

function start(changes: Partial<StartView> = {}): StartView {
    return {
        settings: {
            language: 'es',
            text: 150,
            theme: 'dark',
            awake_from_min: 480,
            awake_to_min: 1260,
            awake_from: '08:00',
            awake_to: '21:00',
            hearing: { speech: true, tones: true, rate: -20, pitch: 0 },
            pace: 'prescribed',
        },
        languages: [
            { lang: 'en', name: 'English', rtl: false },
            { lang: 'es', name: 'Español', rtl: false },
        ],
        has_plan: true,
        first_time: false,
        problem: null,
        contacts: null,
        day,
        reminding: null,
        starts_at_login: null,
        ...changes,
    };
}

/** A host that remembers what it was asked, and answers what a test wants. */
class FakeHost {
    asked: string[] = [];
    answers: Record<string, () => unknown> = { start: () => start(), attach: () => false, day: () => day };
    tell: (told: Told) => void = () => undefined;
    file: () => void = () => undefined;

    readonly host = new Proxy({} as Host, {
        get:
            (_, name: string) =>
            (...args: unknown[]): Promise<unknown> => {
                this.asked.push(name);
                if (name === 'attach' || name === 'begin') this.tell = args.at(-1) as FakeHost['tell'];
                if (name === 'watchFiles') this.file = args[0] as FakeHost['file'];
                return Promise.resolve().then(() => this.answers[name]?.() ?? null);
            },
    });

    refuse(name: string): void {
        this.answers[name] = () => {
            throw new Refused(problem);
        };
    }
}

let fake: FakeHost;
let flow: Flow;

beforeEach(() => {
    fake = new FakeHost();
    flow = new Flow(fake.host);
});

/** Lets everything that waits for an answer have it. */
const settled = () => new Promise((resolve) => setTimeout(resolve));

async function inSession(): Promise<void> {
    fake.answers['before'] = () => ({ questions: 'none' });
    fake.answers['press'] = () => true;
    await flow.open();
    await flow.prepare(null, false);
    await flow.begin();
}

describe('the first page', () => {
    it('is the day, as the patient wants it', async () => {
        await flow.open();
        expect(flow.page.at).toBe('day');
        const { lang, dir, dataset } = document.documentElement;
        expect([lang, dir, dataset['text'], dataset['theme']]).toEqual(['es', 'ltr', '150', 'dark']);
        expect(fake.asked.slice(0, 3)).toEqual(['start', 'attach', 'reveal']);
    });

    it('is the two minutes on a device that is new to it', async () => {
        fake.answers['start'] = () => start({ first_time: true, has_plan: false, day: null });
        await flow.open();
        expect(flow.page.at).toBe('first');
        fake.answers['change'] = () => start({ has_plan: false, day: null });
        await flow.firstDone();
        expect(flow.page.at).toBe('receive');
    });

    it('says why a record cannot be used, and tries again', async () => {
        fake.answers['start'] = () => start({ problem, day: null });
        await flow.open();
        expect(flow.page).toEqual({ at: 'problem', problem });
        fake.answers['retry'] = () => start();
        await flow.retry();
        expect(flow.page.at).toBe('day');
    });

    it('is the session that goes on behind a page that was loaded anew', async () => {
        fake.answers['attach'] = () => true;
        await flow.open();
        expect(flow.page.at).toBe('session');
    });
});

describe('a stop', () => {
    it('stands over every page until the clinic was spoken to', async () => {
        fake.answers['start'] = () => start({ day: { ...day, stop } });
        await flow.open();
        expect(flow.stop).toEqual(stop);
        flow.go({ at: 'settings' });
        flow.home();
        expect(flow.stop).toEqual(stop);
        fake.answers['spoke'] = () => ({ said: 'Written down.', against: false });
        await flow.spoke();
        expect([flow.stop, flow.page.at, flow.notice]).toEqual([null, 'day', 'Written down.']);
    });

    it('in a session ends it without another question', async () => {
        await inSession();
        fake.tell({ told: 'stop', stop });
        await settled();
        expect(fake.asked.at(-1)).toBe('press');
        fake.answers['day'] = () => ({ ...day, stop });
        fake.tell({
            told: 'ended',
            ended: { ending: 'stopped-as-told', said: 'Stopped.', nobody_sees: null, offer: null },
        });
        await settled();
        expect([flow.stop, flow.page.at]).toEqual([stop, 'day']);
    });

    it('that could not be answered for stays', async () => {
        fake.answers['start'] = () => start({ day: { ...day, stop } });
        fake.answers['day'] = () => ({ ...day, stop });
        await flow.open();
        fake.refuse('spoke');
        await flow.spoke();
        expect(flow.stop).toEqual(stop);
    });
});

describe('a file that is handed over', () => {
    const code: OfferView = { step: 'code', problem: null };

    it('is offered at once on the day', async () => {
        await flow.open();
        await flow.follow();
        fake.answers['nextFile'] = () => code;
        fake.file();
        await settled();
        expect([flow.page.at, flow.offer]).toEqual(['receive', code]);
    });

    it('waits until a session is over', async () => {
        await inSession();
        await flow.follow();
        fake.answers['nextFile'] = () => code;
        fake.file();
        await settled();
        expect(flow.page.at).toBe('session');
        await flow.backToDay();
        await settled();
        expect(flow.page.at).toBe('receive');
    });

    it('that is refused says why, and keeps the way back', async () => {
        await flow.open();
        fake.refuse('nextFile');
        await flow.follow();
        fake.file();
        await settled();
        expect(flow.offer).toEqual({ step: 'refused', problem });
        fake.answers['nextFile'] = () => null;
        flow.leaveReceive();
        await settled();
        expect([flow.page.at, flow.offer]).toEqual(['day', null]);
    });
});

describe('what cannot be begun', () => {
    it('is said on the day, with who says so', async () => {
        await flow.open();
        fake.refuse('before');
        await flow.prepare('raise', false);
        expect(flow.page.at).toBe('day');
        expect(flow.notice).toBe('Not yet. Set by A. Ask your clinic.');
    });
});

describe('a session whose thread is gone', () => {
    it('goes back to the day', async () => {
        await inSession();
        fake.answers['press'] = () => false;
        await flow.press({ press: 'pause' });
        expect(flow.page.at).toBe('day');
    });
});

describe('one up', () => {
    const offer = {
        item: 'bridge',
        said: 'Bridge: your clinic allows one up.',
        figure: { item: 'bridge', easier: false, working: 'left', both: true },
    } as const;
    const ended = { ending: 'whole', said: 'Done.', nobody_sees: null, offer } as const;

    it('is answered once after a session, and said on the day', async () => {
        await inSession();
        fake.tell({ told: 'ended', ended });
        expect(flow.page).toEqual({ at: 'ended', ended });
        fake.answers['step'] = () => ({ said: 'One up.', against: false });
        await Promise.all([flow.step('bridge', 'up'), flow.step('bridge', 'up')]);
        expect(fake.asked.filter((name) => name === 'step')).toHaveLength(1);
        expect([flow.page.at, flow.notice]).toEqual(['day', 'One up.']);
    });

    it('that is refused stays where it is, and says why', async () => {
        await inSession();
        fake.tell({ told: 'ended', ended });
        fake.refuse('step');
        await flow.step('bridge', 'up');
        expect([flow.page.at, flow.problem]).toEqual(['ended', problem]);
    });
});

describe('pain that had risen by the morning', () => {
    it('is said before the session, with what has become smaller', async () => {
        const morning = { said: ['It hurt more.'], nobody_sees: 'Nobody sees this.' };
        fake.answers['before'] = () => ({ questions: 'signs-and-pain', morning: true });
        fake.answers['answerBefore'] = () => ({ stop: null, noted: null, morning });
        await flow.open();
        await flow.prepare(null, false);
        fake.answers['before'] = () => ({ questions: 'one-tap', morning: false });
        await flow.answer([], { morning: 6, now: 2, seen: null });
        expect([flow.morning, flow.answered, flow.before?.questions]).toEqual([morning, true, 'one-tap']);
    });
});
