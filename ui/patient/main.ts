import { flushSync, mount } from 'svelte';
import '../shared/look.css';
import App from './App.svelte';
import { Flow } from './flow.svelte';
import { host } from './host';

async function run(target: HTMLElement): Promise<void> {
    const flow = new Flow(host);
    mount(App, { target, props: { flow } });
    try {
        await flow.open();
    } finally {
        // The window is shown once its first page is there, so that nothing flashes.
        flushSync();
        await host.reveal();
    }
    await flow.follow();
}

const target = document.getElementById('app');
if (target) void run(target);
