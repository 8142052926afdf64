import type { EndedView, HandBackView, PastView, ProblemView } from '../generated/bridge';

/** Which page is shown, and what it needs that is nowhere else. */
export type Page =
    | { at: 'blank' }
    | { at: 'problem'; problem: ProblemView }
    | { at: 'first' }
    | { at: 'receive' }
    | { at: 'day' }
    | { at: 'weeks' }
    | { at: 'item'; item: string }
    | { at: 'not-yet'; item: string }
    | { at: 'past'; past: PastView }
    | { at: 'hand-back'; view: HandBackView; saved: string | null }
    | { at: 'contacts' }
    | { at: 'settings' }
    | { at: 'reminders' }
    | { at: 'before'; only: string | null; goesOn: boolean }
    | { at: 'session' }
    | { at: 'ended'; ended: EndedView }
    | { at: 'test-before'; test: string }
    | { at: 'test' };
