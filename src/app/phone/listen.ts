/** The two panels that listen, fetched together: most of what they are made of is the same. */
export { ClicksPanel } from './clicks/panel';
export { NotePanel } from './note/panel';
