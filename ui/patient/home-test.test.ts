import { flushSync, mount, unmount } from 'svelte';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import type { DayView, ProblemView, TestPress, TestStageView, TestTold } from '../generated/bridge';
import { say } from '../shared/words.svelte';
import { Flow, type Host } from './flow.svelte';
import { Refused } from './host';
import HomeTest from './screens/HomeTest.svelte';

const problem: ProblemView = {
    code: 'not-yet',
    happened: 'Not yet.',
    to_do: 'Ask your clinic.',
    reasons: ['Set by A.'],
    ring: null,
};
const day = { due: [], not_yet: [], tests: [], stop: null } as unknown as DayView;

function stage(changes: Partial<TestStageView> = {}): TestStageView {
    return {
        name: 'Stand up and sit down',
        state: 'running',
        ask: 'Stand up.',
        count: 4,
        count_said: 'times. 20 seconds left.',
        tap: 'Upright',
        can_again: false,
        result: [],
        stands: null,
        most_stands: 60,
        said: [],
        ...changes,
    };
}

describe('a home test', () => {
    let answers: Record<string, () => unknown>;
    let asked: [string, unknown[]][];
    let tell: (told: TestTold) => void;
    let flow: Flow;

    beforeEach(() => {
        asked = [];
        answers = {
            day: () => day,
            beforeTest: () => ({
                test: 'up',
                name: 'Up',
                before: { questions: 'none' },
                how: [],
                cautions: [],
            }),
        };
        const host = new Proxy({} as Host, {
            get:
                (_, name: string) =>
                (...args: unknown[]): Promise<unknown> => {
                    asked.push([name, args]);
                    if (name === 'beginTest') tell = args.at(-1) as typeof tell;
                    return Promise.resolve().then(() => answers[name]?.() ?? null);
                },
        });
        flow = new Flow(host);
        flow.day = day;
    });

    const settled = () => new Promise((resolve) => setTimeout(resolve));

    it('that cannot be begun says why on the day', async () => {
        answers['beforeTest'] = () => {
            throw new Refused(problem);
        };
        await flow.homeTest.prepare('up');
        expect([flow.page.at, flow.notice]).toEqual(['day', 'Not yet. Set by A. Ask your clinic.']);
    });

    it('is not begun with nobody there', async () => {
        await flow.homeTest.prepare('up');
        expect(flow.page).toEqual({ at: 'test-before', test: 'up' });
        await flow.homeTest.nobodyIsHere();
        expect([flow.page.at, flow.notice]).toEqual(['day', say('test-helper-none')]);
        expect(asked.some(([name]) => name === 'beginTest')).toBe(false);
    });

    it('shows what is told, and says on the day what was written', async () => {
        await flow.homeTest.prepare('up');
        await flow.homeTest.begin();
        expect(asked.find(([name]) => name === 'beginTest')?.[1].slice(0, 2)).toEqual(['up', true]);
        tell({ told: 'stage', stage: stage() });
        expect([flow.page.at, flow.homeTest.stage?.count]).toEqual(['test', 4]);
        tell({ told: 'problem', problem });
        expect(flow.problem).toEqual(problem);
        tell({ told: 'ended', said: 'Written down.', written: true });
        await settled();
        expect([flow.page.at, flow.notice]).toEqual(['day', 'Written down.']);
    });

    it('whose thread is gone leads back to the day', async () => {
        await flow.homeTest.prepare('up');
        await flow.homeTest.begin();
        answers['pressTest'] = () => false;
        await flow.homeTest.press({ press: 'tap' });
        expect(flow.page.at).toBe('day');
    });
});

describe('its page', () => {
    let mounted: Record<string, unknown> | undefined;

    afterEach(async () => {
        if (mounted) await unmount(mounted);
        mounted = undefined;
        document.body.replaceChildren();
    });

    function shown(changes: Partial<TestStageView> = {}) {
        const onpress = vi.fn<(press: TestPress) => void>();
        const onring = vi.fn<(which: string) => void>();
        window.scrollTo = () => undefined;
        mounted = mount(HomeTest, {
            target: document.body,
            props: {
                stage: stage(changes),
                ring: 'Ring Hillside: 555-0100',
                night: '555-0101',
                onring,
                onpress,
            },
        });
        flushSync();
        const press = (label: string) => {
            const buttons = [...document.querySelectorAll('button')];
            buttons.find((button) => button.textContent.trim() === label)?.click();
            flushSync();
        };
        const space = () => window.dispatchEvent(new KeyboardEvent('keydown', { code: 'Space' }));
        return { onpress, onring, press, space };
    }

    it('has one large count, one main action and a way to stop', () => {
        const { onpress, press, space } = shown();
        expect(document.querySelector('.figures')?.textContent).toBe('4');
        expect(document.querySelectorAll('.main').length).toBe(1);
        press('Upright');
        space();
        press(say('test-stop'));
        expect(onpress.mock.calls.flat()).toEqual([{ press: 'tap' }, { press: 'tap' }, { press: 'stop' }]);
    });

    it('lets the count be put right before it is written down', () => {
        const { onpress, press, space } = shown({ state: 'done', count: null, tap: null, stands: 9 });
        space();
        expect(onpress).not.toHaveBeenCalled();
        press(say('test-keep'));
        expect(onpress).toHaveBeenLastCalledWith({ press: 'keep', stands: null, arms_used: false });
        document.querySelector<HTMLElement>(`[aria-label="${say('item-more')}"]`)?.click();
        flushSync();
        document.querySelector('input[type=checkbox]')?.dispatchEvent(new MouseEvent('click'));
        flushSync();
        press(say('test-keep'));
        expect(onpress).toHaveBeenLastCalledWith({ press: 'keep', stands: 10, arms_used: true });
    });

    it('offers the way back after a stop, and whom to ring', () => {
        const { onpress, onring, press } = shown({ state: 'stopped', count: null, tap: null });
        expect(document.querySelectorAll('button').length).toBe(3);
        press('Ring Hillside: 555-0100');
        expect(onring.mock.calls).toEqual([['clinic']]);
        press(say('test-back'));
        expect(onpress).toHaveBeenLastCalledWith({ press: 'leave' });
    });
});
