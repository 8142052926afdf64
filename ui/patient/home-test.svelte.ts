/** A home test on its pages: what was asked, and what is shown of it. */
import type { TestBeforeView, TestPress, TestStageView, TestTold } from '../generated/bridge';
import { say } from '../shared/words.svelte';
import type { Flow, Host } from './flow.svelte';

export class HomeTest {
    before: TestBeforeView | null = $state.raw(null);
    stage: TestStageView | null = $state.raw(null);

    constructor(
        private readonly flow: Flow,
        private readonly host: Host,
    ) {}

    /** Asks first. What cannot be begun is said on the day, with who says so. */
    prepare = async (test: string): Promise<void> => {
        await this.flow.prepared(async () => {
            this.before = await this.host.beforeTest(test);
            this.flow.askBefore(this.before.before, { at: 'test-before', test });
        });
    };

    nobodyIsHere = async (): Promise<void> => {
        await this.flow.backToDay();
        this.flow.notice = say('test-helper-none');
    };

    /** Somebody is beside the patient. */
    begin = async (): Promise<void> => {
        const { page, busy } = this.flow;
        if (page.at !== 'test-before' || busy) return;
        this.stage = null;
        await this.flow.try(async () => {
            await this.host.beginTest(page.test, true, this.told);
            this.flow.go({ at: 'test' });
        });
    };

    press = async (press: TestPress): Promise<void> => {
        this.flow.problem = null;
        await this.flow.try(async () => {
            const led = await this.host.pressTest(press);
            // The thread is gone without a last word: nothing was written down.
            if (!led && this.flow.page.at === 'test') await this.flow.backToDay();
        });
    };

    private readonly told = (told: TestTold): void => {
        switch (told.told) {
            case 'stage':
                this.stage = told.stage;
                break;
            case 'problem':
                this.flow.problem = told.problem;
                break;
            case 'ended':
                void this.ended(told.said);
        }
    };

    private async ended(said: string): Promise<void> {
        await this.flow.backToDay();
        this.flow.notice = said;
    }
}
