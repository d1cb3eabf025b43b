const EVERY = 250;

// A worker's interval is not slowed down when the page is hidden; the page's own is, to once a minute.
setInterval(() => postMessage('tick'), EVERY);
