import { mount } from 'svelte';
import '../shared/look.css';
import App from './App.svelte';
import { Flow } from './flow.svelte';
import { host } from './host';

const target = document.getElementById('app');
if (target) {
    const flow = new Flow(host);
    mount(App, { target, props: { flow } });
    void flow.open().then(() => flow.follow());
}
