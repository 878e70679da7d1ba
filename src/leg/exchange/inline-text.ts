/** Text that a reader would take for something else, or that ends a value inside braces, is put in quotes. */
const PLAIN_SCALAR = /^(?:[A-Za-z0-9+.]|-(?=[\d.]))[A-Za-z0-9+\-./^ %°µ²³·*()]*$/
const NON_TEXT_SCALAR = /^([-+]?[\d.]+(e[-+]?\d+)?|true|false|null|~|y|n|yes|no|on|off)$/i

/** A value of YAML on one line. */
export function inlineText(value: unknown, quoted: boolean): string {
  if (Array.isArray(value)) return `[${value.map((item) => inlineText(item, false)).join(', ')}]`
  if (typeof value === 'object' && value !== null)
    return `{ ${Object.entries(value)
      .flatMap(([name, item]) => (item === undefined ? [] : [pairText(name, item)]))
      .join(', ')} }`
  if (typeof value !== 'string') return String(value)
  return quoted || !PLAIN_SCALAR.test(value) || NON_TEXT_SCALAR.test(value) || value.endsWith(' ') ? JSON.stringify(value) : value
}

/** A name with its value on one line. */
export const pairText = (name: string, value: unknown): string =>
  `${/^[yn]$/.test(name) ? name : inlineText(name, false)}: ${inlineText(value, false)}`
