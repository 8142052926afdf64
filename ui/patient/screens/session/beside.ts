import type { StageView } from '../../../generated/bridge';

/**
 * Whether "ready" would begin an exercise that nobody does alone. It can be said while one is still getting
 * ready, so the page must ask then too.
 */
export const asksForSomebody = (stage: StageView): boolean =>
    stage.can_ready && stage.waits_for !== 'steps' && stage.item?.beside_you === true;
