import type { AssemblyPlan } from './assembly.js'

/** One line of the shopping list. */
export interface ShoppingLine {
  /** What to buy. */
  readonly item: string
  /** Its size, as a shop lists it. */
  readonly size: string
  /** How much of it. */
  readonly quantity: string
  /** What it is for. */
  readonly remark: string
}

/** Cord to buy over cord to cut: one more of each, and coupons. */
const SPARE_CORD = 2

/** What to buy for one leg: cords, pins, screws, washers. */
export function shoppingList({ cuts, bonds }: Pick<AssemblyPlan, 'cuts' | 'bonds'>): ShoppingLine[] {
  return [
    ...cuts.cords.map(({ cord, cutLength }) => ({
      item: 'cord',
      size: cord,
      quantity: `${Math.ceil(10 * SPARE_CORD * cutLength.in('m')) / 10} m`,
      remark: 'twice the cut: one spare, and coupons',
    })),
    ...cuts.pins.map(({ joint, size, catalogue, fit }) => ({
      item: 'pin',
      size: `${size} x ${catalogue === undefined ? 'to be cut' : catalogue.in('mm')} mm`,
      quantity: '2',
      remark: `${joint}: ${fit}; one spare`,
    })),
    ...cuts.bolts.map(({ group, thread, propertyClass, count, catalogue, mostLength }) => ({
      item: 'screw',
      size: `${thread} x ${catalogue === undefined ? '?' : catalogue.in('mm')} mm, class ${propertyClass}`,
      quantity: String(count + 1),
      remark:
        mostLength === undefined
          ? `${group}; one spare`
          : `${group}: never longer than ${mostLength}, a longer one shorts the winding; one spare`,
    })),
    ...(cuts.shaft === undefined
      ? []
      : [
          {
            item: 'hip shaft',
            size: `${cuts.shaft.thread}, class ${cuts.shaft.propertyClass}, shank of at least ${cuts.shaft.leastLength}`,
            quantity: '1',
            remark: `tap drill ${cuts.shaft.tapDrill}`,
          },
        ]),
    ...bonds.map(({ adhesive, joint }) => ({ item: 'adhesive', size: adhesive, quantity: '1', remark: `cord ends of the ${joint}` })),
  ]
}

/** The shopping list as CSV, with one header line. */
export function shoppingCsv(plan: Pick<AssemblyPlan, 'shopping'>): string {
  const cell = (text: string) => (/[",\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text)
  const rows = plan.shopping.map(({ item, size, quantity, remark }) => [item, size, quantity, remark].map(cell).join(','))
  return `${['item,size,quantity,remark', ...rows].join('\n')}\n`
}
