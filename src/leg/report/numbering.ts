import type { AnyFormula } from '../../formula/index.js'
import type { Cell, Link, Sheet, SheetMaker, SheetStep } from '../run/index.js'

/** A step with its number on the sheet. */
export interface NumberedStep {
  /** Number of its formula and its own, such as `12.3`. */
  readonly number: string
  readonly step: SheetStep
  /** Instances that run it with these very inputs. */
  readonly places: SheetStep['names'][]
  /** Names of its results that something reads. */
  readonly used: Set<string>
}

/** The steps of one formula. */
export interface StepGroup {
  readonly number: number
  readonly formula: AnyFormula
  readonly steps: NumberedStep[]
}

/** The steps of some cells, each distinct one once: numbered by formula, in the order in which the formulas are first needed. */
export class Numbering {
  readonly groups: StepGroup[] = []
  readonly sheet: Sheet
  readonly #numbered: NumberedStep[] = []

  constructor(maker: SheetMaker, cells: readonly Cell[]) {
    this.sheet = maker.sheet(cells)
    const groups = new Map<string, StepGroup>()
    const distinct = new Map<string, NumberedStep>()
    for (const step of this.sheet.steps) {
      const key = `${step.formula} ${JSON.stringify(step.x)} ${this.#originsOf(step)}`
      const known = distinct.get(key)
      if (known !== undefined) {
        known.places.push(step.names)
        this.#numbered.push(known)
        continue
      }
      let group = groups.get(step.formula)
      if (group === undefined) {
        group = { number: groups.size + 1, formula: this.sheet.formulas.get(step.formula) as AnyFormula, steps: [] }
        groups.set(step.formula, group)
        this.groups.push(group)
      }
      const own = { number: `${group.number}.${group.steps.length + 1}`, step, places: [step.names], used: new Set<string>() }
      group.steps.push(own)
      distinct.set(key, own)
      this.#numbered.push(own)
    }
    for (const { from } of [...this.sheet.steps, { from: this.sheet.results.flatMap((result) => result.from ?? []) }])
      for (const link of Object.values(from) as Link[])
        if (link.of === 'step') this.stepOf(link).used.add(link.path.split('.')[0] as string)
  }

  /** The numbered step that a link leads to. */
  stepOf({ number }: Link): NumberedStep {
    return this.#numbered[number] as NumberedStep
  }

  /** Where the inputs of a step come from, with steps by their numbers on the sheet. */
  #originsOf({ from }: SheetStep): string {
    return Object.entries(from)
      .map(
        ([path, link]) =>
          `${path} ${link.of === 'step' ? this.stepOf(link).number : `leaf ${link.number}`} ${link.path} ${link.negative === true}`,
      )
      .join()
  }
}
