import { mount } from 'svelte';
import Counter from './Counter.svelte';

mount(Counter, { target: document.body });
