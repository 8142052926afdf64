/** jsdom lays nothing out: parts that measure themselves find an observer that never reports. */
class StillObserver implements ResizeObserver {
    observe() {}
    unobserve() {}
    disconnect() {}
}

globalThis.ResizeObserver ??= StillObserver;

/** Nor does it answer a media query: nothing that is asked of the device is so. */
window.matchMedia ??= (media) =>
    Object.assign(new EventTarget(), {
        media,
        matches: false,
        onchange: null,
        addListener() {},
        removeListener() {},
    });
