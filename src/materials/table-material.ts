import { defineMaterial, type MaterialHead, type MaterialWith, type PropertyName, type PropertyRows } from './record.js'

/**
 * A material of the table: as `defineMaterial` makes it, but its rows are read when the first of its properties is. Importing the table so costs
 * nothing for the materials that a program does not use. A test reads every one. @internal
 */
export function tableMaterial<const R extends PropertyRows>(head: MaterialHead, rows: R): MaterialWith<Extract<keyof R, PropertyName>> {
  const material = { ...head } as Record<string, unknown>
  const names = Object.keys(rows)
  const define = (name: string, how: PropertyDescriptor) =>
    Object.defineProperty(material, name, { ...how, enumerable: true, configurable: true })
  const fill = () => {
    const made = defineMaterial(head, rows) as Readonly<Record<string, unknown>>
    for (const name of names) define(name, { value: made[name], writable: true })
  }
  for (const name of names) {
    define(name, {
      get() {
        fill()
        return material[name]
      },
    })
  }
  return material as MaterialWith<Extract<keyof R, PropertyName>>
}
