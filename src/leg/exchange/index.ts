/** From a leg to other tools, and back: tables, simulators, control loops, the text of its document. */
export { checksTable } from './checks-table.js'
export { editLegText } from './edit-text.js'
