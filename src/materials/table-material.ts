import { defineMaterial, type MaterialHead, type MaterialWith, type PropertyName, type PropertyRows } from './record.js'

/**
 * A material of the table: as `defineMaterial` makes it, but its rows are read when the first of its properties is. Importing the table so costs
 * nothing for the materials that a program does not use. A test reads every one. @internal
 */
export function tableMaterial<const R extends PropertyRows>(head: MaterialHead, rows: R): MaterialWith<Extract<keyof R, PropertyName>> {
  const material = { ...head } as Record<string, unknown>
  const names = Object.keys(rows)
  const fill = () => {
    const made = defineMaterial(head, rows) as Readonly<Record<string, unknown>>
    for (const name of names) {
      Object.defineProperty(material, name, { value: made[name], writable: true, enumerable: true, configurable: true })
    }
  }
  for (const name of names) {
    const get = () => {
      fill()
      return material[name]
    }
    Object.defineProperty(material, name, { get, enumerable: true, configurable: true })
  }
  return material as MaterialWith<Extract<keyof R, PropertyName>>
}
