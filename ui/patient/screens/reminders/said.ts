import type { RemindingView } from '../../../generated/bridge';
import { say } from '../../../shared/words.svelte';

/** "Reminders: 09:00, 14:00 and 19:00". */
export function sayReminding({ on, today_said }: RemindingView): string {
    if (!on) return say('remind-off');
    return today_said ? say('remind-at', { times: today_said }) : say('remind-none-today');
}
