/** Loaded before the JSON language server: takes out the 300 ms that it waits after a keystroke, so that work is compared with work. */
const patient = globalThis.setTimeout;
globalThis.setTimeout = (action, delay, ...more) => patient(action, delay === 300 ? 0 : delay, ...more);
