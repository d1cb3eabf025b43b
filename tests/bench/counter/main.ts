import { mount } from 'svelte';
import Counter from './Counter.svelte';
import { keeper } from './keep';

const keep = location.hash === '#kept' ? await keeper() : () => Promise.resolve();
mount(Counter, { target: document.body, props: { keep } });
