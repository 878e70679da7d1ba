// The live page: the document of a leg, and its verdict while it is edited. Nothing leaves the page.
import { autocompletion, completionKeymap } from '@codemirror/autocomplete'
import { defaultKeymap, history, historyKeymap } from '@codemirror/commands'
import { yaml } from '@codemirror/lang-yaml'
import { EditorState } from '@codemirror/state'
import { EditorView, keymap, lineNumbers } from '@codemirror/view'
import { editLegText } from 'limbwright/leg'
import { completions } from './completion.js'
import type { Answer, Movable, Question, RangeQuestion } from './messages.js'

const element = <T extends HTMLElement>(id: string) => document.getElementById(id) as T
const textOf = (id: string) => (element(id).textContent ?? '').trim()
const [verdict, status, mistakes, table, sliders, picker] = [
  element('verdict'),
  element('status'),
  element('mistakes'),
  element('checks'),
  element('sliders'),
  element<HTMLSelectElement>('field'),
]

const worker = new Worker(URL.createObjectURL(new Blob([element('calculation').textContent ?? ''], { type: 'text/javascript' })))
let schema: unknown
/** The newest question, and whether the worker is busy with an earlier one. */
let number = 0
let waiting: Question | undefined
let busy = false
/** Sliders whose ranges are to be found, when no verdict waits. */
const stale = new Set<string>()

function ask(wanted: Question['wanted']) {
  waiting = { number: ++number, text: editor.state.doc.toString(), wanted }
  next()
}

function next() {
  if (busy || schema === undefined) return
  const question = waiting ?? nextRange()
  if (question === undefined) return
  busy = true
  if (question === waiting) status.textContent = 'Calculating …'
  waiting = undefined
  worker.postMessage(question)
}

/** The range of the next slider. While a slider moves, its own range stays as it is. */
function nextRange(): RangeQuestion | undefined {
  const [path] = stale
  if (path === undefined) return undefined
  stale.delete(path)
  const slider = element<HTMLInputElement>(`slider-${path}`)
  const [from, to] = [slider.min, slider.max].map((end) => `${end} ${slider.dataset.unit}`) as [string, string]
  return { number: ++number, text: editor.state.doc.toString(), wanted: 'range', path, from, to }
}

worker.onmessage = ({ data }: MessageEvent<Answer>) => {
  if (data.state === 'ready') {
    schema = data.schema
    return ask('verdict')
  }
  busy = false
  show(data)
  next()
}

function show(answer: Answer) {
  if (answer.state === 'report') {
    status.textContent = 'The report opened in a new tab.'
    window.open(URL.createObjectURL(new Blob([answer.html], { type: 'text/html' })), '_blank')
    return
  }
  if (answer.state === 'range') {
    showRange(answer.path, answer.passes, answer.text)
    return
  }
  mistakes.replaceChildren()
  if (answer.state === 'fault') status.textContent = `A fault of the program: ${answer.message}`
  else if (answer.state === 'mistakes') {
    verdict.textContent = `${answer.mistakes.length === 1 ? 'One thing' : `${answer.mistakes.length} things`} to change in the document. The table is that of the last whole document.`
    verdict.className = 'fails'
    mistakes.append(...answer.mistakes.map(({ message, line }) => mistakeItem(message, line)))
    status.textContent = 'Not calculated.'
  } else if (answer.state === 'verdict') {
    verdict.textContent = answer.text
    verdict.className = answer.rows[0]?.standing ?? ''
    element('sentence').textContent = `${answer.sentence} Remedy: ${answer.remedy}.`
    table.replaceChildren(...answer.rows.map(({ standing, cells }) => rowOf(standing, cells)))
    status.textContent = `${answer.checks} checks in ${(answer.milliseconds / 1000).toFixed(1)} s.`
    offer(answer.movable)
    for (const { dataset } of sliders.querySelectorAll<HTMLElement>('input')) if (dataset.path !== moved) stale.add(dataset.path as string)
    moved = undefined
  }
}

/** Marks the part of a slider in which the leg passes, and says what decides beyond it. */
function showRange(path: string, passes: readonly boolean[], text: string) {
  const [strip, words] = [document.getElementById(`strip-${path}`), document.getElementById(`range-${path}`)]
  if (strip === null || words === null) return
  strip.replaceChildren(
    ...passes.map((one) => {
      const part = document.createElement('i')
      part.className = one ? 'in' : 'out'
      return part
    }),
  )
  words.textContent = text
}

function rowOf(standing: string, cells: readonly string[]): HTMLTableRowElement {
  const row = document.createElement('tr')
  for (const [i, text] of [standing, ...cells].entries()) {
    const cell = document.createElement('td')
    cell.textContent = text
    if (i === 0) cell.className = standing
    row.append(cell)
  }
  return row
}

function mistakeItem(message: string, line: number | undefined): HTMLLIElement {
  const item = document.createElement('li')
  item.append(message)
  if (line !== undefined) {
    const button = document.createElement('button')
    button.type = 'button'
    button.textContent = `Go to line ${line}`
    button.onclick = () => {
      const at = editor.state.doc.line(Math.min(line, editor.state.doc.lines)).from
      editor.dispatch({ selection: { anchor: at }, scrollIntoView: true })
      editor.focus()
    }
    item.append(' ', button)
  }
  return item
}

/** The fields that a slider may move, in the list of choices. */
let movable: readonly Movable[] = []
const FIRST = ['joints.knee.drive.pretension', 'joints.hip.drive.pretension', 'robot.mass', 'robot.standHeight']

function offer(fields: readonly Movable[]) {
  const first = movable.length === 0
  movable = fields
  if (picker.options.length !== fields.length) {
    const chosen = picker.value
    picker.replaceChildren(...fields.map(({ path, value, unit }) => new Option(`${path} (${value} ${unit})`, path)))
    if (fields.some(({ path }) => path === chosen)) picker.value = chosen
  }
  if (first) for (const path of FIRST) addSlider(path)
}

/** The slider that the newest change of the document came from. */
let moved: string | undefined

function addSlider(path: string) {
  const field = movable.find((each) => each.path === path)
  const id = `slider-${path}`
  if (field === undefined || document.getElementById(id) !== null) return
  const { value, unit } = field
  const [label, input, output] = [document.createElement('label'), document.createElement('input'), document.createElement('output')]
  Object.assign(label, { htmlFor: id, textContent: path })
  const ends = [0.5 * value, 1.5 * value].sort((a, b) => a - b) as [number, number]
  Object.assign(input, { id, type: 'range', min: String(ends[0]), max: String(ends[1]), step: String((ends[1] - ends[0]) / 100) })
  input.value = String(value)
  Object.assign(input.dataset, { path, unit })
  const shown = () => `${Number(Number(input.value).toPrecision(4))} ${unit}`
  const say = () => {
    output.textContent = shown()
    input.setAttribute('aria-valuetext', shown())
  }
  input.oninput = () => {
    say()
    try {
      const text = editLegText(editor.state.doc.toString(), { [path]: shown() })
      moved = path
      editor.dispatch({ changes: { from: 0, to: editor.state.doc.length, insert: text } })
    } catch (error) {
      status.textContent = String((error as Error).message)
    }
  }
  say()
  const row = document.createElement('div')
  const [strip, words] = [document.createElement('span'), document.createElement('p')]
  Object.assign(strip, { id: `strip-${path}`, className: 'strip', ariaHidden: 'true' })
  Object.assign(words, { id: `range-${path}`, className: 'range' })
  input.setAttribute('aria-describedby', words.id)
  row.append(label, input, output, strip, words)
  sliders.append(row)
  stale.add(path)
  next()
}

let pause: ReturnType<typeof setTimeout> | undefined
const editor = new EditorView({
  parent: element('editor'),
  state: EditorState.create({
    doc: textOf('example'),
    extensions: [
      lineNumbers(),
      history(),
      yaml(),
      autocompletion({ override: [(context) => (schema === undefined ? null : completions(context, schema as object))] }),
      // Tab is left to the page, so that the keyboard gets out of the editor.
      keymap.of([...completionKeymap, ...defaultKeymap, ...historyKeymap]),
      EditorView.contentAttributes.of({ 'aria-label': 'Document of the leg, YAML' }),
      EditorView.updateListener.of(({ docChanged }) => {
        if (!docChanged) return
        clearTimeout(pause)
        pause = setTimeout(() => ask('verdict'), 300)
      }),
    ],
  }),
})

// The scrolled area is reached by keyboard too.
Object.assign(editor.scrollDOM, { tabIndex: 0, role: 'group', ariaLabel: 'Scrolled document' })

element('add').onclick = () => addSlider(picker.value)
element('report').onclick = () => ask('report')
element('save').onclick = () => {
  const link = document.createElement('a')
  link.href = URL.createObjectURL(new Blob([editor.state.doc.toString()], { type: 'text/yaml' }))
  link.download = 'leg.yaml'
  link.click()
}
element<HTMLInputElement>('open').onchange = async ({ target }) => {
  const [file] = (target as HTMLInputElement).files ?? []
  if (file === undefined) return
  sliders.replaceChildren()
  editor.dispatch({ changes: { from: 0, to: editor.state.doc.length, insert: await file.text() } })
}
