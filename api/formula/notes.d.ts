import type { Note } from '../units/index.js';
export declare function notesOf(given: unknown): readonly Note[] | undefined;
