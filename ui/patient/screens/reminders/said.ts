import type { RemindingView } from '../../../generated/bridge';
import { say } from '../../../shared/words.svelte';

/** More would be a paragraph and no title. */
const MOST_TIMES = 4;

/** "Reminders: 09:00, 14:00 and 19:00". */
export function sayReminding({ on, today_said, times }: RemindingView): string {
    if (!on) return say('remind-off');
    if (today_said && times.length > MOST_TIMES) return say('remind-at-many', { n: times.length });
    return today_said ? say('remind-at', { times: today_said }) : say('remind-none-today');
}
