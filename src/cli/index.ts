/**
 * The command line: `npx limbwright check leg.yaml`.
 *
 * @module
 */
export { main } from './main.js'
export type { Exit, Terminal } from './terminal.js'
