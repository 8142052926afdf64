/**
 * The one place that talks to the host. A command is one call into a use case; it names no path, no
 * time and no phone number.
 */
import { Channel, invoke } from '@tauri-apps/api/core';
import type {
    AnsweredView,
    BeforeView,
    BreakWhyName,
    DayView,
    DistressName,
    FigureAsked,
    FigureView,
    HandBackAsked,
    HandBackView,
    OfferView,
    PastView,
    Press,
    ProblemView,
    SetBackName,
    SettingsView,
    Shows,
    SideName,
    StartView,
    TestBeforeView,
    TestPress,
    TestTold,
    Told,
    Weekday,
    WhyNotName,
    WrittenView,
} from '../generated/bridge';
import { levelledAll } from '../shared/marks';
import { Figures } from './figures.svelte';

/** When it is to be quiet: in the hours of sleep, or from a minute after midnight to another. */
export type QuietWish = { when: 'asleep' } | { when: 'between'; from_min: number; to_min: number };

/** What can be changed of the reminders; what is not given stays. */
export interface RemindingChange {
    on?: boolean;
    /** In minutes after midnight; none to have them worked out from the plan. */
    times_min?: number[];
    days_off?: Weekday[];
    quiet?: QuietWish;
    sound?: boolean;
    shows?: Shows;
}

/** What can be changed of how the patient wants it. */
export type Change = Partial<
    Pick<
        SettingsView,
        'language' | 'text' | 'theme' | 'awake_from_min' | 'awake_to_min' | 'hearing' | 'pace'
    > & {
        first_done: boolean;
        reminding: RemindingChange;
    }
>;

/** What is said about pain before a session: this morning, where it is asked, and now. */
export interface PainBefore {
    morning: number | null;
    now: number | null;
    /** What a helper sees now, in place of a figure. */
    seen: DistressName | null;
}

/** Where a dose is to step: one up, one down, or nowhere for now. */
export type Way = 'up' | 'down' | 'stay';

/** Whom to ring. */
export type Whom = 'clinic' | 'night' | 'emergency';

/** A use case said no, or could not be carried out. */
export class Refused extends Error {
    constructor(readonly problem: ProblemView) {
        super(problem.happened);
    }
}

function isProblem(reason: unknown): reason is ProblemView {
    return typeof reason === 'object' && reason !== null && 'happened' in reason && 'to_do' in reason;
}

async function call<T>(command: string, args: Record<string, unknown> = {}): Promise<T> {
    try {
        return levelledAll(await invoke<T>(command, args));
    } catch (reason) {
        if (isProblem(reason)) throw new Refused(levelledAll(reason));
        throw reason;
    }
}

function channel<T>(onmessage: (message: T) => void): Channel<T> {
    const made = new Channel<T>();
    made.onmessage = (message) => onmessage(levelledAll(message));
    return made;
}

export const host = {
    start: () => call<StartView>('start'),
    retry: () => call<StartView>('retry'),
    reveal: () => call<void>('reveal'),
    change: (change: Change) => call<StartView>('change', { change }),
    startAtLogin: (starts: boolean) => call<StartView>('start_at_login', { starts }),
    tryVoice: () => call<WrittenView>('try_voice'),
    sendOne: () => call<WrittenView>('send_one'),
    saveCalendar: () => call<WrittenView | null>('save_calendar'),
    saveToday: () => call<WrittenView | null>('save_today'),

    pickFile: () => call<OfferView | null>('pick_file'),
    nextFile: () => call<OfferView | null>('next_file'),
    /** Tells of files, and of "start" pressed on a reminder. */
    watchFiles: (onfile: () => void) => call<void>('watch_files', { channel: channel<boolean>(onfile) }),
    takeBegin: () => call<boolean>('take_begin'),
    tryCode: (code: string) => call<OfferView>('try_code', { code }),
    takeIn: (digest: string, sides: SideName[], today: string | null) =>
        call<WrittenView>('take_in', { digest, sides, today }),

    day: () => call<DayView>('day'),
    past: () => call<PastView>('past'),
    toHandBack: () => call<HandBackView>('to_hand_back'),
    handBack: (asked: HandBackAsked) => call<WrittenView | null>('hand_back', { asked }),
    figure: (asked: FigureAsked) => call<FigureView | null>('figure', { asked }),

    before: (only: string | null, goesOn: boolean) => call<BeforeView>('before', { only, goesOn }),
    confirmDate: (day: string) => call<void>('confirm_date', { day }),
    answerBefore: (signs: string[], pain: PainBefore, helper: boolean) =>
        call<AnsweredView>('answer_before', { signs, pain, helper }),
    begin: (only: string | null, goesOn: boolean, helper: boolean, ontold: (told: Told) => void) =>
        call<void>('begin', { only, goesOn, helper, channel: channel(ontold) }),
    attach: (ontold: (told: Told) => void) => call<boolean>('attach', { channel: channel(ontold) }),
    press: (press: Press) => call<boolean>('press', { press }),

    beforeTest: (test: string) => call<TestBeforeView>('before_test', { test }),
    beginTest: (test: string, helper: boolean, ontold: (told: TestTold) => void) =>
        call<void>('begin_test', { test, helper, channel: channel(ontold) }),
    pressTest: (press: TestPress) => call<boolean>('press_test', { press }),

    spoke: () => call<WrittenView>('spoke'),
    did: (item: string, sets: number, each: number, yesterday: boolean) =>
        call<WrittenView>('did', { item, sets, each, yesterday }),
    didCare: (care: string) => call<WrittenView>('did_care', { care }),
    stopItem: (item: string, undo: boolean) => call<WrittenView>('stop_item', { item, undo }),
    step: (item: string, way: Way, helper: boolean) => call<WrittenView>('step', { item, way, helper }),
    setBack: (what: SetBackName) => call<WrittenView>('set_back', { what }),
    endBreak: () => call<WrittenView>('end_break'),
    declareBreak: (from: string, through: string, why: BreakWhyName, words: string) =>
        call<WrittenView>('declare_break', { from, through, why, words }),
    notTodayBecause: (day: string, why: WhyNotName) => call<WrittenView>('not_today_because', { day, why }),
    ring: (whom: Whom) => call<void>('ring', { whom }),
};

export const figures = new Figures(host);
