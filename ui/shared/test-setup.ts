/** jsdom lays nothing out: parts that measure themselves find an observer that never reports. */
class StillObserver implements ResizeObserver {
    observe() {}
    unobserve() {}
    disconnect() {}
}

globalThis.ResizeObserver ??= StillObserver;
