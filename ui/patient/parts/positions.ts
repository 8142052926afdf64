import type { ItemView } from '../../generated/bridge';

export type PositionGroup = { said: string; items: ItemView[] };

/** Neighbours in the same position under one heading; the clinic's order stays. */
export function byPosition(items: readonly ItemView[]): PositionGroup[] {
    const groups: PositionGroup[] = [];
    for (const item of items) {
        const last = groups.at(-1);
        if (last?.said === item.position_said) last.items.push(item);
        else groups.push({ said: item.position_said, items: [item] });
    }
    return groups;
}
