/**
 * Which page is shown, and what is asked of the host. No rule lives here: whatever may be done, is due
 * or is said comes from the host as it is shown.
 */
import type {
    BeforeView,
    DayView,
    HandBackAsked,
    ItemView,
    MorningView,
    OfferView,
    PainSaidView,
    Press,
    ProblemView,
    SetBackName,
    SideName,
    StageView,
    StartView,
    StopView,
    Told,
    WrittenView,
} from '../generated/bridge';
import { say, speak } from '../shared/words.svelte';
import { HomeTest } from './home-test.svelte';
import { type Change, type host, type PainBefore, Refused, type Way, type Whom } from './host';
import type { Page } from './page';
import { Reminders } from './reminders';

/** How often the day is asked for anew while it is on the screen: spacing passes, and midnight comes. */
const FRESH_MS = 30_000;

export class Flow {
    page: Page = $state.raw({ at: 'blank' });
    start: StartView | null = $state.raw(null);
    day: DayView | null = $state.raw(null);
    /** Over every page, until the patient has spoken to the clinic. */
    stop: StopView | null = $state.raw(null);
    /** Said once on the day. */
    notice: string | null = $state.raw(null);
    /** What went wrong on the page that is shown. */
    problem: ProblemView | null = $state.raw(null);
    /** How many answers are waited for. */
    private waits = $state(0);
    /** The last press of a session is being written down. */
    private finishing = $state(false);

    offer: OfferView | null = $state.raw(null);

    before: BeforeView | null = $state.raw(null);
    answered = $state(false);
    noted: string | null = $state.raw(null);
    morning: MorningView | null = $state.raw(null);
    helper = $state(false);

    stage: StageView | null = $state.raw(null);
    pain: PainSaidView | null = $state.raw(null);

    private writing = false;
    /** The page that was left for whom to ring. */
    private left: Page = { at: 'day' };
    /** Which question about the day was the last: an older answer says nothing new. */
    private asked = 0;

    /** One call after the other, or a file would come between a wish to begin and its questions. */
    private called: Promise<void> = Promise.resolve();

    readonly homeTest: HomeTest;
    readonly reminders: Reminders;

    constructor(private readonly host: Host) {
        this.homeTest = new HomeTest(this, host);
        this.reminders = new Reminders(this, host);
    }

    get busy(): boolean {
        return this.waits > 0 || this.finishing;
    }

    /** Brings up the first page. */
    async open(): Promise<void> {
        await this.try(async () => {
            const [start, led] = await Promise.all([this.host.start(), this.host.attach(this.told)]);
            // The window comes up while its first page is being drawn.
            void this.host.reveal();
            this.begun(start, led);
        });
        if (this.problem) {
            this.go({ at: 'problem', problem: this.problem });
            await this.host.reveal();
        }
    }

    /** From now on follows what is handed over, and the time that passes. */
    async follow(): Promise<void> {
        await this.try(() => this.host.watchFiles(() => void this.call()));
        await this.call();
        setInterval(() => void this.freshen(), FRESH_MS);
        document.addEventListener('visibilitychange', () => void this.freshen());
    }

    /** "Start" was pressed on a reminder, or a file came. */
    private call(): Promise<void> {
        this.called = this.called.then(this.reminders.begin).then(() => this.handedOver());
        return this.called;
    }

    async retry(): Promise<void> {
        await this.try(async () => this.begun(await this.host.retry(), false));
    }

    private begun(start: StartView, led: boolean): void {
        this.take(start);
        if (start.problem) this.go({ at: 'problem', problem: start.problem });
        else if (led) this.go({ at: 'session' });
        else if (start.first_time) this.go({ at: 'first' });
        else this.home();
    }

    /** Takes over how the patient wants it. */
    take(start: StartView): void {
        this.start = start;
        if (start.day) this.takeDay(start.day);
        const { language, theme, text } = start.settings;
        speak(language);
        const root = document.documentElement;
        root.lang = language;
        root.dir = start.languages.find(({ lang }) => lang === language)?.rtl ? 'rtl' : 'ltr';
        root.dataset['text'] = String(text);
        if (theme === 'system') delete root.dataset['theme'];
        else root.dataset['theme'] = theme;
    }

    private takeDay(day: DayView): void {
        this.day = day;
        this.stop = day.stop;
    }

    go(page: Page): void {
        this.problem = null;
        if (page.at !== 'day') this.notice = null;
        this.page = page;
    }

    /** The day, or the way in if there is no plan yet. */
    home = (): void => {
        this.offer = null;
        this.go(this.day ? { at: 'day' } : { at: 'receive' });
        void this.handedOver();
    };

    private async freshen(): Promise<void> {
        const shown = ['day', 'item', 'not-yet', 'weeks'].includes(this.page.at);
        if (shown && !document.hidden) await this.try(() => this.refresh());
    }

    async refresh(): Promise<void> {
        const question = ++this.asked;
        const day = await this.host.day();
        if (question === this.asked) this.takeDay(day);
    }

    backToDay = async (): Promise<void> => {
        await this.try(() => this.refresh());
        this.home();
    };

    /** Does something, and keeps what went wrong for the page. Says whether it went well. */
    async try(act: () => Promise<void>): Promise<boolean> {
        this.waits += 1;
        try {
            await act();
            return true;
        } catch (reason) {
            this.problem = problemOf(reason);
            return false;
        } finally {
            this.waits -= 1;
        }
    }

    /** Writes something down once, goes back to the day, and says so there. What was refused stays. */
    async write(act: () => Promise<WrittenView>): Promise<void> {
        if (this.writing) return;
        this.writing = true;
        let said: string | null = null;
        const well = await this.try(async () => {
            said = (await act()).said;
            await this.refresh();
        });
        this.writing = false;
        if (!well) return;
        this.home();
        this.notice = said;
    }

    /** What came of something, for where it was asked; what went wrong is said there too. */
    async saidOf(act: () => Promise<WrittenView | null>): Promise<string> {
        try {
            return (await act())?.said ?? '';
        } catch (reason) {
            const { happened, to_do } = problemOf(reason);
            return `${happened}\n${to_do}`;
        }
    }

    // How the patient wants it.

    /** The sentences as they are now: a day has passed, or a break was noted, since the start. */
    settings = async (): Promise<void> => {
        this.go({ at: 'settings' });
        await this.takes(() => this.host.start());
    };

    tryVoice = (): Promise<string> => this.saidOf(() => this.host.tryVoice());
    print = (): Promise<string> => this.saidOf(() => this.host.saveToday());

    change = (change: Change): Promise<void> => this.takes(() => this.host.change(change));

    /** Does something that may change how it is wanted, and takes that over. */
    async takes(act: () => Promise<StartView>): Promise<void> {
        this.problem = null;
        await this.try(async () => this.take(await act()));
    }

    firstDone = async (): Promise<void> => {
        // What was shown is what was chosen, even where nothing was tapped.
        const language = this.start?.settings.language;
        await this.change({ first_done: true, ...(language ? { language } : {}) });
        this.home();
    };

    // Taking a plan in.

    receive = (): void => {
        this.offer = null;
        this.go({ at: 'receive' });
    };

    openFile = async (): Promise<void> => {
        await this.offered(() => this.host.pickFile());
    };

    /** A file came by a drop, a second start or a double click. A session is not interrupted. */
    private async handedOver(): Promise<void> {
        const free = !this.stop && !['session', 'test', 'first', 'blank', 'problem'].includes(this.page.at);
        if (free) await this.nextFile();
    }

    private async nextFile(): Promise<void> {
        await this.offered(() => this.host.nextFile());
    }

    tryCode = async (code: string): Promise<void> => {
        await this.offered(() => this.host.tryCode(code));
    };

    private async offered(act: () => Promise<OfferView | null>): Promise<void> {
        const well = await this.try(async () => {
            const offer = await act();
            if (!offer) return;
            this.go({ at: 'receive' });
            this.offer = offer;
        });
        if (!well) this.refused();
    }

    private refused(): void {
        const { problem } = this;
        this.go({ at: 'receive' });
        if (problem) this.offer = { step: 'refused', problem };
    }

    takeIn = async (sides: SideName[], today: string): Promise<void> => {
        const { offer } = this;
        if (offer?.step !== 'summary') return;
        let said = '';
        const well = await this.try(async () => {
            said = (await this.host.takeIn(offer.summary.digest, sides, today)).said;
            this.take(await this.host.start());
        });
        if (!well) return this.refused();
        this.home();
        this.notice = said;
    };

    leaveReceive = (): void => {
        if (this.day && !this.offer) return this.home();
        this.offer = null;
        if (this.day) this.home();
    };

    // The day.

    /** Whether the page may be left for whom to ring: a session has its own ways to stop. */
    get mayLeaveForContacts(): boolean {
        const elsewhere = [
            'weeks',
            'item',
            'not-yet',
            'past',
            'hand-back',
            'settings',
            'reminders',
            'before',
            'test-before',
            'ended',
            'receive',
        ];
        return this.day !== null && !this.stop && elsewhere.includes(this.page.at);
    }

    /** Whom to ring, from any page; back leads to that page. */
    contacts = (): void => {
        this.left = this.page;
        this.go({ at: 'contacts' });
    };

    backFromContacts = (): void => {
        const { at } = this.left;
        if (at === 'day' || at === 'contacts') this.home();
        else this.go(this.left);
    };

    item = (item: string): void => this.go({ at: 'item', item });
    notYet = (item: string): void => this.go({ at: 'not-yet', item });

    /** An item as the day has it now. */
    find(item: string): ItemView | undefined {
        return [...(this.day?.due ?? []), ...(this.day?.not_yet ?? [])].find((view) => view.item === item);
    }

    past = async (): Promise<void> => {
        await this.try(async () => this.go({ at: 'past', past: await this.host.past() }));
    };

    toHandBack = async (): Promise<void> => {
        await this.try(async () =>
            this.go({ at: 'hand-back', view: await this.host.toHandBack(), saved: null }),
        );
    };

    handBack = async (asked: HandBackAsked): Promise<void> => {
        await this.try(async () => {
            const written = await this.host.handBack(asked);
            if (written && this.page.at === 'hand-back') this.page = { ...this.page, saved: written.said };
        });
    };

    did = (item: string, sets: number, each: number, yesterday: boolean): Promise<void> =>
        this.write(() => this.host.did(item, sets, each, yesterday));
    didCare = (care: string): Promise<void> => this.write(() => this.host.didCare(care));
    stopItem = (item: string, undo: boolean): Promise<void> =>
        this.write(() => this.host.stopItem(item, undo));
    step = (item: string, way: Way): Promise<void> =>
        this.write(() => this.host.step(item, way, this.page.at === 'ended' && this.helper));
    setBack = (what: SetBackName): Promise<void> => this.write(() => this.host.setBack(what));
    ring = async (whom: Whom): Promise<void> => {
        await this.try(() => this.host.ring(whom));
    };

    unwell = async (): Promise<void> => {
        await this.try(async () => {
            this.stop = (
                await this.host.answerBefore(
                    ['unwell'],
                    { morning: null, now: null, seen: null },
                    this.helper,
                )
            ).stop;
        });
    };

    spoke = (): Promise<void> => this.write(() => this.host.spoke());

    // A session.

    prepare = async (only: string | null, goesOn: boolean): Promise<void> => {
        await this.prepared(async () => {
            this.askBefore(await this.host.before(only, goesOn), { at: 'before', only, goesOn });
        });
    };

    /** What is asked before anything is begun, on the page for it. */
    askBefore(before: BeforeView, page: Page): void {
        this.before = before;
        this.answered = before.questions === 'none';
        this.noted = null;
        this.morning = null;
        this.helper = false;
        this.go(page);
    }

    /** Prepares something. Why it cannot be begun is said on the day. */
    async prepared(act: () => Promise<void>): Promise<void> {
        const well = await this.try(act);
        if (well || !this.problem) return;
        const said = [this.problem.happened, ...this.problem.reasons, this.problem.to_do].join(' ');
        await this.backToDay();
        this.notice = said;
    }

    confirmDate = async (day: string): Promise<void> => {
        await this.try(async () => {
            await this.host.confirmDate(day);
            if (this.before) this.before = { ...this.before, confirm_date: null };
        });
    };

    answer = async (signs: string[], pain: PainBefore): Promise<void> => {
        this.problem = null;
        await this.try(async () => {
            const { stop, noted, morning } = await this.host.answerBefore(signs, pain, this.helper);
            this.stop = stop;
            this.noted = noted;
            this.morning = morning;
            this.answered = !stop;
            const { page } = this;
            // What is coming has become smaller.
            if (!stop && morning && page.at === 'before') {
                this.before = await this.host.before(page.only, page.goesOn);
            }
        });
    };

    begin = async (): Promise<void> => {
        const { page } = this;
        if (page.at !== 'before' || this.waits > 0) return;
        this.stage = null;
        this.pain = null;
        await this.try(async () => {
            await this.host.begin(page.only, page.goesOn, this.helper, this.told);
            this.go({ at: 'session' });
        });
    };

    press = async (press: Press): Promise<void> => {
        this.problem = null;
        this.finishing ||= press.press === 'finish';
        await this.try(async () => {
            const led = await this.host.press(press);
            // The thread is gone without a last word: what was done is on disk.
            if (!led && this.page.at === 'session') await this.backToDay();
        });
    };

    /** The plan's answer to pain was read: on it goes, if the session waits for that. */
    heard = async (): Promise<void> => {
        this.pain = null;
        if (this.stage?.can_go_on) await this.press({ press: 'go-on' });
    };

    private readonly told = (told: Told): void => {
        switch (told.told) {
            case 'stage':
                this.stage = told.stage;
                break;
            case 'problem':
                this.finishing = false;
                this.problem = told.problem;
                break;
            case 'pain':
                this.pain = told.pain;
                break;
            case 'stop':
                this.stop = told.stop;
                this.pain = null;
                void this.try(async () => {
                    await this.host.press({ press: 'finish', effort: null, pain: null, words: null });
                });
                break;
            case 'ended':
                this.finishing = false;
                this.go({ at: 'ended', ended: told.ended });
                if (this.stop) void this.backToDay();
        }
    };
}

const problemOf = (reason: unknown): ProblemView =>
    reason instanceof Refused ? reason.problem : unforeseen(reason);

/** The host itself failed: said in words, so that no page stays blank. */
function unforeseen(reason: unknown): ProblemView {
    return {
        code: 'window',
        happened: say('window-failed', { what: String(reason) }),
        to_do: say('window-failed-do'),
        reasons: [],
        ring: null,
    };
}

/** What the flow asks of the host. */
export type Host = typeof host;
