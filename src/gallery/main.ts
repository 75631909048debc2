/** Every chart and control with extreme figures, for those who draw them. `npm run dev`, then /gallery.html. */
import { mount } from 'svelte';
import '../app/theme.css';
import Gallery from './Gallery.svelte';

mount(Gallery, { target: document.getElementById('gallery')! });
