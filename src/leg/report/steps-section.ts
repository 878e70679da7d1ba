import { type AnyFormula, titleInWords } from '../../formula/index.js'
import type { Leg } from '../document/describe.js'
import { capital, properly, remarkWords } from './amounts.js'
import { type Block, type Piece, plainWords, section, small, table, text, type Words } from './blocks.js'
import { notesOf } from './broken-limits.js'
import { driveWords } from './drive-words.js'
import { equationWords } from './equation-words.js'
import { instanceName } from './instance-words.js'
import type { NumberedStep, StepGroup } from './numbering.js'
import { placesTexts } from './places.js'
import { PROCEDURES } from './procedures.js'
import type { Sources } from './sources.js'
import { type Column, inputColumns, type References, resultColumns } from './step-cells.js'
import { linesOf, onceLong, pieces, type Shown } from './step-lines.js'
import { unitsInHead } from './unit-heads.js'

/** Fewer steps than this stand as lines, more as a table. */
const MIN_ROWS = 3
/** Two steps with more inputs and results than this stand beside each other. */
const MAX_LINE = 3
/** A table of more columns than this stands on its side, so many steps beside each other. */
const MAX_COLUMNS = 8
const MAX_STEPS = 8

/** Title of a formula in words. */
export const titleOf = (formula: AnyFormula): string => properly(titleInWords(formula))

/** Every distinct step of the calculation, by formula. */
export const stepsSection = (groups: readonly StepGroup[], references: References, sources: Sources, leg: Leg): Block =>
  section('steps', 'Calculation steps', [
    text(
      'Each step stands once. A number in brackets behind a value leads to where it comes from: F to a field of the specification, T to a value of a table, C to a constant, Q to a source, the others to a step. A minus before it takes the value with the other sign. Results that nothing reads are left out. Equations take angles in radians and temperatures in kelvin; a ? b : c is b where a holds, and c elsewhere.',
    ),
    ...groups.map((group) => groupBlock(group, references, sources, driveWords(leg, group))),
  ])

function groupBlock(
  { number, formula, steps }: StepGroup,
  references: References,
  sources: Sources,
  inParts: (words: string) => string,
): Block {
  const used = new Set([...steps.flatMap((step) => [...step.used]), ...neededBy(formula)])
  const shown = (columns: readonly Column[]): Shown[] => columns.map(({ name, cell }) => ({ name: inParts(name), cells: steps.map(cell) }))
  const inputs = shown(inputColumns(formula, references)).filter(({ cells }) => cells.some((cell) => cell.length > 0))
  const own = `${number} ${capital(inParts(titleOf(formula)))}`
  return section(`f${number}`, own, [
    ...headOf(formula, sources, inParts),
    ...bodyOf(own, steps, inputs, shown(resultColumns(formula, used))),
    ...notesOf(formula, steps),
  ])
}

/** Results that equations take without an equation of their own: a reader needs their numbers. */
function neededBy({ def: { equation = [] } }: AnyFormula): readonly string[] {
  const assigned = new Set(equation.flatMap((each) => /^\s*(\w+)\s*=(?!=)/.exec(each)?.[1] ?? []))
  return equation.flatMap((each) => each.match(/[A-Za-z_]\w*/g) ?? []).filter((name) => !assigned.has(name))
}

/** Equation, assumptions, validity and source of a formula. */
function headOf(formula: AnyFormula, sources: Sources, inParts: (words: string) => string): Block[] {
  const { equation: line } = formula as unknown as { readonly equation?: string }
  const { equation, inputs, output, assumes = [], valid = {}, source } = formula.def
  if (line !== undefined) return [text([{ text: equationWords(`result = ${line}`, new Set(Object.keys(inputs))), code: true }])]
  const names = new Set([...Object.keys(inputs), ...(typeof output === 'string' ? [] : Object.keys(output))])
  for (const each of equation ?? []) {
    const assigned = /^\s*([A-Za-z_]\w*)\s*=(?!=)/.exec(each)?.[1]
    if (assigned !== undefined && assigned !== 'result') names.add(assigned)
  }
  // A result that has the name of an input is another number.
  const lead = (each: string) => ((/^\s*(\w+)\s*=(?!=)/.exec(each)?.[1] ?? '') in inputs ? 'new ' : '')
  const lines = equation?.map((each) => lead(each) + inParts(equationWords(each, names)))
  const words = [
    ...(assumes.length === 0 ? [] : [`Assumes: ${inWords(assumes)}.`]),
    ...(Object.keys(valid).length === 0 ? [] : [`Valid for: ${inWords(Object.keys(valid))}.`]),
  ]
  return [
    ...(lines === undefined ? [] : [text(lines.flatMap((each, i): Piece[] => [i === 0 ? '' : '; ', { text: each, code: true }]))]),
    ...procedureOf(formula, lines !== undefined),
    small([words.length === 0 ? '' : `${words.join(' ')} `, 'Source: ', ...sources.of(source), '.']),
  ]
}

/** How a formula finds what no equation in closed form states. */
function procedureOf({ id }: AnyFormula, hasEquations: boolean): Block[] {
  const procedure = PROCEDURES[id]
  if (procedure !== undefined) return [text(`Procedure: ${procedure}`)]
  return hasEquations
    ? []
    : [text('Neither an equation in closed form nor a procedure is stated: work this step with the function of that name.')]
}

/** Statements of a record; the names of the code in them become words. */
const inWords = (statements: readonly string[]): string => remarkWords(statements.join('; '))

function bodyOf(caption: string, steps: readonly NumberedStep[], inputs: readonly Shown[], results: readonly Shown[]): Block[] {
  const { common: everywhere, own: places } = placesTexts(steps.map((step) => step.places))
  if (steps.length === 1) return [linesOf(steps, places, inputs, results)]
  const all = steps.map((_, i) => i)
  const common = inputs.filter((column) => same(column, all))
  const apart = inputs.filter((column) => !common.includes(column))
  const byJoint = jointsOf(steps)
  const ofJoint = apart.filter((column) => byJoint.size > 1 && [...byJoint.values()].every((rows) => same(column, rows)))
  const own = apart.filter((column) => !ofJoint.includes(column))
  const head: Block[] = [
    ...(everywhere === '' ? [] : [text(`All for ${everywhere}.`)]),
    ...(common.length === 0 ? [] : [commonLine('In all: ', common, 0)]),
    ...(ofJoint.length === 0
      ? []
      : [...byJoint].map(([joint, [first]]) => commonLine(`In all of the ${instanceName(joint)}: `, ofJoint, first as number))),
  ]
  const columns = [...own, ...results.map((column) => onceLong(column, steps))]
  const isLong = steps.length === MIN_ROWS - 1 && columns.length > MAX_LINE
  if (steps.length < MIN_ROWS && !isLong) return [...head, linesOf(steps, places, own, results)]
  const placed = places.some((place) => place !== '')
  const { head: names, rows } = unitsInHead({
    head: ['step', ...(placed ? ['for'] : []), ...columns.map(({ name }, i) => `${i < own.length ? '' : '= '}${name}`)],
    rows: steps.map((step, i) => [step.number, ...(placed ? [places[i] as string] : []), ...columns.map(({ cells }) => cells[i] as Words)]),
  })
  if (isLong || columns.length > MAX_COLUMNS) return [...head, ...onItsSide(caption, names, rows)]
  return [
    ...head,
    table(
      caption,
      names,
      rows,
      steps.map(({ number }) => `s${number}`),
    ),
  ]
}

/** Steps as columns, several tables where there are many. */
function onItsSide(caption: string, names: readonly string[], rows: readonly (readonly Words[])[]): Block[] {
  const parts = Array.from({ length: Math.ceil(rows.length / MAX_STEPS) }, (_, i) => rows.slice(i * MAX_STEPS, (i + 1) * MAX_STEPS))
  return parts.map((part) => {
    const lines = names.map((name, k) => [name, ...part.map((cells) => cells[k] as Words)])
    const [numbers, ...rest] = lines as [Words[], ...Words[][]]
    return table(
      caption,
      numbers.map(plainWords),
      rest.filter((line) => line.slice(1).some((cell) => cell.length > 0)),
    )
  })
}

/** Whether a column says the same in some rows. */
const same = ({ cells }: Shown, rows: readonly number[]): boolean => {
  const [first] = rows
  const text = first === undefined ? '' : plainWords(cells[first] as Words)
  return rows.every((i) => plainWords(cells[i] as Words) === text)
}

/** Rows of steps by their joint, where each step belongs to one and each joint has several. */
function jointsOf(steps: readonly NumberedStep[]): ReadonlyMap<string, readonly number[]> {
  const rows = new Map<string, number[]>()
  for (const [i, { places }] of steps.entries()) {
    const joint = jointOf(places)
    if (joint === undefined) return new Map()
    rows.set(joint, [...(rows.get(joint) ?? []), i])
  }
  return [...rows.values()].some((own) => own.length < 2) ? new Map() : rows
}

/** Text of some columns of a row, which rows with the same text share. */
const commonLine = (lead: string, columns: readonly Shown[], row: number): Block =>
  text([lead, ...columns.flatMap(({ name, cells }, i): Piece[] => [`${i === 0 ? '' : ', '}${name} `, ...pieces(cells[row] as Words)])])

/** The joint of a step that belongs to one. */
function jointOf(places: NumberedStep['places']): string | undefined {
  const joints = new Set(places.map(({ joint }) => joint))
  return joints.size === 1 ? [...joints][0] : undefined
}
