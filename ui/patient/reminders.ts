/** Reminders: how they are wanted, and what was pressed on one. */
import type { BreakWhyName, WhyNotName } from '../generated/bridge';
import type { Flow, Host } from './flow.svelte';
import type { RemindingChange } from './host';

export class Reminders {
    constructor(
        private readonly flow: Flow,
        private readonly host: Host,
    ) {}

    /**
     * "Start" was pressed on a reminder: on to the questions before a session. Where something is under way
     * that must not be broken off, the press is let go; it is not kept for later.
     */
    begin = async (): Promise<void> => {
        const { flow } = this;
        let wanted = false;
        await flow.try(async () => {
            wanted = await this.host.takeBegin();
        });
        const elsewhere = [
            'session',
            'test',
            'test-before',
            'first',
            'receive',
            'before',
            'blank',
            'problem',
        ];
        if (!wanted || !flow.day || flow.stop || elsewhere.includes(flow.page.at)) return;
        await flow.try(() => flow.refresh());
        if (!flow.stop) await flow.prepare(null, flow.day.can_go_on);
    };

    open = (): void => this.flow.go({ at: 'reminders' });

    change = (reminding: RemindingChange): Promise<void> => this.flow.change({ reminding });

    startAtLogin = (starts: boolean): Promise<void> => this.flow.takes(() => this.host.startAtLogin(starts));

    sendOne = (): Promise<string> => this.flow.saidOf(() => this.host.sendOne());
    saveCalendar = (): Promise<string> => this.flow.saidOf(() => this.host.saveCalendar());

    takeBreak = (from: string, through: string, why: BreakWhyName, words: string): Promise<void> =>
        this.flow.write(() => this.host.declareBreak(from, through, why, words));

    endBreak = (): Promise<void> => this.flow.write(() => this.host.endBreak());

    /** Why it was "not today". */
    whyNot = async (why: WhyNotName): Promise<void> => {
        const asked = this.flow.day?.why_not;
        if (asked) await this.flow.write(() => this.host.notTodayBecause(asked.day, why));
    };
}
